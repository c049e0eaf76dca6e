import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import type { logToCsv, logToJson, LogRecord } from '../../../src/quiz/index.ts';
import { callWith, slipOf } from '../any-call.ts';

// What comes of a log once its version is raised: here to 2, with a made-up step.
const home = '../../../src/quiz/call-record.ts';

let taken = 0;
/** Version 2 counts a run by another name. */
const step = (record: Readonly<Record<string, unknown>>) => {
  taken++;
  return 'run' in record ? { ...record, run: `sitting ${String(record['run'])}` } : record;
};
let read: (value: unknown) => LogRecord;
let toJson: typeof logToJson;
let toCsv: typeof logToCsv;

beforeAll(async () => {
  vi.resetModules();
  vi.doMock(home, async (original) => ({ ...(await original<object>()), LOG_VERSION: 2 }));
  const { readRecord } = await import('../../../src/quiz/log/read-record.ts');
  read = (value) => readRecord(value, [step]);
  ({ logToJson: toJson } = await import('../../../src/quiz/log/json-file.ts'));
  ({ logToCsv: toCsv } = await import('../../../src/quiz/log/csv-file.ts'));
});
afterAll(() => {
  vi.doUnmock(home);
  vi.resetModules();
});

describe('a log whose version was raised', () => {
  it('brings a record up once: it is labelled with the version that it was brought to', () => {
    taken = 0;
    const once = read(callWith());
    expect(once).toMatchObject({ version: 2, run: 'sitting run-1' });
    expect(read(once)).toEqual(once);
    expect(read(slipOf('a'))).toMatchObject({ version: 2 });
    expect(taken).toBe(2);
  });

  it('is exported with that version, in the file and in the table', () => {
    const record = read(callWith());
    const file = JSON.parse(toJson([record])) as { version: number; records: unknown[] };
    expect(file.version).toBe(2);
    expect(file.records.map(read)).toEqual([record]);
    expect(toCsv([record]).split('\r\n')[1]).toMatch(/^2,/u);
  });
});
