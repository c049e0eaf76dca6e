import type { Contour, Region, Segment } from './shape.ts';
import { contourArea } from './area.ts';
import { boundsGap, segmentBounds } from './bounds.ts';
import { isClosed } from './contour.ts';
import { intersectSegments } from './intersect.ts';
import { pointAt, segmentLength } from './segment.ts';
import { nearPoint, TOLERANCE } from './tolerance.ts';
import { distance } from './vector.ts';

/** Neighbours may share their join and what rounding makes of it, nothing else. */
const AT_JOIN = 8 * TOLERANCE;

/**
 * Whether a contour is the outline of one piece: closed, each piece ending
 * where the next starts, none without length, and no piece touching another
 * except at the join of neighbours. Either sense of walking.
 */
export function isSimpleOutline(region: Region): boolean {
  const count = region.length;
  // one piece can't close on itself without being a point
  if (count < 2 || !isClosed(region)) return false;
  for (let i = 0; i < count; i += 1) {
    const segment = region[i] as Segment;
    const next = region[(i + 1) % count] as Segment;
    if (segmentLength(segment) <= TOLERANCE || !nearPoint(segment.b, next.a)) return false;
  }
  const boxes = region.map(segmentBounds);
  for (let i = 0; i < count; i += 1) {
    for (let j = i + 1; j < count; j += 1) {
      const boxI = boxes[i];
      const boxJ = boxes[j];
      if (boxI === undefined || boxJ === undefined || boundsGap(boxI, boxJ) > TOLERANCE) continue;
      if (!meetAtJoinsOnly(region, i, j)) return false;
    }
  }
  return true;
}

/** Sense in which a closed contour is walked; null when it encloses less than the tolerance squared. */
export function orientation(contour: Contour): 'counterClockwise' | 'clockwise' | null {
  const area = contourArea(contour);
  if (Math.abs(area) <= TOLERANCE * TOLERANCE) return null;
  return area > 0 ? 'counterClockwise' : 'clockwise';
}

/**
 * Whether two contours are the same pieces in the same order within the
 * tolerance, wherever a closed one is started. A piece cut in two is not the same.
 */
export function sameContour(first: Contour, second: Contour): boolean {
  const count = first.length;
  if (count !== second.length) return false;
  // two nothings
  if (count === 0) return true;
  const starts = isClosed(first) && isClosed(second) ? count : 1;
  for (let shift = 0; shift < starts; shift += 1) {
    const matches = first.every((segment, i) => sameSegment(segment, second[(i + shift) % count]));
    if (matches) return true;
  }
  return false;
}

function sameSegment(one: Segment, two: Segment | undefined): boolean {
  return (
    two !== undefined &&
    nearPoint(one.a, two.a) &&
    nearPoint(one.b, two.b) &&
    nearPoint(pointAt(one, 0.5), pointAt(two, 0.5))
  );
}

function meetAtJoinsOnly(region: Region, i: number, j: number): boolean {
  const first = region[i] as Segment;
  const second = region[j] as Segment;
  const joinedAfter = j === i + 1;
  const joinedBefore = i === 0 && j === region.length - 1;
  return intersectSegments(first, second).every(
    ({ point }) =>
      (joinedAfter && distance(point, first.b) <= AT_JOIN) ||
      (joinedBefore && distance(point, first.a) <= AT_JOIN),
  );
}
