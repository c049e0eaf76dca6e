import { describe, expect, test } from 'vitest';
import {
  arc,
  crownTowards,
  extremeFromLine,
  extremeInDirection,
  line,
  point,
  polyline,
} from '../../src/geometry/index.ts';
import { expectPoint } from './near-point.ts';

/** Upper half of the circle of radius 5 about (2, 1): counter-clockwise, then clockwise. */
const over = arc(point(7, 1), point(-3, 1), 1);
const back = arc(point(-3, 1), point(7, 1), -1);
/** All of that circle but the quarter between left and bottom. */
const round = arc(point(-3, 1), point(2, -4), -1 - Math.SQRT2);
const square = polyline([point(0, 0), point(4, 0), point(4, 4), point(0, 4)], true);

describe('where an arc faces a direction', () => {
  test('is a share of its sweep', () => {
    expect(crownTowards(over, point(0, 1))).toBeCloseTo(0.5, 14);
    expect(crownTowards(back, point(0, 7))).toBeCloseTo(0.5, 14);
    expect(crownTowards(over, point(3, 4))).toBeCloseTo(Math.acos(0.6) / Math.PI, 14);
    expect(crownTowards(back, point(3, 4))).toBeCloseTo(1 - Math.acos(0.6) / Math.PI, 14);
    expect(crownTowards(round, point(1, 0))).toBeCloseTo(2 / 3, 14);
    expect(crownTowards(round, point(1, -1))).toBeCloseTo(5 / 6, 14);
  });

  test('is nowhere when the arc does not turn that far', () => {
    expect(crownTowards(over, point(0, -1))).toBeNull();
    expect(crownTowards(back, point(0, -1))).toBeNull();
    expect(crownTowards(round, point(-1, -1))).toBeNull();
  });

  test('includes both ends', () => {
    expect(crownTowards(over, point(1, 0))).toBe(0);
    expect(crownTowards(over, point(-1, 0))).toBe(1);
  });

  test('is found on either side of half a circle', () => {
    // a hair less and a hair more than half the unit circle, looking 45° below the chord
    expect(crownTowards(arc(point(1, 0), point(-1, 0), 0.999), point(1, -1))).toBeNull();
    // from (3, 4) clockwise round the bottom to (-3, 4): towards (5, 0) after atan(4/3)
    const more = arc(point(3, 4), point(-3, 4), -3);
    expect(crownTowards(more, point(5, 0))).toBeCloseTo(Math.atan(4 / 3) / (4 * Math.atan(3)), 14);
    expect(crownTowards(more, point(0, -1))).toBeCloseTo(0.5, 14);
    expect(crownTowards(more, point(-1, 0))).toBeCloseTo(
      1 - Math.atan(4 / 3) / (4 * Math.atan(3)),
      14,
    );
  });

  test('is nowhere on a line, on a piece without length, or for no direction', () => {
    expect(crownTowards(line(point(0, 0), point(1, 0)), point(0, -1))).toBeNull();
    expect(crownTowards({ a: point(1, 1), b: point(1, 1), bulge: 1 }, point(0, 1))).toBeNull();
    expect(crownTowards(over, point(0, 0))).toBeNull();
  });
});

describe('the extreme in a direction', () => {
  test('of an arc is its crown when it has one there', () => {
    const top = extremeInDirection(over, point(0, 1));
    expectPoint(top.point, 2, 6);
    expect(top.index).toBe(0);
    expect(top.t).toBeCloseTo(0.5, 14);
    expect(top.value).toBeCloseTo(6, 14);
    // direction (0.6, 0.8): centre 2·0.6 + 1·0.8 = 2, plus the radius
    const slant = extremeInDirection([back], point(0.6, 0.8));
    expectPoint(slant.point, 5, 5);
    expect(slant.value).toBeCloseTo(7, 14);
  });

  test('of an arc is an end otherwise', () => {
    expect(extremeInDirection(over, point(0.6, -0.8))).toEqual({
      point: point(7, 1),
      index: 0,
      t: 0,
      value: 7 * 0.6 - 0.8,
    });
    expect(extremeInDirection(over, point(-0.6, -0.8)).t).toBe(1);
  });

  test('of a contour is the earliest of equals', () => {
    expect(extremeInDirection(square, point(1, 0))).toEqual({
      point: point(4, 0),
      index: 0,
      t: 1,
      value: 4,
    });
    expect(extremeInDirection(square, point(-1, 0))).toEqual({
      point: point(0, 0),
      index: 0,
      t: 0,
      value: 0,
    });
    expect(extremeInDirection(square, point(0, 1)).index).toBe(1);
  });

  test('may lie on a later piece', () => {
    const top = extremeInDirection([...square, over], point(0, 1));
    expectPoint(top.point, 2, 6);
    expect(top.index).toBe(4);
  });

  test('of nothing is refused', () => {
    expect(() => extremeInDirection([], point(0, 1))).toThrow(
      'An empty contour has no extreme point.',
    );
  });
});

describe('the extreme from a line', () => {
  test('is counted from the line, the way its normal points', () => {
    // the line y = 2 looking up: crown (2, 6) is 4 above
    const above = extremeFromLine(over, point(99, 2), point(0, 1));
    expectPoint(above.point, 2, 6);
    expect(above.value).toBeCloseTo(4, 14);
    // looking down: the ends are 1 below
    expect(extremeFromLine(over, point(99, 2), point(0, -1)).value).toBe(1);
  });

  test('is below nought when all lies behind the line', () => {
    expect(extremeFromLine(square, point(9, 0), point(1, 0)).value).toBe(-5);
  });

  test('of a very flat arc keeps the height of its crown', () => {
    const flat = arc(point(1, 2), point(9, 8), -2e-10);
    // crown 2e-10 · 10/2 to the left of the way
    const crown = extremeFromLine(flat, point(1, 2), point(-0.6, 0.8));
    expect(crown.value).toBeCloseTo(1e-9, 14);
    expect(crown.t).toBeCloseTo(0.5, 5);
  });
});
