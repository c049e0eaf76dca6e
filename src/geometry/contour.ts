import type { Contour, Point, Segment } from './shape.ts';
import { line, pointAt, reverseSegment, segmentLength, splitSegment } from './segment.ts';
import { nearPoint, TOLERANCE } from './tolerance.ts';

/** A place on a contour: which piece, and what share (0..1) of its length along it. */
export interface Location {
  readonly index: number;
  readonly t: number;
}

/** A place on a contour together with the point there. */
export interface Place extends Location {
  readonly point: Point;
}

/** Length along a contour, mm; 0 for an empty one. */
export function contourLength(contour: Contour): number {
  let sum = 0;
  for (const segment of contour) sum += segmentLength(segment);
  return sum;
}

/** Where a contour starts. Refused for an empty one. */
export function contourStart(contour: Contour): Point {
  return pieceAt(contour, 0).a;
}

/** Where a contour ends. Refused for an empty one. */
export function contourEnd(contour: Contour): Point {
  return pieceAt(contour, contour.length - 1).b;
}

/** Whether a contour ends where it starts, within the tolerance. An empty one is not closed. */
export function isClosed(contour: Contour): boolean {
  // nothing has no ends to meet
  if (contour.length === 0) return false;
  return nearPoint(contourStart(contour), contourEnd(contour));
}

/** The same contour walked the other way. */
export function reverseContour(contour: Contour): Contour {
  return contour.map(reverseSegment).reverse();
}

/** The point at a location. Refused when the contour has no such piece. */
export function pointAtLocation(contour: Contour, location: Location): Point {
  return pointAt(pieceAt(contour, location.index), location.t);
}

/** Length along the contour from its start to a location, mm. */
export function lengthTo(contour: Contour, location: Location): number {
  const before = contourLength(contour.slice(0, location.index));
  return before + location.t * segmentLength(pieceAt(contour, location.index));
}

/**
 * The place a given length (mm) along the contour from its start; its start for
 * less than 0, its end for more than its length. Refused for an empty contour.
 */
export function pointAtLength(contour: Contour, length: number): Place {
  let left = length;
  for (let index = 0; index < contour.length; index += 1) {
    const segment = pieceAt(contour, index);
    const size = segmentLength(segment);
    if (left < size) {
      const t = Math.max(0, left / size);
      return { point: pointAt(segment, t), index, t };
    }
    left -= size;
  }
  return { point: contourEnd(contour), index: contour.length - 1, t: 1 };
}

/**
 * The contour cut in two at a location: [up to it, from it on]. A cut within
 * the tolerance of a piece's end is made at that end, so that no sliver is
 * left; a cut at either end of the contour leaves that part empty.
 */
export function splitContour(contour: Contour, at: Location): [Contour, Contour] {
  const segment = pieceAt(contour, at.index);
  const before = contour.slice(0, at.index);
  const after = contour.slice(at.index + 1);
  const size = segmentLength(segment);
  if (at.t * size <= TOLERANCE) return [before, [segment, ...after]];
  if ((1 - at.t) * size <= TOLERANCE) return [[...before, segment], after];
  const [head, tail] = splitSegment(segment, at.t);
  return [
    [...before, head],
    [tail, ...after],
  ];
}

/**
 * Contours joined end to end into one. Refused when a piece ends farther from
 * where the next starts than the tolerance; a smaller step is closed by moving
 * the next start. Empty parts are passed over.
 */
export function joinContours(...parts: readonly Contour[]): Contour {
  const joined: Segment[] = [];
  let end: Point | undefined;
  for (const segment of parts.flat()) {
    const start = end ?? segment.a;
    if (!nearPoint(start, segment.a)) {
      throw new Error(
        `Contours do not meet: one ends at (${start.x}, ${start.y}), the next starts at (${segment.a.x}, ${segment.a.y}).`,
      );
    }
    joined.push({ ...segment, a: start });
    end = segment.b;
  }
  return joined;
}

/** The straight-sided contour through these points, in order; closed back to the first if asked. */
export function polyline(points: readonly Point[], closed = false): Contour {
  const pieces: Segment[] = [];
  let last: Point | undefined;
  for (const next of closed ? [...points, ...points.slice(0, 1)] : points) {
    if (last !== undefined) pieces.push(line(last, next));
    last = next;
  }
  return pieces;
}

/** The segment of that number; refused where there is none. */
export function pieceAt(contour: Contour, index: number): Segment {
  const segment = contour[index];
  if (segment === undefined) throw new Error(`The contour has no piece ${index}.`);
  return segment;
}
