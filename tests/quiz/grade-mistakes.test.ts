import { describe, expect, it } from 'vitest';
import { defaultJoint } from '../../src/joint/index.ts';
import { defaultJobSheet } from '../../src/limits/index.ts';
import { isConjecture, wrongRules } from '../../src/quiz/index.ts';
import { answer, drawn, mistakes, tee } from './graded.ts';
import { questionAbout } from './made-question.ts';
import { sheetUnder } from './question-sheets.ts';

const mm = (value: number) => ({ unit: 'mm', value }) as const;

describe('the mistake behind a wrong answer', () => {
  // a leg of 7 asked for; the weld has 8: throat 8 cos 45° = 5.66, over 4.95 but under 7
  it('leg as throat: a full leg rejected for a throat of 7', () => {
    const one = sheetUnder('austin-723s');
    const question = questionAbout(tee(8), one, 'sheet_leg:leg1');
    expect(question.truth).toBe('accept');
    expect(mistakes(question, one, answer('reject', 'isoscelesThroat.min'))).toEqual([
      'legAsThroat',
    ]);
  });

  // a throat of 7 asked for is a leg of 9.9; the weld's 8 is under it and over 7
  it('throat as leg: a short throat accepted for a leg of 7', () => {
    const size = { as: 'throat', first: mm(7), second: null } as const;
    const one = sheetUnder('austin-723s', { size });
    const question = questionAbout(tee(8), one, 'sheet_throat:isoscelesThroat');
    expect(question.truth).toBe('reject');
    expect(mistakes(question, one, answer('accept'))).toEqual(['throatAsLeg']);
  });

  it('other leg: the long one looked at, the short one not', () => {
    const one = sheetUnder('austin-723s');
    const question = questionAbout(tee(8, { leg1: 6 }), one, 'sheet_leg:leg1');
    expect(mistakes(question, one, answer('accept'))).toEqual(['otherLeg']);
  });

  it('is a conjecture where it only would give the answer, and none where it is the answer itself', () => {
    const guessed = wrongRules.filter(isConjecture);
    expect(guessed).toContain('otherLeg');
    expect(wrongRules.filter((rule) => !isConjecture(rule))).toEqual([
      'lookAlike',
      'tooStrict',
      'tooLenient',
      'settledOpen',
      'otherName',
    ]);
  });

  // 6 and 9 asked for, 6.5 and 9.5 made: swapped, leg 1 would be short of 9
  it('legs swapped: unequal legs held to the other plate', () => {
    const size = { as: 'leg', first: mm(6), second: mm(9) } as const;
    const one = sheetUnder('austin-723s', { size });
    const question = questionAbout(tee(9.5, { leg1: 6.5 }), one, 'sheet_leg:leg1');
    expect(mistakes(question, one, answer('reject', 'leg.min'))).toContain('legsSwapped');
  });

  // fused leg 6.5 under 7; rolled 1.5 over the toe it shows 8
  it('visible leg: what lies over the plate counted as leg', () => {
    const one = sheetUnder('austin-723s');
    const question = questionAbout(tee(8, { leg1: 6.5, overlap1: 1.5 }), one, 'sheet_leg:leg1');
    expect(question.truth).toBe('reject');
    expect(mistakes(question, one, answer('accept'))).toContain('visibleLeg');
  });

  // legs of 8 with a face hollow by 1: throat 4.66 under 4.95, the chord's 5.66 over it
  it('chord throat: a hollow face measured to the line between its toes', () => {
    const one = sheetUnder('austin-723s');
    const question = questionAbout(tee(8, { convexity: -1 }), one, 'sheet_throat:isoscelesThroat');
    expect(question.truth).toBe('reject');
    expect(mistakes(question, one, answer('accept'))).toEqual(['chordThroat']);
  });

  // legs of 6.6: throat 4.67 under 4.95; with a crown of 1 it is 5.67 to the face
  it('crown counted: convexity taken for throat', () => {
    const one = sheetUnder('iso5817-c', {
      extent: 'typical',
      size: { as: 'throat', first: mm(4.95), second: null },
    });
    const question = questionAbout(tee(6.6, { convexity: 1 }), one, '5213:isoscelesThroat');
    expect(question.truth).toBe('reject');
    const found = mistakes(question, one, answer('accept'));
    expect(found).toContain('crownCounted');
    expect(found).not.toContain('chordThroat');
  });

  // City of Austin 723S: over a gap of 1/16 in or more the leg grows by it: 7 + 2 = 9; the weld has 8
  it('gap overlooked: a leg that is full only without the gap', () => {
    const one = sheetUnder('austin-723s');
    const question = questionAbout(tee(8, { rootGap: 2 }), one, 'austin-gap2:leg1');
    expect(question.truth).toBe('reject');
    expect(mistakes(question, one, answer('accept'))).toContain('gapOverlooked');
  });

  // AWS D1.1: convexity of a face up to 8 mm wide 2 mm, or 1/16 in = 1.59 mm; over 8 mm 3 mm or 1/8 in = 3.18 mm
  it('other column: past the inch figure, within the metric one', () => {
    const one = sheetUnder('aws-d11-static', { column: 'in' });
    const question = questionAbout(tee(8, { convexity: 3.1 }), one, 'd11-conv2:convexity');
    expect(question.truth).toBe('accept');
    expect(mistakes(question, one, answer('reject', 'convexity.max'))).toContain('otherColumn');
  });

  // the same: a crown of 1.8 is over the row for a narrow face and within its own
  it('other row: the figure of another band of the table', () => {
    const one = sheetUnder('aws-d11-static', { column: 'mm' });
    const question = questionAbout(tee(8, { convexity: 2.5 }), one, 'd11-conv2:convexity');
    expect(question.truth).toBe('accept');
    expect(mistakes(question, one, answer('reject', 'convexity.max'))).toContain('otherRow');
  });

  // ISO 5817 level C: a step of at most 0.15 t, t the thinner plate: 1.8 at 12, 2.25 at 15
  it('other thickness: a step held to the thicker plate', () => {
    const one = sheetUnder('iso5817-c');
    const joint = { ...defaultJoint('butt'), t1: 12, t2: 15, offset: 1.9 };
    const question = questionAbout(joint, one, '5071:misalignment');
    expect(question.truth).toBe('reject');
    expect(mistakes(question, one, answer('accept'))).toContain('otherThickness');
  });

  // plates of 10 and 14 in line by their middles step by 2 on the face, over 0.15 · 10
  it('other alignment: flush faces looked for where middles are lined up', () => {
    const one = sheetUnder('iso5817-c');
    const joint = { ...defaultJoint('butt'), t1: 10, t2: 14 };
    const question = questionAbout(joint, one, '5071:misalignment');
    expect(question.truth).toBe('accept');
    expect(mistakes(question, one, answer('reject', 'misalignment.max'))).toContain(
      'otherAlignment',
    );
  });

  // API 1104 lets a face fall nowhere below the plates; a dip of 0.8 in a cap of 1.5 stays 0.7 above them
  it('dip as underfill: a dip that stays above the plate', () => {
    const one = sheetUnder('api-1104');
    const joint = { ...defaultJoint('butt'), capHeight: 1.5, capDip: 0.8 };
    const question = questionAbout(joint, one, 'api-cap:underfill');
    expect(question.truth).toBe('accept');
    expect(mistakes(question, one, answer('reject', 'underfill.max'))).toContain('dipAsUnderfill');
  });

  // B31.3: over 6 to 13 mm at most 3 mm above the plate that stands higher; the lower one is 1 lower
  it('other datum: a cap measured from the lower plate', () => {
    const one = sheetUnder('b313-normal');
    const joint = { ...defaultJoint('butt'), offset: 1, capHeight: 3, capPast1: 1, capPast2: 1 };
    const question = questionAbout(joint, one, 'b313-L2:faceReinforcement.higher');
    expect(question.truth).toBe('accept');
    expect(mistakes(question, one, answer('reject', 'faceReinforcement.max'))).toContain(
      'otherDatum',
    );
  });

  it('short as long: a short imperfection turned away for running on', () => {
    const one = sheetUnder('iso5817-c');
    const question = drawn(one, 'butt.welded.underfill.max', -0.2);
    expect(mistakes(question, one, answer('reject', 'underfill.max'))).toContain('shortAsLong');
  });

  // legs of 8 hollow by 1: throat 4.66 under 4.95; penetration of 1 along the leg adds cos 45° = 0.71
  it('penetration counted that nobody proved, or overlooked that is proven', () => {
    const size = { as: 'throat', first: mm(4.95), second: null } as const;
    const joint = tee(8, { convexity: -1, rootPenetration: 1 });
    const unproven = sheetUnder('mil-2035a-1', { size });
    const short = questionAbout(joint, unproven, 'sheet_throat:isoscelesThroat');
    expect(short.truth).toBe('reject');
    expect(mistakes(short, unproven, answer('accept'))).toEqual([
      'throatAsLeg',
      'chordThroat',
      'penetrationCounted',
    ]);
    const proven = sheetUnder('mil-2035a-1', { size, penetrationProven: true });
    const full = questionAbout(joint, proven, 'sheet_throat:isoscelesThroat');
    expect(full.truth).toBe('accept');
    expect(mistakes(full, proven, answer('reject', 'isoscelesThroat.min'))).toEqual([
      'penetrationOverlooked',
    ]);
  });

  it('leaves a question open that is open: how long, how sure, how hidden', () => {
    const one = sheetUnder('iso5817-c');
    const long = drawn(one, 'butt.welded.underfill.max', 'refer');
    expect(long.truth).toBe('refer');
    expect(mistakes(long, one, answer('accept'))).toContain('lengthAssumedShort');
    expect(mistakes(long, one, answer('reject', 'underfill.max'))).toContain('lengthAssumedLong');
    const { guard } = defaultJobSheet();
    const doubtful = sheetUnder('mil-2035a-1', { guard: { ...guard, factor: 1 } });
    const near = drawn(doubtful, 'fillet.welded.leg.min', 'refer');
    expect(near.truth).toBe('refer');
    const settled =
      (near.decisive.margin ?? 0) >= 0 ? answer('accept') : answer('reject', 'leg.min');
    expect(mistakes(near, doubtful, settled)).toContain('doubtOverlooked');
    const hidden = sheetUnder('b311', { rootAccessible: false });
    const root = drawn(hidden, 'butt.welded.rootUndercut.max', 'refer');
    expect(root.truth).toBe('refer');
    expect(mistakes(root, hidden, answer('accept'))).toContain('hiddenRootJudged');
  });
});
