import { rad, type Rad } from '../units/index.ts';
import type { Point, Vector } from './shape.ts';

/** The point (or displacement) with these coordinates, mm; y is up. */
export function point(x: number, y: number): Point {
  return { x, y };
}

/** Sum of two displacements, or the point a displacement leads to. */
export function add(a: Point, b: Vector): Point {
  return { x: a.x + b.x, y: a.y + b.y };
}

/** Displacement from `b` to `a`. */
export function subtract(a: Point, b: Point): Vector {
  return { x: a.x - b.x, y: a.y - b.y };
}

/** A displacement made `factor` times as long; turned round when negative. */
export function scale(v: Vector, factor: number): Vector {
  return { x: v.x * factor, y: v.y * factor };
}

/** Scalar product; positive when the two point the same way. */
export function dot(a: Vector, b: Vector): number {
  return a.x * b.x + a.y * b.y;
}

/** Area of the parallelogram on `a` and `b`; positive when `b` is to the left of `a`. */
export function cross(a: Vector, b: Vector): number {
  return a.x * b.y - a.y * b.x;
}

/** Length of a displacement, mm, never negative. */
export function length(v: Vector): number {
  return Math.sqrt(v.x * v.x + v.y * v.y);
}

/** Straight distance between two points, mm, never negative. */
export function distance(a: Point, b: Point): number {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  return Math.sqrt(dx * dx + dy * dy);
}

/** The direction of `v`: the same way, length 1. The zero vector has none and stays zero. */
export function normalise(v: Vector): Vector {
  const size = length(v);
  // the zero vector points nowhere
  if (size === 0) return { x: 0, y: 0 };
  return { x: v.x / size, y: v.y / size };
}

/** `v` turned about the origin, counter-clockwise for a positive angle. */
export function rotate(v: Vector, angle: Rad): Vector {
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  return { x: c * v.x - s * v.y, y: s * v.x + c * v.y };
}

/** `v` turned a quarter counter-clockwise: what lies to the left when walking along it. */
export function perpendicularLeft(v: Vector): Vector {
  return { x: -v.y, y: v.x };
}

/** `v` turned a quarter clockwise: what lies to the right when walking along it. */
export function perpendicularRight(v: Vector): Vector {
  return { x: v.y, y: -v.x };
}

/** The point half way between two points. */
export function midpoint(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

/** The point a share `t` of the straight way from `a` (0) to `b` (1), both ends exact; beyond them outside 0..1. */
export function between(a: Point, b: Point, t: number): Point {
  return { x: a.x * (1 - t) + b.x * t, y: a.y * (1 - t) + b.y * t };
}

/** Angle from +x to `v`, counter-clockwise positive, in (-π, π]; 0 for the zero vector. */
export function angleOf(v: Vector): Rad {
  return rad(Math.atan2(v.y, v.x));
}

/** The unit direction at an angle from +x, counter-clockwise positive. */
export function fromAngle(angle: Rad): Vector {
  return { x: Math.cos(angle), y: Math.sin(angle) };
}
