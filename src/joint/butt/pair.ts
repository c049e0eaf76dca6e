/** One of each for plate 1 and plate 2. */
export type Pair<T> = readonly [T, T];

/** The same made for plate 1 and for plate 2; `i` counts from 0. */
export function both<T>(make: (i: 0 | 1) => T): Pair<T> {
  return [make(0), make(1)];
}
