import type { Answer, EyeScale, Question, QuestionSpec } from './question.ts';
import type { Fault, SkillId } from './skill.ts';

/** The version of the records that are written, and the latest that this program reads. */
export const LOG_VERSION = 1;

/** The ways to practise. */
export const ways = [
  'practice',
  'limit',
  'pairs',
  'naming',
  'mixedTest',
  'rareFaults',
  'due',
] as const;
export type Way = (typeof ways)[number];

/** One call as it is kept for good. Everything that a figure is made of stands in it. */
export interface CallRecord {
  readonly version: typeof LOG_VERSION;
  readonly kind: 'call';
  /** unique over all machines */
  readonly id: string;
  /** ISO 8601, UTC */
  readonly at: string;
  readonly way: Way;
  /** the calls made in one go */
  readonly run: string;
  readonly spec: QuestionSpec;
  readonly skill: SkillId;
  readonly limitSet: string;
  /** the limit and its unit at the time, mm or degrees */
  readonly limit: number;
  readonly unit: 'mm' | 'deg';
  readonly scale: EyeScale;
  readonly distance: number;
  readonly exceedance: number;
  readonly truth: Question['truth'];
  readonly fault: Fault | null;
  readonly answer: Answer;
  /** drawn size on the reader's screen, px per mm */
  readonly pxPerMm: number;
  /** from the drawing to the call, ms */
  readonly took: number;
}

/** Takes an earlier call out of the curve; the tally keeps it. */
export interface SlipRecord {
  readonly version: typeof LOG_VERSION;
  readonly kind: 'slip';
  readonly id: string;
  readonly at: string;
  /** the call that slipped */
  readonly call: string;
}

export type LogRecord = CallRecord | SlipRecord;

/** Whether a call was the truth. */
export const isRight = ({ truth, answer }: CallRecord): boolean => truth === answer.call;
