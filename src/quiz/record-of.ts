import { LOG_VERSION, type CallRecord } from './call-record.ts';
import type { Answer, Question } from './question.ts';

/** What a call is made of besides its question and answer. */
export type Circumstances = Pick<CallRecord, 'id' | 'at' | 'way' | 'run' | 'pxPerMm' | 'took'>;

/** A call as it is kept for good: everything that a figure is made of. */
export function recordOf(
  { spec, sheet, decisive, scale, distance, exceedance, truth, fault }: Question,
  answer: Answer,
  { id, at, way, run, pxPerMm, took }: Circumstances,
): CallRecord {
  return {
    version: LOG_VERSION,
    kind: 'call',
    id,
    at,
    way,
    run,
    spec,
    skill: spec.skill,
    limitSet: sheet.limitSet,
    limit: decisive.limit ?? 0,
    unit: decisive.unit,
    scale,
    distance,
    exceedance,
    truth,
    fault,
    answer,
    pxPerMm,
    took: Math.round(took),
  };
}
