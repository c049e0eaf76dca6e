import { defaultJoint } from '../../src/joint/index.ts';
import { drawQuestion, gradeAnswer } from '../../src/quiz/index.ts';
import type { Answer, Question, SkillId } from '../../src/quiz/index.ts';
import type { SheetCase } from './question-sheets.ts';

export const answer = (call: Answer['call'], fault: Answer['fault'] = null): Answer => ({
  call,
  fault,
  sure: 80,
});
export const drawn = (
  one: SheetCase,
  skill: SkillId,
  asked: number | 'refer',
  seed = 1,
): Question => drawQuestion({ version: 1, seed, skill, view: 'cut', asked }, one.sheet, one.limits);
export const mistakes = (question: Question, { limits }: SheetCase, given: Answer) =>
  gradeAnswer(question, given, limits).mistakes;

/** A flat tee fillet of equal legs between 12 mm plates. */
export const tee = (leg: number, changed = {}) => ({
  ...defaultJoint('fillet'),
  leg1: leg,
  leg2: leg,
  ...changed,
});
