import { formatInch64, type EnteredLength } from '../units/index.ts';

/** A length as it was entered; its unit behind it only when that is not the sheet's column. */
export function sheetLengthText(length: EnteredLength | null, column: 'mm' | 'in'): string {
  if (length === null) return '';
  if (length.unit === 'in64') {
    return formatInch64(length.value) + (column === 'in' ? '' : ' in');
  }
  const digits = String(length.value).replace('-', '−');
  return length.unit === column ? digits : `${digits} ${length.unit}`;
}
