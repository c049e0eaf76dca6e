import type { Point } from '../../geometry/index.ts';
import type { Line } from './label-box.ts';

/** An edge within this of a ray, and as straight along it, serves as an extension line, px. */
const ON_RAY = 1;

/**
 * How far from `point` along the unit direction `off` the last visible edge on
 * that ray ends, px: up to there the edge itself serves as the extension line.
 */
export function visibleReach(outline: readonly Line[], point: Point, off: Point): number {
  let reached = 0;
  for (const { x1, y1, x2, y2 } of outline) {
    const aside1 = (x1 - point.x) * off.y - (y1 - point.y) * off.x;
    if (Math.abs(aside1) > ON_RAY) continue;
    const aside2 = (x2 - point.x) * off.y - (y2 - point.y) * off.x;
    if (Math.abs(aside2) > ON_RAY) continue;
    const along1 = (x1 - point.x) * off.x + (y1 - point.y) * off.y;
    const along2 = (x2 - point.x) * off.x + (y2 - point.y) * off.y;
    reached = Math.max(reached, along1, along2);
  }
  return reached;
}
