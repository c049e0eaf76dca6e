import { describe, expect, test } from 'vitest';
import {
  arc,
  arcFromTangent,
  arcThroughSagitta,
  centre,
  chordOf,
  curvature,
  isLine,
  line,
  point,
  pointAt,
  radius,
  reverseSegment,
  sagitta,
  segmentLength,
  splitSegment,
  sweep,
  tangentAt,
} from '../../src/geometry/index.ts';
import { expectPoint } from './near-point.ts';

/** Half the unit circle from (1, 0) over the top to (-1, 0): counter-clockwise, to the right of the way. */
const halfCircle = arc(point(1, 0), point(-1, 0), 1);
/** Quarter of the unit circle from (1, 0) to (0, 1): bulge tan(90°/4) = √2 - 1. */
const quarter = arc(point(1, 0), point(0, 1), Math.SQRT2 - 1);
/** Quarter of the circle of radius 2 about (0, 0) from (0, 2) clockwise to (2, 0). */
const clockwise = arc(point(0, 2), point(2, 0), 1 - Math.SQRT2);
/** Three quarters of the unit circle from (1, 0) counter-clockwise to (0, -1): bulge tan(270°/4) = √2 + 1. */
const threeQuarters = arc(point(1, 0), point(0, -1), Math.SQRT2 + 1);
/** 3-4-5: a chord of 6 with a crown of 1 is an arc of radius (9 + 1)/2 = 5. */
const shallow = arcThroughSagitta(point(0, 0), point(6, 0), -1);
const straight = line(point(1, 2), point(4, 6));

describe('making a piece', () => {
  test('a line has no bulge', () => {
    expect(straight).toEqual({ a: { x: 1, y: 2 }, b: { x: 4, y: 6 }, bulge: 0 });
  });

  test('an arc keeps its ends and bulge as given', () => {
    expect(arc(point(0, 0), point(1, 0), -0.5)).toEqual({
      a: { x: 0, y: 0 },
      b: { x: 1, y: 0 },
      bulge: -0.5,
    });
  });

  test('an arc may have any bulge up to 1e6 either way', () => {
    expect(arc(point(0, 0), point(1, 0), 1e6).bulge).toBe(1e6);
    expect(arc(point(0, 0), point(1, 0), -1e6).bulge).toBe(-1e6);
  });

  test.each([NaN, Infinity, -Infinity, 1.1e6, -1.1e6])('a bulge of %s is refused', (bulge) => {
    expect(() => arc(point(0, 0), point(1, 0), bulge)).toThrow(
      `An arc needs a bulge between -1e6 and 1e6, not ${bulge}.`,
    );
  });

  test('a full circle is refused, since in one piece it looks like a point', () => {
    const why = 'An arc needs two different ends; make a full circle of two halves.';
    expect(() => arc(point(1, 2), point(1, 2), 1)).toThrow(why);
    expect(() => arc(point(1, 2), point(1, 2), -1)).toThrow(why);
    expect(arc(point(1, 2), point(1, 2), 0).bulge).toBe(0);
    expect(arc(point(1, 2), point(1, 3), 1).bulge).toBe(1);
    expect(arc(point(1, 2), point(2, 2), 1).bulge).toBe(1);
  });

  test('a crown to the left of the way gives a clockwise arc', () => {
    // bulge = -2 · 1 / 6
    expect(arcThroughSagitta(point(0, 0), point(6, 0), 1).bulge).toBe(-1 / 3);
    expect(shallow.bulge).toBe(1 / 3);
    expectPoint(pointAt(shallow, 0.5), 3, -1);
  });

  test('a crown of nought gives a line, even between coinciding ends', () => {
    expect(arcThroughSagitta(point(0, 0), point(6, 0), 0).bulge).toBe(0);
    expect(arcThroughSagitta(point(1, 1), point(1, 1), 0)).toEqual(line(point(1, 1), point(1, 1)));
    expect(() => arcThroughSagitta(point(1, 1), point(1, 1), 0.1)).toThrow('bulge');
  });

  test('an arc can be made from the direction it leaves in', () => {
    // leaving (1, 0) straight up and ending at (0, 1) is the quarter of the unit circle
    expect(arcFromTangent(point(1, 0), point(0, 5), point(0, 1)).bulge).toBeCloseTo(
      Math.SQRT2 - 1,
      15,
    );
    // leaving (1, 0) straight up and ending at (0, -1) is three quarters of it
    expect(arcFromTangent(point(1, 0), point(0, 0.1), point(0, -1)).bulge).toBeCloseTo(
      Math.SQRT2 + 1,
      14,
    );
    // leaving (1, 0) straight down: the same, mirrored
    expect(arcFromTangent(point(1, 0), point(0, -2), point(0, 1)).bulge).toBeCloseTo(
      -Math.SQRT2 - 1,
      14,
    );
    // square to the chord: half a circle
    expect(arcFromTangent(point(0, 0), point(0, 3), point(-4, 0)).bulge).toBe(1);
    expect(arcFromTangent(point(0, 0), point(3, 0), point(5, 0))).toEqual(
      line(point(0, 0), point(5, 0)),
    );
    expect(arcFromTangent(point(2, 2), point(3, 0), point(2, 2)).bulge).toBe(0);
    expect(() => arcFromTangent(point(0, 0), point(1, 0), point(-5, 0))).toThrow('bulge');
    // almost straight behind: the gap left is as small as the direction is off
    // (1 + √(1 + h²)) / h for h = 1e-3
    expect(arcFromTangent(point(0, 0), point(1, 0), point(-1, 1e-3)).bulge).toBeCloseTo(
      2000.000499999875,
      9,
    );
  });
});

describe('what a piece is', () => {
  test('only a bulge too small for any coordinate to show counts as straight', () => {
    expect(isLine(straight)).toBe(true);
    expect(isLine({ ...straight, bulge: 1e-151 })).toBe(true);
    expect(isLine({ ...straight, bulge: -1e-151 })).toBe(true);
    expect(isLine({ ...straight, bulge: 1e-150 })).toBe(false);
    expect(isLine({ ...straight, bulge: -1e-149 })).toBe(false);
  });

  test('sweep is four times the angle whose tangent is the bulge, signed', () => {
    expect(sweep(halfCircle)).toBe(Math.PI);
    expect(sweep(quarter)).toBeCloseTo(Math.PI / 2, 15);
    expect(sweep(clockwise)).toBeCloseTo(-Math.PI / 2, 15);
    expect(sweep(threeQuarters)).toBeCloseTo(1.5 * Math.PI, 14);
    expect(sweep(straight)).toBe(0);
  });

  test('radius and centre', () => {
    expect(radius(halfCircle)).toBe(1);
    expect(radius(shallow)).toBeCloseTo(5, 14);
    expect(radius(clockwise)).toBeCloseTo(2, 14);
    expect(radius(straight)).toBe(Infinity);
    expectPoint(centre(quarter), 0, 0);
    expectPoint(centre(clockwise), 0, 0);
    expectPoint(centre(threeQuarters), 0, 0);
    expectPoint(centre(shallow), 3, 4);
    // off the origin, the chord askew: centre (7, 5), radius 5, from (10, 9) to (2, 5)
    const askew = arcFromTangent(point(10, 9), point(-4, 3), point(2, 5));
    expectPoint(centre(askew), 7, 5);
    expect(radius(askew)).toBeCloseTo(5, 13);
    expect(centre(straight)).toBeNull();
    // a point has no size, whatever its bulge
    expect(radius({ a: point(1, 1), b: point(1, 1), bulge: 2 })).toBe(0);
  });

  test('chord, crown height and curvature', () => {
    expect(chordOf(straight)).toBe(5);
    expect(sagitta(shallow)).toBeCloseTo(-1, 15);
    expect(sagitta(clockwise)).toBeCloseTo(2 - Math.SQRT2, 14);
    expect(sagitta(straight)).toBeCloseTo(0, 15);
    expect(curvature(shallow)).toBeCloseTo(0.2, 15);
    expect(curvature(clockwise)).toBeCloseTo(-0.5, 15);
    expect(curvature(straight)).toBe(0);
    expect(curvature({ a: point(1, 1), b: point(1, 1), bulge: 2 })).toBe(0);
    // a very flat arc: 8h/c² = 8e-9 / 36
    expect(curvature(arcThroughSagitta(point(0, 0), point(6, 0), -1e-9))).toBeCloseTo(
      8e-9 / 36,
      22,
    );
  });

  test('length is radius times sweep', () => {
    expect(segmentLength(straight)).toBe(5);
    expect(segmentLength(halfCircle)).toBeCloseTo(Math.PI, 14);
    expect(segmentLength(quarter)).toBeCloseTo(Math.PI / 2, 14);
    expect(segmentLength(clockwise)).toBeCloseTo(Math.PI, 14);
    expect(segmentLength(threeQuarters)).toBeCloseTo(1.5 * Math.PI, 13);
    // radius 5, half sweep asin(3/5)
    expect(segmentLength(shallow)).toBeCloseTo(10 * Math.asin(0.6), 13);
    expect(segmentLength({ a: point(1, 1), b: point(1, 1), bulge: 2 })).toBe(0);
  });
});

describe('walking along a piece', () => {
  test('the point at a share of the length', () => {
    expectPoint(pointAt(straight, 0.25), 1.75, 3);
    expectPoint(pointAt(halfCircle, 0.5), 0, 1);
    const cos30 = Math.sqrt(3) / 2;
    expectPoint(pointAt(quarter, 1 / 3), cos30, 0.5);
    expectPoint(pointAt(quarter, 2 / 3), 0.5, cos30);
    expectPoint(pointAt(clockwise, 1 / 3), 1, 2 * cos30);
    expectPoint(pointAt(threeQuarters, 1 / 3), 0, 1);
    expectPoint(pointAt(threeQuarters, 2 / 3), -1, 0);
    // arcs and lines carry on beyond their ends
    expectPoint(pointAt(quarter, 2), -1, 0);
    expectPoint(pointAt(quarter, -1), 0, -1);
    expectPoint(pointAt(straight, 2), 7, 10);
  });

  test('both ends come back exactly, whatever the bulge', () => {
    for (const bulge of [0, 0.3, -7, 1e6, -1e-9]) {
      const piece = arc(point(0.1, 0.2), point(0.7, 1.1), bulge);
      expect(pointAt(piece, 0)).toEqual({ x: 0.1, y: 0.2 });
      expect(pointAt(piece, 1)).toEqual({ x: 0.7, y: 1.1 });
    }
  });

  test('a very flat arc passes through its crown without losing it', () => {
    // crown 1e-9 off a chord of 6; a quarter of the way along it is 3/4 of that off
    const flat = arcThroughSagitta(point(0, 0), point(6, 0), -1e-9);
    expect(pointAt(flat, 0.5).y).toBeCloseTo(-1e-9, 22);
    expect(pointAt(flat, 0.25).y).toBeCloseTo(-0.75e-9, 22);
    expect(pointAt(flat, 0.25).x).toBeCloseTo(1.5, 14);
  });

  test('an arc that is almost a full circle keeps its crown', () => {
    // a gap of 1e-3 and bulge 1e6: crown 1e6 · 1e-3 / 2 = 500 off the gap
    expectPoint(pointAt(arc(point(0, 0), point(1e-3, 0), 1e6), 0.5), 5e-4, -500, 1e-7);
  });

  test('a piece without length stays where it is', () => {
    expect(pointAt({ a: point(3, 4), b: point(3, 4), bulge: 5 }, 0.3)).toEqual({ x: 3, y: 4 });
  });

  test('the direction of travel', () => {
    expectPoint(tangentAt(straight, 0.7), 0.6, 0.8);
    expectPoint(tangentAt(quarter, 0), 0, 1);
    expectPoint(tangentAt(quarter, 1), -1, 0);
    expectPoint(tangentAt(quarter, 0.5), -Math.SQRT1_2, Math.SQRT1_2);
    expectPoint(tangentAt(clockwise, 0), 1, 0);
    expectPoint(tangentAt(clockwise, 1), 0, -1);
    // askew: chord (3, 4), at the crown the direction is the chord's
    expectPoint(tangentAt(arc(point(1, 2), point(4, 6), 0.4), 0.5), 0.6, 0.8);
    expect(tangentAt({ a: point(1, 1), b: point(1, 1), bulge: 2 }, 0.5)).toEqual({ x: 0, y: 0 });
  });
});

describe('turning a piece round and cutting it', () => {
  test('reversed, ends change places and the bulge its sign; a line stays plain nought', () => {
    expect(reverseSegment(clockwise)).toEqual({
      a: { x: 2, y: 0 },
      b: { x: 0, y: 2 },
      bulge: Math.SQRT2 - 1,
    });
    expect(Object.is(reverseSegment(straight).bulge, 0)).toBe(true);
    expect(reverseSegment({ ...straight, bulge: 1e-200 }).bulge).toBe(-1e-200);
  });

  test('a line is cut by length', () => {
    expect(splitSegment(line(point(0, 0), point(8, 4)), 0.25)).toEqual([
      line(point(0, 0), point(2, 1)),
      line(point(2, 1), point(8, 4)),
    ]);
  });

  test('an arc is cut by sweep', () => {
    // three quarters cut at a third: a quarter, bulge √2 - 1, and a half, bulge 1
    const [head, tail] = splitSegment(threeQuarters, 1 / 3);
    expect(head.a).toEqual({ x: 1, y: 0 });
    expectPoint(head.b, 0, 1);
    expect(head.bulge).toBeCloseTo(Math.SQRT2 - 1, 14);
    expect(tail.a).toEqual(head.b);
    expect(tail.b).toEqual({ x: 0, y: -1 });
    expect(tail.bulge).toBeCloseTo(1, 14);
  });
});
