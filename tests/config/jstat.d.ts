/** The part of the statistics library that tests compare with; it ships no types of its own. */
declare module 'jstat' {
  export const jStat: {
    readonly normal: {
      cdf: (x: number, mean: number, deviation: number) => number;
      inv: (share: number, mean: number, deviation: number) => number;
    };
    readonly beta: {
      cdf: (x: number, a: number, b: number) => number;
      inv: (share: number, a: number, b: number) => number;
    };
    readonly binomial: { cdf: (k: number, n: number, p: number) => number };
    readonly gammaln: (x: number) => number;
  };
}
