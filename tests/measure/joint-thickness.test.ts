import { describe, expect, it } from 'vitest';
import { build, type ButtJoint } from '../../src/joint/index.ts';
import { measure } from '../../src/measure/index.ts';
import { butt } from '../joint/butt/plain-butt.ts';
import { about, endsOf, valueOf } from './reading.ts';

/** Square edges, 10 mm plates, flush cap with its toes 1 mm past the edges, unfused to half way. */
const half: Partial<ButtJoint> = { preparation: 'square', incompletePenetration: 5 };
const thickness = (changes: Partial<ButtJoint>): number =>
  valueOf(build(butt({ ...half, ...changes })), 'jointThickness');

describe('the thickness through a weld whose root is unfused', () => {
  it('doesn’t jump to the whole plate when the root closes', () => {
    // from a flush cap straight down to the end of the weld, 10 - 5
    for (const rootOpening of [0.5, 1e-3, 1e-5, 0]) {
      expect(thickness({ rootOpening })).toBeCloseTo(5, 12);
    }
    // a cap 0.2 hollow stands lowest straight over the closed seam
    const hollow = { rootOpening: 0, capHeight: -0.2 };
    expect(thickness(hollow)).toBeCloseTo(4.8, 12);
    const section = build(butt({ ...half, ...hollow }));
    expect(endsOf(section, 'jointThickness')).toEqual([about(0), about(9.8), 0, 5]);
  });

  it('doesn’t jump in a V unfused above its root faces', () => {
    // unfused to 4, 2 above the root faces: the end of the weld is 4 wide, 6 under a flush cap
    const bevelled = { preparation: 'singleV', incompletePenetration: 4 } as const;
    expect(thickness({ ...bevelled, rootOpening: 1e-5 })).toBeCloseTo(6, 12);
    expect(thickness({ ...bevelled, rootOpening: 0 })).toBeCloseTo(6, 12);
  });

  it('is taken from an undercut where that is nearer to the end of the weld', () => {
    // the undercut goes from (-2, 10) down to (-3, 8); the weld ends between (±1, 5): √(2² + 3²)
    const undercut = { undercut1Depth: 2, undercut1Width: 2 };
    expect(thickness({ rootOpening: 2, ...undercut })).toBeCloseTo(Math.sqrt(13), 12);
  });

  it('looks past an unfused middle, which no outline reaches', () => {
    const doubleV = { preparation: 'doubleV', rootOpening: 0, incompletePenetration: 2 } as const;
    expect(thickness(doubleV)).toBeCloseTo(10, 12);
  });

  it('takes one unfused edge of a section by itself, and only what is bare from the root up', () => {
    const section = build(butt({ ...half, rootOpening: 0 }));
    const { groove } = section;
    if (groove === null) throw new Error('a butt joint has a groove');
    const [bare, other] = groove.unfused;
    const one = { ...section, groove: { ...groove, unfused: [bare, []] as const } };
    expect(valueOf(one, 'jointThickness')).toBeCloseTo(5, 12);
    const two = { ...section, groove: { ...groove, unfused: [[], other] as const } };
    expect(valueOf(two, 'jointThickness')).toBeCloseTo(5, 12);
    const none = { ...section, groove: { ...groove, unfused: [[], []] as const } };
    expect(valueOf(none, 'jointThickness')).toBeCloseTo(10, 12);
    expect(measure({ ...section, groove: null }).values.jointThickness?.value).toBeCloseTo(10, 12);
  });
});
