import fc from 'fast-check';
import { line, point, type Point, type Segment } from '../../src/geometry/index.ts';
import { runs } from '../runs.ts';

/** How many shapes to try. */
export const check = (full: number) => ({ numRuns: runs(full) });

const within = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

/** A point within 100 mm of the origin either way, on a 1 µm grid now and then so that shapes line up. */
export const somePoint: fc.Arbitrary<Point> = fc.oneof(
  fc.record({ x: within(-100, 100), y: within(-100, 100) }),
  fc
    .record({ x: fc.integer({ min: -20, max: 20 }), y: fc.integer({ min: -20, max: 20 }) })
    .map(({ x, y }) => point(x, y)),
);

/** Straight, flat as a hair, ordinary, or most of a circle, either way. */
const someBulge: fc.Arbitrary<number> = fc.oneof(
  fc.constant(0),
  fc
    .record({ digits: within(-12, 0), sense: fc.constantFrom(1, -1) })
    .map(({ digits, sense }) => sense * 10 ** digits),
  within(-1, 1),
  within(-8, 8),
);

/** A piece with a chord of at least 0.1 mm. */
export const someSegment: fc.Arbitrary<Segment> = fc
  .record({ a: somePoint, b: somePoint, bulge: someBulge })
  .filter(({ a, b }) => Math.hypot(a.x - b.x, a.y - b.y) >= 0.1);

export const share = within(0, 1);
export const angle = within(-Math.PI, Math.PI);

/**
 * A simple closed outline, counter-clockwise: corners in order round a point at
 * 45° or less from one another, joined by arcs too shallow to reach across.
 */
export const someRegion: fc.Arbitrary<Segment[]> = fc
  .record({
    middle: somePoint,
    corners: fc.array(fc.record({ reach: within(8, 12), bulge: within(-0.1, 0.1) }), {
      minLength: 8,
      maxLength: 14,
    }),
  })
  .map(({ middle, corners }) => {
    const at = (i: number): Point => {
      const way = (2 * Math.PI * i) / corners.length;
      const reach = corners[i % corners.length]?.reach ?? 0;
      return point(middle.x + reach * Math.cos(way), middle.y + reach * Math.sin(way));
    };
    const points = corners.map((_, i) => at(i));
    return corners.map(({ bulge }, i) => ({
      ...line(points[i] ?? middle, points[(i + 1) % points.length] ?? middle),
      bulge,
    }));
  });
