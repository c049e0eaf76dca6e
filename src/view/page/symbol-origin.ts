import { sourceOf, type Check, type Criterion, type LimitSet } from '../../limits/index.ts';
import type { Message } from '../../units/index.ts';
import { known } from '../text.ts';
import { measurementName } from './measurement-name.ts';

/** What a set needs to be told by: its rows and what its symbols stand for. */
type Rows = Pick<LimitSet, 'criteria' | 'symbols'>;

/** The row of a set that a check comes from; null for one of the sheet's own. */
export const rowOf = ({ id }: Check, limits: Rows | undefined): Criterion | null =>
  limits?.criteria.find((row) => id.startsWith(`${row.id}:`)) ?? null;

/** Where a symbol of a row's formula is read from; null where nothing goes by that name. */
export const symbolSource = (
  symbol: string,
  row: Criterion,
  { measurement }: Check,
  limits: Rows | undefined,
): ReturnType<typeof sourceOf> =>
  sourceOf(symbol, measurement, { ...limits?.symbols, ...row.symbols });

/**
 * What a symbol in a check's sum is read from: `tHere` is the thickness of plate 1, `a` the throat of
 * the specified size. Null where the sum says it by itself.
 */
export function symbolOrigin(
  symbol: string,
  check: Check,
  limits: Rows | undefined,
): Message | null {
  const row = rowOf(check, limits);
  // the sheet's own sums have names of their own
  if (row === null) return named(`bench_symbol_${symbol.toLowerCase()}`);
  const source = symbolSource(symbol, row, check, limits);
  if (source === null) return null;
  return source.from === 'measurement'
    ? measurementName(source.id)
    : named(`bench_symbol_${source.field.toLowerCase()}`);
}

const named = (key: string): Message | null => (known(key) ? { key } : null);
