import { describe, expect, test } from 'vitest';
import {
  arc,
  arcFromTangent,
  arcThroughSagitta,
  isSimpleOutline,
  line,
  orientation,
  point,
  pointAt,
  polyline,
  reverseContour,
  reverseSegment,
  sameContour,
  type Contour,
} from '../../src/geometry/index.ts';
import { expectPoint } from './near-point.ts';

const square = polyline([point(0, 0), point(4, 0), point(4, 4), point(0, 4)], true);
const closed = (...corners: readonly (readonly [number, number])[]): Contour =>
  polyline(
    corners.map(([x, y]) => point(x, y)),
    true,
  );

describe('a simple outline', () => {
  test('may be walked either way', () => {
    expect(isSimpleOutline(square)).toBe(true);
    expect(isSimpleOutline(reverseContour(square))).toBe(true);
  });

  test('may have only two pieces when one is an arc', () => {
    expect(
      isSimpleOutline([line(point(0, 0), point(4, 0)), arc(point(4, 0), point(0, 0), 1)]),
    ).toBe(true);
    expect(
      isSimpleOutline([arc(point(0, 0), point(4, 0), 1), arc(point(4, 0), point(0, 0), 0.1)]),
    ).toBe(true);
    expect(isSimpleOutline([line(point(0, 0), point(4, 0)), line(point(4, 0), point(0, 0))])).toBe(
      false,
    );
    expect(
      isSimpleOutline([arc(point(0, 0), point(4, 0), 0.5), arc(point(4, 0), point(0, 0), -0.5)]),
    ).toBe(false);
  });

  test('may run on from arc to line and arc without a corner', () => {
    const bead = [
      arcFromTangent(point(4, 0), point(0, 1), point(2, 2)),
      arcFromTangent(point(2, 2), point(-1, 0), point(0, 0)),
      line(point(0, 0), point(4, 0)),
    ];
    expect(isSimpleOutline(bead)).toBe(true);
    const slot = [
      line(point(0, 0), point(4, 0)),
      arc(point(4, 0), point(4, 2), 1),
      line(point(4, 2), point(0, 2)),
      arc(point(0, 2), point(0, 0), 1),
    ];
    expect(isSimpleOutline(slot)).toBe(true);
  });

  test('is closed, of two pieces or more, joined end to end', () => {
    expect(isSimpleOutline([])).toBe(false);
    expect(isSimpleOutline([arc(point(0, 0), point(1e-10, 0), 1000)])).toBe(false);
    expect(isSimpleOutline(square.slice(0, 3))).toBe(false);
    expect(isSimpleOutline([square[0], square[2], square[1], square[3]] as Contour)).toBe(false);
    const stepped = [...square.slice(0, 3), line(point(0, 4), point(1e-8, 0))];
    expect(isSimpleOutline(stepped)).toBe(false);
    expect(isSimpleOutline([...square.slice(0, 3), line(point(0, 4), point(5e-10, 0))])).toBe(true);
  });

  test('has no piece without length', () => {
    expect(isSimpleOutline([...square, line(point(0, 0), point(0, 0))])).toBe(false);
    expect(isSimpleOutline(closed([0, 0], [4, 0], [4, 1e-9], [0, 4]))).toBe(false);
    // all but a full circle, closed by less than the tolerance
    const gap = [arc(point(0, 0), point(5e-10, 0), 1e6), line(point(5e-10, 0), point(0, 0))];
    expect(isSimpleOutline(gap)).toBe(false);
    expect(isSimpleOutline(closed([0, 0], [4, 0], [4, 3e-9], [0, 4]))).toBe(true);
  });

  test('does not cross itself', () => {
    expect(isSimpleOutline(closed([0, 0], [4, 4], [4, 0], [0, 4]))).toBe(false);
    expect(isSimpleOutline([...square.slice(0, 3), arc(point(0, 4), point(0, 0), -1.5)])).toBe(
      false,
    );
  });

  test('does not touch itself', () => {
    // a corner on a side, a corner on a corner, a side on a side, an arc on a side
    expect(isSimpleOutline(closed([0, 0], [4, 0], [4, 4], [2, 0], [0, 4]))).toBe(false);
    expect(isSimpleOutline(closed([0, 0], [2, 2], [4, 0], [4, 4], [2, 2], [0, 4]))).toBe(false);
    expect(isSimpleOutline(closed([0, 0], [4, 0], [4, 4], [3, 4], [3, 0], [0, 4]))).toBe(false);
    expect(
      isSimpleOutline([
        ...square.slice(0, 2),
        arc(point(4, 4), point(0, 4), -2),
        square[3],
      ] as Contour),
    ).toBe(false);
    expect(
      isSimpleOutline([
        line(point(-4, 0), point(4, 0)),
        line(point(4, 0), point(4, 4)),
        arc(point(4, 4), point(-4, 4), -1),
        line(point(-4, 4), point(-4, 0)),
      ]),
    ).toBe(false);
  });

  test('may come as near itself as more than the tolerance', () => {
    expect(isSimpleOutline(closed([0, 0], [4, 0], [4, 4], [2, 2e-9], [0, 4]))).toBe(true);
    expect(isSimpleOutline(closed([0, 0], [4, 0], [4, 4], [2, 0.9e-9], [0, 4]))).toBe(false);
  });

  test('does not fold back on itself at a join', () => {
    expect(isSimpleOutline(closed([0, 0], [4, 0], [2, 0], [2, 3]))).toBe(false);
    // first and last piece on one another
    expect(isSimpleOutline(closed([0, 0], [4, 0], [4, 3], [2, 0]))).toBe(false);
    // a sharp but honest corner
    expect(isSimpleOutline(closed([0, 0], [4, 0], [0, 0.01]))).toBe(true);
  });

  test('may meet its neighbour at their join only', () => {
    // the arc comes back to the line it left
    expect(
      isSimpleOutline([
        line(point(0, 0), point(6, 0)),
        arc(point(6, 0), point(2, -1), 2),
        line(point(2, -1), point(0, 0)),
      ]),
    ).toBe(false);
    // last and first piece cross away from their join
    expect(
      isSimpleOutline([
        arc(point(0, 0), point(6, 0), 1),
        line(point(6, 0), point(7, -4)),
        line(point(7, -4), point(0, 0)),
      ]),
    ).toBe(false);
  });
});

describe('orientation', () => {
  test('is the sense of walking', () => {
    expect(orientation(square)).toBe('counterClockwise');
    expect(orientation(reverseContour(square))).toBe('clockwise');
  });

  test('is none for what encloses nothing', () => {
    expect(orientation([])).toBeNull();
    expect(orientation(closed([0, 0], [4, 0]))).toBeNull();
    expect(orientation(closed([0, 0], [1e-9, 0], [0, 1e-9]))).toBeNull();
    expect(orientation(closed([0, 0], [2e-9, 0], [0, 2e-9]))).toBe('counterClockwise');
    expect(orientation(closed([0, 0], [0, 2e-9], [2e-9, 0]))).toBe('clockwise');
  });
});

describe('the same contour', () => {
  const bead = [arc(point(0, 0), point(4, 0), 0.5), line(point(4, 0), point(4, 4))];

  test('has the same pieces within the tolerance', () => {
    expect(
      sameContour(bead, [arc(point(0, 5e-10), point(4, 0), 0.5), line(point(4, 0), point(4, 4))]),
    ).toBe(true);
    expect(
      sameContour(bead, [arc(point(0, 5e-9), point(4, 0), 0.5), line(point(4, 0), point(4, 4))]),
    ).toBe(false);
    expect(
      sameContour(bead, [arc(point(0, 0), point(4, 0), 0.5), line(point(4, 0), point(4, 4.1))]),
    ).toBe(false);
    expect(
      sameContour(bead, [arc(point(0, 0), point(4, 0), 0.6), line(point(4, 0), point(4, 4))]),
    ).toBe(false);
    expect(sameContour(bead, bead.slice(0, 1))).toBe(false);
    expect(sameContour(bead.slice(0, 1), bead)).toBe(false);
    expect(sameContour([], [])).toBe(true);
  });

  test('needs start, end and crown to be the same, not two of the three', () => {
    // (3, 1) is as far from the crown (2, -1) as (0, 0) and (4, 0) are: √5
    const rise = Math.hypot(1.5, 1.5);
    const other = arcThroughSagitta(point(3, 1), point(4, 0), -rise);
    expectPoint(pointAt(other, 0.5), 2, -1);
    expect(sameContour(bead, [other, ...bead.slice(1)])).toBe(false);
    expect(sameContour([reverseSegment(other)], [arc(point(4, 0), point(0, 0), -0.5)])).toBe(false);
    expect(sameContour([line(point(0, 0), point(4, 0))], [line(point(0, 0), point(4, 1))])).toBe(
      false,
    );
    expect(sameContour([line(point(0, 0), point(4, 0))], [line(point(0, 1), point(4, 0))])).toBe(
      false,
    );
  });

  test('may be started anywhere when closed, but not when open', () => {
    expect(sameContour(square, [...square.slice(2), ...square.slice(0, 2)])).toBe(true);
    expect(sameContour(square, [...square.slice(3), ...square.slice(0, 3)])).toBe(true);
    expect(sameContour(square, reverseContour(square))).toBe(false);
    expect(sameContour(bead, [...bead].reverse())).toBe(false);
    expect(sameContour(square, polyline([...square.map(({ a }) => a), point(0, 1)]))).toBe(false);
    const open = polyline([point(4, 0), point(4, 4), point(0, 4), point(0, 0), point(4, 1)]);
    expect(sameContour(square, open)).toBe(false);
    expect(sameContour(open, square)).toBe(false);
  });
});
