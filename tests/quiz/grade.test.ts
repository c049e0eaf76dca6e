import { describe, expect, it } from 'vitest';
import { gradeAnswer } from '../../src/quiz/index.ts';
import type { Answer, Question } from '../../src/quiz/index.ts';
import { answer, drawn, mistakes, tee } from './graded.ts';
import { questionAbout } from './made-question.ts';
import { sheetUnder } from './question-sheets.ts';

describe('a right answer', () => {
  const one = sheetUnder('iso5817-c');

  it('has no mistake in it, and its reason is right only where one was asked for', () => {
    const bad = drawn(one, 'fillet.welded.undercut.max', 0.2);
    expect(gradeAnswer(bad, answer('reject', 'undercut.max'), one.limits)).toEqual({
      right: true,
      rightReason: true,
      mistakes: [],
    });
    expect(gradeAnswer(bad, answer('reject'), one.limits)).toEqual({
      right: true,
      rightReason: null,
      mistakes: [],
    });
    const good = drawn(one, 'fillet.welded.undercut.max', -0.2);
    expect(gradeAnswer(good, answer('accept'), one.limits)).toEqual({
      right: true,
      rightReason: null,
      mistakes: [],
    });
  });

  it('may name the same fault by another measure: a short leg is a short throat', () => {
    const short = drawn(one, 'fillet.welded.leg.min', 0.1);
    const grade = gradeAnswer(short, answer('reject', 'isoscelesThroat.min'), one.limits);
    expect(grade).toMatchObject({ right: true, rightReason: true });
  });

  it('with the name of what looks like it says so', () => {
    const bad = drawn(one, 'fillet.welded.undercut.max', 0.2);
    const grade = gradeAnswer(bad, answer('reject', 'overlap.max'), one.limits);
    expect(grade).toEqual({ right: true, rightReason: false, mistakes: ['lookAlike'] });
    const other = gradeAnswer(bad, answer('reject', 'rootGap.max'), one.limits);
    expect(other).toEqual({ right: true, rightReason: false, mistakes: ['otherName'] });
  });

  it('with no name to it is not the right reason', () => {
    const bad = drawn(one, 'fillet.welded.undercut.max', 0.2);
    for (const fault of ['notSure', 'somethingElse'] as const) {
      expect(gradeAnswer(bad, answer('reject', fault), one.limits).rightReason).toBe(false);
    }
  });
});

describe('a name', () => {
  const one = sheetUnder('iso5817-c');
  const bad = drawn(one, 'fillet.welded.undercut.max', 0.2);
  const good = drawn(one, 'fillet.welded.undercut.max', -0.2);

  it('counts only where something was rejected that is to be rejected', () => {
    const reasonOf = (question: Question, given: Answer) =>
      gradeAnswer(question, given, one.limits).rightReason;
    expect(reasonOf(bad, answer('accept', 'undercut.max'))).toBeNull();
    expect(reasonOf(bad, answer('refer', 'overlap.max'))).toBeNull();
    expect(reasonOf(good, answer('reject', 'undercut.max'))).toBeNull();
    expect(reasonOf(good, answer('reject', 'overlap.max'))).toBeNull();
    expect(reasonOf(bad, answer('reject', 'undercut.max'))).toBe(true);
    expect(reasonOf(bad, answer('reject', 'overlap.max'))).toBe(false);
  });

  it('of what looks like it explains nothing where the call itself was wrong', () => {
    expect(mistakes(bad, one, answer('accept', 'overlap.max'))).not.toContain('lookAlike');
    expect(mistakes(good, one, answer('reject', 'overlap.max'))).not.toContain('lookAlike');
  });

  // full legs of 8 rejected for a throat of 7: the leg's own rule doesn't say undercut
  it('has to be what a rule misread would have found', () => {
    const austin = sheetUnder('austin-723s');
    const question = questionAbout(tee(8), austin, 'sheet_leg:leg1');
    expect(mistakes(question, austin, answer('reject', 'undercut.max'))).toEqual(['tooStrict']);
    expect(mistakes(question, austin, answer('reject'))).toEqual(['legAsThroat']);
    expect(mistakes(question, austin, answer('reject', 'notSure'))).toEqual(['legAsThroat']);
    expect(mistakes(question, austin, answer('refer'))).toEqual(['tooStrict']);
  });

  it('is looked at in a rejection alone', () => {
    const austin = sheetUnder('austin-723s');
    const short = questionAbout(tee(8, { leg1: 6 }), austin, 'sheet_leg:leg1');
    expect(mistakes(short, austin, answer('accept', 'undercut.max'))).toEqual(['otherLeg']);
  });
});

describe('a wrong answer that nothing explains', () => {
  const one = sheetUnder('mil-2035a-1');

  it('is too strict, or too lenient', () => {
    const good = drawn(one, 'fillet.welded.undercut.max', -0.1);
    expect(mistakes(good, one, answer('reject', 'undercut.max'))).toEqual(['tooStrict']);
    const bad = drawn(one, 'fillet.welded.undercut.max', 0.1);
    expect(mistakes(bad, one, answer('accept'))).toEqual(['tooLenient']);
    expect(mistakes(bad, one, answer('refer'))).toEqual(['tooLenient']);
  });

  it('is an open question settled, where nothing that was overlooked would settle it so', () => {
    const iso = sheetUnder('iso5817-c');
    const long = drawn(iso, 'butt.welded.underfill.max', 'refer');
    expect(mistakes(long, iso, answer('reject', 'toeAngle.min'))).toEqual(['settledOpen']);
  });
});
