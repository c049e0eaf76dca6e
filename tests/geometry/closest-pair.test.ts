import { describe, expect, test } from 'vitest';
import {
  arc,
  closestOfContours,
  closestOfSegments,
  distanceBetweenSegments,
  line,
  point,
  polyline,
  reverseSegment,
  type Segment,
} from '../../src/geometry/index.ts';
import { expectPoint } from './near-point.ts';

/** Upper half of the circle of radius 5 about the origin. */
const over = arc(point(5, 0), point(-5, 0), 1);

function expectPair(
  first: Segment,
  second: Segment,
  apart: number,
  a: readonly [number, number],
  b: readonly [number, number],
) {
  const there = closestOfSegments(first, second);
  expect(there.distance).toBeCloseTo(apart, 13);
  expectPoint(there.a.point, ...a);
  expectPoint(there.b.point, ...b);
  const back = closestOfSegments(second, first);
  expect(back.distance).toBeCloseTo(apart, 13);
  expectPoint(back.a.point, ...b);
  expectPoint(back.b.point, ...a);
  expect(distanceBetweenSegments(reverseSegment(first), second)).toBeCloseTo(apart, 13);
}

describe('the closest pair of two lines', () => {
  test('is at their crossing', () => {
    expectPair(line(point(0, 0), point(4, 4)), line(point(0, 4), point(4, 0)), 0, [2, 2], [2, 2]);
  });

  test('is an end and the foot of its perpendicular, for each of the four ends', () => {
    const base = line(point(0, 0), point(8, 0));
    expectPair(base, line(point(3, 2), point(5, 9)), 2, [3, 0], [3, 2]);
    expectPair(base, line(point(3, 9), point(5, 2)), 2, [5, 0], [5, 2]);
    expectPair(line(point(3, 2), point(5, 9)), base, 2, [3, 2], [3, 0]);
    expectPair(line(point(3, 9), point(5, 2)), base, 2, [5, 2], [5, 0]);
  });

  test('is two ends when they lie beyond one another (3-4-5)', () => {
    expectPair(
      line(point(0, 0), point(8, 0)),
      line(point(11, 4), point(11, 9)),
      5,
      [8, 0],
      [11, 4],
    );
  });
});

describe('the closest pair with an arc', () => {
  test('lies on the normal of the line through the centre', () => {
    expectPair(over, line(point(-9, 7), point(9, 7)), 2, [0, 5], [0, 7]);
    // a line square to (3, 4): 3x + 4y = 50 is 10 from the centre
    expectPair(over, line(point(10, 5), point(2, 11)), 5, [3, 4], [6, 8]);
  });

  test('lies on the line through both centres, apart or one within the other', () => {
    // lower half of radius 2 about (6, 8), 10 away: 10 - 5 - 2
    expectPair(over, arc(point(4, 8), point(8, 8), 1), 3, [3, 4], [4.8, 6.4]);
    // upper half of radius 2 about (0.6, 0.8), 1 away: 5 - 1 - 2
    expectPair(over, arc(point(2.6, 0.8), point(-1.4, 0.8), 1), 2, [3, 4], [1.8, 2.4]);
  });

  test('is at an end when the common normal misses', () => {
    expectPair(over, line(point(7, -2), point(7, 2)), 2, [5, 0], [7, 0]);
    expectPair(over, line(point(0, 0), point(0, 2)), 3, [0, 5], [0, 2]);
  });

  test('is at a crossing when there is one', () => {
    expectPair(over, line(point(3, 0), point(3, 9)), 0, [3, 4], [3, 4]);
  });

  test('of concentric arcs is the difference of the radii', () => {
    expect(distanceBetweenSegments(over, arc(point(3, 0), point(-3, 0), 1))).toBeCloseTo(2, 14);
    expect(distanceBetweenSegments(over, arc(point(-3, 0), point(3, 0), 1))).toBeCloseTo(2, 14);
  });

  test('of pieces that touch within the tolerance is what is left between them', () => {
    expect(
      distanceBetweenSegments(over, line(point(-5, 5 + 5e-10), point(5, 5 + 5e-10))),
    ).toBeCloseTo(5e-10, 14);
  });

  test('of a piece without length is taken from that point', () => {
    expectPair(over, line(point(6, 8), point(6, 8)), 5, [3, 4], [6, 8]);
  });
});

describe('the closest pair of two contours', () => {
  const bowl = polyline([point(-9, 9), point(-9, 7), point(9, 7), point(9, 9)]);

  test('names the pieces and the places on them', () => {
    const pair = closestOfContours([line(point(-5, 0), point(-5, -1)), over], bowl);
    expect(pair.distance).toBeCloseTo(2, 14);
    expect(pair.a.index).toBe(1);
    expect(pair.b.index).toBe(1);
    expect(pair.a.t).toBeCloseTo(0.5, 14);
    expect(pair.b.t).toBeCloseTo(0.5, 14);
    expectPoint(pair.a.point, 0, 5);
    expectPoint(pair.b.point, 0, 7);
  });

  test('finds a pair on a later piece although an earlier one was near', () => {
    const steps = polyline([point(0, 3), point(1, 3), point(1, 2), point(5, 2), point(5, 1.5)]);
    const pair = closestOfContours(steps, [line(point(-9, 0), point(9, 0))]);
    expect(pair.distance).toBe(1.5);
    expect([pair.a.index, pair.a.t]).toEqual([3, 1]);
  });

  test('is the earliest of equals', () => {
    const base = polyline([point(0, 0), point(4, 0), point(8, 0)]);
    const top = polyline([point(0, 1), point(4, 1), point(8, 1)]);
    const pair = closestOfContours(base, top);
    expect(pair.distance).toBe(1);
    expect([pair.a.index, pair.b.index, pair.a.t]).toEqual([0, 0, 0]);
  });

  test('is refused when one is empty', () => {
    expect(() => closestOfContours([], bowl)).toThrow('An empty contour has no nearest point.');
    expect(() => closestOfContours(bowl, [])).toThrow('An empty contour has no nearest point.');
  });
});
