import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatAngle, parseAngle } from '../../src/units/index.ts';
import { runs } from '../runs.ts';

const degreesOf = (text: string): number => {
  const read = parseAngle(text);
  return read.ok ? read.deg : Number.NaN;
};
const refusal = (text: string): string => {
  const read = parseAngle(text);
  return read.ok ? `read as ${read.deg}` : read.message.key;
};

describe('angles', () => {
  it('are read in degrees, as decimals or fractions, with the mark or without', () => {
    expect(degreesOf('30')).toBe(30);
    expect(degreesOf('30°')).toBe(30);
    expect(degreesOf('30 °')).toBe(30);
    expect(degreesOf('30 deg')).toBe(30);
    expect(degreesOf('1 degree')).toBe(1);
    expect(degreesOf('30 degrees')).toBe(30);
    expect(degreesOf('37 1/2')).toBe(37.5);
    expect(degreesOf('37½°')).toBe(37.5);
    expect(degreesOf('37,5')).toBe(37.5);
    expect(degreesOf('-5°')).toBe(-5);
    expect(degreesOf('−1/2')).toBe(-0.5);
    expect(Object.is(degreesOf('-0'), 0)).toBe(true);
  });

  it('are refused with the reason', () => {
    expect(refusal('')).toBe('units_nothing_typed');
    expect(refusal('x'.repeat(41))).toBe('units_text_too_long');
    expect(refusal('30 mm')).toBe('units_not_a_number');
    expect(refusal('30 ° 5')).toBe('units_not_a_number');
    expect(refusal('30°°')).toBe('units_not_a_number');
    expect(refusal('30 rad')).toBe('units_not_a_number');
    expect(refusal('°')).toBe('units_not_a_number');
    expect(refusal('1/0')).toBe('units_fraction_over_zero');
  });

  it('are written with their mark, one decimal unless said otherwise', () => {
    expect(formatAngle(90)).toBe('90.0°');
    expect(formatAngle(114.95, 0)).toBe('115°');
    expect(formatAngle(-0.01)).toBe('0.0°');
    expect(formatAngle(-2.25)).toBe('−2.3°');
  });

  it('are read back as they were written', () => {
    fc.assert(
      fc.property(fc.double({ min: -180, max: 180, noNaN: true }), (angle) => {
        const text = formatAngle(angle, 2);
        expect(Math.abs(degreesOf(text) - angle)).toBeLessThanOrEqual(0.005 + 1e-9);
        expect(formatAngle(degreesOf(text), 2)).toBe(text);
      }),
      { numRuns: runs(5_000) },
    );
  });
});
