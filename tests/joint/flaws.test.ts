import { describe, expect, test } from 'vitest';
import {
  contourArea,
  contourEnd,
  distance,
  line,
  nearPoint,
  point,
  sagitta,
  type Segment,
} from '../../src/geometry/index.ts';
import { build } from '../../src/joint/index.ts';
import { walkSurface } from '../../src/joint/surface-walk.ts';
import { fillet } from './joints.ts';

describe('An undercut', () => {
  test('that is rounded is one arc from the toe, as wide and as deep as asked, into the plate', () => {
    const { face } = build(fillet({ undercut1Depth: 0.5, undercut1Width: 2 }));
    const [groove] = face.undercuts[0] as unknown as readonly [Segment];
    expect(groove.a).toEqual(point(8, 0));
    expect(groove.b).toEqual(point(10, 0));
    // to the right of a walk along +x, so 0.5 below the surface
    expect(sagitta(groove)).toBeCloseTo(-0.5, 12);
    expect(face.undercuts[1]).toEqual([]);
  });

  test('that is sharp is a V of two equal sides', () => {
    const { face } = build(
      fillet({ undercut2Depth: 1, undercut2Width: 1.5, undercut2Shape: 'sharp' }),
    );
    // plate 2's surface is x = 0, its metal at x < 0; toe 2 at (0, 8)
    expect(face.undercuts[1]).toEqual([
      line(point(0, 8), point(-1, 8.75)),
      line(point(-1, 8.75), point(0, 9.5)),
    ]);
  });

  test('moves neither the toe nor the surface line, and takes no weld metal', () => {
    const sound = build(fillet());
    const flawed = build(fillet({ undercut1Depth: 0.8, undercut2Depth: 0.4 }));
    expect(flawed.face.toes).toEqual(sound.face.toes);
    expect(flawed.face.surfaces).toEqual(sound.face.surfaces);
    expect(flawed.deposits).toEqual(sound.deposits);
  });

  test('is refused by name when its plate cannot hold it', () => {
    expect(() => build(fillet({ undercut1Depth: 1.1, undercut1Width: 2 }))).toThrow(
      'undercut1Depth: joint_error_undercut_deeper_than_half_width (bound 1)',
    );
    // 0.8 of a 3 mm plate is 2.4
    expect(() =>
      build(fillet({ t1: 3, undercut1Depth: 2.5, undercut1Width: 1, undercut1Shape: 'sharp' })),
    ).toThrow('undercut1Depth: joint_error_undercut_through_plate (bound 2.4');
    // a lap: 12 mm end face less leg 8 leaves 4, of which 0.1 stays
    expect(() =>
      build(fillet({ arrangement: 'lap', undercut2Depth: 0.5, undercut2Width: 4 })),
    ).toThrow('undercut2Width: joint_error_undercut_off_surface (bound 3.9)');
    // toe 2 at the very edge: no width would do
    expect(() => build(fillet({ arrangement: 'lap', leg2: 12, undercut2Depth: 0.5 }))).toThrow(
      /^undercut2Width: joint_error_undercut_off_surface$/,
    );
  });
});

describe('Spatter', () => {
  const air = 'left' as const;
  const path = [line(point(0, 0), point(30, 0))];
  const walk = (bumps: readonly { place: number; height: number }[], covered = 0) =>
    walkSurface(path, air, {
      undercut: null,
      spatter: bumps.map((bump) => ({ plate: 1, ...bump })),
      covered,
    });

  test('stands on the surface, its middle where asked, as high as asked, 2.5 times as wide', () => {
    const { spatter, beyond, bare } = walk([{ place: 10, height: 1 }]);
    const [bump] = spatter;
    if (!bump) throw new Error('no bump');
    const base = bump.find((piece) => piece.bulge === 0) as Segment;
    expect(base.a.x).toBeCloseTo(8.75, 12);
    expect(base.b.x).toBeCloseTo(11.25, 12);
    expect(contourArea(bump)).toBeGreaterThan(0);
    // outward from the walk: to its left, so 1 above the surface
    expect(sagitta(beyond[1] as Segment)).toBeCloseTo(1, 12);
    expect(bare).toEqual(path);
    expect(contourEnd(beyond)).toEqual(point(30, 0));
  });

  test('takes its place in order along the surface, whatever the order it is given in', () => {
    const { beyond, spatter } = walk([
      { place: 20, height: 1 },
      { place: 5, height: 2 },
    ]);
    expect(spatter).toHaveLength(2);
    beyond.forEach((piece, i) => {
      const next = beyond[i + 1];
      if (next) expect(nearPoint(piece.b, next.a)).toBe(true);
    });
    expect(beyond.map(({ bulge }) => Math.sign(bulge))).toEqual([0, -1, 0, -1, 0]);
  });

  test('is refused where it would touch the toe, the next bump or the end of the surface', () => {
    const refused = 'spatter: joint_error_spatter_no_room';
    expect(() => walk([{ place: 1.2, height: 1 }])).toThrow(refused);
    expect(() =>
      walk([
        { place: 10, height: 1 },
        { place: 12, height: 1 },
      ]),
    ).toThrow(refused);
    expect(() => walk([{ place: 29, height: 1 }])).toThrow(refused);
    expect(() => walk([{ place: 40, height: 1 }])).toThrow(refused);
  });

  test('is refused under metal that rolls over the toe, and in an undercut', () => {
    const refused = 'spatter: joint_error_spatter_no_room';
    expect(() => walk([{ place: 3, height: 1 }], 2)).toThrow(refused);
    expect(() => walk([{ place: 3.5, height: 1 }], 2)).not.toThrow();
    const bump = { plate: 1, place: 3, height: 1 } as const;
    expect(() => build(fillet({ undercut1Depth: 0.5, spatter: [bump] }))).toThrow(refused);
    expect(() => build(fillet({ spatter: [bump] }))).not.toThrow();
  });

  test('past a lap lies on the end face or on the top, never round the corner', () => {
    const lap = (place: number) =>
      build(
        fillet({
          arrangement: 'lap',
          leg2: 7,
          spatter: [{ plate: 2, place, height: 0.8 }],
        }),
      );
    // 5 mm of end face are left; a bump 2 mm wide fits about 2 up, and about 10 along (5 on the top)
    expect(lap(2).spatter[0]?.some(({ a }) => distance(a, point(0, 8)) < 1e-9)).toBe(true);
    expect(lap(10).spatter[0]?.some(({ a }) => distance(a, point(-4, 12)) < 1e-9)).toBe(true);
    expect(() => lap(5)).toThrow('joint_error_spatter_no_room');
  });

  test('is refused where bumps on the two plates would meet between them', () => {
    // at 60 degrees, 7.1 from O on both plates, 4 high: each stands 0.6 past the bisector
    const bumps = [
      { plate: 1, place: 5.1, height: 4 },
      { plate: 2, place: 5.1, height: 4 },
    ] as const;
    const acute = { dihedralAngle: 60, leg1: 2, leg2: 2 } as const;
    expect(() => build(fillet({ ...acute, spatter: bumps }))).toThrow(
      'joint_error_spatter_in_weld',
    );
    for (const bump of bumps) {
      expect(() => build(fillet({ ...acute, spatter: [bump] }))).not.toThrow();
    }
  });

  test('is refused where an overhanging face would run into it', () => {
    // at 60 degrees the face of a 2 × 30 fillet leans out over plate 1 at atan(26/13) = 63 degrees;
    // a bump leaves the plate at 2 atan 0.8 = 77 degrees
    const leaning = { dihedralAngle: 60, leg1: 2, leg2: 30 } as const;
    expect(() =>
      build(fillet({ ...leaning, spatter: [{ plate: 1, place: 5.1, height: 4 }] })),
    ).toThrow('joint_error_spatter_in_weld');
  });
});
