import { describe, expect, test } from 'vitest';
import { contourArea, extremeInDirection } from '../../../src/geometry/index.ts';
import { build, type ButtJoint } from '../../../src/joint/index.ts';
import { butt, cornersOf, refusalOf } from './plain-butt.ts';

// Definition: Toeline's vocabulary, weldArea: weld metal outside the plates as prepared.

const deposits = (changes: Partial<ButtJoint>) => build(butt(changes)).deposits;
const areas = (changes: Partial<ButtJoint>): readonly number[] =>
  deposits(changes).map(contourArea);

describe('weld metal outside the plates', () => {
  test('of a flush weld is the groove, however far the toes lie past its edges', () => {
    expect(areas({})).toEqual([expect.closeTo(84, 12)]);
    expect(areas({ capPast1: 5, capPast2: 3 })).toEqual([expect.closeTo(84, 12)]);
  });

  test('of a weld in touching square edges is its two beads', () => {
    // 2 mm wide, 0.5 high: R = (1 + 0.25) / 1 = 1.25, sweep 4 atan(0.5)
    const sweep = 4 * Math.atan(0.5);
    const cap = (1.25 ** 2 * (sweep - Math.sin(sweep))) / 2;
    const beads = areas({
      preparation: 'square',
      rootOpening: 0,
      capHeight: 0.5,
      rootHeight: 0.5,
    });
    expect(beads).toEqual([expect.closeTo(cap, 12), expect.closeTo(cap, 12)]);
  });

  test('of a hollow cap ends where the bead has eaten into the edges', () => {
    // the bead hangs from the groove edges (±9, 10), 1 mm deep: R = (81 + 1) / 2 = 41 about
    // (0, 50). It leaves the groove edge under the bevel only if steeper than 45°; it is not,
    // so nothing is eaten: 84 less the segment R²(θ - sin θ) / 2, θ = 4 atan(1/9)
    const sweep = 4 * Math.atan(1 / 9);
    const hollow = (41 ** 2 * (sweep - Math.sin(sweep))) / 2;
    expect(areas({ capHeight: -1, capPast1: 0, capPast2: 0 })).toEqual([
      expect.closeTo(84 - hollow, 10),
    ]);
  });

  test('of a straight cap from a low plate to past the edge of a high one leaves its corner out', () => {
    // plate 2 is 2 higher. The face from (-9, 10) to (10, 12) meets the bevel y = x + 3 at
    // x = 151/17, so the corner (9, 12) is melted away; by shoelace over (-1, 0), (1, 2), (1, 4),
    // (151/17, 202/17), (-9, 10), (-1, 2) the rest is 1412/17
    const step = { offset: 2, capPast1: 0, capPast2: 1, rootPast1: 0, rootPast2: 0 };
    expect(areas(step)).toEqual([expect.closeTo(1412 / 17, 10)]);
  });

  test('keeps the crests beside a hollow that has eaten into both plates', () => {
    // square edges 2 apart, toes 8 past them, crests 1 high, the middle 1 below the surface
    const parts = deposits({
      preparation: 'square',
      capPast1: 8,
      capPast2: 8,
      capHeight: 1,
      capDip: 2,
    });
    expect(parts).toHaveLength(3);
    const crests = parts.filter(
      (part) => extremeInDirection(part, { x: 0, y: -1 }).value < -10 + 1e-9,
    );
    expect(crests).toHaveLength(2);
    expect(contourArea(crests[0] ?? [])).toBeCloseTo(contourArea(crests[1] ?? []), 10);
    for (const crest of crests) {
      expect(extremeInDirection(crest, { x: 0, y: 1 }).value).toBeCloseTo(11, 10);
    }
  });

  test('begins at the straight end of a weld whose root is unfused', () => {
    // 84 less 2 × 1
    expect(areas({ incompletePenetration: 1 })).toEqual([expect.closeTo(82, 12)]);
  });

  test('begins where the edges cease to touch when the seam between them is unfused', () => {
    // two triangles of 8 × 8 / 2
    const [only, ...others] = deposits({ rootOpening: 0, incompletePenetration: 1 });
    expect(contourArea(only ?? [])).toBeCloseTo(64, 12);
    expect(others).toEqual([]);
    expect(cornersOf(only ?? [])).toContainEqual([0, 2]);
  });

  test('comes in two parts around an unfused middle', () => {
    // open: twice 2 × 4.5 and two triangles 4 × 4 / 2; touching: the triangles alone
    const both = { preparation: 'doubleV', incompletePenetration: 1 } as const;
    expect(areas(both)).toEqual([expect.closeTo(25, 12), expect.closeTo(25, 12)]);
    expect(areas({ ...both, rootOpening: 0 })).toEqual([
      expect.closeTo(16, 12),
      expect.closeTo(16, 12),
    ]);
  });

  test('takes the unfused bevels off when the unfused middle is higher than the root faces', () => {
    // edges touching from 4 to 6, unfused from 3 to 7: above, between (±1, 7) and (±4, 10), a
    // trapezium of (2 + 8) / 2 × 3, since the bevels start 0 apart at 6
    const tall = { preparation: 'doubleV', incompletePenetration: 4, rootOpening: 0 } as const;
    expect(areas(tall)).toEqual([expect.closeTo(15, 12), expect.closeTo(15, 12)]);
  });
});

test('a hollow that runs out through the root surface and back into the root bead is refused', () => {
  const refused = refusalOf(() =>
    build(
      butt({
        preparation: 'square',
        t1: 4,
        t2: 4,
        fusionDepth: 4,
        capHeight: -3.815,
        crownShift: 0.488,
        capDip: 0.2,
        capPast1: 2.19,
        capPast2: 2.604,
        rootHeight: 1,
        angularMisalignment: 0.5,
      }),
    ),
  );
  expect(refused?.field).toBe('capHeight');
  expect(refused?.reason.key).toBe('joint_error_bead_through_edge');
});
