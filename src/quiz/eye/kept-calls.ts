import type { CallRecord, LogRecord } from '../call-record.ts';
import type { PlacedCall } from './curve.ts';

/** The calls of a log, less those that a later record takes out as a slip. */
export function withoutSlips(log: readonly LogRecord[]): readonly CallRecord[] {
  const slipped = new Set(log.flatMap((record) => (record.kind === 'slip' ? [record.call] : [])));
  return log.filter(
    (record): record is CallRecord => record.kind === 'call' && !slipped.has(record.id),
  );
}

/**
 * Whether a call says where an eye draws its line: accept or reject of a section that is the one or
 * the other, was asked as such and shows something of what is asked. Rare faults shift the line and stay out.
 */
export const isInCurve = ({ truth, answer, distance, way, spec }: CallRecord): boolean =>
  truth !== 'refer' &&
  answer.call !== 'refer' &&
  typeof spec.asked === 'number' &&
  Number.isFinite(distance) &&
  way !== 'rareFaults';

/** A call as the curve takes it. */
export const placed = ({ distance, answer }: CallRecord): PlacedCall => ({
  distance,
  rejected: answer.call === 'reject',
});
