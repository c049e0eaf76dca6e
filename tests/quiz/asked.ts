import { drawQuestion } from '../../src/quiz/index.ts';
import type { Question, QuestionSpec, SkillId } from '../../src/quiz/index.ts';
import { sheetUnder, type SheetCase } from './question-sheets.ts';

/** The opening sheet under ISO 5817 level C, whose calls are most of what the tests ask. */
export const opening = sheetUnder('iso5817-c');

/** A question as asked in the tests: one seed, the cut shown, unless a test says otherwise. */
export const spec = (
  skill: SkillId,
  asked: QuestionSpec['asked'],
  more: Partial<QuestionSpec> = {},
): QuestionSpec => ({ version: 1, seed: 5, skill, view: 'cut', asked, ...more });

export const draw = (one: SheetCase, wanted: QuestionSpec): Question =>
  drawQuestion(wanted, one.sheet, one.limits);

/** A field of a joint of either kind. */
export const fieldOf = (joint: object, name: string): unknown => Reflect.get(joint, name);
