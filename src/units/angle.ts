import type { Message } from './message.ts';
import { plainText, readNumber, splitSign } from './number-text.ts';
import type { Deg } from './quantity.ts';
import { deg } from './quantity.ts';
import { formatFixed } from './rounding.ts';

export type ParsedAngle =
  { readonly ok: true; readonly deg: Deg } | { readonly ok: false; readonly message: Message };

const degreeMark = /^(.*?) ?(°|deg|degrees?)?$/u;

/** The angle in degrees that a person typed: 30, 30°, 37.5, 37 1/2, 37½°. */
export function parseAngle(text: string): ParsedAngle {
  const plain = plainText(text);
  if (plain === null) return { ok: false, message: { key: 'units_text_too_long' } };
  if (plain === '') return { ok: false, message: { key: 'units_nothing_typed' } };
  const { sign, rest } = splitSign(plain);
  const read = readNumber(degreeMark.exec(rest)?.[1] ?? rest);
  if (!read.ok) return read;
  const size =
    read.number.form === 'decimal'
      ? read.number.value
      : read.number.numerator / read.number.denominator;
  return { ok: true, deg: deg(size === 0 ? 0 : sign * size) };
}

/** An angle in degrees with its mark, rounded half away from zero. */
export function formatAngle(angle: number, decimals = 1): string {
  return `${formatFixed(angle, decimals)}°`;
}
