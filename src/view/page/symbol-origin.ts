import { sourceOf, type Check, type LimitSet } from '../../limits/index.ts';
import type { Message } from '../../units/index.ts';
import { known } from '../text.ts';
import { measurementName } from './measurement-name.ts';

/**
 * What a symbol in a check's sum is read from: `tHere` is the thickness of plate 1, `a` the throat of
 * the specified size. Null where the sum says it by itself.
 */
export function symbolOrigin(
  symbol: string,
  { id, measurement }: Check,
  limits: Pick<LimitSet, 'criteria' | 'symbols'> | undefined,
): Message | null {
  const criterion = limits?.criteria.find((row) => id.startsWith(`${row.id}:`));
  // the sheet's own sums have names of their own
  if (criterion === undefined) return named(`bench_symbol_${symbol.toLowerCase()}`);
  const declared = { ...limits?.symbols, ...criterion.symbols };
  const source = sourceOf(symbol, measurement, declared);
  if (source === null) return null;
  return source.from === 'measurement'
    ? measurementName(source.id)
    : named(`bench_symbol_${source.field.toLowerCase()}`);
}

const named = (key: string): Message | null => (known(key) ? { key } : null);
