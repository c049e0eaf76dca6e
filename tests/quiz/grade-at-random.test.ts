import { describe, expect, it } from 'vitest';
import { drawQuestion, gradeAnswer, pick, random, skillsOf } from '../../src/quiz/index.ts';
import type { Answer, Question, SkillId } from '../../src/quiz/index.ts';
import { isOneWith, nameIn } from '../../src/quiz/quantity.ts';
import { rejudge } from '../../src/quiz/rejudge.ts';
import { misreadBy, misreadings } from '../../src/quiz/wrong-rules.ts';
import { sheetUnder, type SheetCase } from './question-sheets.ts';

describe('an answer at random', () => {
  const skills: readonly SkillId[] = [
    'fillet.welded.leg.min',
    'fillet.welded.convexity.max',
    'fillet.welded.undercut.max',
    'butt.welded.faceReinforcement.max',
    'butt.welded.misalignment.max',
  ];

  /** Whether a rule gives an answer, from what it makes of the question, not from how answers are graded. */
  const isGiven = (
    rule: (typeof misreadings)[number],
    question: Question,
    { limits }: SheetCase,
    given: Answer,
  ): boolean =>
    misreadBy(rule, question, limits).some((misread) => {
      const verdict = rejudge(question, limits, misread);
      if (verdict?.call !== given.call) return false;
      const named = nameIn(given.fault);
      if (given.call !== 'reject' || named === null) return true;
      return verdict.faults.some((fault) => isOneWith(fault, named));
    });

  /** Every wrong answer that there is to a question: the wrong call, with each of the names. */
  const wrongAnswers = ({ truth, choices }: Question): readonly Answer[] =>
    truth === 'reject'
      ? [{ call: 'accept', fault: null, sure: 80 }]
      : ([...choices, 'somethingElse', 'notSure'] as const).map((name) => ({
          call: 'reject',
          fault: name,
          sure: 80,
        }));

  it.each(['aws-d11-static', 'iso5817-c'])(
    'is laid to no rule more often than the rule gives answers at random: %s',
    (id) => {
      const one = sheetUnder(id);
      const asked = skills.filter((skill) =>
        skillsOf(one.sheet, one.limits).some((found) => found.id === skill),
      );
      const chance = random(271_828);
      const told = new Map<string, number>();
      const base = new Map<string, { sum: number; variance: number }>();
      for (let seed = 0; seed < 200; seed++) {
        const side = seed % 2 === 0 ? 0.1 : -0.1;
        const question = drawQuestion(
          {
            version: 1,
            seed,
            skill: asked[seed % asked.length] as SkillId,
            view: 'cut',
            asked: side,
          },
          one.sheet,
          one.limits,
        );
        const all = wrongAnswers(question);
        for (const rule of misreadings) {
          const share =
            all.filter((given) => isGiven(rule, question, one, given)).length / all.length;
          const before = base.get(rule) ?? { sum: 0, variance: 0 };
          base.set(rule, {
            sum: before.sum + share,
            variance: before.variance + share * (1 - share),
          });
        }
        for (const rule of gradeAnswer(question, pick(chance, all), one.limits).mistakes)
          told.set(rule, (told.get(rule) ?? 0) + 1);
      }
      // four standard deviations: of 2 × 21 rules chance alone passes all but one time in a thousand
      for (const rule of misreadings) {
        const { sum, variance } = base.get(rule) ?? { sum: 0, variance: 0 };
        expect([rule, (told.get(rule) ?? 0) <= sum + 4 * Math.sqrt(variance)]).toEqual([
          rule,
          true,
        ]);
      }
      // what no joint of these can show is told of none
      for (const rule of ['legsSwapped', 'hiddenRootJudged', 'doubtOverlooked'])
        expect([rule, told.get(rule)]).toEqual([rule, undefined]);
      // a name at random is hardly ever the one that a rule would give
      expect(told.get('tooStrict')).toBeGreaterThan(40);
    },
  );
});
