import { sourceOf, writeValue, type Check, type LimitSet } from '../../../limits/index.ts';
import type { Message } from '../../../units/index.ts';
import { text, type Reading } from '../../text.ts';
import { symbolOrigin } from '../symbol-origin.ts';

/** What a plate is told by, weld or none. */
const ofPlates: ReadonlySet<string> = new Set(['t1', 't2', 'tMin', 'tMax']);

/**
 * The rule that a limit follows where it follows the weld itself: 1 mm + 0.15 × face width. Its figure
 * would tell what only the eye is to find. Null where the limit is known before anybody looks.
 */
export function ruleOf(
  check: Check,
  limits: Pick<LimitSet, 'criteria' | 'symbols'>,
  reading: Reading,
): string | null {
  const { working, sense } = check;
  if (working === null) return null;
  const names = new Map(
    working.symbols.map(({ symbol, value, unit }) => {
      const name = isOfWeld(symbol, check, limits) ? symbolOrigin(symbol, check, limits) : null;
      return [symbol, name === null ? writeValue({ value, unit }) : text(name, reading)];
    }),
  );
  if (!working.symbols.some(({ symbol }) => isOfWeld(symbol, check, limits))) return null;
  const said = (part: string): string =>
    part
      .replace(/(\d) (?=[A-Za-z]\w*(?!\w))(?!mm\b|in\b|deg\b)/gu, '$1 × ')
      .replace(/ - /gu, ' − ')
      .replace(/[A-Za-z]\w*/gu, (word) => names.get(word) ?? word);
  const parts = /^(min|max)\((.+), ([^,()]+)\)$/u.exec(working.formula);
  const rule: Message = {
    key: `calls_rule_${sense === 'max' ? 'most' : 'least'}${parts === null ? '' : `_${parts[1] as 'min' | 'max'}`}`,
    values:
      parts === null
        ? { rule: said(working.formula) }
        : { rule: said(parts[2] ?? ''), other: said(parts[3] ?? '') },
  };
  return text(rule, reading);
}

function isOfWeld(
  symbol: string,
  { id, measurement }: Check,
  { criteria, symbols }: Pick<LimitSet, 'criteria' | 'symbols'>,
): boolean {
  const criterion = criteria.find((row) => id.startsWith(`${row.id}:`));
  if (criterion === undefined) return false;
  const source = sourceOf(symbol, measurement, { ...symbols, ...criterion.symbols });
  return source?.from === 'measurement' && !ofPlates.has(source.id);
}
