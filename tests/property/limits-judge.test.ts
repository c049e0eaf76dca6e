/** Whatever is built and whatever the sheet says: every check adds up, and no accept comes of nothing. */
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { build, defaultJoint, JointError } from '../../src/joint/index.ts';
import { judge, limitSets, overallCall, type JobSheet } from '../../src/limits/index.ts';
import { measure, type Measurements } from '../../src/measure/index.ts';
import { mm, in64, sheetWith } from '../limits/hand-made.ts';
import { runs } from '../runs.ts';

// the full proof takes as long as it takes
vi.setConfig({ testTimeout: 600_000 });

const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true });

const fillets = fc
  .record({
    arrangement: fc.constantFrom('tee', 'lap', 'corner'),
    stage: fc.constantFrom('fitUp', 'welded'),
    t1: between(3, 40),
    t2: between(3, 40),
    dihedralAngle: between(60, 135),
    rootGap: fc.oneof(fc.constant(0), between(0, 4)),
    leg1: between(4, 20),
    leg2: between(4, 20),
    convexity: between(-1, 2),
    undercut1Depth: between(0, 1.5),
    overlap2: fc.oneof(fc.constant(0), between(0, 1)),
    rootPenetration: fc.oneof(fc.constant(0), between(0, 3)),
  } as const)
  .map((changes) => ({ ...defaultJoint('fillet'), ...changes }));

const butts = fc
  .record({
    preparation: fc.constantFrom('square', 'singleV', 'doubleV', 'singleBevel', 'singleU'),
    product: fc.constantFrom('plate', 'pipe'),
    stage: fc.constantFrom('fitUp', 'welded'),
    offset: between(-3, 3),
    capHeight: between(-1, 5),
    rootHeight: between(-1, 4),
    undercut2Depth: between(0, 1.5),
    angularMisalignment: between(-6, 6),
    bevelAngle1: between(20, 40),
    rootOpening: between(0, 5),
  } as const)
  .map((changes) => ({ ...defaultJoint('butt'), ...changes }));

const measuredJoints = fc
  .oneof(fillets, butts)
  .map((joint): Measurements | null => {
    try {
      return measure(build(joint));
    } catch (error) {
      if (error instanceof JointError) return null;
      throw error;
    }
  })
  .filter((of) => of !== null);

const sheets: fc.Arbitrary<JobSheet> = fc
  .record({
    column: fc.constantFrom('mm', 'in'),
    size: fc.constantFrom(
      { as: 'leg', first: mm(7), second: null },
      { as: 'leg', first: in64(20), second: null },
      { as: 'leg', first: mm(8), second: mm(12) },
      { as: 'throat', first: mm(5), second: null },
    ),
    rounding: fc.constantFrom('absolute', 'lastPlace'),
    extent: fc.constantFrom('unknown', 'isolatedShort', 'typical'),
    intendedAlignment: fc.constantFrom('centrelines', 'faceFlush', 'rootFlush'),
    penetrationProven: fc.boolean(),
    guard: fc.constantFrom(
      { factor: 0, lengthUncertainty: 0.1, angleUncertainty: 1 },
      { factor: 2, lengthUncertainty: 0.1, angleUncertainty: 1 },
    ),
  } as const)
  .map((changes) => sheetWith(changes as Partial<JobSheet>));

describe('judging any joint by any sheet', () => {
  it('gives checks that add up', () => {
    fc.assert(
      fc.property(measuredJoints, sheets, (of, sheet) => {
        for (const set of limitSets) {
          const checks = judge(of, sheet, set);
          expect(new Set(checks.map(({ id }) => id)).size).toBe(checks.length);
          for (const check of checks) {
            const { call, limit, measured, margin, sense, guard, reasons, printed } = check;
            expect(reasons.length).toBeGreaterThan(0);
            if (call === 'notAssessed') {
              expect([limit, margin, printed, guard]).toEqual([null, null, null, 0]);
              continue;
            }
            if (limit === null || measured === null || margin === null) throw new Error(check.id);
            expect(Number.isFinite(limit) && Number.isFinite(measured)).toBe(true);
            expect(check.working?.substituted).toEqual(expect.any(String));
            if (sheet.rounding === 'absolute') {
              const expected = sense === 'max' ? limit - measured : measured - limit;
              expect(Math.abs(margin - expected)).toBeLessThan(1e-9);
            }
            // an accept is inside, a reject outside, save where length or a note has the say
            const byLength = reasons.some(({ key }) => key.startsWith('limits_reason_short'));
            if (call === 'accept' && !byLength) expect(margin).toBeGreaterThanOrEqual(-1e-7);
            if (call === 'reject' && !byLength) expect(margin).toBeLessThan(0);
          }
          const overall = overallCall(checks);
          if (overall.call === 'accept') {
            expect(checks.every(({ call }) => call === 'accept')).toBe(true);
          }
        }
      }),
      { numRuns: runs(3_000) },
    );
  });

  it('never lets a guard band turn a call from accept to reject or back', () => {
    fc.assert(
      fc.property(measuredJoints, sheets, (of, sheet) => {
        const [set] = limitSets;
        if (set === undefined) throw new Error('no set');
        const plain = judge(of, { ...sheet, guard: { ...sheet.guard, factor: 0 } }, set);
        const guarded = judge(of, { ...sheet, guard: { ...sheet.guard, factor: 3 } }, set);
        expect(guarded.map(({ id }) => id)).toEqual(plain.map(({ id }) => id));
        for (const [at, check] of guarded.entries()) {
          const before = plain[at]?.call;
          // a length rule's own reject stands whatever the instrument
          if (check.call !== 'refer') expect([check.id, check.call]).toEqual([check.id, before]);
        }
      }),
      { numRuns: runs(1_000) },
    );
  });
});
