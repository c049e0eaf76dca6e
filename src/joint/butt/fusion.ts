import { translate } from '../../geometry/index.ts';
import type { Contour, Point } from '../../geometry/index.ts';
import { portionOf, setbackAt, setbackSlope, type PreparedEdge } from './edge-preparation.ts';
import { through, via } from './outline.ts';

/** Where the weld ends on one plate, in the plate's own frame. */
export interface WeldEnd {
  readonly toe: Point;
  /** true: on the prepared edge itself; false: on the surface line, at or past the groove edge */
  readonly onEdge: boolean;
  /** how far from the surface an undercut beside the toe reaches, the metal left under it included; 0 for none */
  readonly shield: number;
  /** fused in full up to the toe (against a backing strip) instead of tapering off to it */
  readonly full: boolean;
}

/** Height at which the weld begins on the edge, and at which fusion may begin to deepen above it. */
export function lowReach({ toe, onEdge, shield }: WeldEnd): { edge: number; free: number } {
  const edge = onEdge ? toe.y : 0;
  return { edge, free: Math.max(edge, shield) };
}

/** Height up to which the weld fills the edge, and below which fusion may begin to deepen. */
export function highReach(
  { toe, onEdge, shield }: WeldEnd,
  thickness: number,
): { edge: number; free: number } {
  const edge = onEdge ? toe.y : thickness;
  return { edge, free: Math.min(edge, thickness - shield) };
}

/**
 * The fusion boundary in the plate's own frame, climbing from the lower end of
 * the weld to the upper: the prepared edge moved `depth` mm into the plate,
 * running off to nothing at the ends. Beside an undercut it first passes under
 * it. A drawing convention, not a measured thing.
 */
export function fusionBoundary(
  edge: PreparedEdge,
  depth: number,
  lower: WeldEnd,
  upper: WeldEnd,
): Contour {
  const low = lowReach(lower);
  const high = highReach(upper, edge.thickness);
  const reach = Math.min(depth, (high.free - low.free) / 4);
  const start = lower.full ? low.free : low.free + taperAbove(edge, low.free, reach);
  const end = high.free - taperBelow(edge, high.free, reach, depth);
  return through(
    via(lower.toe),
    lower.onEdge
      ? portionOf(edge, low.edge, low.free)
      : via({ x: lower.toe.x, y: lower.shield > 0 ? low.free : lower.toe.y }),
    translate(portionOf(edge, start, end), { x: depth, y: 0 }),
    upper.onEdge
      ? portionOf(edge, high.free, high.edge)
      : via({ x: upper.toe.x, y: upper.shield > 0 ? high.free : upper.toe.y }),
    via(upper.toe),
  );
}

/**
 * Height over which fusion deepens above `low`. On the curve of a U the edge
 * leaves faster than any slope, so there the boundary steps in level.
 */
function taperAbove(edge: PreparedEdge, low: number, reach: number): number {
  const { hollow } = edge;
  if (hollow === null || low >= hollow.b.y) return reach;
  return low < hollow.a.y ? Math.min(reach, hollow.a.y - low) : 0;
}

/** Height over which fusion deepens below `high`, short enough that the curve of a U stays on the weld's side. */
function taperBelow(edge: PreparedEdge, high: number, reach: number, depth: number): number {
  const { hollow } = edge;
  if (hollow === null || high <= hollow.a.y) return reach;
  let taper = Math.min(reach, high - hollow.a.y);
  const top = setbackAt(edge, high);
  const slope = setbackSlope(edge, high);
  // the sag of the edge over its chord, seen from the upper end, against what the taper gains
  while (top - setbackAt(edge, high - taper) - slope * taper > depth / 2) taper /= 2;
  return taper;
}
