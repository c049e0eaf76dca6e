import type { Point, Segment, Vector } from './shape.ts';
import { isLine } from './segment.ts';

/**
 * The whole line or circle that a piece lies on, seen from the piece's start:
 * the direction it leaves in and how fast it turns. Unlike centre and radius
 * this stays exact as an arc flattens, so lines and arcs share one formula.
 */
export interface Carrier {
  readonly start: Point;
  /** unit; zero for a piece without length */
  readonly tangent: Vector;
  /** 1/mm, positive turning left */
  readonly curvature: number;
}

/** The carrier of a piece. A piece without length has a zero tangent and no curvature. */
export function carrierOf(segment: Segment): Carrier {
  const { a, b, bulge: k } = segment;
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const chord = Math.sqrt(dx * dx + dy * dy);
  // a point leaves in no direction
  if (chord === 0) return { start: a, tangent: { x: 0, y: 0 }, curvature: 0 };
  const ux = dx / chord;
  const uy = dy / chord;
  if (isLine(segment)) return { start: a, tangent: { x: ux, y: uy }, curvature: 0 };
  // the start tangent is the chord turned back by half the sweep
  const size = 1 + k * k;
  const c = (1 - k * k) / size;
  const s = (2 * k) / size;
  return {
    start: a,
    tangent: { x: c * ux + s * uy, y: c * uy - s * ux },
    curvature: (4 * k) / (chord * size),
  };
}

/**
 * Distance of a point from the whole line or circle, mm, positive to the left
 * of the way along it. With p along and q to the left of the start tangent and
 * curvature κ: (2q - κ(p² + q²)) / (1 + √((κp)² + (1 - κq)²)).
 */
export function leftOf(carrier: Carrier, at: Point): number {
  const { start, tangent, curvature } = carrier;
  const rx = at.x - start.x;
  const ry = at.y - start.y;
  const p = rx * tangent.x + ry * tangent.y;
  const q = tangent.x * ry - tangent.y * rx;
  const kp = curvature * p;
  const kq = 1 - curvature * q;
  return (2 * q - curvature * (p * p + q * q)) / (1 + Math.sqrt(kp * kp + kq * kq));
}
