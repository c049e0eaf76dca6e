import { describe, expect, test } from 'vitest';
import {
  arc,
  line,
  point,
  pointInRegion,
  polyline,
  reverseContour,
} from '../../src/geometry/index.ts';

const square = polyline([point(0, 0), point(4, 0), point(4, 4), point(0, 4)], true);
/** A square of side 4 with half circles of radius 2: out below and above, in on the right. */
const stamp = [
  arc(point(0, 0), point(4, 0), 1),
  arc(point(4, 0), point(4, 4), -1),
  arc(point(4, 4), point(0, 4), 1),
  line(point(0, 4), point(0, 0)),
];
/** A disc of radius 5 about the origin in two halves, and one in unequal arcs. */
const disc = [arc(point(5, 0), point(-5, 0), 1), arc(point(-5, 0), point(5, 0), 1)];
const bitten = [arc(point(5, 0), point(0, -5), 1 + Math.SQRT2), line(point(0, -5), point(5, 0))];

describe('a point in a region of lines', () => {
  test.each([
    [2, 2, 'inside'],
    [5, 2, 'outside'],
    [-1, 2, 'outside'],
    [2, 5, 'outside'],
    [2, -1, 'outside'],
    // level with a side or a corner, without touching
    [-1, 0, 'outside'],
    [9, 4, 'outside'],
    [0, 9, 'outside'],
    [2, 0, 'edge'],
    [4, 4, 'edge'],
    [0, 0, 'edge'],
    [4 + 9e-10, 2, 'edge'],
    [4 - 9e-10, 2, 'edge'],
    [4 + 1.2e-9, 2, 'outside'],
    [4 - 1.2e-9, 2, 'inside'],
  ])('(%s, %s) is %s', (x, y, where) => {
    expect(pointInRegion(point(x, y), square)).toBe(where);
    expect(pointInRegion(point(x, y), reverseContour(square))).toBe(where);
  });
});

describe('a point in a region with arcs', () => {
  test.each([
    [1, 2, 'inside'],
    [2, -1, 'inside'],
    [2, 5, 'inside'],
    [3, 2, 'outside'],
    [2, 2, 'edge'],
    [2, -2, 'edge'],
    [2, -2.1, 'outside'],
    [0.3, -1.5, 'outside'],
    [0.1, 2, 'inside'],
    // on the chords of the arcs, where there is no edge
    [2, 0, 'inside'],
    [1, 0, 'inside'],
    [2, 4, 'inside'],
    [4, 2, 'outside'],
    [4, 1, 'outside'],
    // on their chords carried on
    [9, 0, 'outside'],
    [-9, 4, 'outside'],
    [4, 9, 'outside'],
    [4, -9, 'outside'],
    [9, 2, 'outside'],
  ])('(%s, %s) is %s', (x, y, where) => {
    expect(pointInRegion(point(x, y), stamp)).toBe(where);
    expect(pointInRegion(point(x, y), reverseContour(stamp))).toBe(where);
  });

  test.each([
    [0, 0, 'inside'],
    [3, 0, 'inside'],
    [-3, 0, 'inside'],
    [0, 4.9, 'inside'],
    [0, -4.9, 'inside'],
    [6, 0, 'outside'],
    [4, 4, 'outside'],
    [-4, -4, 'outside'],
    [3, 4, 'edge'],
    [3, -4, 'edge'],
    [5, 0, 'edge'],
  ])('(%s, %s) is %s of a disc', (x, y, where) => {
    expect(pointInRegion(point(x, y), disc)).toBe(where);
    expect(pointInRegion(point(x, y), reverseContour(disc))).toBe(where);
  });

  test.each([
    [0, 0, 'inside'],
    [2.4, -2.4, 'inside'],
    [2.5, -2.5, 'edge'],
    [2.6, -2.6, 'outside'],
    [3.5, -3.5, 'outside'],
    [4, 2, 'inside'],
  ])('(%s, %s) is %s of a disc cut straight', (x, y, where) => {
    expect(pointInRegion(point(x, y), bitten)).toBe(where);
    expect(pointInRegion(point(x, y), reverseContour(bitten))).toBe(where);
  });
});

describe('a disc of a dozen equal arcs', () => {
  const size = 12;
  const spoke = (i: number) =>
    point(5 * Math.cos((2 * Math.PI * i) / size), 5 * Math.sin((2 * Math.PI * i) / size));
  const dozen = Array.from({ length: size }, (_, i) =>
    arc(spoke(i), spoke((i + 1) % size), Math.tan(Math.PI / (2 * size))),
  );

  test('holds what is nearer its centre than its radius', () => {
    for (let x = -7; x <= 7; x += 0.5) {
      for (let y = -7; y <= 7; y += 0.5) {
        const away = Math.hypot(x, y);
        const where = away === 5 ? 'edge' : away < 5 ? 'inside' : 'outside';
        expect(pointInRegion(point(x, y), dozen), `(${x}, ${y})`).toBe(where);
        expect(pointInRegion(point(x, y), reverseContour(dozen)), `(${x}, ${y})`).toBe(where);
      }
    }
  });
});

describe('degenerate regions', () => {
  test('nothing is inside an empty one', () => {
    expect(pointInRegion(point(0, 0), [])).toBe('outside');
  });

  test('a piece without length changes nothing', () => {
    const dotted = [line(point(0, 0), point(0, 0)), ...square];
    expect(pointInRegion(point(1, 1), dotted)).toBe('inside');
    expect(pointInRegion(point(-1, -1), dotted)).toBe('outside');
  });

  test('a point wound round twice is inside', () => {
    expect(pointInRegion(point(1, 1), [...square, ...square])).toBe('inside');
  });
});
