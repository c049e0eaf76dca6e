import { roundHalfAway, sixtyFourths } from '../units/index.ts';
import { same } from './document-tolerance.ts';
import type { Tree } from './tree.ts';

/** "3 mm" in a table means 3.0: no limit is meant to the whole millimetre or tenth of an inch. */
const leastDecimals = { mm: 1, in: 2, deg: 0 } as const;

/** A fraction of an inch is read to this, as gauges and rules are divided. */
const inchFraction = 1 / sixtyFourths;

type Printed = keyof typeof leastDecimals;

/** The place of the last digit that a number is printed to, at least a tenth of a mm or a hundredth of an inch. */
export function placeOf(value: number, unit: Printed): number {
  const written = (String(value).split('.')[1] ?? '').length;
  return 10 ** -Math.max(written, leastDecimals[unit]);
}

/**
 * The last place of the figures that a limit is printed with: the finest of the
 * formula's own lengths or angles; of a fraction of an inch a sixty-fourth.
 * Null when it prints none of its own (0.1 t), so that the set's place counts.
 * Rounding a measurement to the last place of its limit: ASTM E29, rounding method
 * (from memory, verify).
 */
export function printedPlace(tree: Tree): number | null {
  if (typeof tree === 'number' || typeof tree === 'string') return null;
  const [operator, ...parts] = tree;
  const [first] = parts;
  if (operator === 'mm' || operator === 'in' || operator === 'deg') {
    return typeof first === 'number' ? placeOf(first, operator) : inchFraction;
  }
  const places = parts.map(printedPlace).filter((place) => place !== null);
  return places.length === 0 ? null : Math.min(...places);
}

/** A count of places that is off a half by no more than this is one: 3.05 / 0.1 is 30.499… */
const halfNoise = 1e-9;

/**
 * A value to the nearest multiple of a place; an exact half goes to the even
 * one, so that halves don't all go the same way (ASTM E29, from memory, verify).
 */
export function toPlace(value: number, place: number): number {
  const count = value / place;
  const below = Math.floor(count);
  const isHalf = Math.abs(count - below - 1 / 2) <= halfNoise * Math.max(1, Math.abs(count));
  const whole = isHalf ? below + (below % 2 === 0 ? 0 : 1) : roundHalfAway(count, 0);
  return whole * place;
}

/** Whether a limit is a figure of that place, as a printed one is and one worked out mostly isn't. */
export const standsAt = (limit: number, place: number): boolean =>
  same(toPlace(limit, place), limit);
