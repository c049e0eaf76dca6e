import fc from 'fast-check';
import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { normalShare } from '../../src/limits/index.ts';
import { betaShare, logGamma } from '../../src/quiz/eye/incomplete-beta.ts';
import { normalQuantile } from '../../src/quiz/eye/normal-quantile.ts';
import { chanceOfAtLeast, clopperPearson } from '../../src/quiz/eye/proportion.ts';
import { runs } from '../runs.ts';

// Independent: jStat 1.9.6.

const share = fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true });
const count = fc.integer({ min: 1, max: 400 });

describe('the distributions that an eye is held against', () => {
  it('have the inverse normal of another library', () => {
    fc.assert(
      fc.property(share, (p) => {
        expect(normalQuantile(p)).toBeCloseTo(jStat.normal.inv(p, 0, 1), 7);
      }),
      { numRuns: runs(5000) },
    );
  });

  it('have an inverse normal that undoes the normal share, into the far tails', () => {
    fc.assert(
      fc.property(fc.double({ min: -30, max: 5, noNaN: true }), (z) => {
        expect(Math.abs(normalQuantile(normalShare(z)) - z)).toBeLessThan(1e-9);
      }),
      { numRuns: runs(5000) },
    );
  });

  it('have the beta share of another library', () => {
    fc.assert(
      fc.property(share, count, count, (x, a, b) => {
        expect(betaShare(x, a / 4, b / 4)).toBeCloseTo(jStat.beta.cdf(x, a / 4, b / 4), 7);
      }),
      { numRuns: runs(5000) },
    );
  });

  it('have the binomial tail of another library', () => {
    fc.assert(
      fc.property(share, count, fc.nat(), (p, of, any) => {
        const found = 1 + (any % of);
        const other = 1 - jStat.binomial.cdf(found - 1, of, p);
        expect(chanceOfAtLeast(found, of, p)).toBeCloseTo(other, 8);
      }),
      { numRuns: runs(2000) },
    );
  });

  it('have exact limits that are the beta quantiles of another library', () => {
    fc.assert(
      fc.property(count, fc.nat(), (of, any) => {
        const found = any % (of + 1);
        const { low, high } = clopperPearson(found, of);
        const lower = found === 0 ? 0 : jStat.beta.inv(0.025, found, of - found + 1);
        const upper = found === of ? 1 : jStat.beta.inv(0.975, found + 1, of - found);
        expect(low).toBeCloseTo(lower, 6);
        expect(high).toBeCloseTo(upper, 6);
      }),
      { numRuns: runs(1000) },
    );
  });

  it('have the logarithm of the gamma function of another library', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 500, noNaN: true }), (x) => {
        const other = jStat.gammaln(x);
        expect(Math.abs(logGamma(x) - other)).toBeLessThan(1e-9 * Math.max(1, Math.abs(other)));
      }),
      { numRuns: runs(2000) },
    );
  });
});
