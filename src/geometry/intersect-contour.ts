import type { Contour, Point, Vector } from './shape.ts';
import { boundsGap, segmentBounds } from './bounds.ts';
import { carrierOf, leftOf, type Carrier } from './carrier.ts';
import { carrierCrossing } from './carrier-crossing.ts';
import type { Location } from './contour.ts';
import { intersectSegments } from './intersect.ts';
import { nearestOnSegment } from './nearest.ts';
import { pointAt } from './segment.ts';
import { TOLERANCE } from './tolerance.ts';
import { distance, normalise } from './vector.ts';

/** A point two contours share, and where it lies on each. */
export interface ContourMeeting {
  readonly point: Point;
  readonly a: Location;
  readonly b: Location;
  /** an end of a stretch that two pieces share */
  readonly overlap: boolean;
}

/** A point where a straight line meets a contour. */
export interface LineMeeting extends Location {
  readonly point: Point;
  /** mm from the line's origin, positive the way its direction points */
  readonly along: number;
}

const SAME_MEETING = 4 * TOLERANCE;

/**
 * The points that two contours share, in order along the first; a point where
 * two pieces of a contour join counts once, on the earlier piece. What counts
 * as a meeting of two pieces: `intersectSegments`.
 */
export function intersectContours(first: Contour, second: Contour): ContourMeeting[] {
  const found: (ContourMeeting & { overlap: boolean })[] = [];
  const boxes = second.map(segmentBounds);
  first.forEach((one, i) => {
    const box = segmentBounds(one);
    second.forEach((two, j) => {
      const other = boxes[j];
      if (other === undefined || boundsGap(box, other) > TOLERANCE) return;
      for (const { point, tA, tB, overlap } of intersectSegments(one, two)) {
        const known = found.find((meeting) => distance(meeting.point, point) <= SAME_MEETING);
        if (known === undefined) {
          found.push({ point, a: { index: i, t: tA }, b: { index: j, t: tB }, overlap });
        } else {
          known.overlap ||= overlap;
        }
      }
    });
  });
  return found.sort((one, two) => one.a.index - two.a.index || one.a.t - two.a.t);
}

/**
 * The points where the endless straight line through `origin` in `direction`
 * meets a contour, in order along the line. A join of two pieces counts once;
 * a straight piece that lies on the line gives its two ends; an arc that comes
 * no nearer than the tolerance to touching gives one point. Refused for a
 * direction without length.
 */
export function intersectLine(origin: Point, direction: Vector, contour: Contour): LineMeeting[] {
  const tangent = normalise(direction);
  if (tangent.x === 0 && tangent.y === 0) throw new Error('A line needs a direction.');
  const line: Carrier = { start: origin, tangent, curvature: 0 };
  const onLine = (point: Point): boolean => Math.abs(leftOf(line, point)) <= TOLERANCE;
  const found: LineMeeting[] = [];
  const offer = (point: Point, index: number, t: number): void => {
    if (found.some((known) => distance(known.point, point) <= SAME_MEETING)) return;
    const along = (point.x - origin.x) * tangent.x + (point.y - origin.y) * tangent.y;
    found.push({ point, index, t, along });
  };
  contour.forEach((segment, index) => {
    const shares = [0, 1].filter((t) => onLine(pointAt(segment, t)));
    const { crossings, touch } = carrierCrossing(carrierOf(segment), line);
    // a touch first: the crossings to either side of it then belong to it
    for (const candidate of touch === null ? crossings : [touch, ...crossings]) {
      const { point, t } = nearestOnSegment(candidate, segment);
      if (!onLine(point)) continue;
      // still the same meeting: the piece has not left the line since
      if (!shares.some((other) => onLine(pointAt(segment, (other + t) / 2)))) shares.push(t);
    }
    for (const t of shares) offer(pointAt(segment, t), index, t);
  });
  return found.sort((one, two) => one.along - two.along);
}
