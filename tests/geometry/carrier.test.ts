import { describe, expect, test } from 'vitest';
import { arc, carrierOf, leftOf, line, point } from '../../src/geometry/index.ts';
import { expectPoint } from './near-point.ts';

describe('the carrier of a piece', () => {
  test('of a line is the way it goes', () => {
    const { start, tangent, curvature } = carrierOf(line(point(1, 2), point(4, 6)));
    expect(start).toEqual({ x: 1, y: 2 });
    expectPoint(tangent, 0.6, 0.8);
    expect(curvature).toBe(0);
    expect(carrierOf({ a: point(0, 0), b: point(1, 0), bulge: 1e-200 }).curvature).toBe(0);
  });

  test('of an arc is its start direction and curvature, signed', () => {
    // three quarters of a circle of radius 2 about the origin, both ways
    const left = carrierOf(arc(point(2, 0), point(0, -2), Math.SQRT2 + 1));
    expectPoint(left.tangent, 0, 1);
    expect(left.curvature).toBeCloseTo(0.5, 14);
    const right = carrierOf(arc(point(0, -2), point(2, 0), -Math.SQRT2 - 1));
    expectPoint(right.tangent, -1, 0);
    expect(right.curvature).toBeCloseTo(-0.5, 14);
    const askew = carrierOf(arc(point(1, 2), point(4, 6), 1));
    expectPoint(askew.tangent, 0.8, -0.6);
    expect(askew.curvature).toBeCloseTo(0.4, 14);
  });

  test('of a piece without length has no direction', () => {
    const none = { start: point(1, 1), tangent: { x: 0, y: 0 }, curvature: 0 };
    expect(carrierOf({ a: point(1, 1), b: point(1, 1), bulge: 3 })).toEqual(none);
    expect(leftOf(none, point(4, 5))).toBe(0);
  });
});

describe('how far a point is to the left', () => {
  test('of a line', () => {
    const slope = carrierOf(line(point(1, 2), point(4, 6)));
    // (-0.8, 0.6) is its left normal
    expect(leftOf(slope, point(1 - 8, 2 + 6))).toBeCloseTo(10, 14);
    expect(leftOf(slope, point(1 + 3, 2 + 4))).toBeCloseTo(0, 14);
    expect(leftOf(slope, point(3, 2))).toBeCloseTo(-1.6, 14);
  });

  test('of a circle is inside when it turns left', () => {
    const circle = carrierOf(arc(point(4, 3), point(2, 5), Math.SQRT2 - 1));
    expect(leftOf(circle, point(2, 3))).toBeCloseTo(2, 14);
    expect(leftOf(circle, point(2.5, 3))).toBeCloseTo(1.5, 14);
    expect(leftOf(circle, point(5, -1))).toBeCloseTo(-3, 14);
    expect(leftOf(circle, point(0, 3))).toBeCloseTo(0, 14);
  });

  test('of a circle is outside when it turns right', () => {
    const circle = carrierOf(arc(point(2, 5), point(4, 3), 1 - Math.SQRT2));
    expect(leftOf(circle, point(2, 3))).toBeCloseTo(-2, 14);
    expect(leftOf(circle, point(5, -1))).toBeCloseTo(3, 14);
  });
});
