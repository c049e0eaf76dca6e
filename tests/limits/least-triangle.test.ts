import { describe, expect, it } from 'vitest';
import { build, defaultJoint, type FilletJoint } from '../../src/joint/index.ts';
import {
  judge,
  leastTriangle,
  limitSets,
  type CompiledLimitSet,
  type JobSheet,
  type LeastTriangle,
} from '../../src/limits/index.ts';
import { measure } from '../../src/measure/index.ts';
import { iso, mm, sheetWith } from './hand-made.ts';

const nothing: CompiledLimitSet = { ...iso, id: 'nothing', criteria: [], trees: {} };
const house = limitSets.find(({ id }) => id === 'lock-gate-house') ?? nothing;

function least(joint: Partial<FilletJoint>, sheet: JobSheet, set = nothing): LeastTriangle {
  const measurements = measure(build({ ...defaultJoint('fillet'), ...joint }));
  return leastTriangle(judge(measurements, sheet, set), measurements);
}
const legs = (first: number, second: number | null = null, more: object = {}): JobSheet =>
  sheetWith({
    size: { as: 'leg', first: mm(first), second: second === null ? null : mm(second) },
    ...more,
  });
const throat = (first: number, more: object = {}): JobSheet =>
  sheetWith({ size: { as: 'throat', first: mm(first), second: null }, ...more });

describe('the least triangle', () => {
  it('of a sheet with legs of 8 and 5 is 8 by 5, no taller for the throat of 4.24 it asks for', () => {
    // 8·5/√(64 + 25) = 4.240; over cos 45° that would be 5.996 for both legs.
    expect(least({ leg1: 8, leg2: 5 }, legs(8, 5))).toEqual({ leg1: 8, leg2: 5, holds: true });
    expect(least({ leg1: 9, leg2: 5 }, legs(8, 5)).holds).toBe(true);
  });

  it('of unequal legs is not held by full legs round a hollow face', () => {
    const found = least({ leg1: 8, leg2: 5, convexity: -0.5 }, legs(8, 5));
    expect(found).toEqual({ leg1: 8, leg2: 5, holds: false });
  });

  it('of a throat of 5 has the legs that give it: 5 / cos 45° = 7.0711, 5 / cos 60° = 10', () => {
    const square = least({}, throat(5));
    expect(square.leg1).toBeCloseTo(7.0710678, 7);
    expect(square.leg2).toBe(square.leg1);
    const skewed = least({ dihedralAngle: 120 }, throat(5, { dihedralAngle: 120 }));
    expect(skewed.leg1).toBeCloseTo(10, 9);
  });

  it('is raised where the section opens wider than the drawing: a throat takes longer legs there', () => {
    // A 7 mm leg at 90° asks for a throat of 4.9497; at 100° that takes 4.9497 / cos 50° = 7.7004.
    const found = least({ dihedralAngle: 100 }, legs(7));
    expect(found.leg1).toBeCloseTo(7.7004, 4);
    expect(found.leg2).toBe(found.leg1);
  });

  it('is as much smaller as proven penetration counts towards the throat', () => {
    const joint = { leg1: 7, leg2: 7, rootPenetration: 1 };
    const plain = least(joint, throat(5.5), house);
    // 0.97 × 5.5 = 5.335, and 7 / √2 = 4.95 is short of it.
    expect(plain.leg1).toBeCloseTo(5.335 * Math.SQRT2, 9);
    expect(plain.holds).toBe(false);
    const proven = least(joint, throat(5.5, { penetrationProven: true }), house);
    expect(proven.holds).toBe(true);
    expect(Number(proven.leg1)).toBeLessThan(7);
  });

  it('is not held by a lopsided hollow that is deepest between its end and its middle', () => {
    // Legs of 10 and 7, hollow by 1.0: the isosceles triangle touches the face off its middle and
    // has a throat of 4.73 where the house set asks for 0.97 × 4.95 = 4.80.
    const found = least({ leg1: 10, leg2: 7, convexity: -1 }, throat(4.95), house);
    expect(found.leg1).toBeCloseTo(4.8015 / Math.SQRT1_2, 3);
    expect(found.holds).toBe(false);
  });

  it('asks nothing where nothing is judged', () => {
    expect(leastTriangle([], measure(build(defaultJoint('fillet'))))).toEqual({
      leg1: null,
      leg2: null,
      holds: true,
    });
  });
});
