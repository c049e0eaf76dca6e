import { isClosed, type Location, pieceAt, splitContour } from './contour.ts';
import { segmentLength, splitSegment } from './segment.ts';
import type { Contour, Segment } from './shape.ts';
import { TOLERANCE } from './tolerance.ts';

/**
 * The part of a contour from one location to another, walking forward. On a
 * closed contour a `to` that lies before `from` is reached across the start;
 * on an open one it is refused. Equal locations give an empty part. Ends within
 * the tolerance of a piece's end are moved to it.
 */
export function contourPiece(contour: Contour, from: Location, to: Location): Contour {
  const forward = from.index < to.index || (from.index === to.index && from.t <= to.t);
  if (!forward) {
    if (!isClosed(contour)) {
      throw new Error('A piece of an open contour must end after it starts.');
    }
    return [...splitContour(contour, from)[1], ...splitContour(contour, to)[0]];
  }
  if (from.index !== to.index) {
    const head = splitContour(contour.slice(0, from.index + 1), from)[1];
    const tail = splitContour(contour.slice(to.index), { index: 0, t: to.t })[0];
    return [...head, ...contour.slice(from.index + 1, to.index), ...tail];
  }
  return pieceOfOne(pieceAt(contour, from.index), from.t, to.t);
}

function pieceOfOne(segment: Segment, from: number, to: number): Contour {
  const size = segmentLength(segment);
  // nothing between them
  if ((to - from) * size <= TOLERANCE) return [];
  const start = from * size <= TOLERANCE ? 0 : from;
  const end = (1 - to) * size <= TOLERANCE ? 1 : to;
  const head = end === 1 ? segment : splitSegment(segment, end)[0];
  return [start === 0 ? head : splitSegment(head, start / end)[1]];
}
