import { enteredToMm } from '../units/index.ts';
import { circumstanceNames, circumstances, type Service } from './circumstance.ts';
import type { JobSheet, SheetLength, Toleranced } from './job-sheet.ts';
import { LimitsError } from './limits-error.ts';
import { parseSymbolMarks } from './parse-symbol-marks.ts';
import {
  choiceOf,
  fieldsOf,
  filledText,
  flagOf,
  joined,
  numberOf,
  textOf,
  versionOf,
  type Fields,
} from './read-value.ts';

/** No dimension on a sheet for these joints is longer, in its own unit. */
const longest = { mm: 100, in: 4, in64: 256 } as const;
const largestAngle = 180;
const largestGuardFactor = 10;

/**
 * A job sheet from outside (a link, a file, a lesson), taken whole or refused
 * with a LimitsError that names the field and the reason. Fields that a sheet
 * doesn't have are left behind.
 */
export function parseJobSheet(value: unknown): JobSheet {
  const sheet = fieldsOf(value, 'sheet');
  const guard = fieldsOf(sheet['guard'], 'guard');
  return {
    version: versionOf(sheet['version']),
    job: textOf(sheet['job'], 'job'),
    weld: textOf(sheet['weld'], 'weld'),
    ...parseHeader(sheet),
    limitSet: filledText(sheet['limitSet'], 'limitSet'),
    column: choiceOf(sheet['column'], ['mm', 'in'], 'column'),
    size: parseSize(sheet['size']),
    dihedralAngle: parseDihedralAngle(sheet['dihedralAngle']),
    groove: parseGroove(sheet['groove']),
    intendedAlignment: choiceOf(
      sheet['intendedAlignment'],
      ['centrelines', 'faceFlush', 'rootFlush'],
      'intendedAlignment',
    ),
    rounding: choiceOf(sheet['rounding'], ['absolute', 'lastPlace'], 'rounding'),
    guard: {
      factor: numberOf(guard['factor'], 'guard.factor', 0, largestGuardFactor),
      lengthUncertainty: numberOf(
        guard['lengthUncertainty'],
        'guard.lengthUncertainty',
        0,
        longest.mm,
      ),
      angleUncertainty: numberOf(
        guard['angleUncertainty'],
        'guard.angleUncertainty',
        0,
        largestAngle,
      ),
    },
    extent: choiceOf(sheet['extent'], ['unknown', 'isolatedShort', 'typical'], 'extent'),
    leastImperfection: parseLength(sheet['leastImperfection'], 'leastImperfection'),
    penetrationProven: flagOf(sheet['penetrationProven'], 'penetrationProven'),
    rootAccessible: flagOf(sheet['rootAccessible'] ?? true, 'rootAccessible'),
    service: parseService(sheet['service'] ?? {}),
    ...(sheet['symbol'] === undefined ? {} : { symbol: parseSymbolMarks(sheet['symbol']) }),
  };
}

/** Sheets of earlier links and files have no such fields: then they are empty. */
function parseHeader(sheet: Fields): Pick<JobSheet, HeaderField> {
  const read = headerFields.map((name) => [name, textOf(sheet[name] ?? '', name)] as const);
  return Object.fromEntries(read) as Pick<JobSheet, HeaderField>;
}

const headerFields = ['wps', 'drawing', 'code', 'material', 'process'] as const;
type HeaderField = (typeof headerFields)[number];

function parseService(value: unknown): Service {
  const service = fieldsOf(value, 'service');
  const read = circumstanceNames.map((name) => {
    const choices = ['unknown', ...circumstances[name]];
    return [name, choiceOf(service[name] ?? 'unknown', choices, joined('service', name))] as const;
  });
  return Object.fromEntries(read) as Service;
}

function parseSize(value: unknown): JobSheet['size'] {
  const size = fieldsOf(value, 'size');
  const as = choiceOf(size['as'], ['leg', 'throat'], 'size.as');
  const first = parseSizeLength(size['first'], 'size.first');
  const second = size['second'] === null ? null : parseSizeLength(size['second'], 'size.second');
  // a throat says nothing about which leg is the longer
  if (as === 'throat' && second !== null) {
    throw new LimitsError('size.second', { key: 'limits_data_two_throats' });
  }
  return { as, first, second };
}

/** A fillet of no size is no fillet. */
export function parseSizeLength(value: unknown, path: string): SheetLength {
  const length = parseLength(value, path);
  if (enteredToMm(length) <= 0) throw new LimitsError(path, { key: 'limits_data_no_size' });
  return length;
}

/** Plates that lie on each other, or in line, carry no fillet. */
function parseDihedralAngle(value: unknown): number {
  const angle = numberOf(value, 'dihedralAngle', 0, largestAngle);
  if (angle === 0 || angle === largestAngle) {
    throw new LimitsError('dihedralAngle', { key: 'limits_data_no_corner' });
  }
  return angle;
}

function parseGroove(value: unknown): JobSheet['groove'] {
  const groove = fieldsOf(value, 'groove');
  const angle = (of: unknown, path: string): number => numberOf(of, path, 0, largestAngle);
  return {
    bevelAngle: parseToleranced(groove['bevelAngle'], 'groove.bevelAngle', angle),
    grooveAngle: parseToleranced(groove['grooveAngle'], 'groove.grooveAngle', angle),
    rootOpening: parseToleranced(groove['rootOpening'], 'groove.rootOpening', parseLength),
    rootFace: parseToleranced(groove['rootFace'], 'groove.rootFace', parseLength),
  };
}

function parseToleranced<T>(
  value: unknown,
  path: string,
  read: (value: unknown, path: string) => T,
): Toleranced<T> {
  const { nominal, minus, plus, drawn, detailed } = fieldsOf(value, path);
  return {
    nominal: nominal === null ? null : read(nominal, joined(path, 'nominal')),
    minus: read(minus, joined(path, 'minus')),
    plus: read(plus, joined(path, 'plus')),
    ...(drawn == null ? {} : { drawn: read(drawn, joined(path, 'drawn')) }),
    ...(detailed == null
      ? {}
      : { detailed: parseTolerance(detailed, joined(path, 'detailed'), read) }),
  };
}

function parseTolerance<T>(
  value: unknown,
  path: string,
  read: (value: unknown, path: string) => T,
): { readonly minus: T; readonly plus: T } {
  const { minus, plus } = fieldsOf(value, path);
  return { minus: read(minus, joined(path, 'minus')), plus: read(plus, joined(path, 'plus')) };
}

export function parseLength(value: unknown, path: string): SheetLength {
  const fields = fieldsOf(value, path);
  const unit = choiceOf(fields['unit'], ['mm', 'in', 'in64'], joined(path, 'unit'));
  const length = numberOf(fields['value'], joined(path, 'value'), 0, longest[unit]);
  if (unit === 'in64' && !Number.isInteger(length)) {
    throw new LimitsError(joined(path, 'value'), { key: 'limits_data_no_whole_64ths' });
  }
  return { unit, value: length };
}
