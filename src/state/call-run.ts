import type { JobSheet } from '../limits/index.ts';
import { ways } from '../quiz/index.ts';
import type { Answer, CallRecord, LogRecord, QuestionSpec, SkillId, Way } from '../quiz/index.ts';
import type { Highlighted } from './call-draft.svelte.ts';

/** Calls made in one go. */
export interface Run {
  readonly id: string;
  readonly way: Way;
  /** the skill that is practised; null: as the way chooses */
  readonly skill: SkillId | null;
  /** how many calls it has; null: until the person stops */
  readonly length: number | null;
}

/** A run as it is kept while the page is away: the question that was last shown, and whether it has ended. */
export interface KeptRun extends Run {
  readonly version: 1;
  readonly sheet: JobSheet;
  readonly spec: QuestionSpec;
  /** what was highlighted of the answer to it */
  readonly answer?: Highlighted;
  /** its summary was shown; left out: it goes on */
  readonly ended?: true;
}

/** What calls are kept in. `add` is done once the record is written, or can't be and stays in memory. */
export interface CallKeeper {
  readonly records: readonly LogRecord[];
  add(record: LogRecord): Promise<void>;
  /** the run in progress, so that a reload goes on with it; null when there is none */
  keepRun(run: KeptRun | null): void;
}

/** Which question comes next in a run. */
export type Chooser = (
  run: Run,
  records: readonly LogRecord[],
  seed: number,
) => QuestionSpec | null;

/** The calls of a run, first to last. */
export const callsIn = ({ id }: Run, records: readonly LogRecord[]): readonly CallRecord[] =>
  records.filter((record): record is CallRecord => record.kind === 'call' && record.run === id);

/**
 * What a call is kept under: one question of a run is called once, also where two tabs show it and are
 * answered in the same instant.
 */
export const callName = ({ id }: Run, { seed, skill, view, asked }: QuestionSpec): string =>
  [id, seed, skill, view, asked].join(' ');

/** Whether a kept value is a run as this version keeps it; what another version kept is not gone on with. */
export function isRun(value: unknown): value is KeptRun {
  if (!isRecord(value) || value['version'] !== 1) return false;
  const { way, length, spec, sheet, answer } = value;
  const isLength = length === null || (Number.isInteger(length) && Number(length) > 0);
  return (
    ways.some((one) => one === way) &&
    isLength &&
    isRecord(spec) &&
    isRecord(sheet) &&
    (answer === undefined || isRecord(answer))
  );
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

/** Whether two answers say the same of a section, however sure either was. */
export const isSameAnswer = (one: Answer, other: Answer): boolean =>
  one.call === other.call && one.fault === other.fault;
