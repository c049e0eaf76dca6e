/** A figure with the ends of its interval, 95 per cent unless said otherwise. */
export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** How many standard errors the 95 per cent interval of a normal estimate reaches to either side. */
const Z95 = 1.959963984540054;

/** An estimate of known standard error with its 95 per cent interval. */
export const estimate = (value: number, standardError: number): Estimate => ({
  value,
  low: value - Z95 * standardError,
  high: value + Z95 * standardError,
});
