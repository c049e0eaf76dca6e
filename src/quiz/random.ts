import { randomUniform } from 'd3-random';

/** A stream of chance that follows from its seed alone. `unit` serves d3-random as `.source`. */
export interface Random {
  /** the next whole number from 0 to 2^32 - 1 */
  readonly word: () => number;
  /** the next number from 0 up to, never on, 1: 53 bits of two words */
  readonly unit: () => number;
}

const WORDS = 2 ** 32;
const WARM_UP = 15;

/**
 * The generator sfc32 (Chris Doty-Humphrey, PractRand): three words of state and a counter, mixed 15
 * times before the first word is given out. Whole numbers from 0 to 2^32 - 1.
 */
export function sfc32(a: number, b: number, c: number, counter = 1): Random {
  let [x, y, z, n] = [a | 0, b | 0, c | 0, counter | 0];
  const word = (): number => {
    const out = (x + y + n) | 0;
    n = (n + 1) | 0;
    x = y ^ (y >>> 9);
    y = (z + (z << 3)) | 0;
    z = (((z << 21) | (z >>> 11)) + out) | 0;
    return out >>> 0;
  };
  for (let i = 0; i < WARM_UP; i++) word();
  const unit = (): number => ((word() >>> 5) * 2 ** 26 + (word() >>> 6)) / 2 ** 53;
  return { word, unit };
}

/** The stream of a seed, a whole number from 0 to 2^32 - 1. */
export const random = (seed: number): Random => sfc32(0, seed, 0);

/**
 * A whole number from 0 to `bound` - 1, each as likely as any other: words from the uneven end of
 * the range are thrown away (M. O'Neill's bounded draw; `bound` at most 2^32).
 */
export function below({ word }: Random, bound: number): number {
  if (!(bound >= 1)) throw new RangeError('A bounded draw needs something to draw from.');
  const uneven = WORDS % bound;
  let drawn = word();
  while (drawn < uneven) drawn = word();
  return drawn % bound;
}

/** One of a list, each as likely as any other. */
export function pick<Item>(chance: Random, list: readonly Item[]): Item {
  return list[below(chance, list.length)] as Item;
}

/** The list in an order as likely as any other (Fisher–Yates, from the end). */
export function shuffled<Item>(chance: Random, list: readonly Item[]): readonly Item[] {
  const mixed = [...list];
  for (let i = mixed.length; i > 1; i--) {
    const other = below(chance, i);
    [mixed[i - 1], mixed[other]] = [mixed[other] as Item, mixed[i - 1] as Item];
  }
  return mixed;
}

/** A number from `low` up to `high`, evenly spread; `low` where the two have crossed. */
export const between = ({ unit }: Random, low: number, high: number): number =>
  randomUniform.source(unit)(low, Math.max(low, high))();

/** A length from `low` up to `high`, its logarithm evenly spread. */
export const lengthBetween = (chance: Random, low: number, high: number): number =>
  high <= low ? low : low * (high / low) ** between(chance, 0, 1);

/** True with this probability, 0 to 1. */
export const happens = ({ unit }: Random, probability: number): boolean => unit() < probability;
