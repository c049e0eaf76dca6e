import type { LimitSet } from './limit-set.ts';
import { isOneWith, looksLike, nameIn, reasonOf } from './quantity.ts';
import type { Answer, Question } from './question.ts';
import { rejudge, type Verdict } from './rejudge.ts';
import type { Fault } from './skill.ts';
import { misreadBy, misreadings } from './wrong-rules.ts';

/**
 * What a wrong answer may come of: a rule misread; a name for what looks like it; or, where neither
 * explains it, an eye too strict or too lenient, an open question settled, or just another name.
 */
export const wrongRules = [
  ...misreadings,
  'lookAlike',
  'tooStrict',
  'tooLenient',
  'settledOpen',
  'otherName',
] as const;
type WrongRule = (typeof wrongRules)[number];

/** Whether a mistake is only what would give the answer: nobody knows which rule was in fact misread. */
export const isConjecture = (mistake: WrongRule): boolean =>
  (misreadings as readonly WrongRule[]).includes(mistake);

/** An answer held against the truth. */
export interface Grade {
  /** the call is the truth */
  readonly right: boolean;
  /** what is wrong was named as it is; null where nothing was to be named */
  readonly rightReason: boolean | null;
  /** the mistakes that would give this very answer, one of them; empty when all is right */
  readonly mistakes: readonly WrongRule[];
}

/** Holds an answer against the truth, and looks for the mistakes that would give it. */
export function gradeAnswer(question: Question, answer: Answer, limits: LimitSet): Grade {
  const right = answer.call === question.truth;
  const named = nameIn(answer.fault);
  const rightReason = reasonOf(question.fault, answer);
  if (right && rightReason !== false) return { right, rightReason, mistakes: [] };
  const found: readonly WrongRule[] = misreadings.filter((rule) =>
    misreadBy(rule, question, limits).some((misread) => {
      const verdict = rejudge(question, limits, misread);
      return verdict !== null && differs(verdict, question) && gives(verdict, answer, named);
    }),
  );
  const isAlike =
    right && named !== null && question.fault !== null && looksLike(question.fault, named);
  const mistakes = isAlike ? [...found, 'lookAlike' as const] : found;
  return {
    right,
    rightReason,
    mistakes: mistakes.length > 0 ? mistakes : [unexplained(question, answer)],
  };
}

/** Whether a verdict is another than the truth. */
function differs({ call, faults }: Verdict, { truth, fault }: Question): boolean {
  return call !== truth || (fault !== null && !faults.includes(fault));
}

/** Whether it is what was answered: the same call, and the name one of its faults where one was given. */
function gives({ call, faults }: Verdict, answer: Answer, named: Fault | null): boolean {
  if (call !== answer.call) return false;
  return (
    named === null || answer.call !== 'reject' || faults.some((fault) => isOneWith(fault, named))
  );
}

function unexplained({ truth }: Question, { call }: Answer): WrongRule {
  // the call was right and the name wasn't
  if (call === truth) return 'otherName';
  if (truth === 'refer') return 'settledOpen';
  return truth === 'accept' ? 'tooStrict' : 'tooLenient';
}
