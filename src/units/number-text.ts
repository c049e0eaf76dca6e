import type { Message } from './message.ts';

/** A number as a person wrote it: a decimal, or a whole with a fraction of whole numbers. */
export type WrittenNumber =
  | { readonly form: 'decimal'; readonly value: number }
  | { readonly form: 'fraction'; readonly numerator: number; readonly denominator: number };

export type ReadNumber =
  | { readonly ok: true; readonly number: WrittenNumber }
  | { readonly ok: false; readonly message: Message };

/** A typed length or angle is never longer; what is longer is something else, pasted in by mistake. */
const longestText = 40;

const decimal = /^(\d{1,9})?(?:[.,](\d{0,15}))?$/u;
const mixed = /^(?:(\d{1,6}) )?(\d{1,6}) ?\/ ?(\d{1,6})$/u;

/**
 * Writing that means the same made alike: ½ is 1/2, every minus is a hyphen,
 * every inch mark is ", spaces are single. Null when the text is too long.
 */
export function plainText(text: string): string | null {
  if (text.length > longestText) return null;
  return text
    .replace(/[¼½¾⅐-⅞]/gu, ' $&')
    .normalize('NFKC')
    .replace(/[⁄∕]/gu, '/')
    .replace(/[−‐‑‒–—]/gu, '-')
    .replace(/''|′′|[”“]/gu, '"')
    .replace(/\s+/gu, ' ')
    .trim()
    .toLowerCase();
}

/** The sign in front of a plain text, and the rest. */
export function splitSign(text: string): { readonly sign: 1 | -1; readonly rest: string } {
  const rest = text.replace(/^[+-] ?/u, '');
  return { sign: text.startsWith('-') ? -1 : 1, rest };
}

/** Reads an unsigned number from plain text: 7, 7.5, 7,5, .5, 5/16, 1 1/4. */
export function readNumber(text: string): ReadNumber {
  const fraction = mixed.exec(text);
  if (fraction !== null) return readFraction(fraction, text);
  const match = decimal.exec(text);
  const [whole, part] = [match?.[1], match?.[2]];
  // a lone point or comma has no digit on either side
  if (match === null || ((whole ?? '') === '' && (part ?? '') === '')) {
    return { ok: false, message: { key: 'units_not_a_number', values: { text } } };
  }
  return { ok: true, number: { form: 'decimal', value: Number(`${whole ?? '0'}.${part ?? '0'}`) } };
}

function readFraction(match: RegExpExecArray, text: string): ReadNumber {
  const whole = Number(match[1] ?? '0');
  const part = Number(match[2]);
  const denominator = Number(match[3]);
  if (denominator === 0)
    return { ok: false, message: { key: 'units_fraction_over_zero', values: { text } } };
  // in "1 9/8" one of the figures is a slip
  if (match[1] !== undefined && part >= denominator) {
    return { ok: false, message: { key: 'units_fraction_too_large', values: { text } } };
  }
  return {
    ok: true,
    number: { form: 'fraction', numerator: whole * denominator + part, denominator },
  };
}
