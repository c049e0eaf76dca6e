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
      walked.push(at === piece.a ? piece : { ...piece, a: at });
      at = piece.b;
    }
  }
  return walked;
}

/** A place to be walked through on the way. */
export function via(point: Point): Contour {
  return [line(point, point)];
}

/** The closed outline through the parts; null when it encloses nothing. */
export function regionThrough(...parts: readonly Contour[]): Region | null {
  const walked = through(...parts);
  const first = walked[0];
  const last = walked[walked.length - 1];
  // nothing to enclose
  if (first === undefined || last === undefined) return null;
  if (!nearPoint(last.b, first.a)) walked.push(line(last.b, first.a));
  else if (last.b !== first.a) walked[walked.length - 1] = { ...last, b: first.a };
  return Math.abs(contourArea(walked)) <= NO_AREA ? null : walked;
}
