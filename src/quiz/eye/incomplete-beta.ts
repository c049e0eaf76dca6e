const MOST_TERMS = 500;
const LEAST = 1e-300;
const NEAR = 1e-15;

/**
 * Regularised incomplete beta function I_x(a, b): the share of the beta distribution below x, 0 to 1,
 * a and b above 0. Continued fraction by Lentz's method (NIST Digital Library of Mathematical
 * Functions, 8.17.22), on the side of the mean where it closes in fast.
 */
export function betaShare(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - betaShare(1 - x, b, a);
  const front = Math.exp(
    logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x),
  );
  return (front / a) * fraction(x, a, b);
}

function fraction(x: number, a: number, b: number): number {
  let above = 1;
  let below = 1 / safe(1 - ((a + b) * x) / (a + 1));
  let value = below;
  const take = (term: number): number => {
    below = 1 / safe(1 + term * below);
    above = safe(1 + term / above);
    return above * below;
  };
  for (let m = 1; m <= MOST_TERMS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    value *= take(even);
    const last = take(odd);
    value *= last;
    if (Math.abs(last - 1) < NEAR) break;
  }
  return value;
}

const safe = (number: number): number => (Math.abs(number) < LEAST ? LEAST : number);

/** Stirling's series from here on is good to the last place. */
const FAR = 15;

/** Natural logarithm of the gamma function, for numbers above 0: Stirling's series (DLMF 5.11.1). */
export function logGamma(x: number): number {
  let product = 1;
  let at = x;
  for (; at < FAR; at++) product *= at;
  const s = 1 / (at * at);
  const series = (1 / 12 - s * (1 / 360 - s * (1 / 1260 - s * (1 / 1680 - s / 1188)))) / at;
  return (at - 0.5) * Math.log(at) - at + 0.5 * Math.log(2 * Math.PI) + series - Math.log(product);
}
