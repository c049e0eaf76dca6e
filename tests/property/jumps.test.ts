/** A reading that jumps while a parameter moves steadily reads something else on either side. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { build, JointError, parametersFor, type Joint } from '../../src/joint/index.ts';
import { measure, type MeasurementId, type Measurements } from '../../src/measure/index.ts';
import { anyJoint, everydayFillet } from '../joint/any-joint.ts';
import { runs } from '../runs.ts';
import { buttJoints, everydayButt } from './butt-joints.ts';

/** How far a parameter is moved, and how far no reading may follow, mm or degrees. */
const STEP = 1e-5;
const JUMP = 0.02;

/** These put a thing there that has a width, an angle or a bead of its own from the first trace on. */
const appearing = new Set([
  ...['overlap1', 'overlap2', 'reverseCurve', 'incompletePenetration'],
  ...['undercut1Depth', 'undercut2Depth', 'rootUndercut1Depth', 'rootUndercut2Depth'],
]);

const joints: fc.Arbitrary<Joint> = fc.oneof(
  everydayFillet,
  anyJoint('fillet', { plain: 5, any: 1 }),
  everydayButt,
  buttJoints(0.05),
  buttJoints(0.15),
);

function measured(joint: Joint): Measurements | null {
  try {
    return measure(build(joint));
  } catch (error) {
    if (error instanceof JointError) return null;
    throw error;
  }
}

/** What is read on one side only, or differs by more than a step can make it. */
function jumps(before: Measurements, after: Measurements): readonly string[] {
  const ids = new Set([...Object.keys(before.values), ...Object.keys(after.values)]);
  return [...ids].filter((id) => {
    const [a, b] = [before, after].map(({ values }) => values[id as MeasurementId]?.value ?? NaN);
    const [from, to] = [a ?? NaN, b ?? NaN];
    return !(Math.abs(from - to) <= JUMP * Math.max(1, Math.abs(from) / 50));
  });
}

describe('No reading jumps', () => {
  test('while a parameter that puts nothing new there moves ten nanometres', () => {
    let compared = 0;
    fc.assert(
      fc.property(
        joints,
        fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
        (joint, at) => {
          const fields = parametersFor(joint.kind).filter(({ field }) => !appearing.has(field));
          const field = fields[Math.floor(at * fields.length)]?.field ?? '';
          // a second swell goes the other way than the crown, so it turns over with it
          if (field === 'convexity' && joint.kind === 'fillet' && joint.reverseCurve !== 0) return;
          const now = (joint as unknown as Record<string, number>)[field] ?? NaN;
          const before = measured(joint);
          for (const moved of [now + STEP, now - STEP]) {
            const after = before && measured({ ...joint, [field]: moved });
            if (before === null || after === null) continue;
            compared += 1;
            // a face that leans out over the groove edge comes back into the groove higher up
            const found = jumps(before, after).filter((id) => id !== 'underfillHigh');
            expect(found, field).toEqual([]);
          }
        },
      ),
      { numRuns: runs(30_000) },
    );
    expect(compared).toBeGreaterThan(runs(30_000) * 0.5);
  });

  test('when an unfused root closes', () => {
    let compared = 0;
    fc.assert(
      fc.property(
        buttJoints(0.1),
        fc.double({ min: 0.1, max: 8, noNaN: true }),
        (joint, height) => {
          const unfused = { ...joint, stage: 'welded', incompletePenetration: height } as const;
          const closed = measured({ ...unfused, rootOpening: 0 });
          const open = measured({ ...unfused, rootOpening: STEP });
          if (closed === null || open === null) return;
          compared += 1;
          expect(jumps(closed, open)).toEqual([]);
        },
      ),
      { numRuns: runs(10_000) },
    );
    expect(compared).toBeGreaterThan(runs(10_000) * 0.05);
  });
});
