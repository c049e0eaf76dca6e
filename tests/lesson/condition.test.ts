import { describe, expect, it } from 'vitest';
import { build, defaultJoint } from '../../src/joint/index.ts';
import { holds, unmet, type Condition } from '../../src/lesson/index.ts';
import { measure, type Measurements } from '../../src/measure/index.ts';

/** Legs 8 and 6.5; the throat could not be measured. */
const measurements = {
  values: {
    leg1: { id: 'leg1', value: 8, unit: 'mm', witness: { kind: 'none' } },
    leg2: { id: 'leg2', value: 6.5, unit: 'mm', witness: { kind: 'none' } },
    actualThroat: { id: 'actualThroat', value: null, unit: 'mm', witness: { kind: 'none' } },
  },
} as unknown as Measurements;

describe('holds', () => {
  it.each<[Condition, boolean]>([
    [{ measurement: 'leg1', min: 8 }, true],
    [{ measurement: 'leg1', min: 8.01 }, false],
    [{ measurement: 'leg1', max: 8 }, true],
    [{ measurement: 'leg1', max: 7.99 }, false],
    [{ measurement: 'leg1', min: 7, max: 9 }, true],
    [{ measurement: 'leg2', below: 'leg1', by: 1.5 }, true],
    [{ measurement: 'leg2', below: 'leg1', by: 1.51 }, false],
    [{ measurement: 'leg1', below: 'leg2', by: 0 }, false],
    [{ measurement: 'leg1', equals: 'leg2', by: 1.5 }, true],
    [{ measurement: 'leg1', equals: 'leg2', by: 1.4 }, false],
    [{ measurement: 'actualThroat', min: 0 }, false],
    [{ measurement: 'leg1', below: 'actualThroat', by: 0 }, false],
    [{ measurement: 'leg1', equals: 'actualThroat', by: 99 }, false],
    [{ measurement: 'convexity', max: 99 }, false],
  ])('reads %o as %s', (condition, expected) => {
    expect(holds(condition, measurements)).toBe(expected);
  });
});

describe('a bound that is just met', () => {
  it('isn’t missed by rounding: a leg of 8 in a skewed joint is at least 8', () => {
    for (const dihedralAngle of [100, 120]) {
      const skewed = measure(build({ ...defaultJoint('fillet'), leg1: 8, leg2: 8, dihedralAngle }));
      for (const measurement of ['leg1', 'leg2'] as const) {
        expect(holds({ measurement, min: 8 }, skewed)).toBe(true);
        expect(holds({ measurement, max: 8 }, skewed)).toBe(true);
      }
      expect(holds({ measurement: 'leg2', equals: 'leg1', by: 0 }, skewed)).toBe(true);
      expect(holds({ measurement: 'leg1', below: 'leg2', by: 0 }, skewed)).toBe(true);
      expect(holds({ measurement: 'leg2', below: 'leg1', by: 0 }, skewed)).toBe(true);
    }
  });

  it('is missed by more than the tolerance', () => {
    const value = (leg: number) => ({
      ...measurements,
      values: { ...measurements.values, leg1: { ...measurements.values.leg1, value: leg } },
    });
    const short = value(8 - 1e-8) as Measurements;
    const long = value(8 + 1e-8) as Measurements;
    expect(holds({ measurement: 'leg1', min: 8 }, short)).toBe(false);
    expect(holds({ measurement: 'leg1', max: 8 }, long)).toBe(false);
    expect(holds({ measurement: 'leg1', equals: 'leg2', by: 1.5 }, long)).toBe(false);
    expect(holds({ measurement: 'leg2', below: 'leg1', by: 1.5 }, short)).toBe(false);
  });
});

describe('unmet', () => {
  it('lists what is still to be done, in order', () => {
    const conditions: Condition[] = [
      { measurement: 'leg1', min: 9 },
      { measurement: 'leg2', min: 6 },
      { measurement: 'leg2', max: 6 },
    ];
    expect(unmet(conditions, measurements)).toEqual([conditions[0], conditions[2]]);
  });
});
