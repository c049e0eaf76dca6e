import type { Contour, Segment, Vector } from './shape.ts';
import { boundsGap, segmentBounds, type Bounds } from './bounds.ts';
import { carrierOf, type Carrier } from './carrier.ts';
import type { Place } from './contour.ts';
import { crownTowards } from './extreme.ts';
import { intersectSegments } from './intersect.ts';
import { nearestOnSegment } from './nearest.ts';
import { isLine, pointAt } from './segment.ts';
import { TOLERANCE } from './tolerance.ts';
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
  return pair(first, 0, second, 0, boundsGap(segmentBounds(first), segmentBounds(second)));
}

/** Least distance between two pieces, mm; 0 where they meet. */
export function distanceBetweenSegments(first: Segment, second: Segment): number {
  return closestOfSegments(first, second).distance;
}

/** Least distance between two contours and the places it is between; the earliest of equals. Refused for an empty contour. */
export function closestOfContours(first: Contour, second: Contour): ClosestPair {
  let best: ClosestPair | null = null;
  const boxes = second.map(segmentBounds);
  let i = 0;
  for (const one of first) {
    const box = segmentBounds(one);
    let j = 0;
    for (const two of second) {
      const other = boxes[j] as Bounds;
      const gap = boundsGap(box, other);
      // pieces whose bounds are farther apart than a pair already found are passed over
      if (best === null || gap < best.distance) {
        const found = pair(one, i, two, j, gap);
        if (best === null || found.distance < best.distance) best = found;
      }
      j += 1;
    }
    i += 1;
  }
  if (best === null) throw new Error('An empty contour has no nearest point.');
  return best;
}

/** The nearest pair of two pieces; `gap`: how far their bounds stand apart, mm. */
function pair(first: Segment, i: number, second: Segment, j: number, gap: number): ClosestPair {
  const fromFirst = (t: number): ClosestPair => {
    const point = pointAt(first, t);
    const on = nearestOnSegment(point, second);
    const b = { point: on.point, index: j, t: on.t };
    return { distance: distance(point, on.point), a: { point, index: i, t }, b };
  };
  const fromSecond = (t: number): ClosestPair => {
    const point = pointAt(second, t);
    const on = nearestOnSegment(point, first);
    const a = { point: on.point, index: i, t: on.t };
    return { distance: distance(on.point, point), a, b: { point, index: j, t } };
  };
  let best = fromFirst(0);
  const offer = (next: ClosestPair): void => {
    if (next.distance < best.distance) best = next;
  };

  offer(fromFirst(1));
  offer(fromSecond(0));
  offer(fromSecond(1));
  // pieces whose bounds stand apart don't meet
  const meetings = gap > TOLERANCE ? [] : intersectSegments(first, second);
  for (const { tA, tB } of meetings) {
    const a = pointAt(first, tA);
    const b = pointAt(second, tB);
    offer({
      distance: distance(a, b),
      a: { point: a, index: i, t: tA },
      b: { point: b, index: j, t: tB },
    });
  }
  // between two straight pieces it is taken from an end or where they meet
  if (isLine(first) && isLine(second)) return best;
  const carrier = carrierOf(first);
  const other = carrierOf(second);
  const normal = commonNormal(carrier, other);
  // seen from the more curved piece, where a direction names a place most sharply
  const onFirst = Math.abs(carrier.curvature) >= Math.abs(other.curvature);
  for (const direction of [normal, { x: -normal.x, y: -normal.y }]) {
    const t = crownTowards(onFirst ? first : second, direction);
    if (t !== null) offer(onFirst ? fromFirst(t) : fromSecond(t));
  }
  return best;
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
