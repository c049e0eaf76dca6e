import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatInch64,
  inch64ToMm,
  inchToMm,
  mmToInch,
  nearestInch64,
} from '../../src/units/index.ts';
import { runs } from '../runs.ts';

describe('inch fractions', () => {
  it('have 25.4 mm to the inch (international yard and pound agreement, 1959)', () => {
    expect(inchToMm(1)).toBe(25.4);
    expect(mmToInch(25.4)).toBe(1);
    expect(inch64ToMm(64)).toBe(25.4);
    // 1/32 in: 25.4 / 32 = 0.79375
    expect(inch64ToMm(2)).toBe(0.79375);
  });

  it('are written in lowest terms', () => {
    expect(formatInch64(20)).toBe('5/16');
    expect(formatInch64(32)).toBe('1/2');
    expect(formatInch64(1)).toBe('1/64');
    expect(formatInch64(84)).toBe('1 5/16');
    expect(formatInch64(128)).toBe('2');
    expect(formatInch64(0)).toBe('0');
    expect(formatInch64(-0)).toBe('0');
    expect(formatInch64(-2)).toBe('−1/32');
    expect(formatInch64(-80)).toBe('−1 1/4');
  });

  it('are rounded to the parts asked for, a half away from zero', () => {
    // 8 mm = 20.157… 64ths: 5/16 in every denomination
    expect(nearestInch64(8, 16)).toBe(20);
    expect(nearestInch64(8, 32)).toBe(20);
    expect(nearestInch64(8, 64)).toBe(20);
    // 7 mm = 17.637… 64ths: 18/64 = 9/32; in 16ths 4.409: 4/16
    expect(nearestInch64(7, 64)).toBe(18);
    expect(nearestInch64(7, 32)).toBe(18);
    expect(nearestInch64(7, 16)).toBe(16);
    // half way between 1/16 and 2/16 is 3/32 in
    expect(nearestInch64(inch64ToMm(6), 16)).toBe(8);
    expect(nearestInch64(-inch64ToMm(6), 16)).toBe(-8);
  });

  it('come back exactly from millimetres', () => {
    fc.assert(
      fc.property(fc.integer({ min: -6400, max: 6400 }), (count) => {
        expect(nearestInch64(inch64ToMm(count), 64) + 0).toBe(count + 0);
      }),
      { numRuns: runs(5_000) },
    );
  });
});
