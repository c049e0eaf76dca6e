import type { Point } from '../../geometry/index.ts';
import type { DrawingSheet } from './drawing-sheet.ts';
import type { Line } from './label-box.ts';

/** An extension line starts this far off its point and runs this far past the dimension line, px. */
const GAP = 10;
const PAST = 6;
/** An edge within this of a ray, and as straight along it, serves as an extension line, px. */
const ON_RAY = 1;

/**
 * The extension line from a point along the unit direction `off` to `level`, px
 * (ISO 129-1): it starts 10 px off the point, or where the last visible edge
 * that lies on it ends. None where such an edge reaches the dimension line.
 */
export function extensionFrom(
  { edges }: DrawingSheet,
  point: Point,
  off: Point,
  level: number,
): readonly Line[] {
  const [x, y] = level < 0 ? [-off.x, -off.y] : [off.x, off.y];
  const end = Math.abs(level) + PAST;
  if (end < GAP + 2) return [];
  const start = Math.max(GAP, visibleReach(edges, point, x, y));
  if (start >= end - 2) return [];
  return [
    {
      x1: point.x + x * start,
      y1: point.y + y * start,
      x2: point.x + x * end,
      y2: point.y + y * end,
    },
  ];
}

/** How far from the point the last visible edge on the ray ends, px; 0 when there is none. */
function visibleReach(edges: readonly Line[], point: Point, x: number, y: number): number {
  let reached = 0;
  for (const { x1, y1, x2, y2 } of edges) {
    if (Math.abs((x1 - point.x) * y - (y1 - point.y) * x) > ON_RAY) continue;
    if (Math.abs((x2 - point.x) * y - (y2 - point.y) * x) > ON_RAY) continue;
    const along1 = (x1 - point.x) * x + (y1 - point.y) * y;
    const along2 = (x2 - point.x) * x + (y2 - point.y) * y;
    reached = Math.max(reached, along1, along2);
  }
  return reached;
}
