import type { CompiledLimitSet, JobSheet } from '../limits/index.ts';
import {
  drawQuestion,
  QuizError,
  type LogRecord,
  type Question,
  type QuestionSpec,
} from '../quiz/index.ts';
import type { Message } from '../units/index.ts';
import type { Chooser, Run } from './call-run.ts';

/** What a run asks about. */
export interface Asked {
  readonly sheet: JobSheet;
  readonly limits: CompiledLimitSet;
}

/** A question, or why it can't be asked. */
export type Drawn =
  | { readonly question: Question; readonly trouble: null }
  | { readonly question: null; readonly trouble: Message };

/** A question is looked for with so many seeds before a run gives up. */
const MOST_TRIES = 12;

/** The question of a spec on this sheet. */
export function questionOf(spec: QuestionSpec, { sheet, limits }: Asked): Drawn {
  try {
    return { question: drawQuestion(spec, sheet, limits), trouble: null };
  } catch (error) {
    if (!(error instanceof QuizError)) throw error;
    return { question: null, trouble: error.reason };
  }
}

/** The question that comes next in a run: the first that can be drawn of those chosen, seed after seed. */
export function nextQuestion(
  choose: Chooser,
  run: Run,
  records: readonly LogRecord[],
  seed: () => number,
  on: Asked,
): Drawn {
  let trouble: Message = { key: 'calls_error_not_on_this_sheet' };
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const spec = choose(run, records, seed());
    if (spec === null) break;
    const drawn = questionOf(spec, on);
    if (drawn.question !== null) return drawn;
    ({ trouble } = drawn);
  }
  return { question: null, trouble };
}
