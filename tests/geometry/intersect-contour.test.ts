import { describe, expect, test } from 'vitest';
import {
  arc,
  intersectContours,
  intersectLine,
  line,
  point,
  polyline,
  reverseContour,
  type Contour,
} from '../../src/geometry/index.ts';
import { expectPoint } from './near-point.ts';

const square = polyline([point(0, 0), point(4, 0), point(4, 4), point(0, 4)], true);
/** Circle of radius 5 about the origin, as two halves. */
const circle: Contour = [arc(point(5, 0), point(-5, 0), 1), arc(point(-5, 0), point(5, 0), 1)];
const share = Math.acos(0.6) / Math.PI;

describe('two contours meet', () => {
  test('where their pieces do, in order along the first', () => {
    // the square's sides x = 4 and y = 4 cross the circle at (4, 3) and (3, 4)
    const met = intersectContours(circle, square);
    expect(met).toHaveLength(2);
    expectPoint(met[0]?.point, 4, 3);
    expectPoint(met[1]?.point, 3, 4);
    expect(met.map(({ a, b }) => [a.index, b.index])).toEqual([
      [0, 1],
      [0, 2],
    ]);
    expect(met[1]?.a.t).toBeCloseTo(share, 14);
    expect(met[1]?.b.t).toBeCloseTo(0.25, 14);
    expect(intersectContours(square, circle).map(({ a }) => a.index)).toEqual([1, 2]);
    expect(intersectContours(reverseContour(circle), square).map(({ a }) => a.index)).toEqual([
      1, 1,
    ]);
  });

  test('in order along the first however the second is walked', () => {
    const comb = polyline([point(3, 1), point(3, -1), point(1, -1), point(1, 1)]);
    for (const other of [comb, reverseContour(comb)]) {
      expect(intersectContours(square, other).map(({ a }) => [a.index, a.t])).toEqual([
        [0, 0.25],
        [0, 0.75],
      ]);
    }
    // reversed, the square goes up x = 0, along y = 4, down x = 4 and back along y = 0;
    // the second runs through x = 4 first, then x = 0, then x = 0 and y = 0 again
    const across = polyline([point(5, 2), point(-1, 2), point(1, -1)]);
    const met = intersectContours(reverseContour(square), across);
    expect(met.map(({ a, b }) => [a.index, b.index])).toEqual([
      [0, 1],
      [0, 0],
      [2, 0],
      [3, 1],
    ]);
    expect(met[0]?.a.t).toBeLessThan(0.5);
    expect(met[1]?.a.t).toBe(0.5);
  });

  test('once where two pieces of one join, on the earlier piece', () => {
    const met = intersectContours(square, [line(point(4, 0), point(9, -5))]);
    expect(met).toEqual([
      { point: point(4, 0), a: { index: 0, t: 1 }, b: { index: 0, t: 0 }, overlap: false },
    ]);
    const cross = [line(point(-1, -1), point(2, 2)), line(point(2, 2), point(5, -1))];
    expect(intersectContours([line(point(2, 0), point(2, 5))], cross)).toEqual([
      { point: point(2, 2), a: { index: 0, t: 0.4 }, b: { index: 0, t: 1 }, overlap: false },
    ]);
  });

  test('at the ends of stretches they share, marked so', () => {
    const lid = polyline([point(3, 2), point(4, 2), point(4, 5)]);
    const met = intersectContours(square, lid);
    expect(met.map(({ point: at, overlap }) => [at.x, at.y, overlap])).toEqual([
      [4, 2, true],
      [4, 4, true],
    ]);
    const beside = [line(point(1, -1), point(1, 0)), line(point(1, 0), point(3, 0))];
    expect(intersectContours(square, beside).map(({ overlap }) => overlap)).toEqual([true, true]);
  });

  test('nowhere when they are apart, or one is empty', () => {
    expect(intersectContours(square, polyline([point(5, 5), point(5, 9)]))).toEqual([]);
    expect(intersectContours(square, polyline([point(1, 1), point(2, 2)]))).toEqual([]);
    expect(intersectContours(square, [])).toEqual([]);
    expect(intersectContours([], square)).toEqual([]);
  });

  test('where their bounds no more than touch', () => {
    expect(intersectContours(square, [line(point(4, 1), point(9, 1))])).toHaveLength(1);
    expect(intersectContours(square, [line(point(4 + 9e-10, 1), point(9, 1))])).toHaveLength(1);
  });
});

describe('an endless line meets a contour', () => {
  test('in order along the line, counted from its origin', () => {
    const met = intersectLine(point(-8, 3), point(2, 0), circle);
    expect(met.map(({ index }) => index)).toEqual([0, 0]);
    expectPoint(met[0]?.point, -4, 3);
    expectPoint(met[1]?.point, 4, 3);
    expect(met[0]?.along).toBeCloseTo(4, 14);
    expect(met[1]?.along).toBeCloseTo(12, 14);
    expect(met[1]?.t).toBeCloseTo(Math.acos(0.8) / Math.PI, 14);
    // turned round, the order and the sign turn too
    const back = intersectLine(point(-8, 3), point(-1, 0), circle);
    expect(back[0]?.along).toBeCloseTo(-12, 14);
    expect(back[1]?.along).toBeCloseTo(-4, 14);
  });

  test('in order along the line though the contour runs back', () => {
    const met = intersectLine(point(-1, 1), point(1, 0), square);
    expect(met).toEqual([
      { point: point(0, 1), index: 3, t: 0.75, along: 1 },
      { point: point(4, 1), index: 1, t: 0.25, along: 5 },
    ]);
    expect(intersectLine(point(9, 1), point(-1, 0), square).map(({ along }) => along)).toEqual([
      5, 9,
    ]);
  });

  test('slanting', () => {
    // through (-1, -1) in direction (3, 4)/5: meets y = 0 at (-1/4, 0)…, x = 4 at (4, 17/3)
    const met = intersectLine(point(1, 0), point(3, 4), square);
    expect(met).toHaveLength(2);
    expectPoint(met[0]?.point, 1, 0);
    expectPoint(met[1]?.point, 4, 4);
    expect(met[1]?.along).toBeCloseTo(5, 14);
  });

  test('once at a join', () => {
    expect(intersectLine(point(4, 0), point(-3, 3), square)).toEqual([
      { point: point(4, 0), index: 0, t: 1, along: 0 },
      { point: point(0, 4), index: 2, t: 1, along: expect.closeTo(Math.sqrt(32), 13) as number },
    ]);
    expect(intersectLine(point(9, 0), point(1, 0), circle).map(({ along }) => along)).toEqual([
      -14, -4,
    ]);
  });

  test('at both ends of a straight piece that lies on it', () => {
    const met = intersectLine(point(2, 0), point(1, 0), square);
    expect(met.map(({ along, index, t }) => [along, index, t])).toEqual([
      [-2, 0, 0],
      [2, 0, 1],
    ]);
  });

  test('once where it touches an arc, within the tolerance either way', () => {
    for (const y of [5, 5 + 9e-10, 5 - 9e-10]) {
      const met = intersectLine(point(1, y), point(1, 0), circle);
      expect(met).toHaveLength(1);
      expectPoint(met[0]?.point, 0, 5, 1e-9);
      expect(met[0]?.t).toBeCloseTo(0.5, 9);
      expect(met[0]?.along).toBeCloseTo(-1, 9);
    }
    expect(intersectLine(point(1, 5 + 1.1e-9), point(1, 0), circle)).toEqual([]);
    expect(intersectLine(point(1, 5 - 1e-8), point(1, 0), circle)).toHaveLength(2);
  });

  test('once where it touches an arc aslant, and at the far end too when that is on it', () => {
    // square to (3, 4) at (3, 4): direction (4, -3)
    for (const off of [0, 9e-10, -9e-10]) {
      const met = intersectLine(point((5 + off) * 0.6, (5 + off) * 0.8), point(4, -3), circle);
      expect(met).toHaveLength(1);
      expectPoint(met[0]?.point, 3, 4, 1e-9);
    }
    // touches at the start, comes round and crosses at the end
    const loop: Contour = [arc(point(0, 0), point(6, 0), 1e-9), arc(point(6, 0), point(8, 0), 1)];
    expect(intersectLine(point(0, 0), point(1, 0), loop).map(({ along }) => along)).toEqual([
      0, 6, 8,
    ]);
  });

  test('once at the end of an arc that leaves along it', () => {
    const curl: Contour = [arc(point(0, 0), point(3, 3), Math.SQRT2 - 1)];
    expect(intersectLine(point(-5, 0), point(1, 0), curl)).toEqual([
      { point: point(0, 0), index: 0, t: 0, along: 5 },
    ]);
    expect(intersectLine(point(3, -5), point(0, 1), curl)).toEqual([
      { point: point(3, 3), index: 0, t: 1, along: 8 },
    ]);
  });

  test('nowhere when it passes by', () => {
    expect(intersectLine(point(0, 9), point(1, 0.1), square)).toEqual([]);
    expect(intersectLine(point(0, -3), point(1, 0), circle.slice(0, 1))).toEqual([]);
    expect(intersectLine(point(0, 9), point(1, 0), [])).toEqual([]);
    expect(intersectLine(point(0, 5), point(1, 0), square)).toEqual([]);
  });

  test('within the tolerance of an end, and no farther', () => {
    expect(intersectLine(point(0, 4 + 9e-10), point(1, 0), square.slice(1, 2))).toHaveLength(1);
    expect(intersectLine(point(0, 4 + 1.1e-9), point(1, 0), square.slice(1, 2))).toEqual([]);
  });

  test('must have a direction', () => {
    expect(() => intersectLine(point(0, 0), point(0, 0), square)).toThrow(
      'A line needs a direction.',
    );
    expect(intersectLine(point(2, 1), point(0, 7), square)).toHaveLength(2);
  });
});
