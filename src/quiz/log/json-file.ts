import { LOG_VERSION, type LogRecord } from '../call-record.ts';
import type { Message } from '../../units/index.ts';
import { LogError } from './log-error.ts';
import { isNewer, readRecord, type NewerRecord } from './read-record.ts';

/** A file of calls as it is taken in: the records, and those of a later version as they came. */
export type LogFile =
  | {
      readonly ok: true;
      readonly records: readonly LogRecord[];
      readonly newer: readonly NewerRecord[];
    }
  | { readonly ok: false; readonly why: Message };

/** A log as JSON text: what the program calls it, its version, and a record a line. */
export function logToJson(
  records: readonly LogRecord[],
  newer: readonly NewerRecord[] = [],
): string {
  const lines = [...records, ...newer].map((record) => JSON.stringify(record, finite));
  return `{"toeline":"calls","version":${LOG_VERSION},"records":[\n${lines.join(',\n')}\n]}\n`;
}

const finite = (_key: string, value: unknown): unknown =>
  value === -Infinity ? '-Infinity' : value;

/** Reads a log from JSON text, whole or not at all: the number of the record that is wrong, and why. */
export function logFromJson(text: string): LogFile {
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch {
    return { ok: false, why: { key: 'calls_log_no_json' } };
  }
  const records = recordsIn(file);
  if (records === null) return { ok: false, why: { key: 'calls_log_no_log' } };
  return readAll(records);
}

function recordsIn(file: unknown): readonly unknown[] | null {
  if (typeof file !== 'object' || file === null || !('records' in file)) return null;
  const isOurs = 'toeline' in file && file.toeline === 'calls';
  return isOurs && Array.isArray(file.records) ? (file.records as readonly unknown[]) : null;
}

/** Every record read; the first that can't be is told by its number. */
export function readAll(values: readonly unknown[]): LogFile {
  const records: LogRecord[] = [];
  const newer: NewerRecord[] = [];
  for (const [index, value] of values.entries()) {
    if (isNewer(value)) {
      newer.push(value);
      continue;
    }
    try {
      records.push(readRecord(value));
    } catch (error) {
      if (!(error instanceof LogError)) throw error;
      const { path, reason } = error;
      return {
        ok: false,
        why: { key: 'calls_log_wrong_record', values: { number: index + 1, path, reason } },
      };
    }
  }
  return { ok: true, records, newer };
}
