import type { Contour, Point, Vector } from '../geometry/index.ts';
import {
  atLeast,
  crownTowards,
  dot,
  extremeFromLine,
  intersectLine,
  perpendicularLeft,
  pointAt,
  subtract,
} from '../geometry/index.ts';

/** What lies on a straight line or on the side of it that `inward` (unit, square to it) points to. */
export interface HalfPlane {
  readonly through: Point;
  readonly inward: Vector;
}

/** A place on a contour and its height, mm. */
export interface Height {
  readonly point: Point;
  readonly value: number;
}

/**
 * The place of a contour inside all of `within` that stands highest over the line
 * through `origin` square to `normal` (unit); the earliest of equals. null when
 * no part of it stands over that line inside.
 */
export function highestWithin(
  contour: Contour,
  within: readonly HalfPlane[],
  origin: Point,
  normal: Vector,
): Height | null {
  const highest = extremeFromLine(contour, origin, normal);
  // nowhere over the line, inside or out
  if (highest.value <= 0) return null;
  if (isWithin(highest.point, within)) return highest;

  let found: Height | null = null;
  let least = 0;
  const offer = (point: Point): void => {
    const value = dot(subtract(point, origin), normal);
    if (value > least && isWithin(point, within)) {
      least = value;
      found = { point, value };
    }
  };
  for (const segment of contour) {
    offer(segment.a);
    const crown = crownTowards(segment, normal);
    if (crown !== null) offer(pointAt(segment, crown));
    offer(segment.b);
  }
  for (const { through, inward } of within) {
    for (const { point } of intersectLine(through, perpendicularLeft(inward), contour)) {
      offer(point);
    }
  }
  return found;
}

const isWithin = (point: Point, within: readonly HalfPlane[]): boolean =>
  within.every(({ through, inward }) => atLeast(dot(subtract(point, through), inward), 0));
