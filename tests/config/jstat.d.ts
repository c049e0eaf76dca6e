/** The part of the statistics library that tests compare with; it ships no types of its own. */
declare module 'jstat' {
  export const jStat: {
    readonly normal: { cdf: (x: number, mean: number, deviation: number) => number };
  };
}
