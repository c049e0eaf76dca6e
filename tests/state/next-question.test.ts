import { describe, expect, it } from 'vitest';
import { defaultJobSheet, openingLimitSet } from '../../src/limits/index.ts';
import type { QuestionSpec } from '../../src/quiz/index.ts';
import type { Run } from '../../src/state/call-run.ts';
import { nextQuestion, questionOf } from '../../src/state/next-question.ts';

const on = { sheet: defaultJobSheet(), limits: openingLimitSet };
const run: Run = { id: 'run', way: 'practice', skill: null, length: null };
const undercut: QuestionSpec = {
  version: 1,
  seed: 1,
  skill: 'fillet.welded.undercut.max',
  view: 'cut',
  asked: 0.4,
};
const unknown: QuestionSpec = { ...undercut, skill: 'fillet.welded.nothing.min' };

describe('the next question of a run', () => {
  it('is looked for seed after seed until one can be drawn', () => {
    const seeds = [5, 6, 7];
    const asked: number[] = [];
    const { question, trouble } = nextQuestion(
      (_run, _records, seed) => {
        asked.push(seed);
        return seed === 7 ? { ...undercut, seed } : unknown;
      },
      run,
      [],
      () => seeds.shift() ?? 0,
      on,
    );
    expect(asked).toEqual([5, 6, 7]);
    expect(question?.spec).toEqual({ ...undercut, seed: 7 });
    expect(trouble).toBeNull();
  });

  it('is given up after a dozen seeds, and why the last could not be drawn is said', () => {
    let tries = 0;
    const { question, trouble } = nextQuestion(
      () => (tries++, unknown),
      run,
      [],
      () => 1,
      on,
    );
    expect(tries).toBe(12);
    expect(question).toBeNull();
    expect(trouble).toEqual(questionOf(unknown, on).trouble);
  });

  it('is given up at once where nothing is left to choose', () => {
    const { question, trouble } = nextQuestion(
      () => null,
      run,
      [],
      () => 1,
      on,
    );
    expect(question).toBeNull();
    expect(trouble?.key).toBe('calls_error_not_on_this_sheet');
  });
});
