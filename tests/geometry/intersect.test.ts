import { describe, expect, test } from 'vitest';
import { rad } from '../../src/units/index.ts';
import {
  add,
  arc,
  arcFromTangent,
  arcThroughSagitta,
  intersectSegments,
  line,
  point,
  reverseSegment,
  rotate,
  scale,
  splitSegment,
  tangentAt,
  TOLERANCE,
  type Segment,
} from '../../src/geometry/index.ts';
import { expectPoint } from './near-point.ts';

/** Upper half of the circle of radius 5 about the origin, counter-clockwise. */
const over = arc(point(5, 0), point(-5, 0), 1);
const under = arc(point(-5, 0), point(5, 0), 1);

/** Expects these meetings, in order: x, y, share along the first, along the second, overlap. */
function expectMeetings(
  first: Segment,
  second: Segment,
  wanted: readonly (readonly [number, number, number, number, boolean])[],
  within = 1e-12,
) {
  const met = intersectSegments(first, second);
  expect(met.map(({ overlap }) => overlap)).toEqual(wanted.map((one) => one[4]));
  wanted.forEach(([x, y, tA, tB], i) => {
    expectPoint(met[i]?.point, x, y, within);
    expect(Math.abs((met[i]?.tA ?? NaN) - tA)).toBeLessThanOrEqual(within);
    expect(Math.abs((met[i]?.tB ?? NaN) - tB)).toBeLessThanOrEqual(within);
  });
}

describe('two lines meet', () => {
  test('where they cross', () => {
    expectMeetings(line(point(0, 0), point(8, 4)), line(point(2, 5), point(2, -3)), [
      [2, 1, 0.25, 0.5, false],
    ]);
  });

  test('nowhere when one ends before the other', () => {
    const rise = line(point(0, 0), point(8, 4));
    expectMeetings(rise, line(point(2, 5), point(2, 1.1)), []);
    expectMeetings(rise, line(point(9, 9), point(9, -9)), []);
    expectMeetings(line(point(9, 9), point(9, -9)), rise, []);
  });

  test('nowhere when they are parallel', () => {
    expectMeetings(line(point(0, 0), point(8, 4)), line(point(0, 1), point(8, 5)), []);
  });

  test('at a shared end, exactly', () => {
    const one = line(point(0, 0), point(1, 0.1));
    expect(intersectSegments(one, line(point(1, 0.1), point(3, 5)))).toEqual([
      { point: point(1, 0.1), tA: 1, tB: 0, overlap: false },
    ]);
    expect(intersectSegments(one, line(point(3, 5), point(0, 0)))).toEqual([
      { point: point(0, 0), tA: 0, tB: 1, overlap: false },
    ]);
    // straight on
    expect(intersectSegments(one, line(point(1, 0.1), point(2, 0.2)))).toEqual([
      { point: point(1, 0.1), tA: 1, tB: 0, overlap: false },
    ]);
  });

  test('at an end that stands on the other', () => {
    expectMeetings(line(point(0, 0), point(8, 0)), line(point(2, 0), point(3, 5)), [
      [2, 0, 0.25, 0, false],
    ]);
    expectMeetings(line(point(2, 0), point(3, 5)), line(point(0, 0), point(8, 0)), [
      [2, 0, 0, 0.25, false],
    ]);
    // within the tolerance of it, and no farther
    expectMeetings(
      line(point(0, 0), point(8, 0)),
      line(point(2, 9e-10), point(3, 5)),
      [[2, 9e-10, 0.25, 0, false]],
      1e-9,
    );
    expectMeetings(line(point(0, 0), point(8, 0)), line(point(2, 1.1e-9), point(3, 5)), []);
  });

  test('at a join that is out by less than the tolerance, both shares whole', () => {
    const one = line(point(0, 0), point(1, 0));
    for (const step of [-5e-10, 5e-10]) {
      const next = line(point(1 + step, 0), point(3, 0));
      expect(intersectSegments(one, next)).toEqual([
        { point: point(1, 0), tA: 1, tB: 0, overlap: false },
      ]);
      expect(intersectSegments(one, reverseSegment(next))).toEqual([
        { point: point(1, 0), tA: 1, tB: 1, overlap: false },
      ]);
      expect(intersectSegments(next, one)).toEqual([
        { point: point(1 + step, 0), tA: 0, tB: 1, overlap: false },
      ]);
    }
  });

  test('at an end that stands off the other by nine tenths of the tolerance, not by eleven', () => {
    const base = line(point(0, 0), point(8, 0));
    for (const side of [1, -1]) {
      const away = (share: number): number => side * share * TOLERANCE;
      const near = line(point(3, away(0.9)), point(3, away(4e9)));
      const off = line(point(3, away(1.1)), point(3, away(4e9)));
      for (const [found, count] of [
        [intersectSegments(base, near), 1],
        [intersectSegments(near, base), 1],
        [intersectSegments(base, off), 0],
        [intersectSegments(off, base), 0],
      ] as const)
        expect(found).toHaveLength(count);
      // the same from inside and outside a circle of 5 mm
      const radial = (share: number): Segment =>
        line(point(0, 5 + away(share)), point(0, 5 + away(2e9)));
      expect(intersectSegments(over, radial(0.9))).toHaveLength(1);
      expect(intersectSegments(radial(0.9), over)).toHaveLength(1);
      expect(intersectSegments(over, radial(1.1))).toHaveLength(0);
    }
  });

  test('at both ends of a stretch they share', () => {
    const long = line(point(0, 0), point(8, 4));
    expectMeetings(long, line(point(6, 3), point(2, 1)), [
      [2, 1, 0.25, 1, true],
      [6, 3, 0.75, 0, true],
    ]);
    expectMeetings(long, line(point(6, 3), point(12, 6)), [
      [6, 3, 0.75, 0, true],
      [8, 4, 1, 1 / 3, true],
    ]);
    expectMeetings(long, reverseSegment(long), [
      [0, 0, 0, 1, true],
      [8, 4, 1, 0, true],
    ]);
  });

  test('once when they leave a shared end at a very small angle', () => {
    // within the tolerance of one another over 1e-4 mm
    expectMeetings(line(point(0, 0), point(10, 0)), line(point(0, 0), point(10, 1e-4)), [
      [0, 0, 0, 0, false],
    ]);
  });

  test('in a point when one has no length', () => {
    const spot = line(point(2, 1), point(2, 1));
    const [met, ...more] = intersectSegments(spot, line(point(0, 0), point(8, 4)));
    expect(more).toEqual([]);
    expectPoint(met?.point, 2, 1);
    expect(met?.tB).toBeCloseTo(0.25, 14);
    expect(intersectSegments(line(point(0, 0), point(8, 4)), spot)).toHaveLength(1);
    expect(intersectSegments(spot, line(point(0, 0), point(8, 0)))).toEqual([]);
    expect(intersectSegments(spot, spot)).toHaveLength(1);
    expect(intersectSegments(spot, over)).toEqual([]);
    expect(intersectSegments(line(point(3, 4), point(3, 4)), over)).toHaveLength(1);
  });
});

describe('a line and an arc meet', () => {
  test('in two points, in order along the first', () => {
    // y = 3 cuts x = ±4; acos(4/5)/π of the way and the rest
    const share = Math.acos(0.8) / Math.PI;
    const level = line(point(-10, 3), point(10, 3));
    expectMeetings(level, over, [
      [-4, 3, 0.3, 1 - share, false],
      [4, 3, 0.7, share, false],
    ]);
    expectMeetings(over, level, [
      [4, 3, share, 0.7, false],
      [-4, 3, 1 - share, 0.3, false],
    ]);
  });

  test('in one point when the other lies beyond an end', () => {
    expectMeetings(over, line(point(0, 3), point(10, 3)), [
      [4, 3, Math.acos(0.8) / Math.PI, 0.4, false],
    ]);
    expectMeetings(under, line(point(3, 10), point(3, -10)), [
      [3, -4, 1 - Math.acos(0.6) / Math.PI, 0.7, false],
    ]);
  });

  test('nowhere when the line passes by, outside, inside or on the other side', () => {
    expectMeetings(over, line(point(-9, 6), point(9, 6)), []);
    expectMeetings(over, line(point(-3, 3), point(3, 3)), []);
    expectMeetings(over, line(point(-9, -3), point(9, -3)), []);
    expectMeetings(over, line(point(9, 9), point(9, -9)), []);
  });

  test('once where the line touches, also within the tolerance either way', () => {
    for (const y of [5, 5 + 9e-10, 5 - 9e-10]) {
      expectMeetings(over, line(point(-5, y), point(5, y)), [[0, 5, 0.5, 0.5, false]], 1e-9);
      expectMeetings(line(point(-5, y), point(5, y)), over, [[0, 5, 0.5, 0.5, false]], 1e-9);
    }
    expectMeetings(over, line(point(-5, 5 + 1.1e-9), point(5, 5 + 1.1e-9)), []);
  });

  test('twice where the line runs into the arc deeper than the tolerance', () => {
    // half the crossing: √(2 · 5 · 1e-8 - 1e-16)
    const half = Math.sqrt(1e-7 - 1e-16);
    const met = intersectSegments(line(point(-5, 5 - 1e-8), point(5, 5 - 1e-8)), over);
    expect(met).toHaveLength(2);
    expectPoint(met[0]?.point, -half, 5 - 1e-8, 1e-9);
    expectPoint(met[1]?.point, half, 5 - 1e-8, 1e-9);
  });

  test('at a crossing although the middle of a touch lies beyond the end', () => {
    // 9e-10 deep: crossings at ±9.5e-5; the line ends short of the middle
    const half = Math.sqrt(2 * 5 * 9e-10);
    const met = intersectSegments(line(point(-5, 5 - 9e-10), point(-half / 2, 5 - 9e-10)), over);
    expect(met.length).toBeGreaterThan(0);
    for (const { point: at } of met) expect(Math.abs(at.y - 5)).toBeLessThan(2e-9);
  });

  test('once at a join where the arc goes on from the line without a corner', () => {
    const run = line(point(-3, 0), point(0, 0));
    const curl = arcFromTangent(point(0, 0), point(1, 0), point(4, 3));
    expect(intersectSegments(run, curl)).toEqual([
      { point: point(0, 0), tA: 1, tB: 0, overlap: false },
    ]);
    expect(intersectSegments(curl, run)).toEqual([
      { point: point(0, 0), tA: 0, tB: 1, overlap: false },
    ]);
  });

  test('twice when an arc comes back to the line it left', () => {
    const base = line(point(-3, 0), point(9, 0));
    expectMeetings(base, arc(point(0, 0), point(6, 0), -0.5), [
      [0, 0, 0.25, 0, false],
      [6, 0, 0.75, 1, false],
    ]);
  });

  test('over a stretch when the arc is flatter than the tolerance', () => {
    const base = line(point(-3, 0), point(9, 0));
    expectMeetings(
      base,
      arcThroughSagitta(point(0, 0), point(6, 0), 5e-10),
      [
        [0, 0, 0.25, 0, true],
        [6, 0, 0.75, 1, true],
      ],
      1e-9,
    );
  });
});

describe('two arcs meet', () => {
  /** Radius 5 about (6, 0): crosses the first circle at (3, ±4). */
  const beside = arc(point(11, 0), point(1, 0), 1);

  test('where their circles cross and both reach', () => {
    const share = Math.acos(0.6) / Math.PI;
    expectMeetings(over, beside, [[3, 4, share, 1 - share, false]]);
    expectMeetings(over, reverseSegment(beside), [[3, 4, share, share, false]]);
    expectMeetings(under, beside, []);
    expectMeetings(under, arc(point(1, 0), point(11, 0), 1), [[3, -4, 1 - share, share, false]]);
  });

  test('twice when both crossings are reached', () => {
    // three quarters of each circle, open away from one another
    const left = arc(point(0, -5), point(-5, 0), 1 + Math.SQRT2);
    const right = arc(point(11, 0), point(6, -5), 1 + Math.SQRT2);
    const met = intersectSegments(left, right);
    expect(met).toHaveLength(2);
    expectPoint(met[0]?.point, 3, -4);
    expectPoint(met[1]?.point, 3, 4);
  });

  test('where circles of different size cross', () => {
    // radius 13 about (9, 9): 5² + 12² = 13², so it runs through (4, -3) of the first circle
    const big = arc(point(9, -4), point(-4, 9), 1 - Math.SQRT2);
    const [met, ...more] = intersectSegments(under, big);
    expectPoint(met?.point, 4, -3);
    // the other crossing mirrors it in the line of centres: (-3, 4), on the upper half
    expect(more).toEqual([]);
    expectPoint(intersectSegments(over, big)[0]?.point, -3, 4);
  });

  test('nowhere when apart, one within the other, or concentric', () => {
    expectMeetings(over, arc(point(20, 0), point(12, 0), 1), []);
    expectMeetings(over, arc(point(2, 1), point(-2, 1), 1), []);
    expectMeetings(over, arc(point(4, 0), point(-4, 0), 1), []);
    expectMeetings(over, arc(point(6, 0), point(-6, 0), 1), []);
  });

  test('once where they touch from outside, within the tolerance either way', () => {
    for (const gap of [0, 9e-10, -9e-10]) {
      // radius 2 about (0, 7 + gap), lower half
      const above = arc(point(-2, 7 + gap), point(2, 7 + gap), 1);
      expectMeetings(over, above, [[0, 5, 0.5, 0.5, false]], 1e-9);
      expectMeetings(above, over, [[0, 5, 0.5, 0.5, false]], 1e-9);
    }
    expectMeetings(over, arc(point(-2, 7 + 1.2e-9), point(2, 7 + 1.2e-9), 1), []);
  });

  test('once where one touches the other from inside, within the tolerance either way', () => {
    for (const gap of [0, 9e-10, -9e-10]) {
      // radius 2 about (0, 3 - gap), upper half
      const within = arc(point(2, 3 - gap), point(-2, 3 - gap), 1);
      expectMeetings(over, within, [[0, 5, 0.5, 0.5, false]], 1e-9);
      expectMeetings(reverseSegment(within), over, [[0, 5, 0.5, 0.5, false]], 1e-9);
    }
    expectMeetings(over, arc(point(2, 3 - 1.2e-9), point(-2, 3 - 1.2e-9), 1), []);
  });

  /** Radius 2 about the place (3, 4)/5 of the way `away` from the origin, three quarters of a circle. */
  const aside = (away: number) => {
    const at = (dx: number, dy: number) => point(away * 0.6 + dx, away * 0.8 + dy);
    return away > 5
      ? arc(at(2, 0), at(0, 2), -1 - Math.SQRT2)
      : arc(at(0, -2), at(-2, 0), 1 + Math.SQRT2);
  };
  test.each([
    ['from outside', 7, 1],
    ['from inside', 3, -1],
  ])('once where they touch aslant %s, within the tolerance either way', (_side, away, out) => {
    for (const depth of [0, 9e-10, -9e-10]) {
      const other = aside(away - out * depth);
      for (const piece of [other, reverseSegment(other)]) {
        for (const round of [over, reverseSegment(over)]) {
          const [met, ...more] = intersectSegments(round, piece);
          expect(more).toEqual([]);
          expectPoint(met?.point, 3, 4, 1e-9);
          expect(intersectSegments(piece, round)).toHaveLength(1);
        }
      }
    }
    expect(intersectSegments(over, aside(away + out * 1.2e-9))).toEqual([]);
    expect(intersectSegments(aside(away + out * 1.2e-9), over)).toEqual([]);
    expect(intersectSegments(over, aside(away - out * 1.3e-9))).toHaveLength(2);
    expect(intersectSegments(aside(away - out * 1.3e-9), over)).toHaveLength(2);
  });

  test('once where both start at the touch', () => {
    const met = intersectSegments(
      arc(point(0, 5), point(-5, 0), Math.SQRT2 - 1),
      arc(point(0, 5), point(2, 7), Math.SQRT2 - 1),
    );
    expect(met).toEqual([{ point: point(0, 5), tA: 0, tB: 0, overlap: false }]);
  });

  test('twice where they run into one another deeper than the tolerance', () => {
    expect(intersectSegments(over, arc(point(-2, 7 - 1e-8), point(2, 7 - 1e-8), 1))).toHaveLength(
      2,
    );
    expect(intersectSegments(over, arc(point(2, 3 + 1e-8), point(-2, 3 + 1e-8), 1))).toHaveLength(
      2,
    );
  });

  test('once at a join where the second goes on from the first without a corner', () => {
    const first = arc(point(0, 0), point(3, 1), 0.3);
    const ahead = tangentAt(first, 1);
    // curvature from as much to the right, over a hair more than the first's, to much more
    for (const bulge of [-0.3, -0.01, 0, 1e-9, 0.3, 0.3 + 1e-12, 0.3 + 1e-7, 0.9]) {
      const way = rotate(scale(ahead, Math.sqrt(10)), rad(2 * Math.atan(bulge)));
      const next = arcFromTangent(point(3, 1), ahead, add(point(3, 1), way));
      expect(next.bulge).toBeCloseTo(bulge, 13);
      const met = intersectSegments(first, next);
      expect(met).toHaveLength(1);
      expect(met[0]).toMatchObject({ point: point(3, 1), tA: 1, tB: 0, overlap: false });
    }
  });

  test('once at the cut of an arc cut in two', () => {
    const [head, tail] = splitSegment(over, 0.3);
    const met = intersectSegments(head, tail);
    expect(met).toHaveLength(1);
    expect(met[0]).toMatchObject({ point: head.b, tA: 1, tB: 0, overlap: false });
  });

  test('at both joins of the two halves of a circle', () => {
    expectMeetings(over, under, [
      [5, 0, 0, 1, false],
      [-5, 0, 1, 0, false],
    ]);
  });

  test('at both ends of a stretch of the same circle', () => {
    const part = arc(point(3, 4), point(-3, 4), 1 / 3);
    const share = Math.acos(0.6) / Math.PI;
    expectMeetings(over, part, [
      [3, 4, share, 0, true],
      [-3, 4, 1 - share, 1, true],
    ]);
    expectMeetings(over, reverseSegment(part), [
      [3, 4, share, 1, true],
      [-3, 4, 1 - share, 0, true],
    ]);
    expectMeetings(over, reverseSegment(over), [
      [5, 0, 0, 1, true],
      [-5, 0, 1, 0, true],
    ]);
  });

  test('at four points when they share two stretches of the same circle', () => {
    // both over half a circle: from 0° to 270°, and from 180° to 90° the same way round
    const first = arc(point(5, 0), point(0, -5), 1 + Math.SQRT2);
    const second = arc(point(-5, 0), point(0, 5), 1 + Math.SQRT2);
    expectMeetings(first, second, [
      [5, 0, 0, 2 / 3, true],
      [0, 5, 1 / 3, 1, true],
      [-5, 0, 2 / 3, 0, true],
      [0, -5, 1, 1 / 3, true],
    ]);
  });

  test('once with an arc of a radius of many kilometres, whichever way both are walked', () => {
    // crown 1e-8 over a chord of 10: radius 1.25e9 mm; crossed 3 along and 45° either way
    const flat = arcThroughSagitta(point(0, 0), point(10, 0), 1e-8);
    for (const cut of [
      line(point(2, -1), point(4, 1)),
      line(point(4, -1), point(2, 1)),
      arcThroughSagitta(point(2, -1), point(4, 1), 1e-10),
    ]) {
      for (const one of [flat, reverseSegment(flat)]) {
        for (const two of [cut, reverseSegment(cut)]) {
          for (const met of [intersectSegments(one, two), intersectSegments(two, one)]) {
            expect(met).toHaveLength(1);
            // 1 - (2/5)² of the crown up
            expectPoint(met[0]?.point, 3, 0.84e-8, 1e-8);
            expect(met[0]?.point.y).toBeCloseTo(0.84e-8, 10);
          }
        }
      }
    }
  });

  test('far from the origin with a radius of ten kilometres', () => {
    // crown 1 mm over a chord of 8.9 m; a line square through it
    const flat = arcThroughSagitta(point(1000, 2000), point(9944.271, 2000), -1);
    const drop = line(point(5000, 2010), point(5000, 1990));
    const met = intersectSegments(flat, drop);
    expect(met).toHaveLength(1);
    expect(met[0]?.point.x).toBeCloseTo(5000, 9);
    // depth below the chord: 1 - (offset from the middle)² / 2R, to the second order
    const offset = 5000 - (1000 + 9944.271) / 2;
    const size = (8944.271 ** 2 / 4 + 1) / 2;
    expect(met[0]?.point.y).toBeCloseTo(2000 - 1 + size - Math.sqrt(size ** 2 - offset ** 2), 7);
  });
});
