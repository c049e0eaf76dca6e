import type { Mm } from './quantity.ts';
import { mm } from './quantity.ts';
import { roundHalfAway } from './rounding.ts';

/** The finest part of an inch on a rule; every inch fraction is a whole number of these. */
export const sixtyFourths = 64;

/**
 * 25.4 mm to the inch, exact by definition (international yard and pound
 * agreement, 1959), as a fraction of whole numbers: binary holds no 25.4, so a
 * product with it is off in the last place where these two give the exact length.
 */
const mmNumerator = 127;
const mmDenominator = 5;

/** The parts of an inch that a rule is divided into, and that a fraction may be given in. */
export type InchDenominator = 16 | 32 | 64;

export function inchToMm(inches: number): Mm {
  return mm((inches * mmNumerator) / mmDenominator);
}

export function mmToInch(length: number): number {
  return (length * mmDenominator) / mmNumerator;
}

/** The length of so many 64ths of an inch, in millimetres. */
export function inch64ToMm(count: number): Mm {
  return mm((count * mmNumerator) / (mmDenominator * sixtyFourths));
}

/** The whole number of 64ths nearest to a length, in steps of 1/denominator inch; a half goes away from zero. */
export function nearestInch64(length: number, denominator: InchDenominator): number {
  const steps = roundHalfAway(mmToInch(length) * denominator, 0);
  return steps * (sixtyFourths / denominator);
}

/** So many 64ths of an inch as a whole and a fraction in lowest terms: 84 is "1 5/16". */
export function formatInch64(count: number): string {
  const size = Math.abs(count);
  const whole = Math.floor(size / sixtyFourths);
  let numerator = size % sixtyFourths;
  let denominator = sixtyFourths;
  while (numerator > 0 && numerator % 2 === 0) {
    numerator /= 2;
    denominator /= 2;
  }
  const fraction = numerator > 0 ? `${numerator}/${denominator}` : '';
  const parts = [whole > 0 ? `${whole}` : '', fraction].filter((part) => part !== '');
  const text = parts.length > 0 ? parts.join(' ') : '0';
  return count < 0 ? `−${text}` : text;
}
