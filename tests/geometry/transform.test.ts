import { describe, expect, test } from 'vitest';
import { rad } from '../../src/units/index.ts';
import {
  arc,
  line,
  mirrorAcross,
  point,
  polyline,
  reflectionIn,
  rotateAbout,
  rotationAbout,
  STILL,
  transformContour,
  transformPoint,
  transformRegion,
  transformSegment,
  transformVector,
  translate,
  translation,
} from '../../src/geometry/index.ts';
import { expectPoint } from './near-point.ts';

const quarterTurn = rad(Math.PI / 2);
const bend = arc(point(1, 0), point(3, 0), 0.5);

describe('a rigid motion', () => {
  test('mirrors first, then turns, then moves', () => {
    const motion = { rotation: quarterTurn, translation: point(10, 20), mirrored: true };
    // (1, 2) → (1, -2) → (2, 1) → (12, 21)
    expectPoint(transformPoint(point(1, 2), motion), 12, 21);
    expectPoint(transformPoint(point(1, 2), { ...motion, mirrored: false }), 8, 21);
    expectPoint(
      transformPoint(point(1, 2), { rotation: quarterTurn, translation: point(0, 0) }),
      -2,
      1,
    );
  });

  test('never shifts a direction', () => {
    const motion = { rotation: quarterTurn, translation: point(10, 20), mirrored: true };
    expectPoint(transformVector(point(1, 2), motion), 2, 1);
  });

  test('may leave everything where it is', () => {
    expect(transformPoint(point(3, -4), STILL)).toEqual({ x: 3, y: -4 });
    expect(transformSegment(bend, STILL)).toEqual(bend);
    expect(transformSegment(bend, { ...STILL, mirrored: true }).bulge).toBe(-0.5);
  });

  test('by a displacement', () => {
    expect(transformPoint(point(3, -4), translation(point(1, 2)))).toEqual({ x: 4, y: -2 });
    expect(translate([bend], point(1, 2))).toEqual([arc(point(2, 2), point(4, 2), 0.5)]);
  });

  test('about a pivot leaves the pivot', () => {
    expectPoint(transformPoint(point(2, 3), rotationAbout(point(2, 3), rad(1.2))), 2, 3);
    expectPoint(transformPoint(point(5, 3), rotationAbout(point(2, 3), quarterTurn)), 2, 6);
    const [turned] = rotateAbout([bend], point(1, 0), quarterTurn);
    expectPoint(turned?.a, 1, 0);
    expectPoint(turned?.b, 1, 2);
    expect(turned?.bulge).toBe(0.5);
  });

  test('mirrors in any line and turns bulges over', () => {
    // in the line y = x + 1: (x, y) → (y - 1, x + 1)
    const mirror = reflectionIn(point(0, 1), point(5, 5));
    expectPoint(transformPoint(point(3, 0), mirror), -1, 4);
    expectPoint(transformPoint(point(7, 8), mirror), 7, 8);
    const [mirrored] = mirrorAcross([bend], point(0, 1), point(5, 5));
    expectPoint(mirrored?.a, -1, 2);
    expectPoint(mirrored?.b, -1, 4);
    expect(mirrored?.bulge).toBe(-0.5);
    // off both axes: (2, 3) and (3, 5) lie on y = 2x - 1; the mirror of (1, 6) is (5, 4)
    expectPoint(transformPoint(point(1, 6), reflectionIn(point(2, 3), point(1, 2))), 5, 4);
    // a line keeps plain nought
    const [straight] = mirrorAcross([line(point(1, 0), point(2, 0))], point(0, 0), point(1, 0));
    expect(Object.is(straight?.bulge, 0)).toBe(true);
  });

  test('moves a contour piece by piece, in the same order', () => {
    const path = polyline([point(0, 0), point(1, 0), point(1, 2)]);
    expect(transformContour(path, translation(point(5, 6)))).toEqual(
      polyline([point(5, 6), point(6, 6), point(6, 8)]),
    );
  });

  test('keeps the metal of a region on its left: a mirrored one is walked backwards', () => {
    const region = polyline([point(0, 0), point(4, 0), point(0, 3)], true);
    const mirrored = transformRegion(region, reflectionIn(point(0, 0), point(1, 0)));
    expect(mirrored.map(({ a }) => [a.x, a.y])).toEqual([
      [0, 0],
      [0, -3],
      [4, 0],
    ]);
    expect(transformRegion(region, STILL)).toEqual(region);
  });
});
