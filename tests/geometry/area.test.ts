import { describe, expect, test } from 'vitest';
import {
  arc,
  arcThroughSagitta,
  capArea,
  contourArea,
  line,
  point,
  polyline,
  reverseContour,
  segmentArea,
} from '../../src/geometry/index.ts';

describe('the area between an arc and its chord', () => {
  test('of half a circle is half of πr²', () => {
    expect(capArea(arc(point(3, 1), point(-1, 1), 1))).toBeCloseTo(2 * Math.PI, 13);
    expect(capArea(arc(point(3, 1), point(-1, 1), -1))).toBeCloseTo(-2 * Math.PI, 13);
  });

  test('of a quarter and of three quarters of the unit circle', () => {
    // (θ - sin θ)/2
    expect(capArea(arc(point(1, 0), point(0, 1), Math.SQRT2 - 1))).toBeCloseTo(
      Math.PI / 4 - 0.5,
      15,
    );
    expect(capArea(arc(point(1, 0), point(0, -1), Math.SQRT2 + 1))).toBeCloseTo(
      0.75 * Math.PI + 0.5,
      13,
    );
  });

  test('of a line is nothing', () => {
    expect(capArea(line(point(0, 0), point(3, 4)))).toBe(0);
  });

  /**
   * c²((1 + k²)² atan k - k(1 - k²)) / (8k²) with chord c = 5, worked with 40
   * digits, on both sides of the bulge where the way of computing it changes.
   */
  test.each([
    [1e-12, 8.3333333333333332425e-12],
    [1e-6, 8.3333333333349996229e-6],
    [0.01, 0.08333499997619127154],
    [0.05, 0.41687492565717172231],
    [0.0999, 0.83415931043915334344],
    [0.1, 0.83499762694824508677],
    [0.1001, 0.8358359534100484],
    [0.25, 2.1091471960280743273],
    [3, 51.702978208272723119],
    [1000, 4908748.3303826681417],
  ])('keeps its digits at a bulge of %s', (bulge, area) => {
    expect(Math.abs(capArea(arc(point(1, 1), point(4, 5), bulge)) / area - 1)).toBeLessThan(2e-14);
    expect(Math.abs(capArea(arc(point(1, 1), point(4, 5), -bulge)) / area + 1)).toBeLessThan(2e-14);
    if (bulge < 0.1) {
      // the series drops nothing that a double would show
      expect(Math.abs(capArea(arc(point(1, 1), point(4, 5), bulge)) / area - 1)).toBeLessThan(
        1e-15,
      );
    }
  });
});

describe('the area swept from a pole', () => {
  test('is half base times height, positive when the piece turns counter-clockwise about it', () => {
    expect(segmentArea(line(point(4, 0), point(4, 3)))).toBe(6);
    expect(segmentArea(line(point(4, 3), point(4, 0)))).toBe(-6);
    expect(segmentArea(line(point(4, 0), point(4, 3)), point(5, 1))).toBe(-1.5);
    // seen from (5, 1) the ends are (-1, -1) and (1, 2): half of (-1)(2) - (-1)(1)
    expect(segmentArea(line(point(4, 0), point(6, 3)), point(5, 1))).toBe(-0.5);
  });

  test('of an arc about its own centre is a sector', () => {
    // r²θ/2 with r = 2, θ = 90°
    const quarter = arc(point(3, 1), point(1, 3), Math.SQRT2 - 1);
    expect(segmentArea(quarter, point(1, 1))).toBeCloseTo(Math.PI, 14);
  });
});

describe('the area of a contour', () => {
  const slab = polyline([point(1000, 1000), point(1004, 1000), point(1004, 1003)], true);

  test('is positive counter-clockwise and negative clockwise', () => {
    expect(contourArea(slab)).toBe(6);
    expect(contourArea(reverseContour(slab))).toBe(-6);
  });

  test('of an open contour is closed straight; of nothing it is nothing', () => {
    expect(contourArea(slab.slice(0, 2))).toBe(6);
    expect(contourArea([])).toBe(0);
    expect(contourArea([arc(point(1, 0), point(-1, 0), 1)])).toBeCloseTo(Math.PI / 2, 14);
  });

  test('counts caps: a square of side 2 with half circles out on two sides and in on a third', () => {
    const stamp = [
      arc(point(0, 0), point(2, 0), 1),
      line(point(2, 0), point(2, 2)),
      arc(point(2, 2), point(0, 2), 1),
      arc(point(0, 2), point(0, 0), -1),
    ];
    expect(contourArea(stamp)).toBeCloseTo(4 + Math.PI / 2, 13);
  });

  test('grows by 2/3 of chord times crown when a flat side swells by a hair', () => {
    // parabola limit, exact to the third order of the crown
    const hair = arcThroughSagitta(point(0, 0), point(6, 0), -1e-7);
    expect(Math.abs(contourArea([hair]) - 4e-7)).toBeLessThan(1e-20);
  });
});
