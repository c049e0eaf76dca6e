import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import {
  build,
  defaultJoint,
  JointError,
  parametersOf,
  type Joint,
} from '../../src/joint/index.ts';
import { fetchKind } from '../../src/state/built.ts';
import { constrain } from '../../src/state/constrain.ts';
import { numberAt, withNumber } from '../../src/state/parameter.ts';
import { addSpatter } from '../../src/state/spatter.ts';
import { runs } from '../runs.ts';

beforeAll(() => fetchKind('butt'));

const fillet = defaultJoint('fillet');

/** Everything but one field: what a move of that field must leave alone. */
const others = (joint: Joint, field: string): Joint => withNumber(joint, field, 0);

describe('constrain', () => {
  it('gives the asked value where the joint can be built with it', () => {
    const { joint, stop } = constrain(fillet, 'leg1', 9.3);
    expect(numberAt(joint, 'leg1')).toBe(9.3);
    expect(stop).toBeNull();
  });

  it('stops at the bound of the parameter, and says which bound', () => {
    // Legs run from 2 to 30 mm.
    const { joint, stop } = constrain(fillet, 'leg1', 55);
    expect(numberAt(joint, 'leg1')).toBe(30);
    expect(stop).toMatchObject({ field: 'leg1', at: 30, reason: { key: 'bench_stop_most' } });
    expect(constrain(fillet, 'leg1', -1).stop?.reason.key).toBe('bench_stop_least');
  });

  it('moves nothing for a field that this joint does not have, or a value that is no number', () => {
    expect(constrain(fillet, 'capHeight', 3)).toEqual({ joint: fillet, stop: null });
    expect(constrain(fillet, 'constructor', 3)).toEqual({ joint: fillet, stop: null });
    expect(constrain(fillet, 'leg1', Number.NaN)).toEqual({ joint: fillet, stop: null });
  });

  it('comes within 1e-3 mm of the last value that can be built, and names the refusal', () => {
    // A face cannot be hollowed out past the root: somewhere between 0 and −10 mm it is refused.
    const { joint, stop } = constrain(fillet, 'convexity', -10);
    const reached = numberAt(joint, 'convexity') ?? 0;
    expect(stop?.reason.key).toMatch(/^joint_error_/);
    expect(stop?.at).toBe(reached);
    expect(reached).toBeGreaterThan(-10);
    expect(() => build(withNumber(fillet, 'convexity', reached - 1e-3))).toThrow(JointError);
  });

  it('moves a bump of spatter within its own bounds', () => {
    const joint = addSpatter(fillet, 1);
    expect(numberAt(constrain(joint, 'spatter.0.height', 2).joint, 'spatter.0.height')).toBe(2);
    expect(constrain(joint, 'spatter.0.height', 0).stop?.at).toBe(0.1);
  });

  it('always gives a joint that can be built, with no other parameter moved', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<Joint>(fillet, defaultJoint('fillet', 'lap'), defaultJoint('butt')),
        fc.nat(),
        fc.double({ min: -50, max: 150, noNaN: true }),
        (joint, pick, asked) => {
          const ranges = parametersOf(joint);
          const field = ranges[pick % ranges.length]?.field ?? '';
          const after = constrain(joint, field, asked).joint;
          expect(() => build(after)).not.toThrow();
          expect(others(after, field)).toEqual(others(joint, field));
        },
      ),
      { numRuns: runs(2000) },
    );
  });
});
