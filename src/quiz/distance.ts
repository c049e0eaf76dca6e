import type { Check } from '../limits/index.ts';
import type { EyeScale } from './question.ts';

/** Limits of less than this are none, mm: there is no ratio to them. */
const NO_LENGTH = 1e-9;

/** The sides of a check that a distance is made of. */
export type Compared = Pick<Check, 'sense' | 'unit'> & {
  readonly limit: number;
  readonly measured: number;
};

/** Whether a check has a limit and a value to compare with it. */
export const isCompared = (check: Check): check is Check & Compared =>
  check.limit !== null && check.measured !== null && check.call !== 'notAssessed';

/**
 * How near this limit is taken: as the logarithm of the ratio for a length, in degrees for an angle,
 * in mm where nothing is permitted.
 */
export function scaleOf({ unit, limit }: Pick<Compared, 'unit' | 'limit'>): EyeScale {
  if (unit === 'deg') return 'deg';
  return limit <= NO_LENGTH ? 'mm' : 'ratio';
}

/** Past the limit by so much, mm or degrees, positive on the reject side whatever the sense. */
export const exceedanceOf = ({ sense, limit, measured }: Compared): number =>
  sense === 'max' ? measured - limit : limit - measured;

/**
 * The same on the eye's scale: ln(x/L) past a greatest, ln(L/x) past a least limit of a length,
 * degrees for an angle, mm where nothing is permitted; minus infinity for none of what has a limit.
 */
export function distanceOf(check: Compared): number {
  if (scaleOf(check) !== 'ratio') return exceedanceOf(check);
  const ratio = Math.log(Math.max(0, check.measured) / check.limit);
  return check.sense === 'max' ? ratio : -ratio;
}

/** The value that stands at a distance past a limit, mm or degrees; never a length below none. */
export function valueAt(
  distance: number,
  { sense, unit, limit }: Pick<Compared, 'sense' | 'unit' | 'limit'>,
): number {
  const away = sense === 'max' ? distance : -distance;
  const scale = scaleOf({ unit, limit });
  if (scale === 'ratio') return limit * Math.exp(away);
  const value = limit + away;
  return unit === 'mm' ? Math.max(0, value) : value;
}
