import type { Point } from './shape.ts';
import type { Carrier } from './carrier.ts';
import { TOLERANCE } from './tolerance.ts';

/** Where two whole lines or circles may meet. */
export interface CarrierCrossing {
  /** up to two crossing points */
  readonly crossings: readonly Point[];
  /** next to the middle of the shallow lens or gap when they do no more than touch */
  readonly touch: Point | null;
}

const NONE: CarrierCrossing = { crossings: [], touch: null };

/**
 * The meeting points of two whole lines or circles. Two that run into or miss
 * one another by no more than the tolerance touch, on the line through both centres; parallel lines and concentric circles, coinciding ones included,
 * have no meeting points. Points are candidates: the caller checks their distance.
 *
 * With N the left normal at the start and κ the curvature, a carrier is where
 * N·X - κX²/2 = 0. Taking κ₂/κ₁ of the more curved one from the other leaves a
 * straight line (the radical line), which is cut with the more curved one.
 */
export function carrierCrossing(first: Carrier, second: Carrier): CarrierCrossing {
  const swap = Math.abs(first.curvature) < Math.abs(second.curvature);
  const a = swap ? second : first;
  const b = swap ? first : second;
  // coordinates from a's start, so that far-off sections lose no digits
  const ox = a.start.x;
  const oy = a.start.y;
  const dx = b.start.x - ox;
  const dy = b.start.y - oy;
  const ka = a.curvature;
  const kb = b.curvature;
  const nax = -a.tangent.y;
  const nay = a.tangent.x;
  const nbx = -b.tangent.y + kb * dx;
  const nby = b.tangent.x + kb * dy;
  const offset = -b.tangent.y * dx + b.tangent.x * dy + (kb / 2) * (dx * dx + dy * dy);

  if (ka === 0) {
    const turn = a.tangent.x * b.tangent.y - a.tangent.y * b.tangent.x;
    // parallel lines, or a piece without length
    if (turn === 0) return NONE;
    const along = (dx * b.tangent.y - dy * b.tangent.x) / turn;
    return {
      crossings: [{ x: ox + along * a.tangent.x, y: oy + along * a.tangent.y }],
      touch: null,
    };
  }

  const ratio = kb / ka;
  const mx = nbx - ratio * nax;
  const my = nby - ratio * nay;
  const square = mx * mx + my * my;
  // concentric circles, or a piece without length
  if (square === 0) return NONE;
  const footX = (mx * offset) / square;
  const footY = (my * offset) / square;
  const size = Math.sqrt(square);
  const ux = -my / size;
  const uy = mx / size;
  const slope = nax * ux + nay * uy;
  const level = nax * footX + nay * footY - (ka / 2) * (footX * footX + footY * footY);
  const disc = slope * slope + 2 * ka * level;

  const at = (along: number): Point => ({
    x: ox + footX + along * ux,
    y: oy + footY + along * uy,
  });
  // Half the crossing distance squared is disc / κ²; the lens or gap is that times half
  // the relative curvature deep, which where the two touch is κ times the radical normal.
  const depth = (Math.abs(disc) * size) / (2 * Math.abs(ka));
  const touch = depth <= TOLERANCE ? at(slope / ka) : null;
  if (disc < 0) return { crossings: [], touch };
  const root = Math.sqrt(disc);
  // the root without cancellation first, the other from their product
  const far = slope < 0 ? slope - root : slope + root;
  const one = far / ka;
  const two = far === 0 ? one : (-2 * level) / far;
  return { crossings: [at(one), at(two)], touch };
}
