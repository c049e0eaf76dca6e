import { distance } from '../geometry/index.ts';
import type { Point } from '../geometry/index.ts';

/**
 * What is smaller than this is not there, mm: a tenth of a nanometre. A contour's
 * pieces must stay well above the kernel's tolerance, and no gap, overlap or
 * melted edge of this size can be seen or measured.
 */
export const LEAST_SIZE = 1e-7;

/** Whether a length, signed or not, is too small to be there. */
export function isNone(length: number): boolean {
  return Math.abs(length) < LEAST_SIZE;
}

/** Whether two points are too near to have a piece of contour between them. */
export function sameSpot(a: Point, b: Point): boolean {
  return distance(a, b) < LEAST_SIZE;
}
