import type { Check } from '../../limits/index.ts';
import { formatFixed, roundHalfAway } from '../../units/index.ts';
import { length, text, type Reading } from '../text.ts';

/** A check's numbers as its row shows them. */
export interface CheckReading {
  /** 7.0 min, 0.50 max; says so when an input is missing */
  readonly required: string;
  readonly measured: string;
}

/**
 * The limit as its document prints it where that is the reader's unit, else converted; the
 * measurement with as many decimals, and more where rounding would make it look on the wrong side.
 */
export function checkReading(check: Check, reading: Reading): CheckReading {
  const decimals = check.limit === null ? 1 : decimalsOf(check.limit, check.unit);
  const show = (value: number, places: number): string => shown(value, places, check.unit, reading);
  const { limit, measured } = check;
  const say = (key: string, values: Readonly<Record<string, string>> = {}): string =>
    text({ key, values }, reading);
  return {
    required:
      limit === null
        ? say('bench_not_set')
        : say(check.sense === 'max' ? 'bench_most' : 'bench_least', {
            limit: show(limit, decimals),
          }),
    measured:
      measured === null
        ? say('bench_not_measured')
        : show(measured, tellingDecimals(check, decimals)),
  };
}

/** Whole degrees; a tenth of a millimetre where that is exact and the limit is not a small one. */
function decimalsOf(limit: number, unit: 'mm' | 'deg'): number {
  const isWhole = (places: number): boolean =>
    Math.abs(roundHalfAway(limit, places) - limit) < 1e-9;
  if (unit === 'deg') return isWhole(0) ? 0 : 1;
  return limit >= 1 && isWhole(1) ? 1 : 2;
}

/** More decimals, three at most, until the rounded measurement lies on its true side of the limit. */
function tellingDecimals(check: Check, decimals: number): number {
  const { limit, measured, call } = check;
  if (limit === null || measured === null || call !== 'reject') return decimals;
  let places = decimals;
  while (places < 3 && roundHalfAway(measured, places) === roundHalfAway(limit, places))
    places += 1;
  return places;
}

function shown(value: number, decimals: number, unit: 'mm' | 'deg', reading: Reading): string {
  return unit === 'deg' ? `${formatFixed(value, decimals)}°` : length(value, reading, { decimals });
}
