import { csvFormatRow, csvParseRows, dsvFormat } from 'd3-dsv';
import { LOG_VERSION, type LogRecord } from '../call-record.ts';
import { readAll, type LogFile } from './json-file.ts';

const columns = [
  'version',
  'kind',
  'id',
  'at',
  'way',
  'run',
  'seed',
  'skill',
  'view',
  'asked',
  'limitSet',
  'limit',
  'unit',
  'scale',
  'distance',
  'exceedance',
  'truth',
  'fault',
  'call',
  'named',
  'sure',
  'pxPerMm',
  'took',
] as const;
type Column = (typeof columns)[number];

/** A cell that starts so is run as a formula by some spreadsheets. */
const FORMULA = /^[=+\-@\t\r']/u;
const NUMBER = /^-?(?:\d+\.?\d*(?:e[+-]?\d+)?|Infinity)$/iu;

/**
 * A log as a table, RFC 4180: a head row, commas, quotes doubled, lines ended by CR LF; times ISO
 * 8601 in UTC, decimals with a point. A text that a spreadsheet would run as a formula gets an
 * apostrophe before it; numbers stand as they are.
 */
export function logToCsv(records: readonly LogRecord[]): string {
  const rows = records.map((record) => {
    const cells = cellsOf(record);
    return columns.map((column) => guarded(cells[column] ?? ''));
  });
  return [[...columns], ...rows].map((row) => `${csvFormatRow(row)}\r\n`).join('');
}

function cellsOf(record: LogRecord): Partial<Record<Column, string>> {
  const { version, kind, id, at } = record;
  const both = { version: String(version), kind, id, at };
  if (record.kind === 'slip') return { ...both, call: record.call };
  const { spec, answer, fault } = record;
  return {
    ...both,
    way: record.way,
    run: record.run,
    seed: String(spec.seed),
    skill: spec.skill,
    view: spec.view,
    asked: String(spec.asked),
    limitSet: record.limitSet,
    limit: String(record.limit),
    unit: record.unit,
    scale: record.scale,
    distance: String(record.distance),
    exceedance: String(record.exceedance),
    truth: record.truth,
    fault: fault ?? '',
    call: answer.call,
    named: answer.fault ?? '',
    sure: String(answer.sure),
    pxPerMm: String(record.pxPerMm),
    took: String(record.took),
  };
}

const guarded = (cell: string): string =>
  FORMULA.test(cell) && !NUMBER.test(cell) ? `'${cell}` : cell;

/** What a spreadsheet puts between cells where a comma is the decimal mark, or in a text of tabs. */
const SEPARATORS = [';', '\t'] as const;

/** A first line that tells a spreadsheet what stands between cells; it is seen from the head all the same. */
const SEPARATOR_LINE = /^"?sep=.?"?(?:\r\n|\r|\n|$)/iu;

/** The columns of a head row; one that isn't there as it is written here may be in any case. */
function columnsIn(row: readonly string[]): readonly string[] {
  const head = row.map((text) => text.trim());
  return head.map((heading) => {
    const lower = heading.toLowerCase();
    const column = columns.find((one) => one.toLowerCase() === lower);
    return column === undefined || head.includes(column) ? heading : column;
  });
}

/** The rows of a table, by what stands between the cells of its first line, and its decimal mark. */
function rowsOf(text: string): { readonly rows: readonly string[][]; readonly mark: '.' | ',' } {
  const [head = ''] = text.split(/[\r\n]/u, 1);
  const separator = head.includes(',') ? undefined : SEPARATORS.find((one) => head.includes(one));
  // A figure has no other comma in it, so one that has none is read as it stands.
  return separator === undefined
    ? { rows: csvParseRows(text), mark: '.' }
    : { rows: dsvFormat(separator).parseRows(text), mark: ',' };
}

/**
 * Reads a log from such a table, whole or not at all; columns that it doesn't know are passed over.
 * A table that was saved again with semicolons or tabs, and decimal commas, is read too. Records of a later
 * version are refused: kept as this table gives them they would lack what its columns don't hold,
 * and the whole ones in a JSON file would be taken for known.
 */
export function logFromCsv(text: string): LogFile {
  const table = text.replace(/^\uFEFF/u, '').replace(SEPARATOR_LINE, '');
  if (table.trim() === '') return { ok: false, why: { key: 'calls_log_empty' } };
  // No text has it: a table of a spreadsheet's own kind, a picture, or a text of two bytes a letter.
  if (table.includes('\0')) return { ok: false, why: { key: 'calls_log_no_table' } };
  const { rows, mark } = rowsOf(table);
  const [first = [], ...body] = rows;
  const head = columnsIn(first);
  const version = head.indexOf('version');
  if (body.some((row) => Number(row[version]) > LOG_VERSION))
    return { ok: false, why: { key: 'calls_log_newer_table' } };
  const missing = columns.find((column) => !head.includes(column));
  if (missing !== undefined)
    return { ok: false, why: { key: 'calls_log_no_columns', values: { column: missing } } };
  return readAll(
    body.filter((row) => row.some((cell) => cell !== '')).map((row) => recordIn(head, row, mark)),
  );
}

function recordIn(head: readonly string[], row: readonly string[], mark: '.' | ','): unknown {
  const cell = (column: Column): string => {
    const text = row[head.indexOf(column)] ?? '';
    return text.startsWith("'") ? text.slice(1) : text;
  };
  const number = (column: Column): number | string => {
    const figure = cell(column).replace(mark, '.');
    return NUMBER.test(figure) ? Number(figure) : cell(column);
  };
  const orNull = (column: Column): string | null => (cell(column) === '' ? null : cell(column));
  const both = {
    version: number('version'),
    kind: cell('kind'),
    id: cell('id'),
    at: cell('at'),
  };
  if (cell('kind') === 'slip') return { ...both, call: cell('call') };
  return {
    ...both,
    way: cell('way'),
    run: cell('run'),
    spec: {
      version: 1,
      seed: number('seed'),
      skill: cell('skill'),
      view: cell('view'),
      asked: number('asked'),
    },
    skill: cell('skill'),
    limitSet: cell('limitSet'),
    limit: number('limit'),
    unit: cell('unit'),
    scale: cell('scale'),
    distance: number('distance'),
    exceedance: number('exceedance'),
    truth: cell('truth'),
    fault: orNull('fault'),
    answer: { call: cell('call'), fault: orNull('named'), sure: number('sure') },
    pxPerMm: number('pxPerMm'),
    took: number('took'),
  };
}
