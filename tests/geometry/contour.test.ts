import { describe, expect, test } from 'vitest';
import {
  arc,
  contourEnd,
  contourLength,
  contourPiece,
  contourStart,
  isClosed,
  joinContours,
  lengthTo,
  line,
  point,
  pointAtLength,
  pointAtLocation,
  polyline,
  reverseContour,
  splitContour,
  type Contour,
} from '../../src/geometry/index.ts';
import { expectPoint } from './near-point.ts';

/** Up 2, over the top of half a circle of radius 1, and down 3: 2 + π + 3 long. */
const hook: Contour = [
  line(point(0, 0), point(0, 2)),
  arc(point(0, 2), point(2, 2), -1),
  line(point(2, 2), point(2, -1)),
];
/** A square of side 2, counter-clockwise. */
const square = polyline([point(0, 0), point(2, 0), point(2, 2), point(0, 2)], true);
const ends = (contour: Contour) => contour.map(({ a, b }) => [a.x, a.y, b.x, b.y]);

describe('a contour', () => {
  test('is as long as its pieces together', () => {
    expect(contourLength(hook)).toBeCloseTo(5 + Math.PI, 14);
    expect(contourLength([])).toBe(0);
  });

  test('starts and ends where its first and last piece do', () => {
    expect(contourStart(hook)).toEqual({ x: 0, y: 0 });
    expect(contourEnd(hook)).toEqual({ x: 2, y: -1 });
    expect(() => contourStart([])).toThrow('The contour has no piece 0.');
    expect(() => contourEnd([])).toThrow('The contour has no piece -1.');
  });

  test('is closed when it ends where it started, within the tolerance', () => {
    expect(isClosed(square)).toBe(true);
    expect(isClosed(hook)).toBe(false);
    expect(isClosed([])).toBe(false);
    expect(isClosed([line(point(0, 0), point(5, 0)), line(point(5, 0), point(0, 9e-10))])).toBe(
      true,
    );
    expect(isClosed([line(point(0, 0), point(5, 0)), line(point(5, 0), point(0, 2e-9))])).toBe(
      false,
    );
  });

  test('reversed runs the other way through the same pieces', () => {
    expect(reverseContour(hook)).toEqual([
      line(point(2, -1), point(2, 2)),
      arc(point(2, 2), point(0, 2), 1),
      line(point(0, 2), point(0, 0)),
    ]);
  });

  test('can be drawn through points, open or closed', () => {
    expect(ends(polyline([point(0, 0), point(1, 0), point(1, 1)]))).toEqual([
      [0, 0, 1, 0],
      [1, 0, 1, 1],
    ]);
    expect(ends(square)).toEqual([
      [0, 0, 2, 0],
      [2, 0, 2, 2],
      [2, 2, 0, 2],
      [0, 2, 0, 0],
    ]);
    expect(polyline([])).toEqual([]);
    expect(polyline([], true)).toEqual([]);
    expect(polyline([point(1, 1)])).toEqual([]);
  });
});

describe('places on a contour', () => {
  test('a location names a piece and a share of its length', () => {
    expectPoint(pointAtLocation(hook, { index: 1, t: 0.5 }), 1, 3);
    expect(() => pointAtLocation(hook, { index: 3, t: 0 })).toThrow('The contour has no piece 3.');
  });

  test('the length to a location counts whole pieces before it', () => {
    expect(lengthTo(hook, { index: 0, t: 0.25 })).toBe(0.5);
    expect(lengthTo(hook, { index: 2, t: 0.5 })).toBeCloseTo(2 + Math.PI + 1.5, 14);
  });

  test('a length along the contour leads to a place', () => {
    expect(pointAtLength(hook, 0.5)).toEqual({ point: { x: 0, y: 0.5 }, index: 0, t: 0.25 });
    const crown = pointAtLength(hook, 2 + Math.PI / 2);
    expectPoint(crown.point, 1, 3);
    expect(crown.index).toBe(1);
    expect(crown.t).toBeCloseTo(0.5, 14);
    expect(pointAtLength(hook, 2)).toEqual({ point: { x: 0, y: 2 }, index: 1, t: 0 });
  });

  test('a length beyond either end stops there', () => {
    expect(pointAtLength(hook, -1)).toEqual({ point: { x: 0, y: 0 }, index: 0, t: 0 });
    expect(pointAtLength(hook, 99)).toEqual({ point: { x: 2, y: -1 }, index: 2, t: 1 });
    expect(() => pointAtLength([], 1)).toThrow('The contour has no piece');
  });
});

describe('cutting a contour', () => {
  test('in the middle of a piece makes two of it', () => {
    const [before, after] = splitContour(hook, { index: 0, t: 0.25 });
    expect(ends(before)).toEqual([[0, 0, 0, 0.5]]);
    expect(ends(after)).toEqual([
      [0, 0.5, 0, 2],
      [0, 2, 2, 2],
      [2, 2, 2, -1],
    ]);
    const [left, right] = splitContour(hook, { index: 2, t: 0.5 });
    expect(ends(left)).toEqual([
      [0, 0, 0, 2],
      [0, 2, 2, 2],
      [2, 2, 2, 0.5],
    ]);
    expect(ends(right)).toEqual([[2, 0.5, 2, -1]]);
  });

  test('at or within the tolerance of a join leaves no sliver', () => {
    for (const at of [
      { index: 1, t: 0 },
      { index: 1, t: 0.9e-9 / Math.PI },
      { index: 0, t: 1 },
      { index: 0, t: 1 - 0.4e-9 },
    ]) {
      const [before, after] = splitContour(hook, at);
      expect(before).toEqual(hook.slice(0, 1));
      expect(after).toEqual(hook.slice(1));
    }
    // 1.2e-9 from the join is a cut of its own
    expect(splitContour(hook, { index: 0, t: 1 - 0.6e-9 })[1]).toHaveLength(3);
    expect(splitContour(hook, { index: 0, t: 0.6e-9 })[0]).toHaveLength(1);
  });

  test('at its ends leaves one part empty', () => {
    expect(splitContour(hook, { index: 0, t: 0 })).toEqual([[], hook]);
    expect(splitContour(hook, { index: 2, t: 1 })).toEqual([hook, []]);
  });

  test('at a piece it has not got is refused', () => {
    expect(() => splitContour(hook, { index: 9, t: 0 })).toThrow('The contour has no piece 9.');
  });
});

describe('a part of a contour', () => {
  test('may span pieces', () => {
    const part = contourPiece(hook, { index: 0, t: 0.25 }, { index: 2, t: 0.5 });
    expect(ends(part)).toEqual([
      [0, 0.5, 0, 2],
      [0, 2, 2, 2],
      [2, 2, 2, 0.5],
    ]);
    expect(part[1]).toBe(hook[1]);
    expect(ends(contourPiece(hook, { index: 0, t: 0.5 }, { index: 1, t: 0 }))).toEqual([
      [0, 1, 0, 2],
    ]);
    expect(ends(contourPiece(hook, { index: 0, t: 1 }, { index: 2, t: 1 }))).toEqual([
      [0, 2, 2, 2],
      [2, 2, 2, -1],
    ]);
    expect(contourPiece(hook, { index: 0, t: 1 }, { index: 1, t: 0 })).toEqual([]);
  });

  test('may lie within one piece', () => {
    expect(ends(contourPiece(hook, { index: 2, t: 0.25 }, { index: 2, t: 0.5 }))).toEqual([
      [2, 1.25, 2, 0.5],
    ]);
    // the top third of the half circle is 60° wide: bulge -tan 15° = √3 - 2
    const [top] = contourPiece(hook, { index: 1, t: 1 / 3 }, { index: 1, t: 2 / 3 });
    expect(top?.bulge).toBeCloseTo(Math.sqrt(3) - 2, 14);
    expectPoint(top?.a, 0.5, 2 + Math.sqrt(3) / 2);
    expectPoint(top?.b, 1.5, 2 + Math.sqrt(3) / 2);
  });

  test('takes a whole piece as it is when its ends are reached, within the tolerance', () => {
    expect(contourPiece(hook, { index: 1, t: 0 }, { index: 1, t: 1 })).toEqual([hook[1]]);
    expect(contourPiece(hook, { index: 2, t: 0.3e-9 }, { index: 2, t: 1 - 0.3e-9 })).toEqual([
      hook[2],
    ]);
    const [short] = contourPiece(hook, { index: 2, t: 0.4e-9 }, { index: 2, t: 1 - 0.4e-9 });
    expect(short?.a.y).toBeLessThan(2);
    expect(short?.b.y).toBeGreaterThan(-1);
  });

  test('between equal places, or places within the tolerance, is empty', () => {
    expect(contourPiece(hook, { index: 1, t: 0.5 }, { index: 1, t: 0.5 })).toEqual([]);
    expect(contourPiece(hook, { index: 2, t: 0.5 }, { index: 2, t: 0.5 + 0.3e-9 })).toEqual([]);
    expect(contourPiece(hook, { index: 2, t: 0.5 }, { index: 2, t: 0.5 + 0.4e-9 })).toHaveLength(1);
  });

  test('runs across the start of a closed contour', () => {
    expect(ends(contourPiece(square, { index: 3, t: 0.5 }, { index: 0, t: 0.5 }))).toEqual([
      [0, 1, 0, 0],
      [0, 0, 1, 0],
    ]);
    expect(ends(contourPiece(square, { index: 1, t: 0.5 }, { index: 1, t: 0.25 }))).toEqual([
      [2, 1, 2, 2],
      [2, 2, 0, 2],
      [0, 2, 0, 0],
      [0, 0, 2, 0],
      [2, 0, 2, 0.5],
    ]);
  });

  test('never runs backwards along an open one', () => {
    const why = 'A piece of an open contour must end after it starts.';
    expect(() => contourPiece(hook, { index: 2, t: 0 }, { index: 0, t: 1 })).toThrow(why);
    expect(() => contourPiece(hook, { index: 1, t: 0.6 }, { index: 1, t: 0.5 })).toThrow(why);
  });
});

describe('joining contours', () => {
  test('puts them end to end and passes over empty ones', () => {
    expect(joinContours(hook.slice(0, 1), [], hook.slice(1))).toEqual(hook);
    expect(joinContours()).toEqual([]);
    expect(joinContours([], hook)).toEqual(hook);
  });

  test('closes a step within the tolerance', () => {
    const joined = joinContours(
      [line(point(0, 0), point(1, 0))],
      [arc(point(1, 5e-10), point(1, 1), 0.2), line(point(1, 1), point(0, 1))],
    );
    expect(joined).toEqual([
      line(point(0, 0), point(1, 0)),
      arc(point(1, 0), point(1, 1), 0.2),
      line(point(1, 1), point(0, 1)),
    ]);
  });

  test('refuses a gap and says where it is', () => {
    expect(() =>
      joinContours([line(point(0, 0), point(1, 0))], [line(point(1, 2e-9), point(1, 1))]),
    ).toThrow('Contours do not meet: one ends at (1, 0), the next starts at (1, 2e-9).');
    // within one of them as much as between two
    expect(() => joinContours([...hook.slice(0, 1), ...hook.slice(2)])).toThrow(
      'Contours do not meet: one ends at (0, 2), the next starts at (2, 2).',
    );
  });
});
