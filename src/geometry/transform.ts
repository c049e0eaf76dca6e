import { rad, type Rad } from '../units/index.ts';
import type { Contour, Point, Region, Segment, Vector } from './shape.ts';
import { reverseContour } from './contour.ts';

/**
 * A rigid motion of the plane: first mirrored in the x axis if asked, then
 * turned about the origin, then moved. Lengths and areas keep their size.
 */
export interface RigidTransform {
  /** counter-clockwise positive */
  readonly rotation: Rad;
  readonly translation: Vector;
  readonly mirrored?: boolean;
}

/** The motion that leaves everything where it is. */
export const STILL: RigidTransform = { rotation: rad(0), translation: { x: 0, y: 0 } };

/** The motion by a displacement. */
export function translation(by: Vector): RigidTransform {
  return { rotation: rad(0), translation: by };
}

/** The turn about a point, counter-clockwise for a positive angle. */
export function rotationAbout(pivot: Point, angle: Rad): RigidTransform {
  const turned = mover({ rotation: angle, translation: { x: 0, y: 0 } })(pivot);
  return {
    rotation: angle,
    translation: { x: pivot.x - turned.x, y: pivot.y - turned.y },
  };
}

/** The mirroring in the line through `origin` in direction `along` (any length but 0). */
export function reflectionIn(origin: Point, along: Vector): RigidTransform {
  const rotation = rad(2 * Math.atan2(along.y, along.x));
  const turned = mover({ rotation, translation: { x: 0, y: 0 }, mirrored: true })(origin);
  return {
    rotation,
    translation: { x: origin.x - turned.x, y: origin.y - turned.y },
    mirrored: true,
  };
}

/** A point moved. */
export function transformPoint(at: Point, motion: RigidTransform): Point {
  return mover(motion)(at);
}

/** A displacement or direction moved: mirrored and turned, never shifted. */
export function transformVector(v: Vector, motion: RigidTransform): Vector {
  return mover({ ...motion, translation: { x: 0, y: 0 } })(v);
}

/** A piece moved; mirroring turns the bulge over. */
export function transformSegment(segment: Segment, motion: RigidTransform): Segment {
  return moveSegment(segment, mover(motion), motion.mirrored === true);
}

/** A contour moved, still walked from the same start; mirrored, it turns the other way round. */
export function transformContour(contour: Contour, motion: RigidTransform): Contour {
  const move = mover(motion);
  return contour.map((segment) => moveSegment(segment, move, motion.mirrored === true));
}

/** A region moved; a mirrored one is walked backwards, so that metal stays on the left. */
export function transformRegion(region: Region, motion: RigidTransform): Region {
  const moved = transformContour(region, motion);
  return motion.mirrored === true ? reverseContour(moved) : moved;
}

/** A contour moved by a displacement. */
export function translate(contour: Contour, by: Vector): Contour {
  return transformContour(contour, translation(by));
}

/** A contour turned about a point, counter-clockwise for a positive angle. */
export function rotateAbout(contour: Contour, pivot: Point, angle: Rad): Contour {
  return transformContour(contour, rotationAbout(pivot, angle));
}

/** A contour mirrored in the line through `origin` in direction `along`, walked from the same start. */
export function mirrorAcross(contour: Contour, origin: Point, along: Vector): Contour {
  return transformContour(contour, reflectionIn(origin, along));
}

function mover(motion: RigidTransform): (at: Point) => Point {
  const c = Math.cos(motion.rotation);
  const s = Math.sin(motion.rotation);
  const { x: dx, y: dy } = motion.translation;
  const flip = motion.mirrored === true ? -1 : 1;
  return ({ x, y }) => ({ x: c * x - s * flip * y + dx, y: s * x + c * flip * y + dy });
}

function moveSegment(segment: Segment, move: (at: Point) => Point, mirrored: boolean): Segment {
  const bulge = mirrored && segment.bulge !== 0 ? -segment.bulge : segment.bulge;
  return { a: move(segment.a), b: move(segment.b), bulge };
}
