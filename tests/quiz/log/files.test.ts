import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import {
  LOG_VERSION,
  logFromCsv,
  logFromJson,
  logToCsv,
  logToJson,
  merge,
  ways,
  type LogFile,
  type LogRecord,
} from '../../../src/quiz/index.ts';
import { runs } from '../../runs.ts';
import { callWith, slipOf } from '../any-call.ts';

const recordsOf = (file: LogFile): readonly LogRecord[] => {
  if (!file.ok) throw new Error(file.why.key);
  return file.records;
};
const keyOf = (file: LogFile): string => (file.ok ? 'taken' : file.why.key);

/** Any record that a log may hold, texts with what trips a table or a spreadsheet up. */
const awkward = fc.oneof(
  fc.constantFrom('=1+1', '+a', '-b', '@c', "'quoted", 'a,b', 'a "b"', 'line\nfeed', 'ähm', '-3'),
  fc.string({ minLength: 1, maxLength: 40 }),
);
/** A number to either side of none; a file knows no minus nothing. */
const finite = (most: number) =>
  fc.double({ min: -most, max: most, noNaN: true }).map((number) => number + 0);
const anyCall = fc
  .record({
    id: awkward,
    run: awkward,
    limitSet: awkward,
    at: fc.date({ min: new Date(0), max: new Date(4e12), noInvalidDate: true }),
    way: fc.constantFrom(...ways),
    distance: fc.oneof(fc.constant(-Infinity), finite(5)),
    exceedance: finite(100),
    seed: fc.integer({ min: 0, max: 2 ** 32 - 1 }),
    asked: fc.oneof(fc.constant('refer' as const), finite(2)),
    fault: fc.constantFrom(null, 'undercut.max' as const, 'leg.min' as const),
    named: fc.constantFrom(
      null,
      'somethingElse' as const,
      'notSure' as const,
      'overlap.max' as const,
    ),
    sure: fc.constantFrom(50, 60, 70, 80, 90, 100),
  })
  .map(({ at, seed, asked, named, sure, ...rest }) => {
    const truth = rest.distance > 0 ? ('reject' as const) : ('accept' as const);
    const call = callWith({ ...rest, truth, at: at.toISOString() });
    return {
      ...call,
      spec: { ...call.spec, seed, asked },
      answer: { ...call.answer, fault: named, sure },
    };
  });
const anyLog = fc.array(
  fc.oneof(
    anyCall,
    awkward.map((id) => slipOf('call-1', id)),
  ),
  { maxLength: 6 },
);

describe('a log of calls as a file', () => {
  it('comes back from JSON as it was, infinitely far inside a limit included', () => {
    fc.assert(
      fc.property(anyLog, (log) => {
        expect(recordsOf(logFromJson(logToJson(log)))).toEqual(log);
      }),
      { numRuns: runs(2_000) },
    );
  });

  it('comes back from a table as it was', () => {
    fc.assert(
      fc.property(anyLog, (log) => {
        expect(recordsOf(logFromCsv(logToCsv(log)))).toEqual(log);
      }),
      { numRuns: runs(2_000) },
    );
  });

  it('is a table by RFC 4180: CR LF after every line, quotes doubled, a cell with a comma in quotes', () => {
    const table = logToCsv([callWith({ id: 'a "b", c' })]);
    const lines = table.split('\r\n');
    expect(lines).toHaveLength(3);
    expect(lines[2]).toBe('');
    expect(lines[1]).toContain('"a ""b"", c"');
  });

  it('lets no cell be run as a formula, and leaves negative numbers alone; common practice, no source', () => {
    const table = logToCsv([callWith({ id: '=HYPERLINK("x")', run: '@sum', distance: -0.25 })]);
    expect(table).toContain(`"'=HYPERLINK(""x"")"`);
    expect(table).toContain(`'@sum`);
    expect(table).toContain(',-0.25,');
  });

  it('is refused whole with the record and the field that is wrong', () => {
    const wrong = { ...callWith(), truth: 'perhaps' };
    const file = logFromJson(logToJson([callWith(), wrong as never]));
    expect(file).toMatchObject({
      ok: false,
      why: { key: 'calls_log_wrong_record', values: { number: 2, path: 'truth' } },
    });
  });

  it.each([
    ['not a file', 'calls_log_no_json'],
    ['[]', 'calls_log_no_log'],
    ['{"toeline":"bench","records":[]}', 'calls_log_no_log'],
    ['null', 'calls_log_no_log'],
    ['"calls"', 'calls_log_no_log'],
    ['{"toeline":"calls"}', 'calls_log_no_log'],
    ['{"records":[]}', 'calls_log_no_log'],
    ['{"toeline":"calls","records":{}}', 'calls_log_no_log'],
  ])('%s is said to be no log', (text, key) => {
    expect(keyOf(logFromJson(text))).toBe(key);
  });

  it('that was saved again with semicolons and decimal commas is read; common practice, no source', () => {
    const call = callWith({ distance: -0.25, exceedance: 1.5, truth: 'accept' });
    const table = logToCsv([call, slipOf(call.id)]);
    const cells = table.split('\r\n').map((line) => line.split(','));
    const byComma = cells.map((row) =>
      row.map((cell) => (/^-?\d+\.\d+$/u.test(cell) ? cell.replace('.', ',') : cell)).join(';'),
    );
    expect(byComma.join()).toContain('-0,25;1,5');
    expect(recordsOf(logFromCsv(byComma.join('\r\n')))).toEqual([call, slipOf(call.id)]);
  });

  it('reads the table saved again as a text of tabs, decimal commas or points; common practice, no source', () => {
    const call = callWith({ distance: -0.25, exceedance: 1.5, truth: 'accept' });
    const cells = logToCsv([call, slipOf(call.id)])
      .split('\r\n')
      .map((line) => line.split(','));
    for (const mark of ['.', ',']) {
      const byTab = cells.map((row) =>
        row.map((cell) => (/^-?\d+\.\d+$/u.test(cell) ? cell.replace('.', mark) : cell)).join('\t'),
      );
      expect(byTab.join()).toContain(`-0${mark}25\t`);
      expect(recordsOf(logFromCsv(byTab.join('\r\n')))).toEqual([call, slipOf(call.id)]);
    }
  });

  it.each([
    [0.1, 'accept'],
    [-0.1, 'reject'],
    [-Infinity, 'reject'],
  ] as const)('whose distance %d from the limit is told to be %s is refused', (distance, truth) => {
    expect(logFromJson(logToJson([callWith({ distance, truth })]))).toMatchObject({
      why: { values: { path: 'truth', reason: { key: 'calls_log_no_truth' } } },
    });
  });

  it('may hold no call at all', () => {
    expect(recordsOf(logFromJson('{"toeline":"calls","version":1,"records":[]}'))).toEqual([]);
  });

  it('is JSON that any program reads, a record a line', () => {
    const text = logToJson([callWith(), slipOf('call-1')]);
    expect(JSON.parse(text)).toEqual({
      toeline: 'calls',
      version: LOG_VERSION,
      records: [callWith(), slipOf('call-1')],
    });
    expect(text.split('\n')).toHaveLength(5);
    expect(text.endsWith('\n]}\n')).toBe(true);
  });

  it('is a table with a column for everything, in a steady order', () => {
    const [head, row, slip] = logToCsv([callWith({ fault: null }), slipOf('call-1')]).split('\r\n');
    expect(head).toBe(
      'version,kind,id,at,way,run,seed,skill,view,asked,limitSet,limit,unit,scale,distance,' +
        'exceedance,truth,fault,call,named,sure,pxPerMm,took',
    );
    expect(row).toBe(
      '1,call,call-1,2026-03-02T08:15:00.000Z,practice,run-1,12,fillet.welded.undercut.max,outside,' +
        '0.2,iso5817-c,0.5,mm,ratio,0.2,0.11,reject,,reject,undercut.max,80,30,4200',
    );
    expect(slip).toBe('1,slip,slip of call-1,2026-03-02T08:16:00.000Z,,,,,,,,,,,,,,,call-1,,,,');
  });

  it.each(['=x', '+x', '-x', '@x', "'x"])('guards a text that begins like a formula: %s', (run) => {
    expect(logToCsv([callWith({ run })])).toContain(`,'${run},`);
  });

  it.each([1e-7, -1e-7, 12, -0.25, 1.5e21])('leaves a number as it is: %d', (exceedance) => {
    expect(logToCsv([callWith({ exceedance })])).toContain(`,${String(exceedance)},reject,`);
  });

  it('as a table may have empty lines, a mark of its encoding, and columns of somebody’s own', () => {
    const [head, row] = logToCsv([callWith()]).split('\r\n');
    const table = `\uFEFFmine,${head ?? ''}\r\n,,,\r\nx,${row ?? ''}\r\n\r\n`;
    expect(recordsOf(logFromCsv(table))).toEqual([callWith()]);
  });

  it('as a table is refused whole with the record that is wrong', () => {
    const table = logToCsv([callWith(), callWith({ id: 'b' })]).replace(
      /,30,4200\r\n$/u,
      ',much,4200\r\n',
    );
    expect(logFromCsv(table)).toMatchObject({
      ok: false,
      why: { key: 'calls_log_wrong_record', values: { number: 2, path: 'pxPerMm' } },
    });
  });

  it('as a table without one of its columns is said to be none', () => {
    const table = logToCsv([callWith()]);
    expect(keyOf(logFromCsv(table.replace(',took', ',time')))).toBe('calls_log_no_columns');
    expect(logFromCsv(table.replace(',took', ',time'))).toMatchObject({
      why: { values: { column: 'took' } },
    });
  });

  it.each(['', '\uFEFF', '\r\n\r\n', ' ', 'sep=;'])(
    'that has nothing in it is said to be empty: %j',
    (text) => {
      expect(keyOf(logFromCsv(text))).toBe('calls_log_empty');
    },
  );

  it('that is no text is said to be none, though its first line looks like one', () => {
    expect(keyOf(logFromCsv('PK\u0003\u0004\0\0'))).toBe('calls_log_no_table');
    // two bytes a letter, read as one
    const wide = logToCsv([callWith()]).replaceAll(/./gu, '$&\0');
    expect(keyOf(logFromCsv(wide))).toBe('calls_log_no_table');
  });

  it.each<readonly [string, (head: string) => string]>([
    ['spaces after the commas', (head) => head.replaceAll(',', ', ')],
    ['capitals', (head) => head.toUpperCase()],
    ['a first line that names the separator', (head) => `sep=,\r\n${head}`],
    ['the same in quotes', (head) => `"sep=,"\n${head}`],
  ])('as a table is read with %s over its columns', (_what, change) => {
    const [head = '', ...rows] = logToCsv([callWith()]).split('\r\n');
    expect(recordsOf(logFromCsv([change(head), ...rows].join('\r\n')))).toEqual([callWith()]);
  });

  it('as a table keeps to its own column where somebody’s differs by its case', () => {
    const [head, row] = logToCsv([callWith()]).split('\r\n');
    const table = `ID,${head ?? ''}\r\nmine,${row ?? ''}\r\n`;
    expect(recordsOf(logFromCsv(table))).toEqual([callWith()]);
  });

  it('as a table is read with semicolons that its first line names', () => {
    const text = logToCsv([callWith()]).replaceAll(',', ';');
    expect(recordsOf(logFromCsv(`sep=;\r\n${text}`))).toEqual([callWith()]);
  });

  it('as a table without its columns is said to be none', () => {
    expect(keyOf(logFromCsv('a,b\r\n1,2\r\n'))).toBe('calls_log_no_columns');
  });

  it('keeps records of a later version as they are, and gives them back', () => {
    const later = { version: 7, kind: 'glance', id: 'x', weight: 3 };
    const file = logFromJson(logToJson([callWith()], [later]));
    expect(file).toMatchObject({ ok: true, newer: [later] });
  });
});

describe('a table of a later version', () => {
  const later = (table: string): string => table.replace(/^1,/mu, '2,');

  it('is refused, for its columns may not hold all; the JSON file is what to bring in', () => {
    expect(keyOf(logFromCsv(later(logToCsv([callWith()]))))).toBe('calls_log_newer_table');
    expect(keyOf(logFromCsv(later(logToCsv([slipOf('a')]))))).toBe('calls_log_newer_table');
  });

  it('is told to be newer even where its columns are others', () => {
    expect(keyOf(logFromCsv('version,kind,id,glare\r\n1,call,a,\r\n2,call,b,much\r\n'))).toBe(
      'calls_log_newer_table',
    );
  });
});

describe('two logs merged', () => {
  const early = callWith({ id: 'a', at: '2026-01-01T00:00:00.000Z' });
  const late = callWith({ id: 'b', at: '2026-01-02T00:00:00.000Z' });

  it('hold every record once, in the order of time, whichever comes first', () => {
    expect(merge([late, early], [early])).toEqual([early, late]);
    expect(merge([early], [late, early])).toEqual([early, late]);
  });

  it('come to the same whatever the order and however often', () => {
    fc.assert(
      fc.property(fc.uniqueArray(anyCall, { selector: ({ id }) => id }), (log) => {
        const half = Math.floor(log.length / 2);
        const [one, other] = [log.slice(0, half + 1), log.slice(half)];
        const merged = merge(one, other);
        expect(merge(other, one)).toEqual(merged);
        expect(merge(merged, one)).toEqual(merged);
      }),
      { numRuns: runs(1_000) },
    );
  });
});
