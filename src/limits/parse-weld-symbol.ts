import type { SheetLength } from './job-sheet.ts';
import { LimitsError } from './limits-error.ts';
import { parseLength, parseSizeLength } from './parse-job-sheet.ts';
import { contours } from './parse-symbol-marks.ts';
import { choiceOf, fieldsOf, flagOf, joined, numberOf, textOf } from './read-value.ts';
import type {
  ElementKind,
  SymbolElement,
  SymbolSize,
  SymbolSystem,
  WeldSymbol,
} from './weld-symbol.ts';

const kinds = ['fillet', 'square', 'V', 'bevel', 'U', 'J', 'backRun', 'strip'] as const;
/** Marks that a groove's depth and root opening may stand at. */
const grooves: readonly ElementKind[] = ['square', 'V', 'bevel', 'U', 'J'];
const straightAngle = 180;

/**
 * A welding symbol from outside, taken whole or refused with a LimitsError that
 * names the field and the reason. Refuses what the system can't say: an ISO
 * fillet size without its z or a, an AWS one with it, a dimension at a mark that
 * has no place for it.
 */
export function parseWeldSymbol(value: unknown): WeldSymbol {
  const symbol = fieldsOf(value, 'weldSymbol');
  const system = choiceOf(symbol['system'], ['AWS', 'ISO'], 'system');
  const plate = symbol['preparedPlate'];
  const arrowSide = parseElement(symbol['arrowSide'], 'arrowSide', system);
  const otherSide = parseElement(symbol['otherSide'], 'otherSide', system);
  if (arrowSide === null && otherSide === null) {
    throw new LimitsError('arrowSide', { key: 'symbol_data_no_element' });
  }
  if (plate !== null && plate !== 1 && plate !== 2) {
    throw new LimitsError('preparedPlate', {
      key: 'limits_data_no_choice',
      values: { choices: '1, 2' },
    });
  }
  return {
    system,
    arrowSide,
    otherSide,
    preparedPlate: plate,
    allRound: flagOf(symbol['allRound'], 'allRound'),
    field: flagOf(symbol['field'], 'field'),
    tail: textOf(symbol['tail'], 'tail'),
  };
}

function parseElement(value: unknown, path: string, system: SymbolSystem): SymbolElement | null {
  if (value === null) return null;
  const element = fieldsOf(value, path);
  const kind = choiceOf(element['kind'], kinds, joined(path, 'kind'));
  const place = (field: string): string => joined(path, field);
  const only = (field: string, allowed: boolean): unknown => {
    const written = element[field];
    if (written !== null && !allowed) {
      throw new LimitsError(place(field), { key: 'symbol_data_not_at_mark' });
    }
    return written;
  };
  const isGroove = grooves.includes(kind);
  const size = only('size', kind === 'fillet');
  const depth = only('depth', isGroove && kind !== 'square');
  const angle = only('grooveAngle', isGroove && kind !== 'square');
  const opening = only('rootOpening', isGroove);
  return {
    kind,
    size: kind === 'fillet' ? parseSize(size, place('size'), system) : null,
    depth: depth === null ? null : parseSizeLength(depth, place('depth')),
    grooveAngle: angle === null ? null : parseAngle(angle, place('grooveAngle')),
    rootOpening: opening === null ? null : parseLength(opening, place('rootOpening')),
    contour: choiceOf(element['contour'], contours, place('contour')),
  };
}

function parseSize(value: unknown, path: string, system: SymbolSystem): SymbolSize {
  const size = fieldsOf(value, path);
  const prefix = choiceOf(size['prefix'], ['', 'z', 'a'], joined(path, 'prefix'));
  if (system === 'ISO' && prefix === '') {
    throw new LimitsError(joined(path, 'prefix'), { key: 'symbol_data_prefix_missing' });
  }
  if (system === 'AWS' && prefix !== '') {
    throw new LimitsError(joined(path, 'prefix'), { key: 'symbol_data_prefix_not_aws' });
  }
  const second: SheetLength | null =
    size['second'] === null ? null : parseSizeLength(size['second'], joined(path, 'second'));
  // a throat says nothing about which leg is the longer
  if (prefix === 'a' && second !== null) {
    throw new LimitsError(joined(path, 'second'), { key: 'limits_data_two_throats' });
  }
  return { prefix, first: parseSizeLength(size['first'], joined(path, 'first')), second };
}

/** A groove without an angle is a square one, and one of a straight angle none. */
function parseAngle(value: unknown, path: string): number {
  const angle = numberOf(value, path, 0, straightAngle);
  if (angle === 0 || angle === straightAngle) {
    throw new LimitsError(path, { key: 'symbol_data_no_angle' });
  }
  return angle;
}
