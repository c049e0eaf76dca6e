import type { Point, Segment } from './shape.ts';
import { carrierOf, leftOf } from './carrier.ts';
import { carrierCrossing } from './carrier-crossing.ts';
import { nearestOnSegment } from './nearest.ts';
import { pointAt } from './segment.ts';
import { TOLERANCE } from './tolerance.ts';
import { distance, midpoint } from './vector.ts';

/** A point two pieces share. */
export interface Meeting {
  readonly point: Point;
  /** share of the way along the first piece, 0..1 */
  readonly tA: number;
  /** share of the way along the second piece, 0..1 */
  readonly tB: number;
  /** an end of a stretch that the two share */
  readonly overlap: boolean;
}

/** Meetings closer than this are one: each is known to within the tolerance along either piece. */
const SAME_MEETING = 4 * TOLERANCE;

/** Shares of the way along a piece at which it ends. */
const ENDS = [0, 1] as const;

/**
 * The points that two pieces share, in order along the first. They meet where
 * they come within the tolerance of one another: at a crossing, at a touch
 * (near-tangent pieces that run less than the tolerance into or past one
 * another meet once, in the middle), or at an end that lies on the other
 * piece. Pieces that lie on one another over a stretch meet at its two ends,
 * marked `overlap`. A piece without length is a point that may lie on the other.
 */
export function intersectSegments(first: Segment, second: Segment): Meeting[] {
  const found: { point: Point; tA: number; tB: number; overlap: boolean }[] = [];
  const offer = (point: Point, tA: number, tB: number): void => {
    const same = found.find((other) => distance(other.point, point) <= SAME_MEETING);
    if (same === undefined) {
      found.push({ point, tA, tB, overlap: false });
    } else if (tB === 0 || tB === 1) {
      // both pieces end here: say so exactly
      same.tB = tB;
    }
  };

  const firstCarrier = carrierOf(first);
  const secondCarrier = carrierOf(second);
  for (const tA of ENDS) {
    const end = tA === 0 ? first.a : first.b;
    // off the whole line or circle, off the piece of it: most ends are, and that is told sooner
    if (Math.abs(leftOf(secondCarrier, end)) > TOLERANCE) continue;
    const on = nearestOnSegment(end, second);
    if (on.distance <= TOLERANCE) offer(end, tA, on.t);
  }
  for (const tB of ENDS) {
    const end = tB === 0 ? second.a : second.b;
    if (Math.abs(leftOf(firstCarrier, end)) > TOLERANCE) continue;
    const on = nearestOnSegment(end, first);
    if (on.distance <= TOLERANCE) offer(end, on.t, tB);
  }

  // whether the pieces stay together between two places on the first
  const together = (from: number, to: number): boolean =>
    nearestOnSegment(pointAt(first, (from + to) / 2), second).distance <= TOLERANCE;
  const { crossings, touch } = carrierCrossing(firstCarrier, secondCarrier);
  // a touch first: the crossings to either side of it then belong to it
  const candidates = touch === null ? crossings : [settle(touch, first, second), ...crossings];
  for (const candidate of candidates) {
    const onA = nearestOnSegment(candidate, first);
    const onB = nearestOnSegment(candidate, second);
    if (onA.distance > TOLERANCE || onB.distance > TOLERANCE) continue;
    // still the same meeting as one already found
    if (!found.some((other) => together(other.tA, onA.t))) offer(candidate, onA.t, onB.t);
  }

  // most pieces meet once or not at all
  if (found.length < 2) return found;
  found.sort((one, two) => one.tA - two.tA);
  let before = found[0];
  for (const after of found.slice(1)) {
    if (before !== undefined && together(before.tA, after.tA)) {
      before.overlap = true;
      after.overlap = true;
    }
    before = after;
  }
  return found;
}

/** Half way between the two pieces, next to where their carriers were found to touch. */
function settle(touch: Point, first: Segment, second: Segment): Point {
  const onFirst = nearestOnSegment(touch, first).point;
  return midpoint(onFirst, nearestOnSegment(onFirst, second).point);
}
