/** Joints, sheets and questions that rules are misread on. */
import { defaultJoint } from '../../src/joint/index.ts';
import type { Joint } from '../../src/joint/index.ts';
import type { JobSheet } from '../../src/limits/index.ts';
import type { Question } from '../../src/quiz/index.ts';
import { misreadBy, type Misreading } from '../../src/quiz/wrong-rules.ts';
import { questionAbout } from './made-question.ts';
import { sheetUnder } from './question-sheets.ts';

export const mm = (value: number) => ({ unit: 'mm', value }) as const;
export const tee = (changed = {}): Joint => ({
  ...defaultJoint('fillet'),
  leg1: 8,
  leg2: 9,
  endCut: 'fitted',
  ...changed,
});
export const butt = (changed = {}): Joint => ({
  ...defaultJoint('butt'),
  t1: 12,
  t2: 12,
  capHeight: 1.5,
  ...changed,
});
/** A sheet with as little to misread as there can be: a leg of one size, in the only column of its set. */
export const said = (changed: Partial<JobSheet> = {}, set = 'iso5817-c') =>
  sheetUnder(set, { extent: 'typical', rootAccessible: true, ...changed });
export const about = (joint: Joint, one = said(), id?: string): Question =>
  questionAbout(
    joint,
    one,
    id ?? (joint.kind === 'fillet' ? 'sheet_leg:leg1' : '502:faceReinforcement.higher'),
  );
export const misread = (rule: Misreading, question: Question, one = said()) =>
  misreadBy(rule, question, one.limits);
export const valueIn = ({ measurements }: Question, id: keyof Question['measurements']['values']) =>
  measurements.values[id]?.value ?? Number.NaN;
