import type { Contour, Point, Segment, Vector } from './shape.ts';
import { carrierOf } from './carrier.ts';
import { isLine, pointAt } from './segment.ts';

/** The place on a contour that lies farthest in a direction. */
export interface Extreme {
  readonly point: Point;
  /** which piece, counted from 0 */
  readonly index: number;
  /** share of the way along the piece, 0..1 */
  readonly t: number;
  /** mm along the direction (times its length), from the origin asked for */
  readonly value: number;
}

/**
 * The place that lies farthest in `direction`; the earliest of equals. `value`
 * is its coordinate along `direction` (mm when that is a unit vector), counted
 * from the frame's origin. Refused for an empty contour.
 */
export function extremeInDirection(shape: Contour | Segment, direction: Vector): Extreme {
  return extremeFromLine(shape, { x: 0, y: 0 }, direction);
}

/**
 * The place with the greatest signed distance from the line through `origin`
 * square to `normal`, positive the way `normal` (a unit vector) points; below
 * zero when the whole contour lies behind the line. Refused for an empty contour.
 */
export function extremeFromLine(shape: Contour | Segment, origin: Point, normal: Vector): Extreme {
  const contour: Contour = 'bulge' in shape ? [shape] : shape;
  let index = -1;
  let t = 0;
  let value = -Infinity;
  let found: Point = origin;
  const offer = (at: Point, i: number, share: number): void => {
    const here = (at.x - origin.x) * normal.x + (at.y - origin.y) * normal.y;
    if (here <= value) return;
    index = i;
    t = share;
    value = here;
    found = at;
  };
  contour.forEach((segment, i) => {
    offer(segment.a, i, 0);
    const crown = crownTowards(segment, normal);
    if (crown !== null) offer(pointAt(segment, crown), i, crown);
    offer(segment.b, i, 1);
  });
  if (index < 0) throw new Error('An empty contour has no extreme point.');
  return { point: found, index, t, value };
}

/**
 * Share of the way along an arc where its outward normal points in `direction`; null when nowhere.
 * `start`: its direction at its start, where that is known already.
 */
export function crownTowards(segment: Segment, direction: Vector, start?: Vector): number | null {
  if (isLine(segment)) return null;
  const tangent = start ?? carrierOf(segment).tangent;
  const turn = segment.bulge > 0 ? 1 : -1;
  // outward normal at the start: to the right of an arc that turns left
  const nx = turn * tangent.y;
  const ny = -turn * tangent.x;
  // angle from it to the direction, counted the way the arc turns
  const over = turn * (nx * direction.y - ny * direction.x);
  const along = nx * direction.x + ny * direction.y;
  // no direction, or an arc without length
  if (over === 0 && along === 0) return null;
  // away from the chord, where only more than half a circle turns
  if (over < 0 && Math.abs(segment.bulge) < 1) return null;
  const angle = Math.atan2(over, along);
  const share =
    (angle < 0 ? angle + 2 * Math.PI : angle) / (4 * Math.abs(Math.atan(segment.bulge)));
  return share <= 1 ? share : null;
}
