import { describe, expect, test } from 'vitest';
import { contourArea, extremeFromLine, point, tangentAt } from '../../src/geometry/index.ts';
import type { Contour, Segment } from '../../src/geometry/index.ts';
import { beadProfile, profileFolds, type BeadShape } from '../../src/joint/bead-profile.ts';

const flat: BeadShape = { rise: 0, shift: 0, reverse: 0, dip: 0 };
const FROM = point(0, 0);
const TO = point(10, 0);

function profile(shape: Partial<BeadShape>, outward: 'left' | 'right' = 'left'): Contour {
  return beadProfile(FROM, TO, outward, { ...flat, ...shape });
}

const pieceAt = (contour: Contour, i: number): Segment => {
  const piece = contour[i];
  if (!piece) throw new Error(`no piece ${i}`);
  return piece;
};

/** Greatest height of a contour above the chord, and greatest depth below it. */
const top = (contour: Contour): number => extremeFromLine(contour, FROM, point(0, 1)).value;
const bottom = (contour: Contour): number => -extremeFromLine(contour, FROM, point(0, -1)).value;

describe('A bead profile', () => {
  test('is the chord itself when it is flat', () => {
    expect(profile({})).toEqual([{ a: FROM, b: TO, bulge: 0 }]);
  });

  test('is one arc whose sagitta is the rise when it has one centred crown', () => {
    // bulge = rise / half chord = 2 / 5; outward left of a walk to the right turns clockwise
    expect(profile({ rise: 2 })).toEqual([{ a: FROM, b: TO, bulge: -0.4 }]);
    expect(profile({ rise: 2 }, 'right')).toEqual([{ a: FROM, b: TO, bulge: 0.4 }]);
    expect(profile({ rise: -2 })).toEqual([{ a: FROM, b: TO, bulge: 0.4 }]);
  });

  test('keeps the height of the crown when it sits off centre, level there', () => {
    // shift 0.6 of the half chord 5 puts the crown at 5 + 3 = 8
    const face = profile({ rise: 2, shift: 0.6 });
    expect(face).toHaveLength(2);
    const crown = pieceAt(face, 0).b;
    expect(crown.x).toBeCloseTo(8, 12);
    expect(crown.y).toBeCloseTo(2, 12);
    expect(tangentAt(pieceAt(face, 0), 1).y).toBeCloseTo(0, 12);
    expect(tangentAt(pieceAt(face, 1), 0).y).toBeCloseTo(0, 12);
    expect(top(face)).toBeCloseTo(2, 12);
  });

  test('gives each side of the crown an arc of bulge tan(slope / 2)', () => {
    const face = profile({ rise: 2, shift: 0.6 });
    // left: slope atan(2/8), bulge tan(atan(0.25)/2) = 0.25 / (1 + sqrt(1 + 0.0625)) = 0.12310562561766
    expect(pieceAt(face, 0).bulge).toBeCloseTo(-0.12310562561766, 13);
    // right: slope atan(2/2) = 45 degrees, bulge tan(22.5 degrees) = sqrt 2 - 1
    expect(pieceAt(face, 1).bulge).toBeCloseTo(-(Math.SQRT2 - 1), 13);
  });

  test('turns the other way near the far end for a positive reverse, near the first for a negative', () => {
    const far = profile({ rise: 1, reverse: 0.4 });
    // the second swell is 10 × 0.4 = 4 wide: its bottom at 10 - 2 = 8, the crown amid the other 6
    expect(top(far)).toBeCloseTo(1, 12);
    expect(bottom(far)).toBeCloseTo(-0.4, 12);
    expect(extremeFromLine(far, FROM, point(0, 1)).point.x).toBeCloseTo(3, 12);
    expect(extremeFromLine(far, FROM, point(0, -1)).point.x).toBeCloseTo(8, 12);
    const near = profile({ rise: 1, reverse: -0.4 });
    expect(extremeFromLine(near, FROM, point(0, 1)).point.x).toBeCloseTo(7, 12);
    expect(extremeFromLine(near, FROM, point(0, -1)).point.x).toBeCloseTo(2, 12);
  });

  test('puts a bump beside a hollow, and a hollow beside a flat face', () => {
    expect(top(profile({ rise: -1, reverse: 0.4 }))).toBeCloseTo(0.4, 12);
    expect(bottom(profile({ rise: -1, reverse: 0.4 }))).toBeCloseTo(-1, 12);
    expect(top(profile({ rise: 0, reverse: 0.4 }))).toBeCloseTo(0, 12);
    expect(bottom(profile({ rise: 0, reverse: 0.4 }))).toBeCloseTo(-0.4, 12);
  });

  test('never gives the second swell more than half the chord', () => {
    // 10 × 2 = 20 is more than half of 10, so the bottom stands at 10 - 2.5
    const face = profile({ rise: 1, reverse: 2 });
    expect(extremeFromLine(face, FROM, point(0, -1)).point.x).toBeCloseTo(7.5, 12);
  });

  test('dips between two crests of the full height', () => {
    // crests 6 × 0.5 = 3 apart about the middle
    const face = profile({ rise: 2, dip: 0.5 });
    expect(top(face)).toBeCloseTo(2, 12);
    const crests = face.filter((piece) => Math.abs(piece.b.y - 2) < 1e-12).map(({ b }) => b.x);
    expect(crests).toHaveLength(2);
    expect(crests[0]).toBeCloseTo(3.5, 12);
    expect(crests[1]).toBeCloseTo(6.5, 12);
    const valley = face.find((piece) => Math.abs(piece.b.x - 5) < 1e-12);
    expect(valley?.b.y).toBeCloseTo(1.5, 12);
  });

  test('is smooth from end to end whatever swells it has', () => {
    for (const shape of [
      { rise: 1, shift: 0.4, reverse: 0.4 },
      { rise: -1, shift: -0.3, reverse: -0.5 },
      { rise: 0, reverse: 0.4 },
      { rise: 2, shift: 0.5, dip: 0.5 },
      { rise: -1, dip: 1.2 },
      { rise: 1, reverse: 0.3, dip: 0.2 },
    ]) {
      const face = profile(shape);
      for (const [i, piece] of face.entries()) {
        const next = face[i + 1];
        if (!next) continue;
        expect(next.a).toEqual(piece.b);
        const [out, into] = [tangentAt(piece, 1), tangentAt(next, 0)];
        expect(out.x * into.y - out.y * into.x).toBeCloseTo(0, 12);
        expect(out.x * into.x + out.y * into.y).toBeCloseTo(1, 12);
      }
    }
  });

  test('passes through flat, and fades its second swell and dip out, without a jump in area', () => {
    const area = (shape: Partial<BeadShape>): number => contourArea(profile(shape));
    const tiny = 1e-6;
    expect(area({ rise: tiny })).toBeCloseTo(0, 4);
    expect(area({ rise: -tiny })).toBeCloseTo(0, 4);
    expect(area({ rise: 1, shift: tiny })).toBeCloseTo(area({ rise: 1 }), 4);
    expect(area({ rise: 1, reverse: tiny })).toBeCloseTo(area({ rise: 1 }), 4);
    expect(area({ rise: 1, reverse: -tiny })).toBeCloseTo(area({ rise: 1 }), 4);
    expect(area({ rise: 1, dip: tiny })).toBeCloseTo(area({ rise: 1 }), 4);
    // what is too small to be there is not there
    expect(profile({ rise: 1, reverse: 1e-9, dip: 1e-9 })).toEqual(profile({ rise: 1 }));
    expect(profile({ rise: 1e-9 })).toEqual(profile({}));
  });

  test('folds when two swells stand so close that the face between them would lean back', () => {
    // dip 2.5 on a chord of 10: crests 5 apart, bottom 2.5 from each and 2.5 below, 45 degrees: still just a bead
    expect(profileFolds(10, { ...flat, rise: 3, dip: 2.5 })).toBe(false);
    expect(profileFolds(10, { ...flat, rise: 3, dip: 2.6 })).toBe(true);
    // crown at 2.5, hollow at 7.5, 5 apart: 3 + 2 = 5 down
    expect(profileFolds(10, { ...flat, rise: 3, reverse: 2 })).toBe(false);
    expect(profileFolds(10, { ...flat, rise: 3.1, reverse: 2 })).toBe(true);
    expect(profileFolds(10, { ...flat, rise: 30 })).toBe(false);
  });
});
