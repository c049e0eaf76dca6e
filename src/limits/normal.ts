/** Terms past this change nothing that a double can hold, for any argument of the series. */
const mostTerms = 200;
/** Beyond this many standard deviations the series loses its last places and the fraction is short. */
const farOut = 4;

/** Density of the standard normal distribution at z. */
export const normalDensity = (z: number): number => Math.exp(-(z * z) / 2) / Math.sqrt(2 * Math.PI);

/**
 * Share of the standard normal distribution below z, 0 to 1.
 * Near the middle by the series 1/2 + φ(z) (z + z³/3 + z⁵/(3·5) + …), Marsaglia,
 * "Evaluating the Normal Distribution", Journal of Statistical Software 11(4), 2004;
 * in the tails by Laplace's continued fraction, φ(z) / (z + 1/(z + 2/(z + …))).
 */
export function normalShare(z: number): number {
  if (Number.isNaN(z)) return z;
  if (z > farOut) return 1 - upperTail(z);
  if (z < -farOut) return upperTail(-z);
  let term = z;
  let sum = z;
  for (let odd = 3; odd < 2 * mostTerms; odd += 2) {
    term *= (z * z) / odd;
    const next = sum + term;
    if (next === sum) break;
    sum = next;
  }
  return 1 / 2 + sum * normalDensity(z);
}

/** Share beyond a far z, worked from the deep end of the fraction. */
function upperTail(z: number): number {
  if (z === Infinity) return 0;
  let deep = z;
  for (let n = mostTerms; n > 0; n--) deep = z + n / deep;
  return normalDensity(z) / deep;
}
