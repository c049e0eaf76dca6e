import type { Point } from '../../geometry/index.ts';
import type { DrawingSheet } from './drawing-sheet.ts';
import type { Line } from './label-box.ts';
import type { Lines } from './lines.ts';

/** An extension line starts this far off its point and runs this far past the dimension line, px. */
const GAP = 10;
const PAST = 6;
/** The least of it that is worth drawing outside the metal, px. */
const SHORTEST = 14;
/** An edge within this of a ray, and as straight along it, serves as an extension line, px. */
const ON_RAY = 1;

/**
 * The extension line from a point along the unit direction `off` to `level`, px
 * (ISO 129-1): it starts 10 px off the point, or where the last visible edge
 * that lies on it ends, or where it comes out of the metal that hides the
 * point. None where such an edge reaches the dimension line.
 */
export function extensionFrom(
  { outline }: DrawingSheet,
  point: Point,
  off: Point,
  level: number,
): readonly Line[] {
  const [x, y] = level < 0 ? [-off.x, -off.y] : [off.x, off.y];
  const end = Math.abs(level) + PAST;
  if (end < GAP + 2) return [];
  const { along, out } = reachOf(outline, point, x, y, end);
  if (along >= end - 2) return [];
  // One that only just comes out is drawn from its point after all, or nothing would show of it.
  const start = Math.max(GAP, along, out < end - SHORTEST ? out : 0);
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

/** How far along the ray the last edge on it ends, and where the last edge short of `end` crosses it, px; 0 for none. */
function reachOf(edges: Lines, { x: px, y: py }: Point, x: number, y: number, end: number) {
  let along = 0;
  let out = 0;
  for (let next = 0; next < edges.length; next += 4) {
    const x1 = (edges[next] as number) - px;
    const y1 = (edges[next + 1] as number) - py;
    const x2 = (edges[next + 2] as number) - px;
    const y2 = (edges[next + 3] as number) - py;
    const aside1 = x1 * y - y1 * x;
    const aside2 = x2 * y - y2 * x;
    if (Math.abs(aside1) <= ON_RAY && Math.abs(aside2) <= ON_RAY) {
      along = Math.max(along, x1 * x + y1 * y, x2 * x + y2 * y);
    } else if (aside1 * aside2 <= 0) {
      const share = aside1 / (aside1 - aside2);
      const at = (x1 + (x2 - x1) * share) * x + (y1 + (y2 - y1) * share) * y;
      if (at > out && at < end) out = at;
    }
  }
  return { along, out };
}
