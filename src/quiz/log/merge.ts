import type { LogRecord } from '../call-record.ts';

/**
 * Two logs as one: every record once by its id, in the order of time, those of one moment by id. What
 * stands in both is the same, for a record is never changed: the order of the two makes no difference.
 */
export function merge(
  one: readonly LogRecord[],
  other: readonly LogRecord[],
): readonly LogRecord[] {
  const all = new Map([...other, ...one].map((record) => [record.id, record]));
  return [...all.values()].sort((a, b) => compare(a.at, b.at) || compare(a.id, b.id));
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
