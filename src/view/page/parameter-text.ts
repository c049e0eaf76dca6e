import type { ParameterRange } from '../../joint/index.ts';
import {
  formatFixed,
  parseAngle,
  parseLength,
  roundHalfAway,
  type Message,
} from '../../units/index.ts';
import type { ScaleUnit } from '../control/scale-ticks.ts';
import { length, text, type Reading } from '../text.ts';
import type { Allowed } from '../../state/parameter-limits.ts';

/** Decimals that show every model step, and one more when the value lies between two. */
function decimalsOf(value: number, step: number): number {
  const places = step >= 0.1 ? 1 : 2;
  return roundHalfAway(value, places) === roundHalfAway(value, 2) ? places : 2;
}

/** A parameter's value as its field shows it: no unit where it is the sheet's. */
export function parameterText(
  value: number,
  range: Pick<ParameterRange, 'unit' | 'step'>,
  reading: Reading,
): string {
  const decimals = decimalsOf(value, range.step);
  if (range.unit === 'deg') return `${formatFixed(value, decimals)}°`;
  if (range.unit === 'ratio') return formatFixed(value, 2);
  return length(value, reading, { decimals });
}

/** What the sheet asks of a parameter: 7.0 min; nothing where it asks nothing. */
export function boundsText(
  [least, most]: Allowed,
  range: Pick<ParameterRange, 'unit' | 'step'>,
  reading: Reading,
): string {
  const say = (key: string, limit: number | null): readonly string[] =>
    limit === null
      ? []
      : [text({ key, values: { limit: parameterText(limit, range, reading) } }, reading)];
  return [...say('bench_least', least), ...say('bench_most', most)].join(', ');
}

/** The number in a typed text, in mm, degrees or as a share; or what is wrong with it. */
export function parseParameter(
  typed: string,
  range: Pick<ParameterRange, 'unit'>,
  reading: Reading,
): { readonly value: number } | { readonly problem: Message } {
  if (range.unit === 'mm') {
    const read = parseLength(typed, reading.units);
    return read.ok ? { value: read.mm } : { problem: read.message };
  }
  const read = parseAngle(typed);
  return read.ok ? { value: read.deg } : { problem: read.message };
}

/** How a parameter's scale is divided. */
export function scaleUnit(range: Pick<ParameterRange, 'unit'>, reading: Reading): ScaleUnit {
  if (range.unit !== 'mm' || reading.units === 'mm') return range.unit;
  return reading.inches === 'fraction' ? 'in64' : 'in';
}
