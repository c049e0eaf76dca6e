import type { Joint } from '../joint/index.ts';
import { judge } from '../limits/index.ts';
import type { Call, Check, JobSheet } from '../limits/index.ts';
import type { MeasurementId, Measurements } from '../measure/index.ts';
import type { LimitSet } from './limit-set.ts';
import { faultOf, faultOn, isOneWith } from './quantity.ts';
import type { Question } from './question.ts';
import type { Fault } from './skill.ts';

/** What a question comes to under one reading of the rules. */
export interface Verdict {
  readonly call: Exclude<Call, 'notAssessed'>;
  /** what would be wrong with the joint */
  readonly faults: readonly Fault[];
}

/** What is read otherwise than it should be; all else as the question has it. */
export interface Misread {
  readonly values?: Readonly<Partial<Record<MeasurementId, number>>>;
  readonly sheet?: JobSheet;
  readonly limits?: LimitSet;
}

/** The question judged again with something misread; null where the decisive check then has nothing to say. */
export function rejudge(question: Question, limits: LimitSet, misread: Misread): Verdict | null {
  const { decisive, joint, measurements, sheet } = question;
  const read = withValues(measurements, misread.values ?? {});
  const checks = judge(read, misread.sheet ?? sheet, misread.limits ?? limits);
  return verdictOf(checks, decisive, joint);
}

/**
 * The call that checks come to as far as this question goes: other measures of the same fault say
 * the same thing again and are left out.
 */
function verdictOf(checks: readonly Check[], decisive: Check, joint: Joint): Verdict | null {
  const own = faultOf(decisive);
  const isDecisive = (check: Check): boolean =>
    check.measurement === decisive.measurement && check.sense === decisive.sense;
  const judged = checks.filter(({ call }) => call !== 'notAssessed');
  if (!judged.some(isDecisive)) return null;
  const heard = judged.filter(
    (check) => isDecisive(check) || !isOneWith(own, faultOf(check)) || faultOf(check) === own,
  );
  const rejected = heard.filter(({ call }) => call === 'reject');
  if (rejected.length > 0) {
    const faults = new Set(rejected.map((check) => faultOn(joint, check)));
    return { call: 'reject', faults: [...faults] };
  }
  const isOpen = heard.some((check) => check.call === 'refer');
  return { call: isOpen ? 'refer' : 'accept', faults: [] };
}

/** The measurements with these values in place of their own, the section as it is. */
function withValues(
  measurements: Measurements,
  changed: NonNullable<Misread['values']>,
): Measurements {
  const values = { ...measurements.values };
  for (const [id, value] of Object.entries(changed) as [MeasurementId, number][]) {
    const before = values[id];
    if (before !== undefined) values[id] = { ...before, value };
  }
  return { ...measurements, values };
}
