import { describe, expect, test } from 'vitest';
import {
  contourArea,
  contourStart,
  distance,
  point,
  pointAt,
  sagitta,
  type Point,
  type Region,
  type Segment,
} from '../../src/geometry/index.ts';
import { build, type FilletRoot, type Section } from '../../src/joint/index.ts';
import { fillet } from './joints.ts';

const SQRT3 = Math.sqrt(3);

function rootOf(section: Section): FilletRoot {
  if (section.filletRoot === null) throw new Error('a fillet has a root');
  return section.filletRoot;
}

const total = (regions: readonly Region[]): number =>
  regions.reduce((sum, region) => sum + contourArea(region), 0);

/** Expects points one by one, to 1e-12 mm. */
function expectPoints(actual: readonly Point[] | null, expected: readonly Point[]): void {
  expect(actual?.length).toBe(expected.length);
  expected.forEach((at, i) => {
    expect(distance(actual?.[i] as Point, at)).toBeLessThan(1e-12);
  });
}

const corners = (region: Region): Point[] => region.map(({ a }) => a);

/** Whether the region has a corner there. */
const hasCorner = (region: Region, at: Point): boolean =>
  corners(region).some((corner) => distance(corner, at) < 1e-9);

describe('A tee', () => {
  test('with equal flat 8 mm legs at a right angle deposits 32 mm² between its toes and O', () => {
    const section = build(fillet());
    expectPoints(section.face.toes, [point(8, 0), point(0, 8)]);
    expect(section.face.bead).toEqual([{ a: point(8, 0), b: point(0, 8), bulge: 0 }]);
    // 8 × 8 / 2
    expect(total(section.deposits)).toBeCloseTo(32, 12);
    expectPoints(rootOf(section).weldRoots, [point(0, 0)]);
    expectPoints([rootOf(section).plate2Corner], [point(0, 0)]);
    expect(rootOf(section).edge).toBeNull();
  });

  test('bulges or hollows its face by the convexity asked for, one arc', () => {
    const [convex] = build(fillet({ convexity: 1 })).face.bead as readonly [Segment];
    // outward lies to the right of the walk from toe 1 to toe 2: sagitta to the left is negative
    expect(sagitta(convex)).toBeCloseTo(-1, 12);
    const [hollow] = build(fillet({ convexity: -1 })).face.bead as readonly [Segment];
    expect(sagitta(hollow)).toBeCloseTo(1, 12);
  });

  test('runs 60 mm past each toe and past plate 2, where the plates are cut off', () => {
    const [plate1, plate2] = build(fillet()).plates;
    for (const at of [point(68, 0), point(68, -12), point(-72, -12), point(-72, 0)]) {
      expect(hasCorner(plate1, at)).toBe(true);
    }
    for (const at of [point(0, 68), point(-12, 68), point(-12, 0)]) {
      expect(hasCorner(plate2, at)).toBe(true);
    }
  });

  test('carries its surfaces as lines through O, and names both faces of each plate', () => {
    const { face, plateSurfaces } = build(fillet({ t1: 10, t2: 6, dihedralAngle: 120 }));
    const up = point(-0.5, SQRT3 / 2);
    expectPoints([face.surfaces[0].along, face.surfaces[0].normal], [point(1, 0), point(0, 1)]);
    expectPoints([face.surfaces[1].along, face.surfaces[1].normal], [up, point(SQRT3 / 2, 0.5)]);
    expectPoints([plateSurfaces[0].opposite.origin], [point(0, -10)]);
    // 6 mm behind plate 2's surface, along (-√3/2, -1/2)
    expectPoints([plateSurfaces[1].opposite.origin], [point(-3 * SQRT3, -3)]);
    expectPoints([plateSurfaces[1].opposite.normal], [point(-SQRT3 / 2, -0.5)]);
  });

  test('with a gap ends its metal on the straight line from plate 2’s corner to O', () => {
    const section = build(fillet({ rootGap: 2 }));
    const root = rootOf(section);
    expectPoints(root.weldRoots, [point(0, 2), point(0, 0)]);
    expectPoints([root.plate2Corner], [point(0, 2)]);
    // the gap is counted in leg 2, so the triangle is still 8 × 8 / 2
    expectPoints(section.face.toes, [point(8, 0), point(0, 8)]);
    expect(total(section.deposits)).toBeCloseTo(32, 12);
    expect(hasCorner(section.plates[1], point(-12, 2))).toBe(true);
  });

  test('at 120 degrees has its corner the gap over sin ψ up plate 2', () => {
    const root = rootOf(build(fillet({ dihedralAngle: 120, rootGap: 3 })));
    // 3 / sin 120 = 2√3 along (-1/2, √3/2): (-√3, 3)
    expectPoints([root.plate2Corner], [point(-SQRT3, 3)]);
  });

  test('with penetration and no gap has one root, that far in along plate 1', () => {
    const section = build(fillet({ rootPenetration: 2 }));
    expectPoints(rootOf(section).weldRoots, [point(-2, 0)]);
    // melted base metal is no deposit
    expect(total(section.deposits)).toBeCloseTo(32, 12);
  });

  test('with gap and penetration fills the gap that far, and counts that metal', () => {
    const section = build(fillet({ rootGap: 2, rootPenetration: 3 }));
    expectPoints(rootOf(section).weldRoots, [point(-3, 2), point(-3, 0)]);
    // 32 and a rectangle of 3 × 2
    expect(total(section.deposits)).toBeCloseTo(38, 12);
  });

  test('cut square leaves t2 · |cos ψ| at the weld-side corner when it leans away', () => {
    const section = build(fillet({ endCut: 'square', dihedralAngle: 120, t2: 6, leg2: 10 }));
    // 6 · cos 60 = 3 high: corner at 3 / sin 120 = 2√3 along plate 2
    expectPoints([rootOf(section).plate2Corner], [point(-SQRT3, 3)]);
    // the other corner of the square end touches plate 1: 6 along (-√3/2, -1/2) from there
    expect(hasCorner(section.plates[1], point(-4 * SQRT3, 0))).toBe(true);
  });

  test('cut square touches at O when it leans over the weld, and opens behind', () => {
    const section = build(fillet({ endCut: 'square', dihedralAngle: 60, rootPenetration: 2 }));
    expectPoints([rootOf(section).plate2Corner], [point(0, 0)]);
    // roots 2 in along both sides of the wedge: plate 2's end runs along (-√3/2, 1/2)
    expectPoints(rootOf(section).weldRoots, [point(-SQRT3, 1), point(-2, 0)]);
    // 8·8·sin 60/2 outside and 2·2·sin 30/2 in the wedge
    expect(total(section.deposits)).toBeCloseTo(16 * SQRT3 + 1, 12);
  });

  test('keeps the least hand gap under a square cut’s touching corner', () => {
    const section = build(fillet({ endCut: 'square', dihedralAngle: 120, t2: 6, rootGap: 1 }));
    expect(rootOf(section).plate2Corner.y).toBeCloseTo(4, 12);
    expect(corners(section.plates[1]).some(({ y }) => Math.abs(y - 1) < 1e-12)).toBe(true);
  });
});

describe('A lap', () => {
  const lap = { arrangement: 'lap', t2: 10 } as const;

  test('lies on plate 1 with its end face as the second surface, what is left of it above toe 2', () => {
    const section = build(fillet({ ...lap, leg2: 8 }));
    expectPoints(section.face.toes, [point(8, 0), point(0, 8)]);
    const edge = rootOf(section).edge as readonly [Segment];
    expectPoints([edge[0].a, edge[0].b], [point(0, 8), point(0, 10)]);
    expect(hasCorner(section.plates[1], point(0, 10))).toBe(true);
    expectPoints([section.plateSurfaces[1].face.origin], [point(0, 10)]);
    expectPoints([section.plateSurfaces[1].face.normal], [point(0, 1)]);
    expectPoints([section.plateSurfaces[1].opposite.normal], [point(0, -1)]);
  });

  test('melts its edge round from the top down, by a share of what is above toe 2', () => {
    // 4 mm above toe 2, half of it melted: a quarter circle of radius 2 from (0, 8) to (-2, 10)
    const section = build(fillet({ ...lap, leg2: 6, edgeMelt: 0.5 }));
    const edge = rootOf(section).edge as readonly [Segment];
    expectPoints([edge[0].a, edge[0].b], [point(0, 6), point(0, 8)]);
    const rounded = section.plates[1].find(({ a, bulge }) => bulge !== 0 && a.y > 7) as Segment;
    expectPoints([rounded.a, rounded.b], [point(0, 8), point(-2, 10)]);
    // the middle of the quarter circle about (-2, 8)
    expectPoints([pointAt(rounded, 0.5)], [point(-2 + 2 * Math.SQRT1_2, 8 + 2 * Math.SQRT1_2)]);
  });

  test('has no edge left when it is all melted, or when the leg takes all of the end face', () => {
    expect(rootOf(build(fillet({ ...lap, leg2: 8, edgeMelt: 1 }))).edge).toEqual([]);
    const full = build(fillet({ ...lap, leg2: 10 }));
    expect(rootOf(full).edge).toEqual([]);
    // past toe 2 the outline goes straight on along the top
    expect(contourStart(full.face.beyond[1])).toEqual(point(0, 10));
    expect(full.face.beyond[1]).toHaveLength(1);
  });

  test('refuses a leg longer than its end face, the gap included', () => {
    expect(() => build(fillet({ ...lap, leg2: 10.5 }))).toThrow(
      'leg2: joint_error_leg_past_surface (bound 10)',
    );
    // with a gap of 1 the end face stands from 1 to 11
    expect(() => build(fillet({ ...lap, leg2: 10.5, rootGap: 1 }))).not.toThrow();
  });

  test('lies flat whatever the cut of its end', () => {
    const slanted = { ...lap, dihedralAngle: 110, leg2: 8 } as const;
    expect(build(fillet({ ...slanted, endCut: 'square' }))).toEqual(build(fillet(slanted)));
  });
});

describe('An outside corner', () => {
  const corner = { arrangement: 'corner', cornerOverlap: 0 } as const;

  test('set corner to corner touches in a point and carries the weld on both end faces', () => {
    const section = build(fillet({ ...corner }));
    expectPoints(rootOf(section).weldRoots, [point(0, 0)]);
    const [plate1, plate2] = section.plates;
    // plate 1 hangs below its end face from (0, 0) to (12, 0); plate 2 runs left from (0, 0) to (0, 12)
    expect(hasCorner(plate1, point(12, 0))).toBe(true);
    expect(hasCorner(plate2, point(0, 12))).toBe(true);
    expectPoints([section.plateSurfaces[0].face.origin], [point(12, 0)]);
    expectPoints([section.plateSurfaces[0].opposite.normal], [point(-1, 0)]);
    expect(total(section.deposits)).toBeCloseTo(32, 12);
  });

  test('with overlap slides plate 2 over plate 1’s end face, which shortens it', () => {
    const section = build(fillet({ ...corner, cornerOverlap: 3 }));
    expect(hasCorner(section.plates[0], point(9, 0))).toBe(true);
    expect(hasCorner(section.plates[0], point(-3, 0))).toBe(true);
    expect(() => build(fillet({ ...corner, cornerOverlap: 4.5 }))).toThrow(
      'leg1: joint_error_leg_past_surface (bound 7.5)',
    );
  });

  test('takes legs up to the whole of both end faces', () => {
    const section = build(fillet({ ...corner, leg1: 12, leg2: 12 }));
    expectPoints(section.face.toes, [point(12, 0), point(0, 12)]);
    expect(section.face.beyond.map((walk) => walk.length)).toEqual([1, 1]);
  });

  test('can be penetrated no farther than its plates overlap', () => {
    expect(() => build(fillet({ ...corner, rootPenetration: 1 }))).toThrow(
      'rootPenetration: joint_error_penetration_through_root (bound 0)',
    );
    const section = build(fillet({ ...corner, cornerOverlap: 2, rootPenetration: 2 }));
    expectPoints(rootOf(section).weldRoots, [point(-2, 0)]);
  });

  test('cut square turns plate 2 with its end face', () => {
    const { plateSurfaces } = build(fillet({ ...corner, endCut: 'square', dihedralAngle: 120 }));
    // square to the end face (-1/2, √3/2), away from the weld
    expectPoints([plateSurfaces[1].face.along], [point(-SQRT3 / 2, -0.5)]);
    const fitted = build(fillet({ ...corner, dihedralAngle: 120 }));
    expectPoints([fitted.plateSurfaces[1].face.along], [point(-1, 0)]);
  });
});

describe('At fit-up', () => {
  test('there are plates and a root but no weld, toe, spatter or undercut', () => {
    const section = build(
      fillet({
        stage: 'fitUp',
        undercut1Depth: 0.5,
        spatter: [{ plate: 1, place: 9, height: 1 }],
      }),
    );
    expect(section.welds).toEqual([]);
    expect(section.deposits).toEqual([]);
    expect(section.spatter).toEqual([]);
    expect(section.face.bead).toBeNull();
    expect(section.face.toes).toBeNull();
    expect(section.face.lips).toBeNull();
    expect(section.face.undercuts).toEqual([[], []]);
    expect(section.face.outline).toHaveLength(2);
  });

  test('the outline crosses a gap straight from O to plate 2’s corner', () => {
    const section = build(fillet({ stage: 'fitUp', rootGap: 2 }));
    expectPoints(
      section.face.outline.map(({ a }) => a),
      [point(68, 0), point(0, 0), point(0, 2)],
    );
    expectPoints(rootOf(section).weldRoots, [point(0, 2), point(0, 0)]);
  });

  test('the plates are those that are welded later, cut off at the same places', () => {
    const before = build(fillet({ stage: 'fitUp' })).plates;
    const after = build(fillet()).plates;
    for (const i of [0, 1] as const) {
      const far = corners(after[i]).filter((at) => distance(at, point(0, 0)) > 12);
      for (const at of far) expect(hasCorner(before[i], at)).toBe(true);
    }
  });
});

describe('The fusion boundary', () => {
  test('dips into each plate by the fusion depth between toe and root', () => {
    const { welds } = build(fillet({ fusionDepth: 1.2 }));
    const [intoPlate1, , intoPlate2] = welds[0] as unknown as readonly Segment[];
    // both to the right of the walk round the weld
    expect(sagitta(intoPlate1 as Segment)).toBeCloseTo(-1.2, 12);
    expect(sagitta(intoPlate2 as Segment)).toBeCloseTo(-1.2, 12);
  });

  test('stays within a thin plate: at most 0.6 of it', () => {
    const { welds } = build(fillet({ t1: 3, leg1: 20, fusionDepth: 4 }));
    expect(sagitta(welds[0]?.[0] as Segment)).toBeCloseTo(-1.8, 12);
  });
});

describe('A fillet that cannot be is refused by field, bound and reason', () => {
  test('when leg 2 ends short of plate 2’s corner across the gap', () => {
    expect(() => build(fillet({ rootGap: 3, leg2: 3.2 }))).toThrow(
      'leg2: joint_error_leg_within_gap (bound 3.5)',
    );
  });

  test('when penetration leaves no root, or goes deeper than the leg', () => {
    // 0.8 of 3 mm
    expect(() => build(fillet({ t2: 3, rootPenetration: 3 }))).toThrow(
      'rootPenetration: joint_error_penetration_through_root (bound 2.4',
    );
    expect(() => build(fillet({ leg1: 3, rootPenetration: 4 }))).toThrow(
      'rootPenetration: joint_error_penetration_over_leg (bound 3)',
    );
  });

  test('when a hollow face would be tangent to its plate: at 90 degrees and equal legs a bound in closed form', () => {
    // the chord leaves the plate at 45°; a sine of 0.01 is kept: h = c/2 · tan((45° - asin 0.01)/2)
    const bound = 4 * Math.SQRT2 * Math.tan((Math.PI / 4 - Math.asin(0.01)) / 2);
    expect(() => build(fillet({ convexity: -bound + 1e-9 }))).not.toThrow();
    expect(() => build(fillet({ convexity: -bound - 1e-9 }))).toThrow(
      `convexity: joint_error_face_behind_surface (bound ${String(-bound).slice(0, 12)}`,
    );
  });

  test('when a bead is so full that it would run into its plate past the toe', () => {
    const bound = 4 * Math.SQRT2 * Math.tan(((3 * Math.PI) / 4 - Math.asin(0.01)) / 2);
    expect(bound).toBeGreaterThan(12);
    // legs of 4: half the size, half the bound, 6.79
    expect(() => build(fillet({ leg1: 4, leg2: 4, convexity: bound / 2 - 1e-3 }))).not.toThrow();
    expect(() => build(fillet({ leg1: 4, leg2: 4, convexity: bound / 2 + 1e-3 }))).toThrow(
      'convexity: joint_error_face_into_plate',
    );
  });

  test('when an S-shaped face would fold or run behind its surface', () => {
    expect(() => build(fillet({ convexity: 4, reverseCurve: 2 }))).toThrow(
      'reverseCurve: joint_error_face_folds',
    );
    expect(() => build(fillet({ convexity: 1, reverseCurve: 2.5 }))).toThrow(
      'reverseCurve: joint_error_face_behind_surface',
    );
  });

  test('when a number is outside its range or no number', () => {
    expect(() => build(fillet({ leg1: 31 }))).toThrow('leg1: joint_error_out_of_range (bound 30)');
    expect(() => build(fillet({ t1: Number.NaN }))).toThrow('t1: joint_error_not_a_number');
    expect(() => build(fillet({ spatter: [{ plate: 1, place: 9, height: Infinity }] }))).toThrow(
      'spatter.0.height: joint_error_not_a_number',
    );
  });
});
