import { describe, expect, test } from 'vitest';
import { extremeInDirection } from '../../../src/geometry/index.ts';
import { setUp } from '../../../src/joint/butt/set-up.ts';
import { heightOn, place, placeContour } from '../../../src/joint/butt/plate-frame.ts';
import type { ButtJoint } from '../../../src/joint/index.ts';
import { butt, cornersOf, rounded, roundedPoint } from './plain-butt.ts';

const platesOf = (changes: Partial<ButtJoint>) => setUp(butt(changes)).plates;

describe('plates set level', () => {
  test('face each other across the root opening, plate 1 left with its root surface on y = 0', () => {
    const [one, two] = platesOf({});
    expect(cornersOf(placeContour(one.frame, one.edge.path))).toEqual([
      [-1, 0],
      [-1, 2],
      [-9, 10],
    ]);
    expect(cornersOf(placeContour(two.frame, two.edge.path))).toEqual([
      [1, 0],
      [1, 2],
      [9, 10],
    ]);
  });

  test('carry their surface lines outward from the groove edges', () => {
    const [one, two] = platesOf({ t2: 12, offset: 1 });
    expect(roundedPoint(one.face.origin)).toEqual([-9, 10]);
    expect(one.face.along).toEqual({ x: -1, y: 0 });
    expect(one.root.normal.y).toBe(-1);
    // mid-plane 2 at 5 + 1 = 6, so plate 2 reaches from 0 to 12; its bevel is 10 deep
    expect(roundedPoint(two.root.origin)).toEqual([1, 0]);
    expect(roundedPoint(two.face.origin)).toEqual([11, 12]);
    expect(two.face.normal.y).toBe(1);
  });

  test('of unequal thickness are centred on one another without an offset', () => {
    // mid-planes at 5: plate 2 reaches from -2 to 12
    const [, two] = platesOf({ t2: 14 });
    expect(two.root.origin.y).toBeCloseTo(-2, 12);
    expect(two.face.origin.y).toBeCloseTo(12, 12);
  });
});

describe('a plate turned up', () => {
  test('keeps the root opening between the foremost points of the edges', () => {
    // turned up, a square edge leads with its face corner; turned down, with its root corner
    for (const angularMisalignment of [7, -7]) {
      const [, two] = platesOf({ preparation: 'square', angularMisalignment });
      const edge = placeContour(two.frame, two.edge.path);
      expect(-extremeInDirection(edge, { x: -1, y: 0 }).value).toBeCloseTo(1, 12);
      const foremost = angularMisalignment > 0 ? edge[0]?.b : edge[0]?.a;
      expect(foremost?.x).toBeCloseTo(1, 12);
    }
  });

  test('turns about the middle of its nose, which stays at its height', () => {
    // middle of the nose of plate 2: 5 + 1.5 above plate 1's root surface
    const [, two] = platesOf({ angularMisalignment: 10, offset: 1.5, t2: 12 });
    expect(place(two.frame, { x: 0, y: 6 }).y).toBeCloseTo(6.5, 12);
    // its face rises away from the joint by sin 10° a millimetre
    expect(two.face.along.y).toBeCloseTo(Math.sin((10 * Math.PI) / 180), 12);
  });

  test('still measures heights square to its own root surface', () => {
    const [, two] = platesOf({ angularMisalignment: 10 });
    expect(heightOn(two.frame, place(two.frame, { x: 4, y: 7 }))).toBeCloseTo(7, 12);
  });
});

test('plate 1 is seen in a mirror: the curve of a U turns the other way', () => {
  const [one, two] = platesOf({ preparation: 'singleU', bevelAngle1: 20, bevelAngle2: 20 });
  const [left, right] = [one, two].map(({ frame, edge }) => placeContour(frame, edge.path));
  expect(left?.[1]?.bulge).toBe(-(right?.[1]?.bulge ?? NaN));
  expect(left?.map(({ b }) => rounded(-b.x))).toEqual(right?.map(({ b }) => rounded(b.x)));
});
