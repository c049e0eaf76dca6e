import { describe, expect, it } from 'vitest';
import { defaultJoint } from '../../../src/joint/index.ts';
import type { SkillId } from '../../../src/quiz/index.ts';
import { draw, fieldOf, opening, spec } from '../asked.ts';
import { sheetUnder } from '../question-sheets.ts';

describe('stock', () => {
  const many = (skill: SkillId, asked: number, one = opening) =>
    Array.from({ length: 60 }, (_, seed) => draw(one, spec(skill, asked, { seed })));

  it('has good joints that look bad: a dip in a cap that stays above the plates', () => {
    const dipped = many('butt.welded.undercut.max', -0.3).filter(
      ({ measurements: { values } }) =>
        (values.capDip?.value ?? 0) > 0.1 && values.underfill?.value === 0,
    );
    expect(dipped.length).toBeGreaterThan(0);
  });

  // AWS D1.1 limits no toe angle: what looks like undercut is none
  it('has good joints that look bad: a steep toe without undercut, a leg longer than asked', () => {
    const steep = many('butt.welded.undercut.max', -0.3, sheetUnder('aws-d11-static')).filter(
      ({ measurements: { values }, truth }) =>
        truth === 'accept' &&
        ([1, 2] as const).some(
          (plate) =>
            (values[`toeAngle${plate}`]?.value ?? 180) < 125 &&
            values[`undercut${plate}`]?.value === 0,
        ),
    );
    expect(steep.length).toBeGreaterThan(1);
    const long = many('fillet.welded.undercut.max', -0.3).filter(
      ({ measurements: { values }, sheet }) =>
        (values.leg1?.value ?? 0) > 1.2 * sheet.size.first.value,
    );
    expect(long.length).toBeGreaterThan(10);
  });

  // metal over the low plate: a cap above both plates and no underfill, the plates out of line under it
  it('has bad joints that look good: a cap that hides an offset', () => {
    const hidden = many('butt.welded.misalignment.max', 0.2).filter(
      ({ measurements: { values }, truth }) =>
        truth === 'reject' &&
        values.underfill?.value === 0 &&
        (values['faceReinforcement.higher']?.value ?? 0) > 0,
    );
    expect(hidden.length).toBeGreaterThan(10);
  });

  it('stands at an angle of its own, within what a shop leaves', () => {
    const angles = many('fillet.welded.leg.min', 0.1).map(
      ({ measurements: { values } }) => values.dihedralAngle?.value ?? 0,
    );
    expect(new Set(angles.map((angle) => angle.toFixed(2))).size).toBeGreaterThan(10);
    for (const angle of angles) expect(Math.abs(angle - 90)).toBeLessThan(1.6);
  });

  it('has bad joints that look good: a throat short between full legs, a gap under one', () => {
    for (const { measurements, sheet } of many('fillet.welded.isoscelesThroat.min', 0.1)) {
      const leg = sheet.size.first.value;
      expect(measurements.values.leg1?.value).toBeGreaterThan(leg);
      expect(measurements.values.leg2?.value).toBeGreaterThan(leg);
    }
    for (const { measurements, sheet } of many('fillet.welded.rootGap.max', 0.2)) {
      expect(measurements.values.leg1?.value).toBeGreaterThan(sheet.size.first.value);
    }
  });

  it('comes in every form that a sheet allows, on either plate, turned either way', () => {
    const fillets = many('fillet.welded.undercut.max', 0.2);
    expect(new Set(fillets.map(({ joint }) => fieldOf(joint, 'arrangement')))).toEqual(
      new Set(['tee', 'lap', 'corner']),
    );
    expect(new Set(fillets.map(({ decisive }) => decisive.measurement))).toEqual(
      new Set(['undercut1', 'undercut2']),
    );
    expect(new Set(fillets.map(({ mirrored }) => mirrored)).size).toBe(2);
    expect(new Set(fillets.map(({ known }) => known))).toEqual(new Set(['t1', 't2']));
    const butts = many('butt.welded.undercut.max', 0.2);
    expect(new Set(butts.map(({ joint }) => fieldOf(joint, 'preparation'))).size).toBe(7);
    expect(Object.keys(defaultJoint('butt'))).toEqual(Object.keys(butts[0]?.joint ?? {}));
  });
});
