/**
 * The kernel against `@flatten-js/core` 1.6.15, which keeps arcs as centre,
 * radius and angles. Radii up to 1e4 mm and bulges down to 1e-3: beyond that
 * its own form of an arc loses digits. Its intersections are not consulted.
 */
import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  arc,
  centre,
  closestOfContours,
  contourArea,
  contourBounds,
  contourLength,
  distanceBetweenSegments,
  line,
  nearestOnContour,
  nearestOnSegment,
  pointInRegion,
  radius,
  segmentBounds,
  segmentLength,
  transformContour,
  type Contour,
  type Point,
  type Segment,
} from '../../src/geometry/index.ts';
import { rad } from '../../src/units/index.ts';
import { check, somePoint, someRegion } from '../property/geometry-shapes.ts';

const LENGTH = 1e-9;
const AREA = 1e-8;

// as it comes, it takes places a millionth apart for one and arcs for as much longer
Flatten.Utils.setTolerance(1e-11);

/** Nearer than this the oracle may take a place just past an arc's end for one on it. */
const AT_HAND = 1e-6;

const pointOf = ({ x, y }: Point) => new Flatten.Point(x, y);

function shapeOf(segment: Segment): Flatten.Segment | Flatten.Arc {
  const middle = centre(segment);
  if (middle === null) return new Flatten.Segment(pointOf(segment.a), pointOf(segment.b));
  const angleTo = (at: Point) => Math.atan2(at.y - middle.y, at.x - middle.x);
  return new Flatten.Arc(
    pointOf(middle),
    radius(segment),
    angleTo(segment.a),
    angleTo(segment.b),
    segment.bulge > 0,
  );
}

const within = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

/** Lines, and arcs of a radius the oracle can hold. */
const somePiece = fc
  .record({
    a: somePoint,
    b: somePoint,
    bulge: fc.oneof(fc.constant(0), within(1e-3, 3), within(-3, -1e-3)),
  })
  .filter(
    (segment) =>
      Math.hypot(segment.a.x - segment.b.x, segment.a.y - segment.b.y) > 0.1 &&
      (segment.bulge === 0 || radius(segment) < 1e4),
  );

/** Outlines whose every side is a line or an arc the oracle can hold. */
const someOutline: fc.Arbitrary<Contour> = someRegion.map((region) =>
  region.map((segment) => (Math.abs(segment.bulge) < 1e-3 ? { ...segment, bulge: 0 } : segment)),
);

describe('against an independent kernel', () => {
  test('lengths of pieces agree', () => {
    fc.assert(
      fc.property(somePiece, (piece) => {
        expect(Math.abs(segmentLength(piece) - shapeOf(piece).length)).toBeLessThan(LENGTH);
      }),
      check(20000),
    );
  });

  test('bounds of pieces agree', () => {
    fc.assert(
      fc.property(somePiece, (piece) => {
        const box = segmentBounds(piece);
        const other = shapeOf(piece).box;
        expect(Math.abs(box.left - other.xmin)).toBeLessThan(LENGTH);
        expect(Math.abs(box.right - other.xmax)).toBeLessThan(LENGTH);
        expect(Math.abs(box.bottom - other.ymin)).toBeLessThan(LENGTH);
        expect(Math.abs(box.top - other.ymax)).toBeLessThan(LENGTH);
      }),
      check(20000),
    );
  });

  test('distances from a point to a piece agree', () => {
    fc.assert(
      fc.property(somePiece, somePoint, (piece, from) => {
        const ours = nearestOnSegment(from, piece).distance;
        fc.pre(ours > AT_HAND);
        const [other] = pointOf(from).distanceTo(shapeOf(piece));
        expect(Math.abs(ours - other)).toBeLessThan(LENGTH);
      }),
      check(20000),
    );
  });

  test('distances between two pieces that do not meet agree', () => {
    fc.assert(
      fc.property(somePiece, somePiece, (first, second) => {
        const ours = distanceBetweenSegments(first, second);
        fc.pre(ours > AT_HAND);
        const [other] = shapeOf(first).distanceTo(shapeOf(second));
        expect(Math.abs(ours - other)).toBeLessThan(LENGTH);
      }),
      check(20000),
    );
  });

  test('areas, lengths and bounds of outlines agree', () => {
    fc.assert(
      fc.property(someOutline, (outline) => {
        const polygon = new Flatten.Polygon(outline.map(shapeOf));
        expect(Math.abs(contourArea(outline) - polygon.area())).toBeLessThan(AREA);
        const around = outline.map(shapeOf).reduce((sum, { length }) => sum + length, 0);
        expect(Math.abs(contourLength(outline) - around)).toBeLessThan(LENGTH);
        const box = contourBounds(outline);
        expect(Math.abs(box.left - polygon.box.xmin)).toBeLessThan(LENGTH);
        expect(Math.abs(box.top - polygon.box.ymax)).toBeLessThan(LENGTH);
      }),
      check(20000),
    );
  });

  test('a point is inside, outside or on the edge of the same outlines', () => {
    fc.assert(
      fc.property(someOutline, somePoint, (outline, at) => {
        // so near the edge that rounding decides
        fc.pre(nearestOnContour(at, outline).distance > 1e-8);
        const inside = new Flatten.Polygon(outline.map(shapeOf)).contains(pointOf(at));
        expect(pointInRegion(at, outline)).toBe(inside ? 'inside' : 'outside');
      }),
      check(5000),
    );
  });

  test('distances from a point to an outline and between outlines agree', () => {
    fc.assert(
      fc.property(someOutline, someOutline, somePoint, (outline, second, from) => {
        // moved well clear of the first
        const other = transformContour(second, {
          rotation: rad(0.7),
          translation: { x: 400, y: 31 },
        });
        const one = outline.map(shapeOf);
        const two = other.map(shapeOf);
        const [edge] = one.map((shape) => pointOf(from).distanceTo(shape)[0]).sort((a, b) => a - b);
        expect(Math.abs(nearestOnContour(from, outline).distance - (edge ?? NaN))).toBeLessThan(
          LENGTH,
        );
        const apart = Math.min(...one.flatMap((a) => two.map((b) => a.distanceTo(b)[0])));
        expect(Math.abs(closestOfContours(outline, other).distance - apart)).toBeLessThan(LENGTH);
      }),
      check(2000),
    );
  });

  test('the oracle itself tells a wrong bulge', () => {
    // so that agreement means something: a bulge off by 1e-6 shows
    const piece = arc({ x: 0, y: 0 }, { x: 10, y: 0 }, 0.4);
    const off = arc({ x: 0, y: 0 }, { x: 10, y: 0 }, 0.4 + 1e-6);
    expect(Math.abs(segmentLength(off) - shapeOf(piece).length)).toBeGreaterThan(LENGTH);
    expect(shapeOf(line({ x: 0, y: 0 }, { x: 3, y: 4 })).length).toBe(5);
  });
});
