import {
  writeTree,
  writeValue,
  type Check,
  type CompiledLimitSet,
  type JobSheet,
} from '../../../limits/index.ts';
import { text, type Reading } from '../../text.ts';
import { measurementName } from '../measurement-name.ts';
import { rowOf, symbolSource } from '../symbol-origin.ts';

/** What a plate is told by, weld or none. */
const ofPlates: ReadonlySet<string> = new Set(['t1', 't2', 'tMin', 'tMax']);

/**
 * The rule that a limit follows where it follows the weld itself: 1 mm + 0.15 × face width. Its figure
 * would tell what only the eye is to find. Null where the limit is known before anybody looks.
 */
export function ruleOf(
  check: Check,
  { column }: JobSheet,
  limits: CompiledLimitSet,
  reading: Reading,
): string | null {
  const row = rowOf(check, limits);
  const trees = row === null ? undefined : limits.trees[row.id]?.limit;
  const tree = trees?.[column] ?? trees?.any;
  if (row === null || tree === undefined) return null;
  const ofWeld: string[] = [];
  const written = (part: typeof tree): string =>
    writeTree(part, (symbol) => {
      const source = symbolSource(symbol, row, check, limits);
      if (source?.from === 'measurement' && !ofPlates.has(source.id)) {
        ofWeld.push(symbol);
        return text(measurementName(source.id), reading);
      }
      const known = check.working?.symbols.find((one) => one.symbol === symbol);
      return known === undefined ? symbol : writeValue(known);
    });
  const end = check.sense === 'max' ? 'most' : 'least';
  // the lesser or the greater of a sum and a plain figure reads better as the one with the other as its end
  const isEnded = typeof tree === 'object' && (tree[0] === 'min' || tree[0] === 'max');
  const said = isEnded
    ? {
        key: `calls_rule_${end}_${tree[0]}`,
        values: { rule: written(tree[1] ?? 0), other: written(tree[2] ?? 0) },
      }
    : { key: `calls_rule_${end}`, values: { rule: written(tree) } };
  return ofWeld.length > 0 ? text(said, reading) : null;
}
