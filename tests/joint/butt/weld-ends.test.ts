import { describe, expect, test } from 'vitest';
import { build, type ButtJoint } from '../../../src/joint/index.ts';
import { butt, refusalOf } from './plain-butt.ts';

const refused = (changes: Partial<ButtJoint>) => refusalOf(() => build(butt(changes)));

describe('a toe is refused', () => {
  test('that both stops short of its groove edge and runs past it', () => {
    expect(refused({ capDrop1: 1 })?.field).toBe('capDrop1');
    expect(refused({ capDrop1: 1, capPast1: 0 })).toBeNull();
  });

  test('that lies inside the groove and is rolled over', () => {
    expect(refused({ capDrop2: 1, capPast2: 0, overlap2: 1 })?.field).toBe('overlap2');
  });

  test('that is rolled over and gouged beside', () => {
    expect(refused({ overlap1: 1, undercut1Depth: 0.5 })?.field).toBe('overlap1');
  });

  test('that would lie where the edges touch, naming the drop that would do', () => {
    // the root faces touch from 0 to 2, so 8 mm of bevel, less what is too small to draw
    const shut = { rootOpening: 0, rootFace1: 6, rootFace2: 6, capPast1: 0 };
    const shallow = refused({ ...shut, capDrop1: 5 });
    expect(shallow?.field).toBe('capDrop1');
    expect(shallow?.bound).toBeCloseTo(3.998, 12);
    // an undercut beside it reaches down as well
    expect(refused({ ...shut, capDrop1: 3, undercut1Depth: 4, undercut1Width: 8 })?.field).toBe(
      'undercut1Depth',
    );
    // square edges touch all the way: no drop would do
    expect(
      refused({ preparation: 'square', rootOpening: 0, capPast1: 0, capDrop1: 1 })?.bound,
    ).toBeNull();
  });
});

describe('an undercut is refused', () => {
  test('whose side would stand upright against the weld, naming the depth that would do', () => {
    const round = { undercut1Shape: 'rounded', undercut1Width: 2 } as const;
    expect(refused({ ...round, undercut1Depth: 0.99 })?.bound).toBeCloseTo(0.98, 12);
    expect(refused({ ...round, undercut1Depth: 0.97 })).toBeNull();
  });

  test('deeper than the bare edge beside an unfused root', () => {
    const deep = refused({ incompletePenetration: 1, rootUndercut1Depth: 1 });
    expect(deep?.field).toBe('rootUndercut1Depth');
    expect(deep?.bound).toBeCloseTo(0.95, 12);
  });

  test('that would open into the groove over a bevel leaning back', () => {
    // 3 deep under a toe at the root face's own setback: the bevel is 1.05 back there
    const root = refused({ rootPast1: 0, rootUndercut1Depth: 3, rootUndercut1Width: 6 });
    expect(root?.field).toBe('rootUndercut1Depth');
    // past the face groove edge of a double V whose root bevel leans farther back
    const face = refused({
      preparation: 'doubleV',
      rootSideShare: 0.9,
      capPast1: 0,
      undercut1Depth: 4,
      undercut1Width: 8,
    });
    expect(face?.field).toBe('undercut1Depth');
    expect(face?.reason.key).toBe('joint_error_undercut_into_groove');
  });
});

describe('a weld is refused that has nothing left to fuse to', () => {
  test.each([
    ['incompletePenetration', { incompletePenetration: 10 }],
    ['incompletePenetration', { preparation: 'doubleV', incompletePenetration: 10 }],
    ['capDrop1', { t1: 5, t2: 5, capPast1: 0, capDrop1: 5 }],
    [
      'rootUndercut1Depth',
      { t1: 4, t2: 4, undercut1Depth: 2, rootUndercut1Depth: 2, rootPast1: 4, capPast1: 4 },
    ],
  ] as const)('for the sake of %s', (field, changes) => {
    const refusal = refused(changes);
    expect(refusal?.field).toBe(field);
    expect(refusal?.reason.key).toBe('joint_error_nothing_left_to_fuse');
  });

  test('for the sake of the face undercut, under which the unfused root has no room', () => {
    expect(refused({ preparation: 'square', t1: 5, undercut1Depth: 4, capDrop1: 0 })).toBeNull();
    const over = { preparation: 'square', t1: 4, t2: 4, incompletePenetration: 3 } as const;
    expect(refused({ ...over, undercut1Depth: 1 })?.field).toBe('incompletePenetration');
  });
});
