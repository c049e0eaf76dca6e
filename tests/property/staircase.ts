/** What a staircase showed and turned at. */
export interface Staircase {
  readonly shown: readonly number[];
  readonly next: number;
  /** the levels at which it turned */
  readonly reversals: readonly number[];
}

/**
 * The transformed up-down staircase (Levitt 1971), a yardstick for QUEST+: a step down after so many
 * yeses in a row, a step up after each no.
 */
export function staircase(
  { start, step, downAfter, count }: Record<'start' | 'step' | 'downAfter' | 'count', number>,
  isYes: (level: number, index: number) => boolean,
): Staircase {
  const shown: number[] = [];
  const reversals: number[] = [];
  let [level, row, heading] = [start, 0, 0];
  for (let i = 0; i < count; i++) {
    shown.push(level);
    const yes = isYes(level, i);
    row = yes ? row + 1 : 0;
    const move = yes ? (row === downAfter ? -1 : 0) : 1;
    if (move === 0) continue;
    if (heading !== 0 && move !== heading) reversals.push(level);
    [heading, row] = [move, 0];
    // Whole steps from the start, so that the same level is the same number.
    level = start + step * Math.round((level - start) / step + move);
  }
  return { shown, next: level, reversals };
}
