/**
 * The value below which the given share of the sample lies, by the nearest rank.
 * @type {(sample: readonly number[], share: number) => number}
 */
export const percentile = (sample, share) => {
  const sorted = [...sample].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)];
};

/**
 * The middle of the sample; of an even count, the mean of the two in the middle.
 * @type {(sample: readonly number[]) => number}
 */
export const median = (sample) => {
  const sorted = [...sample].sort((a, b) => a - b);
  const half = sorted.length / 2;
  return sorted.length % 2 === 1 ? sorted[Math.floor(half)] : (sorted[half - 1] + sorted[half]) / 2;
};
