import { describe, expect, it } from 'vitest';
import { randomLcg } from 'd3';
import { below, sfc32, shuffled, type Random } from '../../src/quiz/index.ts';

const words = (count: number, next: () => number): string[] =>
  Array.from({ length: count }, () => next().toString(16).padStart(8, '0'));

// vectors of PractRand pre0.95, as the crate sorairolake/sfc-rs has them in src/sfc32.rs (commit 06f2f2bf):
// counter 1, 15 mixing rounds before the first word
describe('sfc32', () => {
  it('gives the words that PractRand gives for the seeds 0, 0, 0', () => {
    const { word } = sfc32(0, 0, 0);
    expect(words(6, word)).toEqual([
      'fb52c520',
      '38802be1',
      '948279e6',
      'ec4bf1d9',
      '7cb0a909',
      'fad8b4a8',
    ]);
  });

  it('gives the words that PractRand gives for the seeds 0, 0x89abcdef, 0x01234567', () => {
    const { word } = sfc32(0, 0x89abcdef, 0x01234567);
    expect(words(4, word)).toEqual(['35e05b54', '4c627ca1', '33a043e2', 'b6113c67']);
  });
});

/** The generator PCG32 (M. O'Neill), which the published draws below were made with. */
function pcg32(seed: bigint, stream: bigint): Random {
  const mask = (1n << 64n) - 1n;
  const increment = ((stream << 1n) | 1n) & mask;
  let state = 0n;
  const advance = (): void => {
    state = (state * 6364136223846793005n + increment) & mask;
  };
  const word = (): number => {
    const old = state;
    advance();
    const mixed = Number((((old >> 18n) ^ old) >> 27n) & 0xffffffffn);
    const turn = Number(old >> 59n);
    return ((mixed >>> turn) | (mixed << (-turn & 31))) >>> 0;
  };
  advance();
  state = (state + seed) & mask;
  advance();
  return { word, unit: () => word() / 2 ** 32 };
}

// imneme/pcg-c, test-high/expected/check-pcg32.out (commit 89b7dfbc): seed 42, stream 54, rounds 1 and 2
describe('draws from the words of PCG32', () => {
  const round = (chance: Random) => {
    const first = words(6, chance.word);
    const coins = Array.from({ length: 65 }, () => (below(chance, 2) === 1 ? 'H' : 'T')).join('');
    const dice = Array.from({ length: 33 }, () => below(chance, 6) + 1);
    const deck = Array.from(
      { length: 52 },
      (_, i) => `${'A23456789TJQK'[Math.floor(i / 4)] ?? ''}${'hcds'[i % 4] ?? ''}`,
    );
    return { first, coins, dice, cards: shuffled(chance, deck).join(' ') };
  };

  it('are the published coins and dice, unbiased, and the published order of a deck', () => {
    const chance = pcg32(42n, 54n);
    const one = round(chance);
    expect(one.first).toEqual([
      'a15c02b7',
      '7b47f409',
      'ba1d3330',
      '83d2f293',
      'bfa4784b',
      'cbed606e',
    ]);
    expect(one.coins).toBe('HHTTTHTHHHTHTTTHHHHHTTTHHHTHTHTHTTHTTTHHHHHHTTTTHHTTTTTHTTTTTTTHT');
    expect(one.dice.join('')).toBe('341122324324335231315141564662633');
    expect(one.cards).toBe(
      'Qd Ks 6d 3s 3d 4c 3h Td Kc 5c Jh Kd Jd As 4s 4h Ad Th Ac Jc 7s Qs 2s 7h Kh 2d 6c Ah 4d Qh 9h 6s 5s 2c 9c Ts 8d 9s 3c 8c Js 5d 2h 6h 7d 8s 9d 5h 8h Qc 7c Tc',
    );
    expect(words(6, chance.word)).toEqual([
      '74ab93ad',
      '1c1da000',
      '494ff896',
      '34462f2f',
      'd308a3e5',
      '0fa83bab',
    ]);
  });
});

// d3/d3-random, test/lcg-test.js (commit 3305e4b6): the library that distributions are drawn with
describe('the linear congruential generator of d3', () => {
  it.each([
    [0, 0.6678668977692723],
    [0.42, 0.6760216606780887],
  ])('seeded with %f gives its fourth draw', (seed, fourth) => {
    const draw = randomLcg(seed);
    for (let i = 0; i < 3; i++) draw();
    expect(Math.abs(draw() - fourth)).toBeLessThanOrEqual(1e-15);
  });
});
