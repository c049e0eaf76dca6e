import type { Point } from '../../geometry/index.ts';
import type { DrawingSheet } from './drawing-sheet.ts';
import type { Line } from './label-box.ts';

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
  { edges }: DrawingSheet,
  point: Point,
  off: Point,
  level: number,
): readonly Line[] {
  const [x, y] = level < 0 ? [-off.x, -off.y] : [off.x, off.y];
  const end = Math.abs(level) + PAST;
  if (end < GAP + 2) return [];
  const { along, out } = reachOf(edges, point, x, y, end);
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
function reachOf(
  edges: readonly Line[],
  { x: px, y: py }: Point,
  x: number,
  y: number,
  end: number,
) {
  let along = 0;
  let out = 0;
  for (const { x1, y1, x2, y2 } of edges) {
    const aside1 = (x1 - px) * y - (y1 - py) * x;
    const aside2 = (x2 - px) * y - (y2 - py) * x;
    if (Math.abs(aside1) <= ON_RAY && Math.abs(aside2) <= ON_RAY) {
      const along1 = (x1 - px) * x + (y1 - py) * y;
      const along2 = (x2 - px) * x + (y2 - py) * y;
      along = Math.max(along, along1, along2);
    } else if (aside1 * aside2 <= 0) {
      const share = aside1 / (aside1 - aside2);
      const at = (x1 + (x2 - x1) * share - px) * x + (y1 + (y2 - y1) * share - py) * y;
      if (at > out && at < end) out = at;
    }
  }
  return { along, out };
}
