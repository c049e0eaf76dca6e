import { LimitsError, parseJobSheet, type JobSheet } from '../limits/index.ts';
import { enteredToMm, type EnteredLength, type Message } from '../units/index.ts';
import type { BenchSession } from './bench.svelte.ts';

/** Why a sheet could not be read again from a link or a file, in words for the field; null when it could. */
export function sheetRefusal(sheet: JobSheet): Message | null {
  try {
    parseJobSheet(sheet);
    return null;
  } catch (error) {
    if (error instanceof LimitsError) return told(error, sheet);
    throw error;
  }
}

/** Lengths are refused in their own unit, 64ths of an inch even; the most is told in the reader's. */
function told({ field, reason }: LimitsError, sheet: JobSheet): Message {
  const most = reason.values?.['most'];
  const length = field.endsWith('.value') ? lengthAt(sheet, field.split('.').slice(0, -1)) : null;
  return reason.key === 'limits_data_out_of_range' && typeof most === 'number' && length !== null
    ? {
        key: 'bench_sheet_too_long',
        values: { most: { value: enteredToMm({ unit: length.unit, value: most }), unit: 'mm' } },
      }
    : reason;
}

function lengthAt(sheet: JobSheet, path: readonly string[]): EnteredLength | null {
  let at: unknown = sheet;
  for (const name of path) at = (at as Readonly<Record<string, unknown>> | null)?.[name];
  return (at as EnteredLength | null) ?? null;
}

/**
 * Another sheet on the bench, as a step that can be undone: the only way to one, for a bench is kept
 * as it stands and what could not be read again would be lost. What is refused is told and changes
 * nothing.
 */
export function changeSheet(bench: BenchSession, sheet: JobSheet): void {
  const refused = sheetRefusal(sheet);
  if (refused === null) bench.setSheet(sheet);
  else bench.notice = { key: 'bench_sheet_refused', values: { why: refused } };
}
