import type { InchDenominator } from './inch-fraction.ts';
import {
  formatInch64,
  inch64ToMm,
  inchToMm,
  mmToInch,
  nearestInch64,
  sixtyFourths,
} from './inch-fraction.ts';
import type { Message } from './message.ts';
import { plainText, readNumber, splitSign } from './number-text.ts';
import type { Mm } from './quantity.ts';
import { mm } from './quantity.ts';
import { formatFixed } from './rounding.ts';

/** A length as entered: a decimal in its own unit, or a whole number of 64ths of an inch. */
export interface EnteredLength {
  readonly unit: 'mm' | 'in' | 'in64';
  readonly value: number;
}

export type ParsedLength =
  | { readonly ok: true; readonly mm: Mm; readonly exact: EnteredLength }
  | { readonly ok: false; readonly message: Message };

/** How a length is shown. `unitMark` adds the unit behind it. */
export type LengthFormat =
  | { readonly unit: 'mm'; readonly decimals?: number; readonly unitMark?: boolean }
  | {
      readonly unit: 'in';
      readonly style: 'decimal';
      readonly decimals?: number;
      readonly unitMark?: boolean;
    }
  | {
      readonly unit: 'in';
      readonly style: 'fraction';
      readonly denominator: InchDenominator;
      readonly unitMark?: boolean;
    };

const defaultDecimals = { mm: 2, in: 3 } as const;

const unitWord = /^(.*?) ?([a-z"]+)\.?$/u;
/** A map, since a record would also know "constructor". */
const unitWords: ReadonlyMap<string, 'mm' | 'in'> = new Map([
  ['mm', 'mm'],
  ['millimetre', 'mm'],
  ['millimetres', 'mm'],
  ['millimeter', 'mm'],
  ['millimeters', 'mm'],
  ['in', 'in'],
  ['inch', 'in'],
  ['inches', 'in'],
  ['"', 'in'],
]);

/**
 * The length that a person typed. A bare decimal is in `unit`; a unit written
 * behind it wins; a fraction is always of an inch, as on a rule.
 */
export function parseLength(text: string, unit: 'mm' | 'in'): ParsedLength {
  const plain = plainText(text);
  if (plain === null) return failed('units_text_too_long');
  if (plain === '') return failed('units_nothing_typed');
  const { sign, rest } = splitSign(plain);
  const word = unitWord.exec(rest);
  const figure = word?.[1] ?? '';
  const written = word === null ? undefined : unitWords.get(word[2] ?? '');
  // a word alone is no figure, whatever unit was meant: that is told below
  if (figure !== '' && written === undefined) {
    return failed('units_unknown_length_unit', { unit: word?.[2] ?? '' });
  }
  const read = readNumber(figure === '' ? rest : figure);
  if (!read.ok) return read;
  if (read.number.form === 'decimal')
    return decimalLength(sign * read.number.value, written ?? unit);
  if (written === 'mm') return failed('units_fraction_of_mm');
  return fractionLength(sign * read.number.numerator, read.number.denominator);
}

function decimalLength(signed: number, unit: 'mm' | 'in'): ParsedLength {
  // "-0" is nothing, and has no sign
  const value = signed === 0 ? 0 : signed;
  return { ok: true, mm: unit === 'mm' ? mm(value) : inchToMm(value), exact: { unit, value } };
}

function fractionLength(numerator: number, denominator: number): ParsedLength {
  const count = (numerator * sixtyFourths) / denominator;
  if (!Number.isInteger(count)) return failed('units_fraction_not_on_rule', { denominator });
  const value = count === 0 ? 0 : count;
  return { ok: true, mm: inch64ToMm(value), exact: { unit: 'in64', value } };
}

/** A length in the reader's unit, rounded half away from zero. */
export function formatLength(length: number, format: LengthFormat): string {
  return format.unitMark === true
    ? `${digitsOf(length, format)} ${format.unit}`
    : digitsOf(length, format);
}

function digitsOf(length: number, format: LengthFormat): string {
  if (format.unit === 'mm') return formatFixed(length, format.decimals ?? defaultDecimals.mm);
  if (format.style === 'decimal')
    return formatFixed(mmToInch(length), format.decimals ?? defaultDecimals.in);
  return formatInch64(nearestInch64(length, format.denominator));
}

/** The millimetres of a length as it was entered. */
export function enteredToMm(entered: EnteredLength): Mm {
  if (entered.unit === 'mm') return mm(entered.value);
  return entered.unit === 'in' ? inchToMm(entered.value) : inch64ToMm(entered.value);
}

function failed(key: string, values?: Readonly<Record<string, string | number>>): ParsedLength {
  return { ok: false, message: values === undefined ? { key } : { key, values } };
}
