import { rad, type Rad } from '../units/index.ts';
import type { Point, Segment, Vector } from './shape.ts';
import { cross, distance, dot, length, subtract } from './vector.ts';

/**
 * Bulges smaller than this are straight: even over a kilometre they stand
 * 1e-144 mm off the chord, and their squares would fall out of the range of a
 * double. Everything larger is computed as the arc it is.
 */
const FLATTEST_BULGE = 1e-150;

/** The largest bulge accepted: an arc this close to a full circle leaves a gap of a millionth of its radius. */
const LARGEST_BULGE = 1e6;

/** The straight piece from `a` to `b`; a point when they coincide. */
export function line(a: Point, b: Point): Segment {
  return { a, b, bulge: 0 };
}

/**
 * The circular piece from `a` to `b` with this bulge (tangent of a quarter of
 * its sweep), positive counter-clockwise. Refused: a bulge that is no number or
 * beyond 1e6 either way, and coinciding ends with a bulge, since a full circle
 * can't be told from a point; make it of two halves.
 */
export function arc(a: Point, b: Point, bulge: number): Segment {
  if (!(Math.abs(bulge) <= LARGEST_BULGE)) {
    throw new Error(`An arc needs a bulge between -1e6 and 1e6, not ${bulge}.`);
  }
  if (bulge !== 0 && a.x === b.x && a.y === b.y) {
    throw new Error('An arc needs two different ends; make a full circle of two halves.');
  }
  return { a, b, bulge };
}

/**
 * The circular piece from `a` to `b` whose crown stands `sagitta` mm off the
 * middle of the chord, positive to the left of the way from `a` to `b`.
 */
export function arcThroughSagitta(a: Point, b: Point, sagittaLeft: number): Segment {
  // no height, no arc: also when the ends coincide
  if (sagittaLeft === 0) return line(a, b);
  return arc(a, b, (-2 * sagittaLeft) / distance(a, b));
}

/**
 * The circular piece that leaves `a` in direction `tangent` and ends at `b`.
 * Bulge = tan(half the angle from the tangent to the chord). Refused when `b`
 * lies straight behind `a`.
 */
export function arcFromTangent(a: Point, tangent: Vector, b: Point): Segment {
  const chord = subtract(b, a);
  const turn = cross(tangent, chord);
  const along = dot(tangent, chord);
  const sizes = length(tangent) * length(chord);
  // straight ahead; also the piece without length
  if (turn === 0 && along >= 0) return line(a, b);
  // behind, the half-angle quotient that keeps its digits
  const bulge = along >= 0 ? turn / (sizes + along) : (sizes - along) / turn;
  return arc(a, b, bulge);
}

/** Whether the piece is straight. */
export function isLine(segment: Segment): boolean {
  return Math.abs(segment.bulge) < FLATTEST_BULGE;
}

/** Angle the direction turns through from end to end, signed, counter-clockwise positive; 0 for a line. */
export function sweep(segment: Segment): Rad {
  return rad(4 * Math.atan(segment.bulge));
}

/** Straight distance between the ends, mm. */
export function chordOf(segment: Segment): number {
  return distance(segment.a, segment.b);
}

/** Height of the crown off the chord, mm, positive to the left of the way from `a` to `b`. */
export function sagitta(segment: Segment): number {
  return (-segment.bulge * chordOf(segment)) / 2;
}

/** Radius of the piece, mm: chord (1 + k²) / (4|k|) for bulge k; infinite for a line. */
export function radius(segment: Segment): number {
  const k = Math.abs(segment.bulge);
  return isLine(segment) ? Infinity : (chordOf(segment) * (1 + k * k)) / (4 * k);
}

/** Centre of the circle an arc lies on; null for a line, which has none. */
export function centre(segment: Segment): Point | null {
  if (isLine(segment)) return null;
  const { a, b, bulge: k } = segment;
  const rise = (1 - k * k) / (4 * k);
  return {
    x: (a.x + b.x) / 2 - (b.y - a.y) * rise,
    y: (a.y + b.y) / 2 + (b.x - a.x) * rise,
  };
}

/** Length along the piece, mm: chord (1 + k²) atan(k) / k for bulge k. */
export function segmentLength(segment: Segment): number {
  const k = segment.bulge;
  if (isLine(segment)) return chordOf(segment);
  return (chordOf(segment) * (1 + k * k) * Math.atan(k)) / k;
}

/**
 * The point a share `t` of the way along the piece (by length, which on an arc
 * is by sweep): exactly `a` at 0 and `b` at 1, carried on beyond them.
 */
export function pointAt(segment: Segment, t: number): Point {
  const { a, b, bulge: k } = segment;
  if (t === 0) return a;
  if (t === 1) return b;
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  if (isLine(segment)) return { x: a.x + dx * t, y: a.y + dy * t };
  // The way from `a` to the point is the chord turned and shortened; both factors
  // stay exact as the arc flattens, which centre and radius do not.
  const quarter = Math.atan(k);
  const turn = -2 * (1 - t) * quarter;
  const share = (Math.sin(2 * t * quarter) * (1 + k * k)) / (2 * k);
  const c = Math.cos(turn) * share;
  const s = Math.sin(turn) * share;
  return { x: a.x + c * dx - s * dy, y: a.y + s * dx + c * dy };
}

/** Unit direction of travel at share `t` of the way along; the zero vector for a piece without length. */
export function tangentAt(segment: Segment, t: number): Vector {
  const { a, b, bulge: k } = segment;
  const size = chordOf(segment);
  // a point has no direction
  if (size === 0) return { x: 0, y: 0 };
  const ux = (b.x - a.x) / size;
  const uy = (b.y - a.y) / size;
  if (isLine(segment)) return { x: ux, y: uy };
  const turn = 4 * Math.atan(k) * (t - 0.5);
  const c = Math.cos(turn);
  const s = Math.sin(turn);
  return { x: c * ux - s * uy, y: s * ux + c * uy };
}

/**
 * Curvature, 1/mm, positive turning left; the same all along a piece, 0 for a
 * line and for a piece without length.
 */
export function curvature(segment: Segment): number {
  const k = segment.bulge;
  const size = chordOf(segment);
  // neither a line nor a point turns
  if (isLine(segment) || size === 0) return 0;
  return (4 * k) / (size * (1 + k * k));
}

/** The same piece walked the other way. */
export function reverseSegment(segment: Segment): Segment {
  // a line keeps +0, so that equal lines compare equal
  return { a: segment.b, b: segment.a, bulge: segment.bulge === 0 ? 0 : -segment.bulge };
}

/** The piece cut in two at share `t` of its length, 0..1: [up to the cut, from the cut on]. */
export function splitSegment(segment: Segment, t: number): [Segment, Segment] {
  const { a, b } = segment;
  const cut = pointAt(segment, t);
  const quarter = Math.atan(segment.bulge);
  return [
    { a, b: cut, bulge: Math.tan(quarter * t) },
    { a: cut, b, bulge: Math.tan(quarter * (1 - t)) },
  ];
}
