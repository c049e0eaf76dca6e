import { measurementIds } from '../measure/index.ts';
import type { Subject } from './subject.ts';
import {
  compiledSource,
  sheetLegHere,
  sheetSymbols,
  type SymbolSource,
  thicknessHere,
} from './symbol.ts';

/**
 * Where a symbol is read from in a requirement put to `subject`: the set's and
 * the row's own symbols first, then measurement ids and the sheet's values.
 * Null when nothing goes by that name, or when `tHere` or `sheetLegHere` has no
 * plate to mean.
 */
export function sourceOf(
  symbol: string,
  subject: Subject,
  declared: Readonly<Record<string, string>>,
): SymbolSource | null {
  const source = compiledSource(symbol, subject, declared);
  const isKnown = source?.from !== 'measurement' || measurementIds.includes(source.id);
  return isKnown ? source : null;
}

/** Every name that a formula may use, to suggest from when one is mistyped. */
export function knownSymbols(declared: Readonly<Record<string, string>>): readonly string[] {
  const plain = measurementIds.filter((id) => !id.includes('.'));
  return [...Object.keys(declared), ...plain, thicknessHere, sheetLegHere, ...sheetSymbols];
}
