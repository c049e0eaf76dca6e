import type { Contour, Point, Region, Segment } from './shape.ts';
import { contourArea } from './area.ts';
import { boundsGap, segmentBounds } from './bounds.ts';
import { contourEnd, isClosed } from './contour.ts';
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
  // one piece can't close on itself without being a point
  if (region.length < 2) return false;
  let last = contourEnd(region);
  for (const segment of region) {
    if (segmentLength(segment) <= TOLERANCE || !nearPoint(last, segment.a)) return false;
    last = segment.b;
  }
  const pieces = region.map((segment) => ({ segment, box: segmentBounds(segment) }));
  return pieces.every((one, i) =>
    pieces.every((two, j) => {
      if (j <= i || boundsGap(one.box, two.box) > TOLERANCE) return true;
      const joins: Point[] = [];
      if (j === i + 1) joins.push(one.segment.b);
      if (i === 0 && j === region.length - 1) joins.push(one.segment.a);
      return meetOnlyAt(joins, one.segment, two.segment);
    }),
  );
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

function meetOnlyAt(joins: readonly Point[], first: Segment, second: Segment): boolean {
  return intersectSegments(first, second).every(
    ({ point, overlap }) => !overlap && joins.some((join) => distance(point, join) <= AT_JOIN),
  );
}
