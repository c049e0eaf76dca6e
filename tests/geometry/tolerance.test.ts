import { describe, expect, test } from 'vitest';
import { atLeast, atMost, near, nearPoint, point, TOLERANCE } from '../../src/geometry/index.ts';

describe('the one tolerance', () => {
  test('is a millionth of a micrometre', () => {
    expect(TOLERANCE).toBe(1e-9);
  });

  test('lets near() pass at the tolerance either way and no farther', () => {
    expect(near(0, 1e-9)).toBe(true);
    expect(near(0, -1e-9)).toBe(true);
    expect(near(0, 1.1e-9)).toBe(false);
    expect(near(0, -1.1e-9)).toBe(false);
    expect(near(1, -1)).toBe(false);
  });

  test('is given in favour of an upper bound', () => {
    expect(atMost(0.9, 1)).toBe(true);
    expect(atMost(1e-9, 0)).toBe(true);
    expect(atMost(1.1e-9, 0)).toBe(false);
  });

  test('is given in favour of a lower bound', () => {
    expect(atLeast(1.1, 1)).toBe(true);
    expect(atLeast(-1e-9, 0)).toBe(true);
    expect(atLeast(-1.1e-9, 0)).toBe(false);
  });

  test('is a distance, not a difference of coordinates', () => {
    expect(nearPoint(point(0, 0), point(0, 1e-9))).toBe(true);
    expect(nearPoint(point(0, 0), point(1e-9, 0))).toBe(true);
    // 0.8e-9 both ways is 1.13e-9 apart
    expect(nearPoint(point(0, 0), point(0.8e-9, 0.8e-9))).toBe(false);
    // a 3-4-5 triangle scaled to the tolerance, on the safe side of rounding
    expect(nearPoint(point(0, 0), point(-0.599e-9, 0.799e-9))).toBe(true);
    expect(nearPoint(point(5, 7), point(5, 7.1))).toBe(false);
    expect(nearPoint(point(5, 7), point(5.1, 7))).toBe(false);
  });
});
