/** What a session takes from outside: time, names, chance. */
export interface World {
  readonly now: () => Date;
  /** ms, for how long an answer took */
  readonly clock: () => number;
  readonly name: () => string;
  /** a whole number from 0 to 2^32 - 1 */
  readonly seed: () => number;
}

export const browserWorld: World = {
  now: () => new Date(),
  clock: () => performance.now(),
  name: () => crypto.randomUUID(),
  seed: () => crypto.getRandomValues(new Uint32Array(1))[0] ?? 0,
};
