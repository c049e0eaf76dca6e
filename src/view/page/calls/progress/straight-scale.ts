import { range, tickStep } from 'd3';

/**
 * Maps one stretch on another in proportion. Written out: the library's own scale brings the
 * interpolation of colours with it.
 */
export const straightScale =
  ([low, high]: readonly [number, number], [start, end]: readonly [number, number]) =>
  (value: number): number =>
    start + ((value - low) / (high - low)) * (end - start);

/** About so many round figures from the one end to the other, both within. */
export function roundFigures(low: number, high: number, count: number): readonly number[] {
  const step = tickStep(low, high, count);
  // whole steps, so that nought is nought
  return range(Math.ceil(low / step), Math.floor(high / step) + 1).map(
    (steps) => Math.round(steps * step * 1e9) / 1e9,
  );
}
