import { describe, expect, it } from 'vitest';
import { build, defaultJoint, parseJoint } from '../../src/joint/index.ts';
import { defaultJobSheet } from '../../src/limits/index.ts';
import { measure } from '../../src/measure/index.ts';
import {
  drawQuestion,
  openSheet,
  QuizError,
  settledSheet,
  skillOf,
  skillsOf,
} from '../../src/quiz/index.ts';
import type { QuestionSpec, SkillId } from '../../src/quiz/index.ts';
import { sheetUnder } from './question-sheets.ts';

const opening = sheetUnder('iso5817-c');
const spec = (skill: SkillId, asked: QuestionSpec['asked'], more: Partial<QuestionSpec> = {}) =>
  ({ version: 1, seed: 5, skill, view: 'cut', asked, ...more }) as QuestionSpec;
const draw = (one: typeof opening, wanted: QuestionSpec) =>
  drawQuestion(wanted, one.sheet, one.limits);

/** A field of a joint of either kind. */
const fieldOf = (joint: object, name: string): unknown => Reflect.get(joint, name);

describe('the same spec, sheet and set', () => {
  it('give the same question, to the last digit', () => {
    const wanted = spec('fillet.welded.undercut.max', 0.2);
    const again = structuredClone(opening.sheet);
    const [first, second] = [draw(opening, wanted), drawQuestion(wanted, again, opening.limits)];
    expect(JSON.stringify(second)).toBe(JSON.stringify(first));
  });

  it('give another joint for another seed', () => {
    const joints = [1, 2, 3, 4, 5, 6].map(
      (seed) => draw(opening, spec('fillet.welded.undercut.max', 0.2, { seed })).joint,
    );
    expect(new Set(joints.map(({ t1, t2 }) => `${t1} ${t2}`)).size).toBeGreaterThan(3);
    expect(new Set(joints.map((joint) => fieldOf(joint, 'arrangement'))).size).toBeGreaterThan(1);
  });

  it('give a joint that can be kept and read again', () => {
    const { joint } = draw(opening, spec('butt.welded.faceReinforcement.max', 0.1));
    expect(parseJoint(JSON.parse(JSON.stringify(joint)))).toEqual(joint);
  });
});

describe('where a question stands', () => {
  // ISO 5817 level C, undercut over 3 mm: min(0.1 t, 0.5 mm); all joints here are thicker than 5 mm or so
  it('is so much past the limit: undercut of 0.5 mm e^0.2 = 0.6107', () => {
    const { decisive, fault, truth } = draw(opening, spec('fillet.welded.undercut.max', 0.2));
    expect(decisive.limit).toBeCloseTo(0.5, 12);
    expect(decisive.measured).toBeCloseTo(0.6107014, 6);
    expect([truth, fault]).toEqual(['reject', 'undercut.max']);
  });

  // a least limit is past where there is less: 7 mm e^-0.1 = 6.3339
  it('is so much under a least limit: leg of 7 mm e^-0.1 = 6.3339', () => {
    const { decisive, exceedance } = draw(opening, spec('fillet.welded.leg.min', 0.1));
    expect(decisive.measured).toBeCloseTo(6.3338619, 6);
    expect(exceedance).toBeCloseTo(0.6661381, 6);
  });

  it('is in mm where nothing is permitted, and none at all inside', () => {
    const bad = draw(opening, spec('fillet.welded.overlap.max', 0.7));
    expect([bad.scale, bad.distance, bad.truth]).toEqual(['mm', expect.closeTo(0.7, 7), 'reject']);
    const good = draw(opening, spec('fillet.welded.overlap.max', -0.7));
    expect([good.scale, good.distance, good.truth, good.fault]).toEqual(['mm', 0, 'accept', null]);
  });

  it('is in degrees for an angle', () => {
    const { scale, decisive } = draw(opening, spec('fillet.welded.toeAngle.min', 4));
    expect([scale, decisive.measured]).toEqual(['deg', expect.closeTo(96, 6)]);
  });

  it('is nearer where no joint can stand so far out', () => {
    // an undercut is at most 4 mm deep: ISO's 0.5 mm e^3 would be 10
    const { distance, truth } = draw(opening, spec('fillet.welded.undercut.max', 3));
    expect(truth).toBe('reject');
    expect(distance).toBeGreaterThan(0.5);
    expect(distance).toBeLessThan(3);
  });

  it('says what is so by the shape, not by the slider', () => {
    const { joint, decisive } = draw(opening, spec('fillet.welded.isoscelesThroat.min', 0.1));
    expect(measure(build(joint)).values.isoscelesThroat?.value).toBe(decisive.measured);
  });
});

describe('the sheet of a question', () => {
  it('says what the given one left open, so that the call is accept or reject', () => {
    const { sheet } = draw(opening, spec('butt.welded.underfill.max', 0.2));
    expect(opening.sheet.extent).toBe('unknown');
    expect(sheet.extent).toBe('isolatedShort');
    expect(Object.values(sheet.service)).not.toContain('unknown');
  });

  it('says as much to a bad joint as to its good twin, so that it tells neither', () => {
    // AWS D1.1, and a leg under ISO 5817: what is open would settle one side only
    for (const [id, skill] of [
      ['aws-d11-static', 'fillet.welded.undercut.max'],
      ['iso5817-c', 'fillet.welded.leg.min'],
      ['iso5817-c', 'butt.welded.underfill.max'],
    ] as const) {
      const one = sheetUnder(id);
      for (let seed = 0; seed < 12; seed++) {
        const [bad, good] = [0.15, -0.15].map((asked) => draw(one, spec(skill, asked, { seed })));
        expect([skill, seed, bad?.sheet]).toEqual([skill, seed, good?.sheet]);
        expect(bad?.choices).toEqual(good?.choices);
      }
    }
  });

  it('leaves open what is the question', () => {
    const { sheet, truth, fault } = draw(opening, spec('butt.welded.underfill.max.refer', 'refer'));
    expect([sheet.extent, truth, fault]).toEqual(['unknown', 'refer', null]);
  });

  it('has all three answers on one sheet where something is left open, each from one seed', () => {
    const asked = ['reject', 'refer', 'accept'] as const;
    const three = asked.map((truth) =>
      draw(sheetUnder('aws-d11-static'), spec('fillet.welded.undercut.max.refer', truth)),
    );
    expect(three.map(({ truth }) => truth)).toEqual(asked);
    expect(new Set(three.map(({ sheet }) => sheet.extent))).toEqual(new Set(['unknown']));
    const depths = three.map(({ decisive }) => decisive.measured ?? NaN);
    expect(depths[0]).toBeGreaterThan(depths[1] ?? NaN);
    expect(depths[1]).toBeGreaterThan(depths[2] ?? NaN);
    const others = three.map(({ joint }) => ({ ...joint, undercut1Depth: 0, undercut2Depth: 0 }));
    expect(new Set(others.map((joint) => JSON.stringify(joint))).size).toBe(1);
  });

  it('keeps what is said', () => {
    const said = { ...defaultJobSheet(), extent: 'typical' } as const;
    expect(settledSheet(said).extent).toBe('typical');
    const { guard } = said;
    const doubtful = { ...said, guard: { ...guard, factor: 2 }, rounding: 'lastPlace' } as const;
    expect(settledSheet(doubtful).guard.factor).toBe(0);
    expect(openSheet(doubtful).guard.factor).toBe(2);
    expect([settledSheet(doubtful).rounding, openSheet(doubtful).rounding]).toEqual([
      'absolute',
      'absolute',
    ]);
    const { service } = settledSheet({
      ...said,
      service: { ...said.service, seam: 'longitudinal' },
    });
    expect(service).toMatchObject({ seam: 'longitudinal', category: 'A' });
  });
});

describe('what may be answered', () => {
  it('holds the fault, what the sheet assesses and what looks like it, in an order that says nothing', () => {
    const { choices } = draw(opening, spec('fillet.welded.undercut.max', 0.2));
    expect(choices).toEqual([...choices].sort());
    expect(choices).toEqual(expect.arrayContaining(['undercut.max', 'overlap.max', 'leg.min']));
    expect(choices).not.toContain('underfill.max');
  });

  it('is the same on both sides of the limit', () => {
    const [bad, good] = [0.2, -0.2].map((at) =>
      draw(opening, spec('butt.welded.underfill.max', at)),
    );
    expect(good?.choices).toEqual(bad?.choices);
  });

  it('are the same list whatever is asked: it can’t give the answer away', () => {
    const leg = draw(opening, spec('fillet.welded.leg.min', 0.1)).choices;
    const undercut = draw(opening, spec('fillet.welded.undercut.max', 0.1)).choices;
    expect(leg).toContain('leg.min');
    expect(leg).toContain('isoscelesThroat.min');
    expect(undercut).toEqual(leg);
  });
});

describe('views', () => {
  it('show a gap under a finished fillet in a cut only: read from the record it would be no call by eye', () => {
    const gap = (view: QuestionSpec['view']) =>
      draw(opening, spec('fillet.welded.rootGap.max', 0.2, { view }));
    expect(gap('cut').recorded).toEqual([]);
    expect(() => gap('outside')).toThrow(new QuizError({ key: 'calls_error_not_seen' }));
  });

  it('tell the gap from the record where there is one and nobody can see it', () => {
    const seeds = Array.from({ length: 30 }, (_, seed) => seed);
    const recorded = seeds.map((seed) => {
      const leg = (view: QuestionSpec['view']) =>
        draw(opening, spec('fillet.welded.leg.min', 0.2, { view, seed }));
      expect(leg('cut').recorded).toEqual([]);
      const { recorded, measurements } = leg('outside');
      const gap = measurements.values.rootGap?.value ?? 0;
      expect(recorded).toEqual(gap > 0 ? [{ measurement: 'rootGap', value: gap }] : []);
      return recorded.length;
    });
    expect(new Set(recorded)).toEqual(new Set([0, 1]));
  });

  it('refuse what can be seen in none of them', () => {
    const hidden = sheetUnder('iso5817-c', { rootAccessible: false });
    const wanted = spec('butt.welded.rootConcavity.max', 0.2, { view: 'outside' });
    expect(() => draw(hidden, wanted)).toThrow(QuizError);
    const { truth } = draw(opening, wanted);
    expect(truth).toBe('reject');
  });
});

describe('what can be asked', () => {
  it('is what questions can be drawn of, in a steady order, a limit on both sides as two', () => {
    const skills = skillsOf(opening.sheet, opening.limits);
    const ids = skills.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(skillsOf(structuredClone(opening.sheet), opening.limits)).toBe(skills);
    expect(ids).toEqual(
      expect.arrayContaining([
        'fillet.welded.leg.min',
        'fillet.welded.undercut.max',
        'butt.welded.undercut.max',
        'fillet.fitUp.rootGap.max',
        'butt.fitUp.rootOpening.min',
        'butt.fitUp.rootOpening.max',
      ]),
    );
    for (const skill of skills) expect(skillOf(skill.id)).toMatchObject({ id: skill.id });
  });

  // at 90° a face as convex as 1 + 0.15 b leaves its toes at 135° - 2 atan(2 h / b): 82° at b = 10, under 100°
  it('leaves out what never stands alone: convexity under ISO 5817 takes the toe angle with it', () => {
    const ids = skillsOf(opening.sheet, opening.limits).map(({ id }) => id);
    expect(ids).not.toContain('fillet.welded.convexity.max');
    expect(() => draw(opening, spec('fillet.welded.convexity.max', 0.1))).toThrow(
      new QuizError({ key: 'calls_error_not_on_this_sheet' }),
    );
  });

  it('is nothing that has no name, or is of another kind of joint', () => {
    expect(skillOf('fillet.welded.undercut' as SkillId)).toBeNull();
    expect(skillOf('pipe.welded.undercut.max' as SkillId)).toBeNull();
    expect(() => draw(opening, spec('nothing' as SkillId, 0.1))).toThrow(
      'calls_error_no_such_skill',
    );
    expect(() => draw(opening, spec('butt.fitUp.leg.min', 0.1))).toThrow(
      'calls_error_not_on_this_sheet',
    );
  });
});

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
    expect(new Set(fillets.map(({ known }) => known)).size).toBe(2);
    const butts = many('butt.welded.undercut.max', 0.2);
    expect(new Set(butts.map(({ joint }) => fieldOf(joint, 'preparation'))).size).toBe(7);
    expect(Object.keys(defaultJoint('butt'))).toEqual(Object.keys(butts[0]?.joint ?? {}));
  });
});
