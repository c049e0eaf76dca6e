import type { Extreme, Point } from '../geometry/index.ts';
import { scale, subtract } from '../geometry/index.ts';
import type { FilletWeld } from './fillet-landmarks.ts';
import type { Measurement, Witness } from './measurement.ts';
import { measuredLength, noWitness, span } from './witness.ts';

/**
 * Greatest distance of the face outside (convexity) and inside (concavity) the
 * straight line through the toes, mm, never negative; an S-shaped face has both
 * (AWS A3.0, public extract; ISO 6520-1, 503).
 */
export function convexity({ outermost, innermost, outward, toes }: FilletWeld): Measurement[] {
  const inward = scale(outward, -1);
  return [
    measuredLength('convexity', Math.max(0, outermost.value), fromChord(outermost, outward, toes)),
    measuredLength('concavity', Math.max(0, innermost.value), fromChord(innermost, inward, toes)),
  ];
}

function fromChord(extreme: Extreme, normal: Point, chord: readonly [Point, Point]): Witness {
  // the face runs along the chord or on its other side
  if (extreme.value <= 0) return noWitness;
  const foot = subtract(extreme.point, scale(normal, extreme.value));
  return span(foot, extreme.point, [], [chord]);
}
