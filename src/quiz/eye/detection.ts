import { normalDensity, normalShare } from '../../limits/index.ts';
import { estimate, type Estimate } from './estimate.ts';
import { normalQuantile } from './normal-quantile.ts';

/** Share of the sections to reject that were rejected, and of the good ones that were rejected too. */
export interface Rates {
  readonly hits: number;
  readonly falseAlarms: number;
}

/** Counts of calls: on `bad` sections to reject and `good` ones to accept. */
export interface DetectionCounts {
  readonly hits: number;
  readonly bad: number;
  readonly falseAlarms: number;
  readonly good: number;
}

/**
 * Rates by the log-linear correction: half a call more rejected, one more made, on both sides and
 * always, so that a figure doesn't jump with the first miss. M. J. Hautus 1995.
 */
export const correctedRates = ({ hits, bad, falseAlarms, good }: DetectionCounts): Rates => ({
  hits: (hits + 0.5) / (bad + 1),
  falseAlarms: (falseAlarms + 0.5) / (good + 1),
});

/** d′ = z(H) − z(F), how well good and bad are told apart; 0 is chance. Stanislaw and Todorov 1999. */
export const dPrime = ({ hits, falseAlarms }: Rates): number =>
  normalQuantile(hits) - normalQuantile(falseAlarms);

/** c = −(z(H) + z(F)) / 2: above 0 reluctant to reject, below 0 ready to. Stanislaw and Todorov 1999. */
export const criterion = ({ hits, falseAlarms }: Rates): number =>
  -(normalQuantile(hits) + normalQuantile(falseAlarms)) / 2;

/** ln β = d′ c, the logarithm of the likelihood ratio at the criterion. Stanislaw and Todorov 1999. */
export const logBeta = (rates: Rates): number => dPrime(rates) * criterion(rates);

/** Az = Φ(d′/√2), the area under the curve of hits over false alarms that a d′ implies. */
export const areaOf = (d: number): number => normalShare(d / Math.SQRT2);

/** A′, the same area without a normal distribution, 0 to 1. Snodgrass and Corwin 1988. */
export function areaOfRates({ hits: h, falseAlarms: f }: Rates): number {
  if (h === f) return 0.5;
  const apart = Math.abs(h - f);
  return 0.5 + (Math.sign(h - f) * (apart * apart + apart)) / (4 * Math.max(h, f) - 4 * h * f);
}

/** B″, reluctance to reject without a normal distribution, −1 to 1. J. B. Grier 1971. */
export function grierBias({ hits: h, falseAlarms: f }: Rates): number {
  const [hit, alarm] = [h * (1 - h), f * (1 - f)];
  return hit + alarm === 0 ? 0 : (Math.sign(h - f) * (hit - alarm)) / (hit + alarm);
}

/** Standard error of d′ at these rates and counts. V. Gourevitch and E. Galanter 1967. */
export function standardErrorOfDPrime(
  { hits, falseAlarms }: Rates,
  { bad, good }: Pick<DetectionCounts, 'bad' | 'good'>,
): number {
  const variance = (rate: number, of: number): number =>
    (rate * (1 - rate)) / (of * normalDensity(normalQuantile(rate)) ** 2);
  return Math.sqrt(variance(hits, bad) + variance(falseAlarms, good));
}

/** d′ and c with their 95 per cent intervals, log-linear correction; the error of c is half that of d′. */
export function detectionOf(counts: DetectionCounts): {
  readonly dPrime: Estimate;
  readonly criterion: Estimate;
} {
  const rates = correctedRates(counts);
  const error = standardErrorOfDPrime(rates, counts);
  return {
    dPrime: estimate(dPrime(rates), error),
    criterion: estimate(criterion(rates), error / 2),
  };
}
