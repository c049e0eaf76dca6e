import { describe, expect, test } from 'vitest';
import {
  arc,
  boundsGap,
  contourBounds,
  line,
  point,
  segmentBounds,
} from '../../src/geometry/index.ts';

const box = (left: number, bottom: number, right: number, top: number) => ({
  left,
  bottom,
  right,
  top,
});
function expectBounds(actual: ReturnType<typeof box>, wanted: ReturnType<typeof box>) {
  for (const side of ['left', 'bottom', 'right', 'top'] as const) {
    expect(actual[side], side).toBeCloseTo(wanted[side], 12);
  }
}

describe('bounds', () => {
  test('of a line are its ends', () => {
    expect(segmentBounds(line(point(5, 1), point(2, 3)))).toEqual(box(2, 1, 5, 3));
    expect(segmentBounds(line(point(2, 3), point(5, 1)))).toEqual(box(2, 1, 5, 3));
  });

  /** Arcs of the circle of radius 5 about (10, 20); the bulge is tan of a quarter of the sweep. */
  const east = point(15, 20);
  const north = point(10, 25);
  const west = point(5, 20);
  const south = point(10, 15);
  const northEast = point(13, 24);
  const northWest = point(7, 24);
  const southWest = point(7, 16);
  const southEast = point(13, 16);
  test.each([
    // 2·atan(3/4) = 73.74° over the top: bulge tan(18.43°) = 1/3
    ['over the top', arc(northEast, northWest, 1 / 3), box(7, 24, 13, 25)],
    ['over the top, clockwise', arc(northWest, northEast, -1 / 3), box(7, 24, 13, 25)],
    ['under the bottom', arc(southWest, southEast, 1 / 3), box(7, 15, 13, 16)],
    ['round the left', arc(northWest, southWest, 1 / 2), box(5, 16, 7, 24)],
    ['round the right', arc(southEast, northEast, 1 / 2), box(13, 16, 15, 24)],
    ['all but the top', arc(northWest, northEast, 3), box(5, 15, 15, 24)],
    ['all but the left', arc(northWest, southWest, -2), box(7, 15, 15, 25)],
    ['upper half', arc(east, west, 1), box(5, 20, 15, 25)],
    ['lower half', arc(east, west, -1), box(5, 15, 15, 20)],
    ['a quarter', arc(east, north, Math.SQRT2 - 1), box(10, 20, 15, 25)],
    ['three quarters', arc(south, east, -1 - Math.SQRT2), box(5, 15, 15, 25)],
  ])('of an arc take in its crowns: %s', (_name, piece, wanted) => {
    expectBounds(segmentBounds(piece), wanted);
  });

  test('of an arc without length are a point', () => {
    expect(segmentBounds({ a: point(1, 2), b: point(1, 2), bulge: 1 })).toEqual(box(1, 2, 1, 2));
  });

  test('of a contour hold every piece', () => {
    const shape = [
      line(point(0, 0), point(4, 1)),
      arc(point(4, 1), point(6, 1), 1),
      line(point(6, 1), point(-1, 3)),
    ];
    expectBounds(contourBounds(shape), box(-1, 0, 6, 3));
    expectBounds(contourBounds(shape.slice(0, 2)), box(0, 0, 6, 1));
    expectBounds(contourBounds([...shape].reverse()), box(-1, 0, 6, 3));
    expectBounds(contourBounds([arc(point(4, 1), point(6, 1), 1)]), box(4, 0, 6, 1));
    expect(() => contourBounds([])).toThrow('An empty contour has no bounds.');
  });
});

describe('the gap between two bounds', () => {
  const middle = box(0, 0, 4, 2);
  test.each([
    ['to the right', box(7, 0, 8, 2), 3],
    ['to the left', box(-8, 0, -7, 2), 7],
    ['above', box(0, 4, 4, 5), 2],
    ['below', box(0, -9, 4, -6), 6],
    ['across a corner, 3-4-5', box(7, 6, 9, 9), 5],
    ['overlapping', box(1, 1, 9, 9), 0],
    ['touching', box(4, 0, 5, 1), 0],
  ])('%s', (_name, other, gap) => {
    expect(boundsGap(middle, other)).toBe(gap);
    expect(boundsGap(other, middle)).toBe(gap);
  });
});
