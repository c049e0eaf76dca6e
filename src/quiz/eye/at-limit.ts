import type { EyeScale } from '../question.ts';
import { scaleOf, type Compared } from '../distance.ts';
import type { Estimate } from './estimate.ts';

/** A figure of an eye at one limit: mm or degrees, and per cent of the limit where it is one of length. */
export interface AtLimit {
  readonly unit: Compared['unit'];
  readonly amount: Estimate;
  readonly percent: Estimate | null;
}

/**
 * A bias put to a limit: how far past the limit half is rejected, mm or degrees and per cent of the
 * limit. Above 0 is lenient whatever the sense: accepted beyond a greatest, or short of a least limit.
 * L (e^b − 1) past a greatest, L (1 − e^−b) short of a least limit of a length. Null where the limit
 * is on another scale than the eye.
 */
export const biasAtLimit = (
  bias: Estimate,
  scale: EyeScale,
  limit: Pick<Compared, 'sense' | 'unit' | 'limit'>,
): AtLimit | null =>
  atLimit(bias, scale, limit, (b) => (limit.sense === 'max' ? Math.expm1(b) : -Math.expm1(-b)));

/**
 * A scatter put to a limit: half the stretch about the limit from one scatter inside to one past it,
 * L sinh σ for a length; mm or degrees and per cent of the limit. Null as for the bias.
 */
export const scatterAtLimit = (
  scatter: Estimate,
  scale: EyeScale,
  limit: Pick<Compared, 'unit' | 'limit'>,
): AtLimit | null => atLimit(scatter, scale, limit, Math.sinh);

function atLimit(
  figure: Estimate,
  scale: EyeScale,
  { unit, limit }: Pick<Compared, 'unit' | 'limit'>,
  share: (logarithm: number) => number,
): AtLimit | null {
  if (scaleOf({ unit, limit }) !== scale) return null;
  if (scale !== 'ratio') return { unit, amount: figure, percent: null };
  return {
    unit,
    amount: times(figure, (one) => share(one) * limit),
    percent: times(figure, (one) => share(one) * 100),
  };
}

const times = ({ value, low, high }: Estimate, of: (number: number) => number): Estimate => ({
  value: of(value),
  low: of(low),
  high: of(high),
});
