/** What a list of drawn values has to come to: the ranges that it fills, the shares that it has. */
import { expect } from 'vitest';

export const spread = (values: readonly number[]) =>
  ({ least: Math.min(...values), most: Math.max(...values) }) as const;
/** Values fill a range: never outside it, and some within a twentieth of either end. */
export function expectToFill(values: readonly number[], low: number, high: number): void {
  const { least, most } = spread(values);
  const near = (high - low) / 20;
  expect(least).toBeGreaterThanOrEqual(low - 1e-9);
  expect(least).toBeLessThanOrEqual(low + near);
  expect(most).toBeLessThanOrEqual(high + 1e-9);
  expect(most).toBeGreaterThanOrEqual(high - near);
}
/** So large a share of the list, three standard errors and a hundredth to spare. */
export function expectShare<Item>(
  list: readonly Item[],
  is: (one: Item) => boolean,
  share: number,
): void {
  const found = list.filter(is).length / list.length;
  const spare = 3 * Math.sqrt((share * (1 - share)) / list.length) + 0.01;
  expect(Math.abs(found - share)).toBeLessThan(spare);
}
