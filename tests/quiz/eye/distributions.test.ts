import { describe, expect, it } from 'vitest';
import { estimate } from '../../../src/quiz/eye/estimate.ts';
import { betaShare, logGamma } from '../../../src/quiz/eye/incomplete-beta.ts';
import { normalQuantile } from '../../../src/quiz/eye/normal-quantile.ts';
import { chanceOfAtLeast, clopperPearson, wilson } from '../../../src/quiz/eye/proportion.ts';
import { surenessOf } from '../../../src/quiz/eye/sureness.ts';

describe('the inverse normal', () => {
  it('is endless at 0 and 1, odd about a half, and nothing outside', () => {
    expect(normalQuantile(0)).toBe(-Infinity);
    expect(normalQuantile(1)).toBe(Infinity);
    expect(normalQuantile(-0.1)).toBeNaN();
    expect(normalQuantile(1.1)).toBeNaN();
    expect(normalQuantile(NaN)).toBeNaN();
    for (const share of [0.01, 0.2, 0.4, 0.0001]) {
      expect(normalQuantile(1 - share)).toBeCloseTo(-normalQuantile(share), 11);
    }
  });

  it.each([
    [0.25, -0.6744897501960817],
    [0.001, -3.090232306167814],
    [1e-20, -9.262340089798408],
  ])('gives the test values of its algorithm at %d', (share, z) => {
    // Source: AS 241 lists z(0.25), z(0.001) and z(1e-20); more places worked by SciPy 1.17.1.
    expect(normalQuantile(share)).toBeCloseTo(z, 12);
  });
});

describe('the beta share', () => {
  it('is the power of x where one parameter is 1, and the polynomial of whole ones', () => {
    // I_x(a, 1) = x^a; I_x(1, b) = 1 − (1 − x)^b; I_x(2, 2) = 3x² − 2x³ (by integration).
    for (const x of [0.01, 0.3, 0.5, 0.9, 0.999]) {
      expect(betaShare(x, 3, 1)).toBeCloseTo(x ** 3, 13);
      expect(betaShare(x, 1, 4)).toBeCloseTo(1 - (1 - x) ** 4, 13);
      expect(betaShare(x, 2, 2)).toBeCloseTo(3 * x * x - 2 * x ** 3, 13);
    }
    expect(betaShare(0, 2, 3)).toBe(0);
    expect(betaShare(-1, 2, 3)).toBe(0);
    expect(betaShare(1, 2, 3)).toBe(1);
    expect(betaShare(2, 2, 3)).toBe(1);
  });

  it('stands on a gamma function that has the factorials and the root of pi', () => {
    // Γ(n) = (n − 1)!, Γ(1/2) = √π.
    expect(logGamma(1)).toBeCloseTo(0, 13);
    expect(logGamma(5)).toBeCloseTo(Math.log(24), 13);
    expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 13);
    expect(logGamma(21)).toBeCloseTo(Math.log(2432902008176640000), 11);
  });
});

describe('shares of counts', () => {
  it('know nothing without a count', () => {
    const nothing = { value: 0.5, low: 0, high: 1 };
    expect(wilson(0, 0)).toEqual(nothing);
    expect(clopperPearson(0, 0)).toEqual(nothing);
  });

  it.each([
    [8, 10, 0.0546875],
    [14, 20, 0.0576591492],
    [16, 20, 0.0059089661],
    [24, 30, 0.0007154532],
  ])('are reached by guessing, %d of %d, as the binomial tail says', (found, of, chance) => {
    // The binomial tail at 1/2; 8 of 10: (45 + 10 + 1)/1024. Worked apart from this program.
    expect(chanceOfAtLeast(found, of, 0.5)).toBeCloseTo(chance, 9);
  });

  it('are sure for none or more and impossible for more than all', () => {
    expect(chanceOfAtLeast(0, 5, 0.2)).toBe(1);
    expect(chanceOfAtLeast(6, 5, 0.2)).toBe(0);
    expect(chanceOfAtLeast(5, 5, 0.2)).toBeCloseTo(0.2 ** 5, 14);
  });
});

describe('figures with little behind them', () => {
  it('have an interval of 1.96 standard errors either way', () => {
    const { low, high } = estimate(1, 0.5);
    expect(low).toBeCloseTo(1 - 0.979982, 6);
    expect(high).toBeCloseTo(1 + 0.979982, 6);
  });

  it('have no sureness without calls, and none from a level without any', () => {
    expect(surenessOf([])).toBeNull();
    expect(surenessOf([{ stated: 0.5, calls: 0, right: 0 }])).toBeNull();
    const one = { stated: 0.9, calls: 10, right: 8 };
    expect(surenessOf([{ stated: 0.5, calls: 0, right: 0 }, one])).toEqual(surenessOf([one]));
  });
});
