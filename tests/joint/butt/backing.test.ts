import { describe, expect, test } from 'vitest';
import { contourArea, extremeInDirection, type Region } from '../../../src/geometry/index.ts';
import { build, type ButtJoint } from '../../../src/joint/index.ts';
import { butt, cornersOf, refusalOf, rootOf, rounded } from './plain-butt.ts';

// A strip 30 × 6 mm under the plain single V, decided here: parallel to plate 1,
// its top at the lowest point of either root surface over its width.

const backed = (changes: Partial<ButtJoint> = {}) => build(butt({ backing: 'strip', ...changes }));

const stripOf = ({ backing }: ReturnType<typeof backed>): Region => {
  if (backing === null) throw new Error('the joint has a strip');
  return backing;
};

describe('a backing strip', () => {
  test('under level plates melts by half the fusion depth between the fused root edges', () => {
    const section = backed();
    // the edges are fused 1 mm deep, so the weld lies on the strip from -2 to 2, 0.5 mm into it:
    // a cap of bulge 2 × 0.5 / 4, R = (2² + 0.5²) / (2 × 0.5) = 4.25, sweep 4 atan(0.25)
    const sweep = 4 * Math.atan(0.25);
    const bed = (4.25 ** 2 * (sweep - Math.sin(sweep))) / 2;
    expect(contourArea(stripOf(section))).toBeCloseTo(180 - bed, 10);
    const [weld] = section.welds;
    expect(extremeInDirection(weld ?? [], { x: 0, y: -1 }).value).toBeCloseTo(0.5, 12);
    // weld metal outside the plates and the strip: the groove (84) alone, the cap being flat
    expect(section.deposits.map(contourArea)).toEqual([expect.closeTo(84, 10)]);
  });

  test('melts no deeper than a third of its thickness', () => {
    // fused 4 mm deep, half of it would be 2; a strip of 3 allows 1
    const [weld] = backed({ fusionDepth: 4, backingThickness: 3 }).welds;
    expect(extremeInDirection(weld ?? [], { x: 0, y: -1 }).value).toBeCloseTo(1, 12);
  });

  test('is walked round on the root side, where there is no bead', () => {
    const root = rootOf(backed());
    expect(root.bead).toBeNull();
    expect(root.toes).toBeNull();
    expect(root.lips).toBeNull();
    expect(cornersOf(root.outline)).toEqual([
      [-70, 0],
      [-15, 0],
      [-15, -6],
      [15, -6],
      [15, 0],
      [70, 0],
    ]);
  });

  test('leaves a gap under the higher plate, which the outline enters as far as the weld', () => {
    // plate 2 is 1 mm higher; the weld stands on the strip up to x = 1
    const section = backed({ offset: 1 });
    expect(cornersOf(rootOf(section).outline).slice(1, -1)).toEqual([
      [-15, 0],
      [-15, -6],
      [15, -6],
      [15, 0],
      [1, 0],
      [1, 1],
    ]);
    // under plate 1 when that is the higher one
    expect(cornersOf(rootOf(backed({ offset: -1 })).outline).slice(1, -1)).toEqual([
      [-1, 0],
      [-1, -1],
      [-15, -1],
      [-15, -7],
      [15, -7],
      [15, -1],
    ]);
  });

  test('lies against a plate turned down with its far corner, over a gap that is shut in', () => {
    // plate 2 falls by tan 5° a millimetre from its root edge, 1 mm from the middle
    const root = rootOf(backed({ angularMisalignment: -5 }));
    const edge2 = root.surfaces[1].origin;
    const top = rounded(edge2.y - (15 - edge2.x) * Math.tan(Math.PI / 36));
    const corners = cornersOf(root.outline);
    expect(corners.slice(1, -1)).toEqual([
      [-1, 0],
      [-1, top],
      [-15, top],
      [-15, rounded(top - 6)],
      [15, rounded(top - 6)],
      [15, top],
    ]);
  });

  test('touches a plate turned up at its root edge only', () => {
    // turned up about its middle and set 1 mm low, its root edge stands at 5 - 1 - 5 cos 5°
    const section = backed({ angularMisalignment: 5, offset: -1 });
    const edge2 = rootOf(section).surfaces[1].origin;
    expect(edge2.y).toBeCloseTo(4 - 5 * Math.cos(Math.PI / 36), 12);
    const corners = cornersOf(rootOf(section).outline);
    expect(corners.slice(1, 3)).toEqual([
      [-1, 0],
      [-1, rounded(edge2.y)],
    ]);
    expect(corners.at(-2)).toEqual([rounded(edge2.x), rounded(edge2.y)]);
  });
});

describe('a backing strip is refused', () => {
  test.each(['doubleV', 'doubleBevel'] as const)('under a %s', (preparation) => {
    for (const stage of ['fitUp', 'welded'] as const) {
      expect(refusalOf(() => backed({ preparation, stage }))?.field).toBe('backing');
    }
  });

  test('with an unfused root, but not yet at fit-up', () => {
    const unfused = { incompletePenetration: 1 };
    expect(refusalOf(() => backed(unfused))?.field).toBe('incompletePenetration');
    expect(refusalOf(() => backed({ ...unfused, stage: 'fitUp' }))).toBeNull();
  });

  test('with an undercut at the root, which it covers', () => {
    expect(refusalOf(() => backed({ rootUndercut2Depth: 0.5 }))?.field).toBe('rootUndercut2Depth');
  });

  test('when it is too narrow for the weld it carries, naming the width that would do', () => {
    // half the opening 5, fused 4, and 0.5 to lie on: 9.5 on either side
    const wide = { rootOpening: 10, fusionDepth: 4 };
    expect(refusalOf(() => backed({ ...wide, backingWidth: 18 }))?.bound).toBeCloseTo(19, 12);
    expect(refusalOf(() => backed({ ...wide, backingWidth: 19 }))).toBeNull();
  });

  test('when the edges touch over a gap, so that the weld has no way down to it', () => {
    const tilted = { preparation: 'square', rootOpening: 0, angularMisalignment: -5 } as const;
    expect(refusalOf(() => backed(tilted))?.field).toBe('rootOpening');
    // level plates that touch lie on the strip themselves
    expect(refusalOf(() => backed({ ...tilted, angularMisalignment: 0 }))).toBeNull();
  });
});
