import type { Contour, Point } from '../geometry/index.ts';
import { add, dot, nearPoint, scale, subtract } from '../geometry/index.ts';
import type { Groove, Side, SurfaceLine } from '../joint/index.ts';
import type { Measurement } from './measurement.ts';
import { measuredLength, noWitness, span } from './witness.ts';

/**
 * Greatest height of either prepared edge that no weld metal is fused to, along
 * its plate's normal, mm (ISO 6520-1, 4021, at mid-wall 402; from memory,
 * verify). A bare bevel below a groove edge of the face is underfill and doesn't count.
 */
export function incompletePenetration(groove: Groove, face: Side): Measurement {
  const heights = groove.unfused.map((unfused, i) =>
    unfusedHeight(belowBareBevel(unfused, face.grooveEdges?.[i]), face.surfaces[i] as SurfaceLine),
  ) as [Measurement, Measurement];
  return (heights[0].value ?? 0) >= (heights[1].value ?? 0) ? heights[0] : heights[1];
}

/** Unfused pieces without the run that ends at the groove edge of the face. */
function belowBareBevel(unfused: Contour, edge: Point | undefined): Contour {
  const last = unfused.at(-1);
  // the edge is fused up to the face, or where it ended isn't known
  if (last === undefined || edge === undefined || !nearPoint(last.b, edge)) return unfused;
  let start = unfused.length - 1;
  for (; start > 0; start -= 1) {
    const piece = unfused[start] as Contour[number];
    const before = unfused[start - 1] as Contour[number];
    if (!nearPoint(before.b, piece.a)) break;
  }
  return unfused.slice(0, start);
}

/** The tallest unbroken run of unfused pieces. */
function unfusedHeight(unfused: Contour, { normal }: SurfaceLine): Measurement {
  let tallest = measuredLength('incompletePenetration', 0, noWitness);
  let start: Point | null = null;
  let end: Point | null = null;
  for (const piece of unfused) {
    if (start === null || end === null || !nearPoint(end, piece.a)) start = piece.a;
    end = piece.b;
    const rise = dot(subtract(end, start), normal);
    if (Math.abs(rise) > (tallest.value ?? 0)) {
      const level = add(start, scale(normal, rise));
      tallest = measuredLength(
        'incompletePenetration',
        Math.abs(rise),
        span(start, level, [[end, level]]),
      );
    }
  }
  return tallest;
}
