import { describe, expect, it } from 'vitest';
import { possibleQuestions } from '../../src/quiz/index.ts';
import { sheetUnder } from './question-sheets.ts';

const { sheet, limits: whole } = sheetUnder('aws-d11-static');
/** What the set says of undercut alone: all that it says takes seconds to try. */
const limits = {
  ...whole,
  criteria: whole.criteria.filter(({ measurements }) => measurements.includes('undercut1')),
};

describe('questions that a run of one skill may ask', () => {
  it('are of that skill, on either side of its limit, and differ in size', () => {
    const questions = possibleQuestions('fillet.welded.undercut.max', sheet, limits, 24);
    expect(questions).toHaveLength(24);
    expect(new Set(questions.map(({ spec }) => spec.skill)).size).toBe(1);
    expect(new Set(questions.map(({ truth }) => truth))).toEqual(new Set(['accept', 'reject']));
    expect(new Set(questions.map(({ joint }) => joint.t1)).size).toBeGreaterThan(6);
  });

  it('have every answer that there is to what the sheet leaves open', () => {
    const wanted = 'fillet.welded.undercut.max.refer';
    const found = possibleQuestions(wanted, sheet, limits, 6).map(({ truth }) => truth);
    expect(new Set(found)).toEqual(new Set(['reject', 'refer', 'accept']));
  });

  it('are none of a skill that the sheet does not ask', () => {
    expect(possibleQuestions('butt.welded.rootReinforcement.min', sheet, limits, 4)).toEqual([]);
  });
});
