import { normalShare } from '../../limits/index.ts';
import { normalQuantile } from './normal-quantile.ts';

/**
 * An eye at one limit, on the scale of its distances. Bias: where it rejects half, above 0 past the
 * limit (lenient), below 0 inside it (strict). Scatter: standard deviation of its noise, above 0.
 * Lapse: share of the calls on either side that are made blindly, 0 to 0.5.
 */
export interface Curve {
  readonly bias: number;
  readonly scatter: number;
  readonly lapse: number;
}

/** A call as a curve takes it: the distance past the limit, positive on the reject side. */
export interface PlacedCall {
  readonly distance: number;
  readonly rejected: boolean;
}

/** P(reject) = λ + (1 − 2λ) Φ((u − b) / σ): the chance that an eye rejects at a distance, 0 to 1. */
export const chanceOfReject = (distance: number, { bias, scatter, lapse }: Curve): number =>
  lapse + (1 - 2 * lapse) * normalShare((distance - bias) / scatter);

/** The distance at which an eye rejects with this chance; infinite where lapses forbid it. */
export const distanceOfReject = (chance: number, { bias, scatter, lapse }: Curve): number => {
  const share = (chance - lapse) / (1 - 2 * lapse);
  return bias + scatter * normalQuantile(Math.min(1, Math.max(0, share)));
};

/**
 * Whether one distance parts all that was accepted from all that was rejected. Then no finite slope
 * is the likeliest: the eye is sharper than the spacing shown.
 */
export function isParted(calls: readonly PlacedCall[]): boolean {
  const distances = (rejected: boolean): readonly number[] =>
    calls.filter((call) => call.rejected === rejected).map(({ distance }) => distance);
  return Math.max(...distances(false)) <= Math.min(...distances(true));
}
