import type { Point } from '../../geometry/index.ts';
import type { Line } from './label-box.ts';

/** An edge within this of a ray, and as straight along it, serves as an extension line, px. */
const ON_RAY = 1;

/**
 * How far from `point` along the unit direction `off` an unbroken visible edge
 * runs, px: there the edge itself serves as the extension line.
 */
export function visibleReach(outline: readonly Line[], point: Point, off: Point): number {
  let covered = 0;
  for (let grew = true; grew;) {
    grew = false;
    for (const line of outline) {
      const reached = reachAlong(line, point, off, covered);
      if (reached > covered + 0.01) {
        covered = reached;
        grew = true;
      }
    }
  }
  return covered;
}

function reachAlong({ x1, y1, x2, y2 }: Line, point: Point, off: Point, covered: number): number {
  const aside1 = (x1 - point.x) * off.y - (y1 - point.y) * off.x;
  if (Math.abs(aside1) > ON_RAY) return covered;
  const aside2 = (x2 - point.x) * off.y - (y2 - point.y) * off.x;
  if (Math.abs(aside2) > ON_RAY) return covered;
  const along1 = (x1 - point.x) * off.x + (y1 - point.y) * off.y;
  const along2 = (x2 - point.x) * off.x + (y2 - point.y) * off.y;
  return Math.min(along1, along2) <= covered + ON_RAY ? Math.max(along1, along2) : covered;
}
