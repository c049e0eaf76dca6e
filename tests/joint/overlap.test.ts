import { describe, expect, test } from 'vitest';
import {
  contourStart,
  distance,
  extremeFromLine,
  isSimpleOutline,
  point,
  radius,
  tangentAt,
  type Contour,
  type Segment,
} from '../../src/geometry/index.ts';
import { build } from '../../src/joint/index.ts';
import { fillet } from './joints.ts';

function beadOf(changes: Parameters<typeof fillet>[0]): Contour {
  const { bead } = build(fillet(changes)).face;
  if (bead === null) throw new Error('no bead');
  return bead;
}

describe('An overlap', () => {
  const bead = beadOf({ overlap1: 2, convexity: 1 });
  const [under, nose] = bead as unknown as readonly [Segment, Segment];

  test('starts at the fused toe and rises off the plate straight, at 12 degrees, unfused', () => {
    expect(contourStart(bead)).toEqual(point(8, 0));
    expect(under.bulge).toBe(0);
    expect(Math.atan2(under.b.y - under.a.y, under.b.x - under.a.x)).toBeCloseTo(
      (12 * Math.PI) / 180,
      12,
    );
  });

  test('reaches out past the toe by exactly as much as asked', () => {
    expect(extremeFromLine(bead, point(8, 0), point(1, 0)).value).toBeCloseTo(2, 12);
    for (const overlap of [0.01, 0.5, 3, 5]) {
      const rolled = beadOf({ overlap1: overlap, convexity: 1.5 });
      expect(extremeFromLine(rolled, point(8, 0), point(1, 0)).value).toBeCloseTo(overlap, 12);
    }
  });

  test('ends in a round nose that under-surface and face leave without a corner', () => {
    // radius 0.3 of the overlap, at most 0.8
    expect(radius(nose)).toBeCloseTo(0.6, 12);
    expect(radius(beadOf({ overlap1: 5, convexity: 2 })[1] as Segment)).toBeCloseTo(0.8, 12);
    const face = bead[2] as Segment;
    for (const [before, after] of [
      [under, nose],
      [nose, face],
    ] as const) {
      expect(tangentAt(before, 1).x).toBeCloseTo(tangentAt(after, 0).x, 12);
      expect(tangentAt(before, 1).y).toBeCloseTo(tangentAt(after, 0).y, 12);
    }
  });

  test('touches the plate at its fused toe and nowhere else', () => {
    expect(extremeFromLine(bead.slice(1), point(8, 0), point(0, -1)).value).toBeLessThan(-0.1);
  });

  test('leaves the crown where it was, off the chord through the fused toes', () => {
    // chord from (8, 0) to (0, 8); outward normal (1, 1)/sqrt 2; crown 1 above its middle
    const crown = point(4 + Math.SQRT1_2, 4 + Math.SQRT1_2);
    expect(bead.some((piece) => distance(piece.b, crown) < 1e-12)).toBe(true);
  });

  test('on plate 2 is the mirror image of one on plate 1', () => {
    const mirrored = beadOf({ overlap2: 2, convexity: 1 })
      .map(({ a, b, bulge }) => ({ a: point(b.y, b.x), b: point(a.y, a.x), bulge }))
      .reverse();
    bead.forEach((piece, i) => {
      const other = mirrored[i] as Segment;
      expect(distance(piece.a, other.a)).toBeLessThan(1e-12);
      expect(distance(piece.b, other.b)).toBeLessThan(1e-12);
      expect(piece.bulge).toBeCloseTo(other.bulge, 12);
    });
  });

  test('can be on both toes', () => {
    const { welds, face } = build(fillet({ overlap1: 1.5, overlap2: 1, convexity: 2 }));
    expect(isSimpleOutline(welds[0] ?? [])).toBe(true);
    expect(face.lips?.[0].x).toBeCloseTo(9.5, 12);
    expect(face.lips?.[0].y).toBe(0);
    expect(face.lips?.[1].y).toBeCloseTo(9, 12);
  });

  test('is refused where the bead itself stands out farther', () => {
    // a rise of 5 on an 8 mm leg bulges over 2 mm past each toe by itself
    expect(() => build(fillet({ convexity: 5, overlap1: 0.5 }))).toThrow(
      'joint_error_overlap_inside_face',
    );
    expect(() => build(fillet({ convexity: 5 }))).not.toThrow();
  });

  test('and an undercut cannot be at the same toe, but at either toe', () => {
    expect(() => build(fillet({ overlap1: 1, undercut1Depth: 0.5 }))).toThrow(
      'joint_error_overlap_with_undercut',
    );
    expect(() => build(fillet({ overlap1: 1, undercut2Depth: 0.5 }))).not.toThrow();
  });
});

describe('The lip', () => {
  test('is the toe when nothing overhangs', () => {
    const { toes, lips } = build(fillet({ convexity: 1 })).face;
    expect(lips).toEqual(toes);
  });

  test('stands level with the outermost metal of an over-convex face, overhang or not', () => {
    // chord 8√2, rise 5: R = (32 + 25)/10 = 5.7; centre below the crown on the bisector:
    // crown 4√2 + 5 from O, less 5.7: 4.956854 from O, so x = y = 3.505025; outermost x = 9.205025
    const { lips } = build(fillet({ convexity: 5 })).face;
    const out = (4 * Math.SQRT2 + 5 - 5.7) * Math.SQRT1_2 + 5.7;
    expect(lips?.[0].x).toBeCloseTo(out, 12);
    expect(lips?.[0].y).toBe(0);
    expect(lips?.[1].y).toBeCloseTo(out, 12);
  });

  test('is the toe where a face runs on over the plate to the other toe without turning back', () => {
    // at 60 degrees with legs 4 and 12, toe 2 stands at x = 12 cos 60 = 6, past toe 1 at 4
    const { toes, lips } = build(fillet({ dihedralAngle: 60, leg1: 4, leg2: 12 })).face;
    expect(toes?.[1].x).toBeCloseTo(6, 12);
    expect(lips?.[0]).toEqual(toes?.[0]);
  });
});
