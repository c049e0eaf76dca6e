/**
 * One setting scales every property and simulation count: RUNS is the share of
 * the full count, a tenth unless said otherwise, 1 for the full proof.
 */
const scale = Number(process.env['RUNS'] ?? '0.1');

/** How many of `full` runs to do at the present scale; never none. */
export function runs(full: number): number {
  return Math.max(1, Math.round(full * scale));
}
