import type { Point } from './shape.ts';

/**
 * The one tolerance of the kernel, mm: below it two places are the same place.
 * Sections lie within a few hundred millimetres of the origin, where doubles
 * are about 1e-13 apart; a chain of constructions loses two or three digits of
 * that, so 1e-9 stays well clear of rounding and ten million times below the
 * 0.01 mm that the finest weld gauge shows.
 */
export const TOLERANCE = 1e-9;

/** Whether two lengths (mm) differ by no more than the tolerance. */
export function near(a: number, b: number): boolean {
  return Math.abs(a - b) <= TOLERANCE;
}

/** Whether a length (mm) is at most a bound, the tolerance given in its favour. */
export function atMost(value: number, bound: number): boolean {
  return value <= bound + TOLERANCE;
}

/** Whether a length (mm) is at least a bound, the tolerance given in its favour. */
export function atLeast(value: number, bound: number): boolean {
  return value >= bound - TOLERANCE;
}

/** Whether two points are no farther apart than the tolerance. */
export function nearPoint(a: Point, b: Point): boolean {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  return dx * dx + dy * dy <= TOLERANCE * TOLERANCE;
}
