import type { Point } from '../../geometry/index.ts';
import type { Sheet } from './sheet.ts';

/** How far one can go on the sheet from a point in a unit direction, px; 0 off the sheet. */
export function reachOnSheet(sheet: Sheet, from: Point, direction: Point): number {
  const x = reachTo(from.x, direction.x, sheet.left, sheet.right);
  const y = reachTo(from.y, direction.y, sheet.top, sheet.bottom);
  return Math.max(0, Math.min(x, y));
}

function reachTo(from: number, step: number, low: number, high: number): number {
  // going along the other axis
  if (Math.abs(step) < 1e-9) return Infinity;
  return ((step > 0 ? high : low) - from) / step;
}
