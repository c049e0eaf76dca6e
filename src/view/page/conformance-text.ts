import { text, type Reading } from '../text.ts';

/** A probability as a whole percent; at the ends it says more or less than, for nothing measured is certain. */
export function conformanceText(probability: number, reading: Reading): string {
  const percent = Math.round(probability * 100);
  if (percent >= 100) return text({ key: 'bench_working_over_99' }, reading);
  if (percent <= 0) return text({ key: 'bench_working_under_1' }, reading);
  return `${percent} %`;
}
