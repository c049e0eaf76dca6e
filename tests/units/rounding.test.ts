import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatFixed, roundHalfAway } from '../../src/units/index.ts';
import { runs } from '../runs.ts';

describe('the one rounding rule', () => {
  it('takes a half away from zero, on both sides of it', () => {
    expect(roundHalfAway(0.5, 0)).toBe(1);
    expect(roundHalfAway(-0.5, 0)).toBe(-1);
    expect(roundHalfAway(2.5, 0)).toBe(3);
    expect(roundHalfAway(-2.5, 0)).toBe(-3);
    expect(roundHalfAway(2.45, 1)).toBe(2.5);
  });

  it('takes a decimal half away from zero although binary holds it a hair below', () => {
    // the doubles are 1.00499999999999989…, 2.67499999999999982… and 8.57500000000000017…
    expect(roundHalfAway(1.005, 2)).toBe(1.01);
    expect(roundHalfAway(2.675, 2)).toBe(2.68);
    expect(roundHalfAway(8.575, 2)).toBe(8.58);
  });

  it('does not see the noise that a sum leaves behind', () => {
    // 0.1 + 0.7 is 0.7999999999999999 and 1.1 - 0.05 - 0.05 is just under 1
    expect(roundHalfAway((0.1 + 0.7) * 10 - 7.5, 0)).toBe(1);
    expect(formatFixed(0.1 + 0.7, 1)).toBe('0.8');
    expect(formatFixed(1.1 - 0.05 - 0.05, 2)).toBe('1.00');
  });

  it('leaves less than a half where it is', () => {
    expect(roundHalfAway(0.49, 0)).toBe(0);
    expect(roundHalfAway(2.444, 2)).toBe(2.44);
  });

  it('rounds very small and very large numbers, written with an exponent', () => {
    expect(roundHalfAway(4.6e-7, 6)).toBe(0);
    expect(roundHalfAway(5e-7, 6)).toBe(1e-6);
    expect(roundHalfAway(1.25e21, 2)).toBe(1.25e21);
  });

  it('passes on what is no number', () => {
    expect(roundHalfAway(Number.NaN, 1)).toBeNaN();
    expect(roundHalfAway(Number.POSITIVE_INFINITY, 1)).toBe(Number.POSITIVE_INFINITY);
  });

  it('never writes a minus before zero', () => {
    expect(formatFixed(-0.004, 2)).toBe('0.00');
    expect(formatFixed(-0, 1)).toBe('0.0');
    expect(Object.is(roundHalfAway(-0.004, 2), 0)).toBe(true);
  });

  it('writes a true minus sign and every decimal asked for', () => {
    expect(formatFixed(-0.5, 2)).toBe('−0.50');
    expect(formatFixed(8, 1)).toBe('8.0');
  });

  it('agrees with whole-number arithmetic on every count of ten-thousandths', () => {
    fc.assert(
      fc.property(fc.integer({ min: -9_999_999, max: 9_999_999 }), (count) => {
        // half away from zero on integers: add half a step to the size, drop the remainder
        const hundredths = Math.sign(count) * Math.floor((Math.abs(count) + 50) / 100);
        expect(roundHalfAway(count / 10_000, 2) + 0).toBe(hundredths / 100 + 0);
      }),
      { numRuns: runs(20_000) },
    );
  });
});
