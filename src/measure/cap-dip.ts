import type { Contour, Point, Vector } from '../geometry/index.ts';
import {
  dot,
  extremeFromLine,
  normalise,
  perpendicularLeft,
  scale,
  splitContour,
  subtract,
  TOLERANCE,
} from '../geometry/index.ts';
import type { SurfaceLine } from '../joint/index.ts';
import type { ExposedWeld } from './exposed-weld.ts';
import type { Measurement } from './measurement.ts';
import { measuredLength, noWitness, span } from './witness.ts';

/**
 * The string is taut when nothing stands out over it by more than this, mm:
 * far under the tolerance, because its lean is known only to the square root of it.
 */
const TAUT = TOLERANCE / 1000;

interface Dip {
  readonly depth: number;
  readonly bottom: Point;
  readonly foot: Point;
  /** The straight line laid across the crests. */
  readonly across: readonly [Point, Point];
}

/**
 * Greatest depth of the face below its outer hull, the straight line laid
 * across its crests, normal to it, mm; 0 for a face with a single swell. Derived.
 */
export function capDip({ bead, toes }: ExposedWeld, { normal }: SurfaceLine): Measurement[] {
  const airOnLeft = dot(perpendicularLeft(subtract(toes[1], toes[0])), normal) > 0;
  const dip = deepestDip(bead, toes, airOnLeft ? 1 : -1, normal);
  if (dip === null) return [measuredLength('capDip', 0, noWitness)];
  return [measuredLength('capDip', dip.depth, span(dip.foot, dip.bottom, [], [dip.across]))];
}

/**
 * Works like a taut string: where the face stands out over the line between the
 * ends of a part, the hull touches it there and each half is looked at by
 * itself; where it doesn't, that line is the hull.
 */
function deepestDip(
  part: Contour,
  [start, end]: readonly [Point, Point],
  side: 1 | -1,
  up: Vector,
): Dip | null {
  const [only] = part;
  // nothing, or a single piece that is straight or swells outward
  if (only === undefined || (part.length === 1 && only.bulge * side <= 0)) return null;
  const normal = normalise(scale(perpendicularLeft(subtract(end, start)), side));
  // the underside of an overlap
  if (dot(normal, up) <= 0) return null;
  const crest = extremeFromLine(part, start, normal);
  const [before, after] = crest.value > TAUT ? splitContour(part, crest) : [[], []];
  // a crest at the very end of the part is the end
  if (before.length > 0 && after.length > 0) {
    const left = deepestDip(before, [start, crest.point], side, up);
    const right = deepestDip(after, [crest.point, end], side, up);
    return (left?.depth ?? 0) >= (right?.depth ?? 0) ? left : right;
  }
  const bottom = extremeFromLine(part, start, scale(normal, -1));
  const depth = bottom.value + crest.value;
  // runs along the hull
  if (depth <= 0) return null;
  const foot = subtract(bottom.point, scale(normal, -depth));
  return { depth, bottom: bottom.point, foot, across: [start, end] };
}
