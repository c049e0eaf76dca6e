import type { CallRecord, LogRecord } from '../call-record.ts';
import type { PlacedCall } from './curve.ts';

/** The calls of a log, less those that a later record takes out as a slip. */
export function withoutSlips(log: readonly LogRecord[]): readonly CallRecord[] {
  const slipped = new Set(log.flatMap((record) => (record.kind === 'slip' ? [record.call] : [])));
  return log.filter(
    (record): record is CallRecord => record.kind === 'call' && !slipped.has(record.id),
  );
}

/** On a drawing smaller than this nobody sees what is asked, px per mm. Our choice: a third of life size or so. */
const LEAST_SEEN = 1.2;

/**
 * Whether a call says where an eye draws its line: accept or reject of a section that is the one or
 * the other, was asked as such and shows something of what is asked. Rare faults shift the line and stay out.
 */
export const isInCurve = ({ truth, answer, distance, way, spec, pxPerMm }: CallRecord): boolean =>
  truth !== 'refer' &&
  answer.call !== 'refer' &&
  typeof spec.asked === 'number' &&
  Number.isFinite(distance) &&
  pxPerMm >= LEAST_SEEN &&
  way !== 'rareFaults';

/** A call as the curve takes it. */
export const placed = ({ distance, answer }: CallRecord): PlacedCall => ({
  distance,
  rejected: answer.call === 'reject',
});
