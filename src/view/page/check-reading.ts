import type { Check } from '../../limits/index.ts';
import { formatFixed, roundHalfAway } from '../../units/index.ts';
import { isTrue, length, text, type Reading } from '../text.ts';

/** A check's numbers as its row shows them. */
export interface CheckReading {
  /** 7.0 min, 0.50 max; says so when an input is missing */
  readonly required: string;
  /** 6.0 short: what is allowed over a short length, where that is not what is required of the whole */
  readonly short?: string;
  readonly measured: string;
}

/** What of a check its row reads. */
export type ReadCheck = Pick<Check, 'limit' | 'ordinary' | 'measured' | 'unit' | 'sense' | 'call'>;

/**
 * The limit as its document prints it where that is the reader's unit, else converted; the
 * measurement with as many decimals, or as many as the drawing beside it gives. A reject whose two
 * figures would be one carries more.
 */
export function checkReading(check: ReadCheck, reading: Reading): CheckReading {
  const { limit, measured, unit } = check;
  const telling = tellingReading(check, reading);
  const say = (key: string, values: Readonly<Record<string, string>> = {}): string =>
    text({ key, values }, reading);
  const decimals = decimalsOf(check);
  const figure = (value: number): string =>
    telling === reading
      ? shown(value, decimals, unit, reading)
      : shorter(shown(value, decimals, unit, reading), shown(value, decimals, unit, telling));
  const most = check.sense === 'max' ? 'bench_most' : 'bench_least';
  return {
    required:
      limit === null ? say('bench_not_set') : say(most, { limit: figure(check.ordinary ?? limit) }),
    ...(limit === null || check.ordinary === undefined
      ? {}
      : { short: say('bench_short', { limit: figure(limit) }) }),
    measured:
      measured === null
        ? say('bench_not_measured')
        : shown(measured, decimalsBeside(measured, check), unit, telling),
  };
}

/** What is required of the whole length, and what of a short one where that is another: 4.95 min, 4.15 short. */
export const requiredInFull = ({ required, short }: CheckReading): string =>
  short === undefined ? required : `${required}, ${short}`;

/** Decimals past which a difference is none. */
const MOST_DECIMALS = 6;

/**
 * The reader's own way to read a check, unless its limit is no fraction of an inch, or a reject would
 * then show one figure twice: then with decimals in place of a fraction, and as many as tell the two apart.
 */
export function tellingReading(check: ReadCheck, asked: Reading): Reading {
  const { limit, measured, call, unit } = check;
  if (limit === null) return asked;
  const start = decimalsOf(check);
  const limits = [limit, check.ordinary ?? limit];
  const isTold = unit !== 'mm' || limits.every((one) => isTrue(one, asked));
  const reading = isTold ? asked : { ...asked, decimals: asked.decimals ?? start };
  if (measured === null || call !== 'reject') return reading;
  const same = (way: Reading): boolean =>
    limits.some(
      (one) =>
        shown(one, start, unit, way) ===
        shown(measured, decimalsBeside(measured, check), unit, way),
    );
  let telling = reading;
  for (let decimals = start; decimals <= MOST_DECIMALS && same(telling); decimals += 1) {
    telling = { ...reading, decimals };
  }
  return telling;
}

/** The shorter of two figures while the longer adds nothing but noughts: 7.0 for 7.000. */
const shorter = (short: string, long: string): string =>
  long.startsWith(short) && !/[1-9]/.test(long.slice(short.length)) ? short : long;

/** Whole degrees; a tenth of a millimetre where that is exact and neither limit is a small one. */
function decimalsOf({ limit, ordinary, unit }: ReadCheck): number {
  if (limit === null) return 1;
  const limits = ordinary === undefined ? [limit] : [limit, ordinary];
  const isWhole = (places: number): boolean =>
    limits.every((one) => Math.abs(roundHalfAway(one, places) - one) < 1e-9);
  if (unit === 'deg') return isWhole(0) ? 0 : 1;
  return Math.min(...limits) >= 1 && isWhole(1) ? 1 : 2;
}

/** Decimals of a measurement beside its limit: no fewer than the drawing gives the same figure. */
function decimalsBeside(measured: number, check: ReadCheck): number {
  const finest = check.unit === 'deg' ? 1 : 2;
  const isFiner = !formatFixed(measured, finest).endsWith('0');
  return Math.max(isFiner ? finest : finest - 1, decimalsOf(check));
}

function shown(value: number, decimals: number, unit: 'mm' | 'deg', reading: Reading): string {
  return unit === 'deg'
    ? `${formatFixed(value, reading.decimals ?? decimals)}°`
    : length(value, reading, { decimals });
}
