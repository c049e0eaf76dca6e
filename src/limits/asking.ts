import { askedOf } from './asked.ts';
import type { Toleranced } from './job-sheet.ts';

/**
 * The dimension with another value asked of it: where the drawing details its
 * own the drawing's changes and the WPS stays as it is; a drawing that no longer
 * says any leaves it to the WPS.
 */
export function asking<T>(dimension: Toleranced<T>, value: T | null): Toleranced<T> {
  const { drawn, ...ofWps } = dimension;
  if (drawn === undefined) return { ...dimension, nominal: value };
  return value === null ? ofWps : { ...dimension, drawn: value };
}

/** A bevel angle that goes along with the groove angle: drawn where either of them is. */
export function bevelAsking(
  bevel: Toleranced<number>,
  groove: Toleranced<number>,
  value: number,
): Toleranced<number> {
  if (askedOf(bevel) === null) return bevel;
  return groove.drawn === undefined ? asking(bevel, value) : { ...bevel, drawn: value };
}
