import type { Contour, Segment, Vector } from './shape.ts';
import { boundsGap, segmentBounds } from './bounds.ts';
import { carrierOf, type Carrier } from './carrier.ts';
import type { Place } from './contour.ts';
import { crownTowards } from './extreme.ts';
import { intersectSegments } from './intersect.ts';
import { nearestOnSegment } from './nearest.ts';
import { pointAt } from './segment.ts';
import { distance } from './vector.ts';

/** The two places, one on each shape, that are nearest to one another. */
export interface ClosestPair {
  /** mm, 0 where the shapes meet */
  readonly distance: number;
  readonly a: Place;
  readonly b: Place;
}

/**
 * Least distance between two pieces and the places it is between. It is taken
 * at a meeting, or from an end of one to the other, or along a common normal,
 * which runs through both centres.
 */
export function closestOfSegments(first: Segment, second: Segment): ClosestPair {
  return pair(first, 0, second, 0);
}

/** Least distance between two pieces, mm; 0 where they meet. */
export function distanceBetweenSegments(first: Segment, second: Segment): number {
  return closestOfSegments(first, second).distance;
}

/** Least distance between two contours and the places it is between; the earliest of equals. Refused for an empty contour. */
export function closestOfContours(first: Contour, second: Contour): ClosestPair {
  let best: ClosestPair | null = null;
  const boxes = second.map(segmentBounds);
  for (const [i, one] of first.entries()) {
    const box = segmentBounds(one);
    for (const [j, two] of second.entries()) {
      const other = boxes[j];
      // pieces whose bounds are farther apart than a pair already found
      if (best !== null && other !== undefined && boundsGap(box, other) >= best.distance) continue;
      const found = pair(one, i, two, j);
      if (best === null || found.distance < best.distance) best = found;
    }
  }
  if (best === null) throw new Error('An empty contour has no nearest point.');
  return best;
}

function pair(first: Segment, i: number, second: Segment, j: number): ClosestPair {
  const between = (tA: number, tB: number): ClosestPair => {
    const a = pointAt(first, tA);
    const b = pointAt(second, tB);
    return {
      distance: distance(a, b),
      a: { point: a, index: i, t: tA },
      b: { point: b, index: j, t: tB },
    };
  };
  const fromFirst = (t: number): ClosestPair =>
    between(t, nearestOnSegment(pointAt(first, t), second).t);
  const fromSecond = (t: number): ClosestPair =>
    between(nearestOnSegment(pointAt(second, t), first).t, t);

  const pairs = [fromFirst(1), fromSecond(0), fromSecond(1)];
  for (const { tA, tB } of intersectSegments(first, second)) pairs.push(between(tA, tB));
  const carrier = carrierOf(first);
  const other = carrierOf(second);
  const normal = commonNormal(carrier, other);
  // seen from the more curved piece, where a direction names a place most sharply
  const onFirst = Math.abs(carrier.curvature) >= Math.abs(other.curvature);
  for (const direction of [normal, { x: -normal.x, y: -normal.y }]) {
    const t = crownTowards(onFirst ? first : second, direction);
    if (t !== null) pairs.push(onFirst ? fromFirst(t) : fromSecond(t));
  }
  return pairs.reduce((best, next) => (next.distance < best.distance ? next : best), fromFirst(0));
}

/**
 * Direction of the straight line through both centres (of a line: square to
 * it), either way and of any length; zero when there is none: two lines, or
 * concentric arcs. Centres D apart at N/κ from their starts give
 * κ₁κ₂D + κ₁N₂ - κ₂N₁, here divided by the greater curvature.
 */
function commonNormal(a: Carrier, b: Carrier): Vector {
  const ka = a.curvature;
  const kb = b.curvature;
  const most = Math.max(Math.abs(ka), Math.abs(kb));
  if (most === 0) return { x: 0, y: 0 };
  const fa = ka / most;
  const fb = kb / most;
  const both = fa * kb;
  return {
    x: both * (b.start.x - a.start.x) - fa * b.tangent.y + fb * a.tangent.y,
    y: both * (b.start.y - a.start.y) + fa * b.tangent.x - fb * a.tangent.x,
  };
}
