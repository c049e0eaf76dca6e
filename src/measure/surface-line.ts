import type { Point, Vector } from '../geometry/index.ts';
import { add, dot, scale, subtract } from '../geometry/index.ts';
import type { SurfaceLine } from '../joint/index.ts';

/** Height of a point above a surface line, normal to it; mm, positive in the air, negative in the metal. */
export function heightAbove(surface: SurfaceLine, at: Point): number {
  return dot(subtract(at, surface.origin), surface.normal);
}

/** Place of a point along a surface line from the line's origin; mm, positive away from the weld. */
export function stationOn(surface: SurfaceLine, at: Point): number {
  return dot(subtract(at, surface.origin), surface.along);
}

/** Foot of the normal from a point to a surface line. */
export function footOn(surface: SurfaceLine, at: Point): Point {
  return subtract(at, scale(surface.normal, heightAbove(surface, at)));
}

/**
 * How far from a point the surface line is met going along `direction`; mm,
 * negative when it lies behind. null when `direction` runs parallel to it.
 */
export function distanceToSurface(
  surface: SurfaceLine,
  from: Point,
  direction: Vector,
): number | null {
  const approach = dot(direction, surface.normal);
  // parallel: never met
  if (approach === 0) return null;
  return -heightAbove(surface, from) / approach;
}

/** Where two surface lines cross; null when they are parallel. */
export function surfaceCrossing(first: SurfaceLine, second: SurfaceLine): Point | null {
  const along = distanceToSurface(second, first.origin, first.along);
  return along === null ? null : add(first.origin, scale(first.along, along));
}
