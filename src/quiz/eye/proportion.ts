import type { Estimate } from './estimate.ts';
import { betaShare } from './incomplete-beta.ts';
import { normalQuantile } from './normal-quantile.ts';

const HALVINGS = 60;

/**
 * A share of a count with its Wilson limits, 0 to 1; without a count nothing is known: 0 to 1 about
 * a half. E. B. Wilson 1927; without continuity correction, as R's `prop.test(correct=FALSE)`.
 */
export function wilson(found: number, of: number, confidence = 0.95): Estimate {
  if (of === 0) return { value: 0.5, low: 0, high: 1 };
  const z = normalQuantile((1 + confidence) / 2);
  const share = found / of;
  const middle = share + (z * z) / (2 * of);
  const away = z * Math.sqrt((share * (1 - share)) / of + (z * z) / (4 * of * of));
  const all = 1 + (z * z) / of;
  return {
    value: share,
    low: found === 0 ? 0 : (middle - away) / all,
    high: found === of ? 1 : (middle + away) / all,
  };
}

/**
 * A share of a count with its exact limits, 0 to 1: what a count must be held to that is said to
 * demonstrate something. One end of it alone: `confidence` twice that end's less 1.
 * C. J. Clopper and E. S. Pearson, Biometrika 26, 1934.
 */
export function clopperPearson(found: number, of: number, confidence = 0.95): Estimate {
  if (of === 0) return { value: 0.5, low: 0, high: 1 };
  const tail = (1 - confidence) / 2;
  return {
    value: found / of,
    low: found === 0 ? 0 : shareWhere((p) => chanceOfAtLeast(found, of, p) > tail),
    high: found === of ? 1 : shareWhere((p) => chanceOfAtLeast(found + 1, of, p) > 1 - tail),
  };
}

/** Chance of `found` or more in `of` tries of chance p each: the upper tail of the binomial. */
export const chanceOfAtLeast = (found: number, of: number, p: number): number => {
  if (found <= 0) return 1;
  return found > of ? 0 : betaShare(p, found, of - found + 1);
};

/** Where a condition on a share, met above some point only, begins to be met. */
function shareWhere(isMet: (share: number) => boolean): number {
  let [low, high] = [0, 1];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (isMet(middle)) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}
