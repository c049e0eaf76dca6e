import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { conformanceProbability } from '../../src/limits/conformance.ts';
import { normalDensity, normalShare } from '../../src/limits/normal.ts';

describe('the share of the normal distribution below a value', () => {
  it('is that of the table: 0.5 in the middle, 0.841345, 0.975002 and 0.998650 at 1, 1.96 and 3', () => {
    // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1 (0.5 + area from 0), five places
    expect(normalShare(0)).toBe(0.5);
    expect(normalShare(1)).toBeCloseTo(0.84134, 5);
    expect(normalShare(1.96)).toBeCloseTo(0.975, 5);
    expect(normalShare(3)).toBeCloseTo(0.99865, 5);
  });

  it('agrees with an independent statistics library from −6 to 6', () => {
    for (let z = -6; z <= 6; z += 0.05) {
      expect(Math.abs(normalShare(z) - jStat.normal.cdf(z, 0, 1))).toBeLessThan(1e-11);
    }
  });

  it('is smooth where series and fraction meet, symmetric, and ends at 0 and 1', () => {
    expect(normalShare(4 - 1e-12)).toBeCloseTo(normalShare(4 + 1e-12), 14);
    for (const z of [0.3, 2, 4.5, 8]) expect(normalShare(z) + normalShare(-z)).toBeCloseTo(1, 14);
    // far tail: φ(z)/z (1 − 1/z²) < share < φ(z)/z for z > 0 (a textbook bound)
    const tail = normalShare(-9);
    expect(tail).toBeLessThan(normalDensity(9) / 9);
    expect(tail).toBeGreaterThan((normalDensity(9) / 9) * (1 - 1 / 81));
    expect(normalShare(Infinity)).toBe(1);
    expect(normalShare(-Infinity)).toBe(0);
    expect(normalShare(Number.NaN)).toBeNaN();
  });
});

describe('the probability that a measured weld conforms', () => {
  it('is one half on the limit, and 0.95 where the margin is 1.645 standard uncertainties', () => {
    // guard band of 1.645 u for 95 %: JCGM 106:2012 (from memory, verify)
    expect(conformanceProbability(0, 0.2)).toBe(0.5);
    expect(conformanceProbability(0.2 * 1.644854, 0.2)).toBeCloseTo(0.95, 6);
    expect(conformanceProbability(-0.2 * 1.644854, 0.2)).toBeCloseTo(0.05, 6);
  });

  it('is certain without uncertainty, the limit itself being inside', () => {
    expect(conformanceProbability(0, 0)).toBe(1);
    expect(conformanceProbability(0.01, 0)).toBe(1);
    expect(conformanceProbability(-0.01, 0)).toBe(0);
  });
});
