import { contourArea, line, nearPoint } from '../../geometry/index.ts';
import type { Contour, Point, Region, Segment } from '../../geometry/index.ts';

/** Outlines that enclose less than this are rounding, mm². */
const NO_AREA = 1e-9;

/**
 * The parts walked one after another, straight pieces laid where they don't
 * meet. Steps within the tolerance are closed and pieces without length dropped.
 */
export function through(...parts: readonly Contour[]): Segment[] {
  const walked: Segment[] = [];
  let at: Point | null = null;
  for (const part of parts) {
    for (const piece of part) {
      if (at !== null && !nearPoint(at, piece.a)) {
        walked.push(line(at, piece.a));
        at = piece.a;
      }
      at ??= piece.a;
      if (nearPoint(at, piece.b)) continue;
      walked.push(at === piece.a ? piece : { a: at, b: piece.b, bulge: piece.bulge });
      at = piece.b;
    }
  }
  return walked;
}

/** A place to be walked through on the way. */
export function via(point: Point): Contour {
  return [line(point, point)];
}

/** The closed outline through the parts. */
export function outlineThrough(...parts: readonly Contour[]): Region {
  const walked = through(...parts);
  const last = walked[walked.length - 1];
  const start = walked[0]?.a;
  // nothing to close
  if (last === undefined || start === undefined) return [];
  if (nearPoint(last.b, start)) {
    walked[walked.length - 1] = { a: last.a, b: start, bulge: last.bulge };
  } else walked.push(line(last.b, start));
  return walked;
}

/** The same where it may come to nothing: null when it encloses no area. */
export function regionThrough(...parts: readonly Contour[]): Region | null {
  const outline = outlineThrough(...parts);
  return Math.abs(contourArea(outline)) <= NO_AREA ? null : outline;
}
