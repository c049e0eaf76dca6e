import { describe, expect, it } from 'vitest';
import type { JobSheet } from '../../src/limits/index.ts';
import { QuizError, skillOf, skillsOf } from '../../src/quiz/index.ts';
import type { SkillId } from '../../src/quiz/index.ts';
import { draw, opening, spec } from './asked.ts';
import { sheetUnder } from './question-sheets.ts';

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

/** The skills of some rows of a set alone, worked out anew. */
function skillsOfRows(rows: readonly string[], one = opening, changed: Partial<JobSheet> = {}) {
  const criteria = one.limits.criteria.filter(({ id }) => rows.includes(id));
  if (criteria.length < rows.length) throw new Error(`not all of ${rows.join(' ')}`);
  return skillsOf({ ...one.sheet, ...changed }, { ...one.limits, criteria });
}
const { groove } = opening.sheet;
const noGroove: JobSheet['groove'] = {
  bevelAngle: { ...groove.bevelAngle, nominal: null },
  grooveAngle: { ...groove.grooveAngle, nominal: null },
  rootOpening: { ...groove.rootOpening, nominal: null },
  rootFace: { ...groove.rootFace, nominal: null },
};
const ofRows = (...rows: readonly string[]) =>
  skillsOfRows(rows, opening, { groove: noGroove }).filter(
    ({ quantity }) => quantity !== 'leg' && quantity !== 'isoscelesThroat',
  );

describe('what a sheet asks of its own accord', () => {
  const weld = ['fillet.welded.leg.min', 'fillet.welded.isoscelesThroat.min'];
  // AWS D1.1 limits no throat of its own: the sheet's is asked
  const one = sheetUnder('aws-d11-static');

  // a groove angle never stands alone: it takes a bevel with it
  it('is the leg and the throat of a fillet, and what it gives of a groove, both ways', () => {
    expect(skillsOfRows([], one).map(({ id }) => id)).toEqual([
      ...weld,
      'butt.fitUp.bevelAngle.min',
      'butt.fitUp.rootOpening.min',
      'butt.fitUp.rootOpening.max',
      'butt.fitUp.rootFace.min',
      'butt.fitUp.rootFace.max',
    ]);
  });

  it('is nothing of what it leaves open of a groove', () => {
    expect(skillsOfRows([], one, { groove: noGroove }).map(({ id }) => id)).toEqual(weld);
    const opened = { ...noGroove, rootOpening: one.sheet.groove.rootOpening };
    expect(skillsOfRows([], one, { groove: opened }).map(({ id }) => id)).toEqual([
      ...weld,
      'butt.fitUp.rootOpening.min',
      'butt.fitUp.rootOpening.max',
    ]);
  });
});

describe('what a row asks', () => {
  const views = ['outside', 'cut'];
  const truths = ['accept', 'reject'];

  // a tenth of a length, two angles' degrees, as far as forms go: e^0.6, 8 degrees, 1.5 mm
  it('is of one kind, or of both where the row says none, as far off as joints can stand', () => {
    expect(ofRows('502')).toEqual([
      {
        id: 'butt.welded.faceReinforcement.max',
        kind: 'butt',
        stage: 'welded',
        quantity: 'faceReinforcement',
        sense: 'max',
        refers: false,
        scale: 'ratio',
        reach: 0.6,
        truths,
        views,
      },
    ]);
    expect(ofRows('5011').map(({ id, reach }) => [id, reach])).toEqual([
      ['fillet.welded.undercut.max', 0.6],
      ['butt.welded.undercut.max', 0.6],
    ]);
    expect(ofRows('505-fillet')).toMatchObject([
      { id: 'fillet.welded.toeAngle.min', scale: 'deg', reach: 8, truths, views },
    ]);
    expect(ofRows('506')).toMatchObject([
      { id: 'fillet.welded.overlap.max', scale: 'mm', reach: 1.5 },
      { id: 'butt.welded.overlap.max', scale: 'mm', reach: 1.5 },
    ]);
  });

  it('is asked before welding and after where it is so at either', () => {
    expect(ofRows('5071').map(({ id }) => id)).toEqual([
      'butt.fitUp.misalignment.max',
      'butt.welded.misalignment.max',
    ]);
    expect(ofRows('512').map(({ id }) => id)).toEqual(['fillet.welded.legDifference.max']);
  });

  // up to 3 mm ISO 5817 level C allows short undercut alone; thin plates are drawn for one form in some
  it('is a skill of its own where it is left open, at no distance', () => {
    expect(ofRows('5011-thin').find(({ refers }) => refers)).toMatchObject({
      id: 'butt.welded.undercut.max.refer',
      quantity: 'undercut',
      reach: 0,
      truths: ['reject', 'refer'],
      views,
    });
  });

  it('is one skill however many rows there are to it', () => {
    expect(ofRows('5011', '5011-thin').map(({ id }) => id)).toEqual([
      'fillet.welded.undercut.max',
      'butt.welded.undercut.max',
    ]);
  });
});
