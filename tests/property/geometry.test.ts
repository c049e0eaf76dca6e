import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rad } from '../../src/units/index.ts';
import {
  add,
  arcFromTangent,
  boundsGap,
  capArea,
  centre,
  closestOfSegments,
  contourArea,
  contourBounds,
  contourLength,
  contourPiece,
  curvature,
  distance,
  dot,
  extremeInDirection,
  farthestOnSegment,
  fromAngle,
  intersectLine,
  intersectSegments,
  isSimpleOutline,
  joinContours,
  nearestOnContour,
  nearestOnSegment,
  orientation,
  pointAt,
  pointInRegion,
  radius,
  reflectionIn,
  reverseContour,
  reverseSegment,
  sameContour,
  segmentBounds,
  segmentLength,
  splitContour,
  splitSegment,
  tangentAt,
  TOLERANCE,
  transformContour,
  transformPoint,
  transformRegion,
  transformSegment,
  type RigidTransform,
  type Segment,
} from '../../src/geometry/index.ts';
import { angle, check, share, somePoint, someRegion, someSegment } from './geometry-shapes.ts';

/** Rounding of coordinates up to some 1e3 mm, taken through a dozen operations. */
const ROUNDING = 1e-10;

const someMotion: fc.Arbitrary<RigidTransform> = fc
  .record({ turn: angle, translation: somePoint, mirrored: fc.boolean() })
  .map(({ turn, translation, mirrored }) => ({ rotation: rad(turn), translation, mirrored }));

/** Size that rounding of places on the piece grows with. */
const span = (segment: Segment) =>
  100 + Math.min(radius(segment), 1e6 * distance(segment.a, segment.b)) * 1e-3;

/** Points of a piece at even steps, both ends included. */
const samples = (segment: Segment, count: number) =>
  Array.from({ length: count + 1 }, (_, i) => pointAt(segment, i / count));

describe('a piece', () => {
  test('keeps its places when walked the other way', () => {
    fc.assert(
      fc.property(someSegment, share, (segment, t) => {
        const back = reverseSegment(segment);
        expect(distance(pointAt(segment, t), pointAt(back, 1 - t))).toBeLessThan(ROUNDING);
        const turned = add(tangentAt(segment, t), tangentAt(back, 1 - t));
        expect(Math.hypot(turned.x, turned.y)).toBeLessThan(1e-12);
        expect(segmentLength(back)).toBe(segmentLength(segment));
        expect(capArea(back)).toBe(segment.bulge === 0 ? 0 : -capArea(segment));
      }),
      check(20000),
    );
  });

  test('cut in two is as long, encloses as much and lies where it lay', () => {
    fc.assert(
      fc.property(someSegment, share, share, (segment, cut, t) => {
        const [head, tail] = splitSegment(segment, cut);
        const whole = segmentLength(segment);
        expect(Math.abs(segmentLength(head) - cut * whole)).toBeLessThan(ROUNDING);
        expect(Math.abs(segmentLength(head) + segmentLength(tail) - whole)).toBeLessThan(ROUNDING);
        const area = contourArea([segment]);
        expect(Math.abs(contourArea([head, tail]) - area)).toBeLessThan(1e-12 * (1e4 + whole ** 2));
        expect(distance(pointAt(head, t), pointAt(segment, t * cut))).toBeLessThan(ROUNDING);
        expect(distance(pointAt(tail, t), pointAt(segment, cut + t * (1 - cut)))).toBeLessThan(
          ROUNDING,
        );
      }),
      check(20000),
    );
  });

  test('stays at its radius from its centre, and turns with its curvature', () => {
    fc.assert(
      fc.property(
        someSegment.filter(({ bulge }) => Math.abs(bulge) > 1e-4),
        share,
        (segment, t) => {
          const middle = centre(segment) ?? { x: NaN, y: NaN };
          const off = distance(middle, pointAt(segment, t)) - radius(segment);
          expect(Math.abs(off)).toBeLessThan(1e-13 * (1e3 + radius(segment)));
          expect(Math.abs(curvature(segment))).toBeCloseTo(1 / radius(segment), 12);
        },
      ),
      check(20000),
    );
  });

  test('is found again from the direction it leaves in', () => {
    fc.assert(
      fc.property(someSegment, (segment) => {
        const again = arcFromTangent(segment.a, tangentAt(segment, 0), segment.b);
        expect(Math.abs(again.bulge - segment.bulge)).toBeLessThan(
          1e-14 * (1 + segment.bulge ** 2) * 10,
        );
      }),
      check(20000),
    );
  });

  test('changes by no more than its crown as an arc flattens through nought', () => {
    fc.assert(
      fc.property(
        someSegment,
        somePoint,
        share,
        fc.double({ min: -1e-6, max: 1e-6, noNaN: true }),
        (segment, from, t, bulge) => {
          const flat = { ...segment, bulge: 0 };
          const bent = { ...segment, bulge };
          const chord = distance(segment.a, segment.b);
          const crown = (Math.abs(bulge) * chord) / 2;
          expect(distance(pointAt(flat, t), pointAt(bent, t))).toBeLessThanOrEqual(crown + 1e-13);
          const near =
            nearestOnSegment(from, bent).distance - nearestOnSegment(from, flat).distance;
          expect(Math.abs(near)).toBeLessThanOrEqual(crown * 1.001 + 2e-13);
          // 2/3 chord × crown, signed, to the third order
          expect(Math.abs(capArea(bent) - (chord ** 2 * bulge) / 3)).toBeLessThanOrEqual(1e-13);
          // longer by 8/3 of crown² / chord
          const longer = segmentLength(bent) - chord - (8 / 3) * (crown ** 2 / chord);
          expect(Math.abs(longer)).toBeLessThanOrEqual(1e-13);
        },
      ),
      check(20000),
    );
  });
});

describe('a rigid motion', () => {
  test('moves every place with its piece and keeps lengths and areas', () => {
    fc.assert(
      fc.property(someSegment, someMotion, share, (segment, motion, t) => {
        const moved = transformSegment(segment, motion);
        expect(
          distance(pointAt(moved, t), transformPoint(pointAt(segment, t), motion)),
        ).toBeLessThan(ROUNDING);
        expect(Math.abs(segmentLength(moved) - segmentLength(segment))).toBeLessThan(ROUNDING);
      }),
      check(20000),
    );
  });

  test('keeps distances between a contour and a point', () => {
    fc.assert(
      fc.property(someRegion, someMotion, somePoint, (region, motion, from) => {
        const moved = transformContour(region, motion);
        const there = nearestOnContour(transformPoint(from, motion), moved);
        expect(Math.abs(there.distance - nearestOnContour(from, region).distance)).toBeLessThan(
          ROUNDING,
        );
      }),
      check(5000),
    );
  });

  test('keeps a region a region, metal on its left', () => {
    fc.assert(
      fc.property(someRegion, someMotion, somePoint, (region, motion, at) => {
        const moved = transformRegion(region, motion);
        expect(isSimpleOutline(moved)).toBe(true);
        expect(Math.abs(contourArea(moved) - contourArea(region))).toBeLessThan(1e-9);
        // rounding may carry a point on the edge off it
        if (nearestOnContour(at, region).distance < 1e-8) return;
        expect(pointInRegion(transformPoint(at, motion), moved)).toBe(pointInRegion(at, region));
      }),
      check(5000),
    );
  });

  test('mirrored twice changes nothing', () => {
    fc.assert(
      fc.property(someRegion, somePoint, angle, (region, origin, way) => {
        const mirror = reflectionIn(origin, fromAngle(rad(way)));
        const once = transformContour(region, mirror);
        expect(orientation(once)).toBe('clockwise');
        expect(sameContour(transformContour(once, mirror), region)).toBe(true);
      }),
      check(5000),
    );
  });
});

describe('the nearest and the farthest point', () => {
  test('are never beaten by any of many points of the piece, and are on it', () => {
    fc.assert(
      fc.property(someSegment, somePoint, (segment, from) => {
        const near = nearestOnSegment(from, segment);
        const far = farthestOnSegment(from, segment);
        const away = samples(segment, 200).map((at) => distance(from, at));
        const slack = 1e-13 * span(segment);
        expect(near.distance).toBeLessThanOrEqual(Math.min(...away) + slack);
        expect(far.distance).toBeGreaterThanOrEqual(Math.max(...away) - slack);
        // steps of a 200th: no sample is farther from the answer than half a step
        const step = segmentLength(segment) / 400;
        expect(near.distance).toBeGreaterThanOrEqual(Math.min(...away) - step - slack);
        expect(far.distance).toBeLessThanOrEqual(Math.max(...away) + step + slack);
        for (const found of [near, far]) {
          expect(Math.abs(distance(from, found.point) - found.distance)).toBeLessThan(slack);
          expect(pointAt(segment, found.t)).toEqual(found.point);
          expect(found.t).toBeGreaterThanOrEqual(0);
          expect(found.t).toBeLessThanOrEqual(1);
        }
      }),
      check(20000),
    );
  });
});

describe('the extreme in a direction', () => {
  test('is never beaten and bounds hold every point', () => {
    fc.assert(
      fc.property(someSegment, angle, (segment, way) => {
        const direction = fromAngle(rad(way));
        const extreme = extremeInDirection(segment, direction);
        const box = segmentBounds(segment);
        const slack = 1e-13 * span(segment);
        let most = -Infinity;
        let outside = 0;
        for (const at of samples(segment, 200)) {
          most = Math.max(most, dot(at, direction));
          const spot = { left: at.x, right: at.x, bottom: at.y, top: at.y };
          outside = Math.max(outside, boundsGap(box, spot));
        }
        expect(outside).toBeLessThan(slack);
        expect(extreme.value).toBeGreaterThanOrEqual(most - slack);
        expect(extreme.value).toBeLessThanOrEqual(most + segmentLength(segment) / 400 + slack);
        expect(pointAt(segment, extreme.t)).toEqual(extreme.point);
        // each side of the bounds is reached
        expect(box.right).toBeCloseTo(extremeInDirection(segment, { x: 1, y: 0 }).value, 10);
        expect(box.left).toBeCloseTo(-extremeInDirection(segment, { x: -1, y: 0 }).value, 10);
        expect(box.top).toBeCloseTo(extremeInDirection(segment, { x: 0, y: 1 }).value, 10);
        expect(box.bottom).toBeCloseTo(-extremeInDirection(segment, { x: 0, y: -1 }).value, 10);
      }),
      check(10000),
    );
  });
});

const endsAtTolerance = (piece: Segment, other: Segment) =>
  [piece.a, piece.b].some(
    (end) => Math.abs(nearestOnSegment(end, other).distance - TOLERANCE) < TOLERANCE / 2,
  );

describe('where two pieces meet', () => {
  test('does not depend on which comes first or which way they are walked', () => {
    fc.assert(
      fc.property(someSegment, someSegment, (first, second) => {
        // an end just as far from the other piece as the tolerance may fall either way
        fc.pre(!endsAtTolerance(first, second) && !endsAtTolerance(second, first));
        const met = intersectSegments(first, second);
        const others = [
          intersectSegments(second, first),
          intersectSegments(reverseSegment(first), second),
          intersectSegments(first, reverseSegment(second)),
        ];
        for (const other of others) {
          expect(other).toHaveLength(met.length);
          for (const { point: at, overlap } of met) {
            const same = other.find(({ point: there }) => distance(at, there) < 1e-7);
            expect(same?.overlap).toBe(overlap);
          }
        }
      }),
      check(20000),
    );
  });

  test('lies on both', () => {
    fc.assert(
      fc.property(someSegment, someSegment, (first, second) => {
        for (const { point: at, tA, tB } of intersectSegments(first, second)) {
          expect(distance(at, pointAt(first, tA))).toBeLessThan(5e-9);
          expect(distance(at, pointAt(second, tB))).toBeLessThan(5e-9);
        }
      }),
      check(20000),
    );
  });

  test('is found whenever one passes from one side of the other to its other side', () => {
    fc.assert(
      fc.property(someSegment, somePoint, somePoint, share, (segment, one, two, t) => {
        // a chord drawn through a point of the piece from either side
        const middle = pointAt(segment, t);
        fc.pre(distance(one, middle) > 1 && distance(two, middle) > 1);
        const through = [one, two].map((end) => ({ a: end, b: middle, bulge: 0.2 }));
        for (const spoke of through) {
          const met = intersectSegments(spoke, segment);
          expect(met.some(({ point: at }) => distance(at, middle) < 1e-6)).toBe(true);
        }
      }),
      check(20000),
    );
  });

  test('a cut piece meets its other part at the cut alone', () => {
    fc.assert(
      fc.property(someSegment, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (segment, cut) => {
        const [head, tail] = splitSegment(segment, cut);
        const met = intersectSegments(head, tail);
        expect(met).toHaveLength(1);
        expect(met[0]).toMatchObject({ tA: 1, tB: 0, overlap: false });
      }),
      check(20000),
    );
  });

  test('an endless line is crossed by a closed outline an even number of times, in order', () => {
    fc.assert(
      fc.property(someRegion, somePoint, angle, (region, origin, way) => {
        const met = intersectLine(origin, fromAngle(rad(way)), region);
        // a line through a corner may pass by
        if (region.some(({ a }) => met.some(({ point: at }) => distance(a, at) < 1e-6))) return;
        expect(met.length % 2).toBe(0);
        for (const [i, { point: at, along }] of met.entries()) {
          expect(along).toBeGreaterThan(met[i - 1]?.along ?? -Infinity);
          const there = {
            x: origin.x + along * Math.cos(way),
            y: origin.y + along * Math.sin(way),
          };
          expect(distance(at, there)).toBeLessThan(1e-8);
        }
      }),
      check(10000),
    );
  });
});

describe('the closest pair', () => {
  test('is the same both ways round and is never beaten', () => {
    fc.assert(
      fc.property(someSegment, someSegment, (first, second) => {
        const pair = closestOfSegments(first, second);
        const back = closestOfSegments(second, first);
        const slack = 1e-13 * (span(first) + span(second));
        // within the tolerance of a touch either may be taken
        expect(Math.abs(pair.distance - back.distance)).toBeLessThan(Math.max(slack, 2e-9));
        const away = samples(first, 60).map((at) => nearestOnSegment(at, second).distance);
        expect(pair.distance).toBeLessThanOrEqual(Math.min(...away) + slack);
        expect(pair.distance).toBeGreaterThanOrEqual(
          Math.min(...away) - segmentLength(first) / 120 - slack,
        );
        expect(distance(pair.a.point, pair.b.point)).toBe(pair.distance);
      }),
      check(10000),
    );
  });
});

describe('a region', () => {
  test('is simple, walked counter-clockwise, and the other way when reversed', () => {
    fc.assert(
      fc.property(someRegion, (region) => {
        expect(isSimpleOutline(region)).toBe(true);
        expect(isSimpleOutline(reverseContour(region))).toBe(true);
        expect(orientation(region)).toBe('counterClockwise');
        expect(contourArea(reverseContour(region))).toBeCloseTo(-contourArea(region), 9);
      }),
      check(5000),
    );
  });

  test('has its metal on the left of every piece', () => {
    fc.assert(
      fc.property(someRegion, share, (region, t) => {
        for (const segment of region) {
          const at = pointAt(segment, 0.1 + 0.8 * t);
          const way = tangentAt(segment, 0.1 + 0.8 * t);
          const left = { x: at.x - way.y * 1e-6, y: at.y + way.x * 1e-6 };
          const right = { x: at.x + way.y * 1e-6, y: at.y - way.x * 1e-6 };
          expect(pointInRegion(left, region)).toBe('inside');
          expect(pointInRegion(right, region)).toBe('outside');
          expect(pointInRegion(at, region)).toBe('edge');
        }
      }),
      check(5000),
    );
  });

  test('is no outline once a corner is pulled through the opposite side', () => {
    fc.assert(
      fc.property(someRegion, (region) => {
        const [first, second, ...rest] = region;
        if (first === undefined || second === undefined) return;
        const { left, right, bottom, top } = contourBounds(region);
        const middle = { x: (left + right) / 2, y: (bottom + top) / 2 };
        // the second corner taken to the other side of the middle, beyond the outline
        const far = {
          x: middle.x - (second.a.x - middle.x) * 3,
          y: middle.y - (second.a.y - middle.y) * 3,
        };
        const pulled = [{ ...first, b: far, bulge: 0 }, { ...second, a: far, bulge: 0 }, ...rest];
        expect(isSimpleOutline(pulled)).toBe(false);
      }),
      check(5000),
    );
  });

  test('cut at two places and joined again has the same length and area', () => {
    fc.assert(
      fc.property(someRegion, share, share, fc.nat(), fc.nat(), (region, t1, t2, i1, i2) => {
        const from = { index: i1 % region.length, t: t1 };
        const to = { index: i2 % region.length, t: t2 };
        fc.pre(from.index !== to.index || from.t !== to.t);
        const there = contourPiece(region, from, to);
        const back = contourPiece(region, to, from);
        const whole = joinContours(there, back);
        expect(Math.abs(contourLength(whole) - contourLength(region))).toBeLessThan(1e-8);
        expect(Math.abs(contourArea(whole) - contourArea(region))).toBeLessThan(1e-6);
        const [before, after] = splitContour(region, from);
        expect(Math.abs(contourLength([...before, ...after]) - contourLength(region))).toBeLessThan(
          1e-10,
        );
      }),
      check(5000),
    );
  });
});
