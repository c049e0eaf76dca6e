import type { Contour, Point, Segment } from './shape.ts';
import { carrierOf, leftOf, type Carrier } from './carrier.ts';
import { isLine, pointAt } from './segment.ts';
import { distance } from './vector.ts';

/** A place on a piece and how far it is from the point asked about. */
export interface OnSegment {
  readonly point: Point;
  /** share of the way along the piece, 0..1 */
  readonly t: number;
  /** mm, never negative */
  readonly distance: number;
}

/** A place on a contour and how far it is from the point asked about. */
export interface OnContour extends OnSegment {
  /** which piece, counted from 0 */
  readonly index: number;
}

/**
 * The place on a piece that is nearest to a point. A piece without length
 * answers with its start; the centre of an arc, equally far from all of it,
 * also answers with the start.
 */
export function nearestOnSegment(from: Point, segment: Segment): OnSegment {
  const { a, b } = segment;
  if (isLine(segment)) {
    const dx = b.x - a.x;
    const dy = b.y - a.y;
    const square = dx * dx + dy * dy;
    // a point is nearest to itself
    const share = square === 0 ? 0 : ((from.x - a.x) * dx + (from.y - a.y) * dy) / square;
    const t = Math.min(1, Math.max(0, share));
    const point = pointAt(segment, t);
    return { point, t, distance: distance(from, point) };
  }
  // coinciding ends make a point, whatever the bulge
  if (a.x === b.x && a.y === b.y) return { point: a, t: 0, distance: distance(from, a) };
  const carrier = carrierOf(segment);
  const t = shareOfSweep(segment, sweepTo(carrier, from));
  if (t <= 1) {
    return { point: pointAt(segment, t), t, distance: Math.abs(leftOf(carrier, from)) };
  }
  const toA = distance(from, a);
  const toB = distance(from, b);
  return toA <= toB ? { point: a, t: 0, distance: toA } : { point: b, t: 1, distance: toB };
}

/** The place on a contour that is nearest to a point; the earliest of equals. Refused for an empty contour. */
export function nearestOnContour(from: Point, contour: Contour): OnContour {
  return best(contour, (segment) => nearestOnSegment(from, segment), -1);
}

/** The place on a piece that is farthest from a point; the start of equals. */
export function farthestOnSegment(from: Point, segment: Segment): OnSegment {
  const { a, b } = segment;
  const toA = distance(from, a);
  const toB = distance(from, b);
  if (!isLine(segment) && !(a.x === b.x && a.y === b.y)) {
    // across the circle from the nearest point
    const foot = sweepTo(carrierOf(segment), from);
    const t = shareOfSweep(segment, foot + Math.PI);
    if (t <= 1) {
      const point = pointAt(segment, t);
      return { point, t, distance: distance(from, point) };
    }
  }
  return toA >= toB ? { point: a, t: 0, distance: toA } : { point: b, t: 1, distance: toB };
}

/** The place on a contour that is farthest from a point; the earliest of equals. Refused for an empty contour. */
export function farthestOnContour(from: Point, contour: Contour): OnContour {
  return best(contour, (segment) => farthestOnSegment(from, segment), 1);
}

/** Angle from the arc's start to the foot of a point on its circle, in (-π, π]. */
function sweepTo({ start, tangent, curvature }: Carrier, from: Point): number {
  const rx = from.x - start.x;
  const ry = from.y - start.y;
  const p = rx * tangent.x + ry * tangent.y;
  const q = tangent.x * ry - tangent.y * rx;
  return Math.atan2(curvature * p, 1 - curvature * q);
}

/** An angle from the arc's start as a share of its sweep, counted the way the arc turns; over 1 is off the arc. */
function shareOfSweep(segment: Segment, angle: number): number {
  const whole = 4 * Math.atan(segment.bulge);
  const share = angle / whole;
  return share >= 0 ? share : share + (2 * Math.PI) / Math.abs(whole);
}

function best(
  contour: Contour,
  measure: (segment: Segment) => OnSegment,
  sense: 1 | -1,
): OnContour {
  let found: OnSegment | null = null;
  let index = 0;
  let count = 0;
  for (const segment of contour) {
    const place = measure(segment);
    if (found === null || sense * (place.distance - found.distance) > 0) {
      found = place;
      index = count;
    }
    count += 1;
  }
  if (found === null) throw new Error('An empty contour has no nearest or farthest point.');
  return { point: found.point, index, t: found.t, distance: found.distance };
}
