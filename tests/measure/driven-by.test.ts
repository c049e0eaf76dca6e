import { describe, expect, it } from 'vitest';
import type { ButtJoint, FilletJoint, Joint, Preparation } from '../../src/joint/index.ts';
import { build, defaultJoint, JointError, parametersFor } from '../../src/joint/index.ts';
import type { Measurements, ParameterField } from '../../src/measure/index.ts';
import { measure, measurementCatalogue } from '../../src/measure/index.ts';

/** Joints with every feature on in one or another, so that whatever can move a reading does. */
const fillet = (
  arrangement: FilletJoint['arrangement'],
  changes: Partial<FilletJoint> = {},
): Joint => ({ ...defaultJoint('fillet', arrangement), ...changes });
const butt = (preparation: Preparation, changes: Partial<ButtJoint> = {}): Joint => ({
  ...defaultJoint('butt', preparation),
  ...changes,
});
const joints: readonly Joint[] = [
  fillet('tee', { convexity: 1, crownShift: 0.2, rootPenetration: 1 }),
  fillet('tee', { leg1: 6, leg2: 10, convexity: -0.8, reverseCurve: 0.3, crownShift: 0.2 }),
  fillet('tee', { convexity: -0.8, crownShift: 0.2, leg1: 7 }),
  fillet('tee', { overlap1: 1.5, overlap2: 1, convexity: 1 }),
  fillet('tee', { convexity: 3.5, dihedralAngle: 70 }),
  fillet('tee', { undercut1Depth: 0.5, undercut2Depth: 0.5, rootGap: 1 }),
  fillet('tee', { endCut: 'square', dihedralAngle: 110, t2: 8 }),
  fillet('corner', { endCut: 'square', dihedralAngle: 110, cornerOverlap: 3 }),
  fillet('lap', { edgeMelt: 0.4, leg2: 6, dihedralAngle: 95 }),
  fillet('lap', { undercut2Depth: 0.3, leg2: 6 }),
  fillet('tee', { stage: 'fitUp', rootGap: 1 }),
  butt('singleV', { stage: 'fitUp', offset: 1, angularMisalignment: 2 }),
  butt('singleV', { capHeight: 2, crownShift: 0.3, capDip: 0.5 }),
  butt('singleV', { offset: 1.5, angularMisalignment: 2, t2: 14 }),
  butt('singleV', {
    capHeight: -1,
    capPast1: 0.5,
    capPast2: 0.5,
    rootHeight: -0.3,
    crownShift: 0.3,
  }),
  butt('singleV', { capHeight: 0, capPast1: 0, capPast2: 0, capDrop1: 1, capDrop2: 1.2 }),
  butt('singleV', { overlap1: 1.5, overlap2: 1, undercut1Depth: 0 }),
  butt('singleV', {
    capHeight: 6,
    capPast1: 0,
    capPast2: 0,
    rootOpening: 1,
    bevelAngle1: 10,
    bevelAngle2: 10,
  }),
  butt('singleV', {
    undercut1Depth: 0.5,
    undercut2Depth: 0.5,
    rootUndercut1Depth: 0.4,
    rootUndercut2Depth: 0.4,
  }),
  butt('singleV', { incompletePenetration: 1 }),
  butt('singleV', { offset: 1, capHeight: -1, rootHeight: -0.3 }),
  butt('doubleV', { offset: 0.5 }),
  butt('doubleV', { stage: 'fitUp' }),
  butt('doubleBevel', { stage: 'fitUp' }),
  butt('singleU', { stage: 'fitUp' }),
  butt('singleU'),
];

function measured(joint: Joint): Measurements | null {
  try {
    return measure(build(joint));
  } catch (error) {
    if (error instanceof JointError) return null;
    throw error;
  }
}

/** The joint with one field moved a step either way, or to its other choice; only what can be built. */
function movedBy(joint: Joint, field: ParameterField): Measurements[] {
  if (!(field in joint)) return [];
  const range = parametersFor(joint.kind).find((one) => one.field === field);
  const now = (joint as unknown as Record<string, number>)[field] ?? NaN;
  const values = range
    ? [now + range.step, now - range.step, now + 5 * range.step]
    : ['square', 'fitted'];
  return values
    .map((value) => measured({ ...joint, [field]: value }))
    .filter((found) => found !== null);
}

describe('the fields said to drive a measurement', () => {
  const base = joints.map((joint) => [joint, measured(joint)] as const);

  it('belong to joints that can all be built', () => {
    expect(base.filter(([, found]) => found === null).map(([joint]) => joint)).toEqual([]);
  });

  it.each(Object.values(measurementCatalogue))(
    'each move $id in some joint',
    ({ id, drivenBy }) => {
      const moves = (field: ParameterField): boolean =>
        base.some(([joint, before]) => {
          const value = before?.values[id]?.value ?? null;
          if (value === null) return false;
          return movedBy(joint, field).some(
            (after) => Math.abs((after.values[id]?.value ?? value) - value) > 1e-7,
          );
        });
      expect(drivenBy.filter((field) => !moves(field))).toEqual([]);
    },
  );
});
