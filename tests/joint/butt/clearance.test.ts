import { describe, expect, test } from 'vitest';
import { build, type ButtJoint } from '../../../src/joint/index.ts';
import { butt, refusalOf } from './plain-butt.ts';

const refused = (changes: Partial<ButtJoint>) => refusalOf(() => build(butt(changes)));

describe('a bead is refused by name', () => {
  test('when its hollow leaves a toe below the fusion boundary', () => {
    // toes 20 apart; the boundary falls from them at 45°, the bead at 2 atan(2h / 20):
    // 45° at h = 10 tan 22.5° = 4.142
    expect(refused({ capHeight: -4.1, rootFace1: 1, rootFace2: 1 })).toBeNull();
    const deep = refused({ capHeight: -4.2 });
    expect(deep?.field).toBe('capHeight');
    expect(deep?.reason.key).toBe('joint_error_bead_below_fusion');
  });

  test('when it meets the fusion boundary farther on', () => {
    // fused 0.3 deep, toes 8 past the edges of a 2 mm square groove: the boundary is 0.3 deep from
    // (±1.3, 9.7) on, while the bead is 0.7 deep there
    const shallow = { preparation: 'square', fusionDepth: 0.3, capPast1: 8, capPast2: 8 } as const;
    expect(refused({ ...shallow, capHeight: -0.7 })?.reason.key).toBe(
      'joint_error_bead_below_fusion',
    );
    expect(refused({ ...shallow, capHeight: -0.1 })).toBeNull();
  });

  test('when it leans out and comes down on a plate turned up', () => {
    // a bead 0.4 wide and 3 high leans out all round; 10° of turn is more than it has under it
    const blob = { preparation: 'square', rootOpening: 0, capPast1: 0.2, capPast2: 0.2 } as const;
    expect(refused({ ...blob, capHeight: 3 })).toBeNull();
    const onto = refused({ ...blob, capHeight: 3, angularMisalignment: 10 });
    expect(onto?.field).toBe('capHeight');
    expect(onto?.reason.key).toBe('joint_error_bead_onto_plate');
  });

  test('when two hollows meet through the weld', () => {
    const thin = { preparation: 'square', t1: 2, t2: 2, rootOpening: 4 } as const;
    const flush = { capPast1: 0, capPast2: 0, rootPast1: 0, rootPast2: 0 };
    expect(refused({ ...thin, ...flush, capHeight: -0.9, rootHeight: -0.9 })).toBeNull();
    const through = refused({ ...thin, ...flush, capHeight: -1.1, rootHeight: -1.1 });
    expect(through?.reason.key).toBe('joint_error_bead_through_weld');
  });

  test('when touching edges leave it no width', () => {
    const shut = { preparation: 'square', rootOpening: 0 } as const;
    expect(refused({ ...shut, capPast1: 0, capPast2: 0 })?.field).toBe('capPast1');
    expect(refused({ ...shut, rootPast1: 0, rootPast2: 0 })?.field).toBe('rootPast1');
  });

  test('when its dip is so deep and narrow that it would fold', () => {
    expect(refused({ preparation: 'square', capHeight: 1, capDip: 4 })?.field).toBe('capDip');
  });

  test('when a roll over a toe would meet the rest of it', () => {
    // plate 2 lies 5.9 mm lower: the face comes down steeply and under the roll at its end
    const steep = { preparation: 'square', t1: 2, t2: 4, offset: -5.9, crownShift: 0.6 } as const;
    const rolled = refused({
      ...steep,
      capPast1: 1.5,
      capPast2: 1.5,
      rootHeight: 1,
      overlap2: 4.9,
    });
    expect(rolled?.field).toBe('overlap2');
  });
});

describe('the straight end of a weld with an unfused root', () => {
  test('is refused where it would cut across a bare edge', () => {
    // plate 2 lies 8 mm lower, so the end of the weld would pass plate 1's root edge
    const steep = { preparation: 'singleBevel', rootFace1: 0, offset: -8 } as const;
    const refusal = refused({ ...steep, incompletePenetration: 0.2, rootOpening: 2 });
    expect(refusal?.field).toBe('incompletePenetration');
    expect(refusal?.reason.key).toBe('joint_error_unfused_end_across_edge');
  });

  test('is refused where it would cut across a fused edge', () => {
    // 2 mm against 20 mm, turned down: the edges touch at 0.56 on plate 1, over its unfused end at
    // 0.55, and 0.3 under the unfused end of plate 2
    const across = {
      preparation: 'doubleV',
      t1: 2,
      t2: 20,
      rootFace1: 1.5,
      rootFace2: 1.5,
      rootOpening: 0,
      offset: 0.3,
      angularMisalignment: -10,
    } as const;
    expect(refused({ ...across, incompletePenetration: 0.9 })?.reason.key).toBe(
      'joint_error_unfused_end_across_edge',
    );
  });

  test('may run along edges that touch, however they are stepped', () => {
    expect(refused({ rootOpening: 0, offset: 0.5, incompletePenetration: 1 })).toBeNull();
  });
});
