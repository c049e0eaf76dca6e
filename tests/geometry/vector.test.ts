import { describe, expect, test } from 'vitest';
import { rad } from '../../src/units/index.ts';
import {
  add,
  angleOf,
  between,
  cross,
  distance,
  dot,
  fromAngle,
  length,
  midpoint,
  normalise,
  perpendicularLeft,
  perpendicularRight,
  point,
  rotate,
  scale,
  subtract,
} from '../../src/geometry/index.ts';

describe('vectors', () => {
  test('add, subtract and scale work on each coordinate', () => {
    expect(add(point(1, 2), point(30, 40))).toEqual({ x: 31, y: 42 });
    expect(subtract(point(1, 2), point(30, 50))).toEqual({ x: -29, y: -48 });
    expect(scale(point(1, -2), -3)).toEqual({ x: -3, y: 6 });
  });

  test('dot and cross tell ahead from behind and left from right', () => {
    // 1·3 + 2·5 = 13; 1·5 - 2·3 = -1
    expect(dot(point(1, 2), point(3, 5))).toBe(13);
    expect(cross(point(1, 2), point(3, 5))).toBe(-1);
    expect(cross(point(1, 0), point(0, 1))).toBe(1);
  });

  test('length and distance follow Pythagoras (5-12-13)', () => {
    expect(length(point(-5, 12))).toBe(13);
    expect(distance(point(1, 1), point(6, -11))).toBe(13);
  });

  test('normalise keeps the direction and gives the zero vector back', () => {
    expect(normalise(point(-3, 4))).toEqual({ x: -0.6, y: 0.8 });
    expect(normalise(point(0, 0))).toEqual({ x: 0, y: 0 });
  });

  test('rotate turns counter-clockwise', () => {
    // 30°: (cos, sin) = (√3/2, 1/2); the left normal follows
    const turned = rotate(point(2, 0), rad(Math.PI / 6));
    expect(turned.x).toBeCloseTo(Math.sqrt(3), 14);
    expect(turned.y).toBeCloseTo(1, 14);
    const other = rotate(point(0, 2), rad(Math.PI / 6));
    expect(other.x).toBeCloseTo(-1, 14);
    expect(other.y).toBeCloseTo(Math.sqrt(3), 14);
  });

  test('the perpendiculars lie to the left and to the right', () => {
    expect(perpendicularLeft(point(2, 3))).toEqual({ x: -3, y: 2 });
    expect(perpendicularRight(point(2, 3))).toEqual({ x: 3, y: -2 });
  });

  test('midpoint and between run along the straight way, both ends exact', () => {
    expect(midpoint(point(1, 3), point(2, 7))).toEqual({ x: 1.5, y: 5 });
    expect(between(point(1, 3), point(2, 7), 0.25)).toEqual({ x: 1.25, y: 4 });
    expect(between(point(0.1, 0.3), point(0.7, 0.9), 0)).toEqual({ x: 0.1, y: 0.3 });
    expect(between(point(0.1, 0.3), point(0.7, 0.9), 1)).toEqual({ x: 0.7, y: 0.9 });
    expect(between(point(0, 0), point(2, 4), 1.5)).toEqual({ x: 3, y: 6 });
  });

  test('angleOf and fromAngle count from +x, counter-clockwise', () => {
    expect(angleOf(point(0, 3))).toBe(Math.PI / 2);
    expect(angleOf(point(-1, 0))).toBe(Math.PI);
    expect(angleOf(point(1, -1))).toBe(-Math.PI / 4);
    expect(angleOf(point(0, 0))).toBe(0);
    expect(fromAngle(rad(0))).toEqual({ x: 1, y: 0 });
    expect(fromAngle(rad(-Math.PI / 2)).y).toBe(-1);
  });
});
