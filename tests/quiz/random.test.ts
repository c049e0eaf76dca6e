import { randomNormal } from 'd3-random';
import { describe, expect, it } from 'vitest';
import {
  below,
  between,
  happens,
  lengthBetween,
  pick,
  random,
  sfc32,
  shuffled,
} from '../../src/quiz/index.ts';
import type { Random } from '../../src/quiz/index.ts';

/** A stream that gives these words and then begins again. */
function played(...words: readonly number[]): Random {
  let at = 0;
  const word = (): number => words[at++ % words.length] as number;
  return { word, unit: () => word() / 2 ** 32 };
}

describe('a seed', () => {
  it('is the second word of the state, so that the published vectors hold for it', () => {
    expect(random(0x89abcdef).word()).toBe(sfc32(0, 0x89abcdef, 0).word());
    expect(random(1).word()).not.toBe(random(2).word());
  });

  it('gives numbers from 0 up to, never on, 1', () => {
    const chance = random(7);
    const drawn = Array.from({ length: 20_000 }, () => chance.unit());
    expect(Math.min(...drawn)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...drawn)).toBeLessThan(1);
    // mean ½, standard error 1 / √(12 · 20 000) = 0.002: five of them
    const mean = drawn.reduce((sum, one) => sum + one, 0) / drawn.length;
    expect(Math.abs(mean - 0.5)).toBeLessThan(0.0102);
  });

  it('makes one number of 53 bits from two words: 27 high bits of the first, 26 of the second', () => {
    const chance = random(5);
    const [high, low] = [chance.word(), chance.word()];
    // hand-made: floor(high / 2^5) · 2^26 + floor(low / 2^6), over 2^53
    const by = (Math.floor(high / 32) * 67_108_864 + Math.floor(low / 64)) / 9_007_199_254_740_992;
    expect(random(5).unit()).toBe(by);
  });

  it('serves d3-random as its source', () => {
    const draw = (seed: number) => randomNormal.source(random(seed).unit)(0, 1);
    expect(draw(3)()).toBe(draw(3)());
    const normal = draw(3);
    const drawn = Array.from({ length: 4000 }, () => normal());
    const mean = drawn.reduce((sum, one) => sum + one, 0) / drawn.length;
    // standard error 1 / √4000 = 0.016: five of them
    expect(Math.abs(mean)).toBeLessThan(0.08);
  });
});

describe('a bounded draw', () => {
  // 2^32 mod 6 = 4: the words 0 to 3 are one too many for the faces 0 to 3
  it('throws the uneven words away', () => {
    expect(below(played(0, 1, 2, 3, 4), 6)).toBe(4);
    expect(below(played(3, 6), 6)).toBe(0);
    expect(below(played(0xffffffff), 6)).toBe(3);
  });

  it('throws none away where the bound goes into 2^32', () => {
    expect(below(played(0), 8)).toBe(0);
    expect(below(played(0xffffffff), 2 ** 32)).toBe(0xffffffff);
    expect(below(played(5), 1)).toBe(0);
  });

  it('refuses to draw from nothing', () => {
    expect(() => below(random(1), 0)).toThrow(RangeError);
    expect(() => pick(random(1), [])).toThrow(RangeError);
  });

  it('gives each face of a die its sixth', () => {
    const chance = random(11);
    const counted = [0, 0, 0, 0, 0, 0];
    for (let i = 0; i < 60_000; i++) {
      const face = below(chance, 6);
      counted[face] = (counted[face] ?? 0) + 1;
    }
    // chi-squared with 5 degrees of freedom: 25.7 is past one in ten thousand (tables)
    const squared = counted.reduce((sum, count) => sum + (count - 10_000) ** 2 / 10_000, 0);
    expect(squared).toBeLessThan(25.7);
  });
});

describe('drawing from a list', () => {
  it('shuffles from the end: the last changes places with the drawn one first', () => {
    // bounds 4, 3, 2 with the words 1, 1, 0: swap 3 and 1, then 2 and 1, then 1 and 0
    expect(shuffled(played(1, 1, 0), ['a', 'b', 'c', 'd'])).toEqual(['c', 'a', 'd', 'b']);
    expect(shuffled(random(1), [])).toEqual([]);
  });

  it('puts each of three in each order as often', () => {
    const chance = random(4);
    const orders = new Map<string, number>();
    for (let i = 0; i < 12_000; i++) {
      const order = shuffled(chance, [1, 2, 3]).join('');
      orders.set(order, (orders.get(order) ?? 0) + 1);
    }
    expect(orders.size).toBe(6);
    const squared = [...orders.values()].reduce((sum, n) => sum + (n - 2000) ** 2 / 2000, 0);
    expect(squared).toBeLessThan(25.7);
  });

  it('picks the one that the word falls on', () => {
    expect(pick(played(4), ['a', 'b', 'c'])).toBe('b');
  });
});

describe('a spread', () => {
  it('runs evenly from the low end to the high one', () => {
    expect(between(played(0), 2, 6)).toBe(2);
    expect(between(played(2 ** 31), 2, 6)).toBe(4);
    expect(between(played(2 ** 31), 6, 2)).toBe(6);
  });

  it('runs evenly in the logarithm: half way from 2 to 8 is 4', () => {
    expect(lengthBetween(played(2 ** 31), 2, 8)).toBeCloseTo(4, 12);
    expect(lengthBetween(played(2 ** 31), 8, 2)).toBe(8);
  });

  it('happens as often as it should, never at 0 and always at 1', () => {
    expect(happens(played(2 ** 30), 0.26)).toBe(true);
    expect(happens(played(2 ** 30), 0.25)).toBe(false);
    expect(happens(played(0), 0)).toBe(false);
    expect(happens(played(0xffffffff), 1)).toBe(true);
  });
});
