import type { CompiledLimitSet, JobSheet } from '../../../../limits/index.ts';
import {
  drawQuestion,
  eyeOf,
  groupedBy,
  isRight,
  middleOf,
  QuizError,
  skillOf,
  tallyOf,
  withoutSlips,
  type CallRecord,
  type Eye,
  type LogRecord,
  type SheetSkill,
  type SkillId,
  type Tally,
} from '../../../../quiz/index.ts';

/** The limit that a skill's figures are put to. */
export interface SkillLimit {
  readonly sense: 'max' | 'min';
  readonly unit: 'mm' | 'deg';
  readonly limit: number;
}

/** All that the log says of one skill. */
export interface SkillEye {
  readonly id: SkillId;
  /** every call, slips among them */
  readonly calls: readonly CallRecord[];
  /** those that the curve is made of */
  readonly kept: readonly CallRecord[];
  readonly eye: Eye | null;
  readonly tally: Tally;
}

const isCall = (record: LogRecord): record is CallRecord => record.kind === 'call';

/** All calls of a log, slips among them, first to last. */
export const callsOf = (records: readonly LogRecord[]): readonly CallRecord[] =>
  records.filter(isCall);

/** What the log says of each skill, the one with the most calls first. */
export function skillEyes(records: readonly LogRecord[]): readonly SkillEye[] {
  const all = callsOf(records);
  const kept = withoutSlips(records);
  return [...groupedBy(all, ({ skill }) => skill)]
    .map(([id, calls]): SkillEye => {
      const own = kept.filter(({ skill }) => skill === id);
      return { id, calls, kept: own, eye: eyeOf(own), tally: tallyOf(calls) };
    })
    .sort((a, b) => b.calls.length - a.calls.length);
}

/** Seeds that are tried for a section that has the skill's limit. */
const SEEDS = [11, 12, 13];

/** The limit that a skill has on a sheet; where the sheet can't ask it, the one of the last call. */
export function skillLimit(
  { id, calls }: SkillEye,
  skills: readonly SheetSkill[],
  sheet: JobSheet,
  limits: CompiledLimitSet,
): SkillLimit | null {
  const offered = skills.find((skill) => skill.id === id);
  const [view] = offered?.views ?? [];
  if (offered !== undefined && view !== undefined && offered.reach > 0) {
    for (const seed of SEEDS) {
      try {
        const spec = { version: 1, seed, skill: id, view, asked: offered.reach / 2 } as const;
        const { decisive } = drawQuestion(spec, sheet, limits);
        const { limit, sense, unit } = decisive;
        if (limit !== null) return { limit, sense, unit };
      } catch (error) {
        if (!(error instanceof QuizError)) throw error;
      }
    }
  }
  const last = calls.at(-1);
  const sense = skillOf(id)?.sense;
  return last === undefined || sense === undefined
    ? null
    : { sense, unit: last.unit, limit: last.limit };
}

/** The magnification of a skill's figures, px/mm; of its calls where no figure is made of any of them. */
export const shownAt = ({ calls, eye }: Pick<SkillEye, 'calls' | 'eye'>): number =>
  eye?.pxPerMm ?? middleOf(calls.map(({ pxPerMm }) => pxPerMm));

/** px/mm with one decimal. */
export const roundedScale = (pxPerMm: number): number => Math.round(pxPerMm * 10) / 10;

/** Calls made in one go. */
export interface RunOfCalls {
  readonly id: string;
  readonly at: string;
  readonly way: CallRecord['way'];
  readonly calls: number;
  readonly right: number;
}

/** The runs that calls were made in, first to last. */
export function runsOf(calls: readonly CallRecord[]): readonly RunOfCalls[] {
  return [...groupedBy(calls, ({ run }) => run)].flatMap(([id, own]) => {
    const [first] = own;
    if (first === undefined) return [];
    const right = own.filter(isRight).length;
    return [{ id, at: first.at, way: first.way, calls: own.length, right }];
  });
}
