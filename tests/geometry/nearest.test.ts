import { describe, expect, test } from 'vitest';
import {
  arc,
  farthestOnContour,
  farthestOnSegment,
  line,
  nearestOnContour,
  nearestOnSegment,
  point,
  polyline,
  type Segment,
} from '../../src/geometry/index.ts';
import { expectPoint } from './near-point.ts';

const straight = line(point(1, 2), point(9, 8)); // 8, 6: length 10
/** Upper half of the circle of radius 5 about (2, 1), counter-clockwise. */
const over = arc(point(7, 1), point(-3, 1), 1);
/** Three quarters of the same circle, clockwise from the left to the bottom over the top. */
const round = arc(point(-3, 1), point(2, -4), -1 - Math.SQRT2);
const dot3: Segment = { a: point(3, 3), b: point(3, 3), bulge: 0 };
const dotBulged: Segment = { a: point(3, 3), b: point(3, 3), bulge: 2 };

describe('the nearest point on a line', () => {
  test('is the foot of the perpendicular when that lies on it', () => {
    // half way (5, 5) plus 5 along the left normal (-0.6, 0.8)
    const on = nearestOnSegment(point(2, 9), straight);
    expectPoint(on.point, 5, 5);
    expect(on.t).toBeCloseTo(0.5, 15);
    expect(on.distance).toBeCloseTo(5, 14);
  });

  test('is an end when the foot lies beyond it', () => {
    expect(nearestOnSegment(point(-2, -2), straight)).toEqual({
      point: { x: 1, y: 2 },
      t: 0,
      distance: 5,
    });
    expect(nearestOnSegment(point(12, 12), straight)).toEqual({
      point: { x: 9, y: 8 },
      t: 1,
      distance: 5,
    });
  });

  test('of no length is the point it is', () => {
    expect(nearestOnSegment(point(6, 7), dot3)).toEqual({ point: point(3, 3), t: 0, distance: 5 });
    expect(nearestOnSegment(point(6, 7), dotBulged)).toEqual({
      point: point(3, 3),
      t: 0,
      distance: 5,
    });
  });
});

describe('the nearest point on an arc', () => {
  test('lies on the ray from the centre, from inside and from outside', () => {
    // (6, 8) from the centre is 10 off: 5 outside; a share acos(0.6)/π of the way
    const outside = nearestOnSegment(point(8, 9), over);
    expectPoint(outside.point, 5, 5);
    expect(outside.distance).toBeCloseTo(5, 14);
    expect(outside.t).toBeCloseTo(Math.acos(0.6) / Math.PI, 14);
    const inside = nearestOnSegment(point(2.6, 1.8), over);
    expectPoint(inside.point, 5, 5);
    expect(inside.distance).toBeCloseTo(4, 14);
  });

  test('is the nearer end when the ray misses the arc', () => {
    expect(nearestOnSegment(point(7, -2), over)).toEqual({ point: point(7, 1), t: 0, distance: 3 });
    expect(nearestOnSegment(point(-3, -2), over)).toEqual({
      point: point(-3, 1),
      t: 1,
      distance: 3,
    });
  });

  test('beyond the ends of an arc over half a circle', () => {
    // below left of the centre: the open quarter
    expect(nearestOnSegment(point(-4, 0), round).t).toBe(0);
    expect(nearestOnSegment(point(1, -5), round).t).toBe(1);
    // to the right of the centre the arc itself
    const right = nearestOnSegment(point(9, 1), round);
    expectPoint(right.point, 7, 1);
    expect(right.t).toBeCloseTo(2 / 3, 14);
    expect(right.distance).toBeCloseTo(2, 14);
    const lowerRight = nearestOnSegment(point(5, -3), round);
    expectPoint(lowerRight.point, 5, -3);
    expect(lowerRight.distance).toBeCloseTo(0, 14);
  });

  test('of its own centre is its start, at the radius', () => {
    expect(nearestOnSegment(point(2, 1), over)).toEqual({ point: point(7, 1), t: 0, distance: 5 });
  });

  test('from an equal distance to both ends is the start', () => {
    expect(nearestOnSegment(point(2, -9), over).t).toBe(0);
  });

  test('is exact to a hair for an arc as flat as a hair', () => {
    // crown 1e-9 below the chord, 3 up from its middle
    const flat = arc(point(0, 0), point(6, 0), 1e-9 / 3);
    const on = nearestOnSegment(point(3, 3), flat);
    expect(on.distance - 3).toBeCloseTo(1e-9, 15);
    expect(on.t).toBeCloseTo(0.5, 14);
    expect(nearestOnSegment(point(-1, 0), flat).t).toBe(0);
    expect(nearestOnSegment(point(7, 0), flat).t).toBe(1);
    // almost no arc at all: 3/4 of the crown 1e-149 · 6 / 2 off
    expect(nearestOnSegment(point(1.5, -2), arc(point(0, 0), point(6, 0), 1e-149))).toEqual({
      point: point(1.5, -2.25e-149),
      t: 0.25,
      distance: 2,
    });
  });
});

describe('the farthest point', () => {
  test('on a line is the farther end', () => {
    expect(farthestOnSegment(point(1, 1), straight)).toEqual({
      point: point(9, 8),
      t: 1,
      distance: Math.hypot(8, 7),
    });
    expect(farthestOnSegment(point(9, 9), straight).t).toBe(0);
    expect(farthestOnSegment(point(2, 9), straight).t).toBe(0);
  });

  test('on an arc is straight across the centre when the arc reaches there', () => {
    // from (2, -3), 4 under the centre: the crown (2, 6), 9 off
    const top = farthestOnSegment(point(2, -3), over);
    expectPoint(top.point, 2, 6);
    expect(top.t).toBeCloseTo(0.5, 14);
    expect(top.distance).toBeCloseTo(9, 14);
    const right = farthestOnSegment(point(-1, 1), round);
    expectPoint(right.point, 7, 1);
    expect(right.t).toBeCloseTo(2 / 3, 14);
    // from the left of the centre of a half circle open below
    const leftwards = farthestOnSegment(point(3, -0.0001), over);
    expect(leftwards.point.x).toBeLessThan(2);
    expect(leftwards.distance).toBeCloseTo(5 + Math.hypot(1, 1.0001), 12);
  });

  test('on an arc with an upright chord, either way round', () => {
    const right = arc(point(2, -4), point(2, 6), 1);
    for (const piece of [right, arc(point(2, 6), point(2, -4), -1)]) {
      const far = farthestOnSegment(point(-1, -3), piece);
      expectPoint(far.point, 5, 5);
      expect(far.distance).toBeCloseTo(10, 13);
      // from the other side of the centre: an end
      expect(farthestOnSegment(point(5, 2), piece).point).toEqual(point(2, -4));
    }
  });

  test('on an arc that does not reach there is the farther end', () => {
    expect(farthestOnSegment(point(3, 9), over).point).toEqual(point(-3, 1));
    expect(farthestOnSegment(point(1, 9), over).point).toEqual(point(7, 1));
    expect(farthestOnSegment(point(2, 9), over).t).toBe(0);
  });

  test('on an arc without length is that point', () => {
    expect(farthestOnSegment(point(6, 7), dotBulged)).toEqual({
      point: point(3, 3),
      t: 0,
      distance: 5,
    });
  });
});

describe('on a contour', () => {
  const square = polyline([point(0, 0), point(4, 0), point(4, 4), point(0, 4)], true);

  test('the nearest place names its piece', () => {
    expect(nearestOnContour(point(3, 2), square)).toEqual({
      point: { x: 4, y: 2 },
      index: 1,
      t: 0.5,
      distance: 1,
    });
  });

  test('the earliest of equally near places wins', () => {
    expect(nearestOnContour(point(2, 2), square).index).toBe(0);
    expect(nearestOnContour(point(5, 0), square).index).toBe(0);
  });

  test('the farthest place names its piece, the earliest of equals', () => {
    expect(farthestOnContour(point(1, 1), square)).toEqual({
      point: { x: 4, y: 4 },
      index: 1,
      t: 1,
      distance: Math.sqrt(18),
    });
    expect(farthestOnContour(point(2, 2), square).index).toBe(0);
  });

  test('of no pieces there is none', () => {
    const why = 'An empty contour has no nearest or farthest point.';
    expect(() => nearestOnContour(point(0, 0), [])).toThrow(why);
    expect(() => farthestOnContour(point(0, 0), [])).toThrow(why);
  });
});
