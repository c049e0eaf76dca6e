import type { SheetLength } from '../../limits/index.ts';
import { parseAngle, parseLength, type Message } from '../../units/index.ts';

/** What a typed text came to for the sheet: a value, or what is wrong with it. */
export type SheetEntry<Value> = { readonly value: Value } | { readonly problem: Message };

/** How a field of the sheet reads what is typed. */
export interface SheetReading<Value> {
  /** an empty field means that nothing is required */
  readonly optional: boolean;
  /** why the sheet would not take it */
  readonly refuse: (value: Value) => Message | null;
}

/** A length typed into the sheet, kept exactly as entered; a bare number is in the sheet's column. */
export function readSheetLength(
  typed: string,
  column: 'mm' | 'in',
  how: SheetReading<SheetLength>,
): SheetEntry<SheetLength | null> {
  if (how.optional && typed.trim() === '') return { value: null };
  const read = parseLength(typed, column);
  return read.ok ? taken(read.exact, read.mm, how) : { problem: read.message };
}

/** An angle typed into the sheet, degrees. */
export function readSheetAngle(
  typed: string,
  how: SheetReading<number>,
): SheetEntry<number | null> {
  if (how.optional && typed.trim() === '') return { value: null };
  const read = parseAngle(typed);
  return read.ok ? taken<number>(read.deg, read.deg, how) : { problem: read.message };
}

function taken<Value>(
  value: Value,
  size: number,
  { refuse }: SheetReading<Value>,
): SheetEntry<Value> {
  if (size < 0) return { problem: { key: 'bench_sheet_negative' } };
  const problem = refuse(value);
  return problem === null ? { value } : { problem };
}
