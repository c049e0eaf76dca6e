import { describe, expect, it } from 'vitest';
import { placeOf, printedPlace, standsAt, toPlace } from '../../src/limits/last-place.ts';

describe('the last place that a limit is printed to', () => {
  it('is that of its last digit, at least a tenth of a millimetre or a hundredth of an inch', () => {
    expect(placeOf(3, 'mm')).toBeCloseTo(0.1, 12);
    expect(placeOf(0.5, 'mm')).toBeCloseTo(0.1, 12);
    expect(placeOf(0.65, 'mm')).toBeCloseTo(0.01, 12);
    expect(placeOf(0.3, 'in')).toBeCloseTo(0.01, 12);
    expect(placeOf(0.035, 'in')).toBeCloseTo(0.001, 12);
    expect(placeOf(90, 'deg')).toBe(1);
  });

  it('is the finest of several figures in one formula', () => {
    expect(printedPlace(['min', ['*', 0.1, 't'], ['mm', 0.5]])).toBeCloseTo(0.1, 12);
    expect(printedPlace(['+', ['mm', 1], ['mm', 0.25]])).toBeCloseTo(0.01, 12);
  });

  it('is a sixty-fourth for a fraction of an inch, as rules are divided', () => {
    expect(printedPlace(['in', ['/', 1, 32]])).toBe(1 / 64);
  });

  it('is none where the formula prints no length or angle of its own', () => {
    expect(printedPlace(['*', 0.1, 't'])).toBeNull();
    expect(printedPlace('t')).toBeNull();
    expect(printedPlace(4)).toBeNull();
  });

  it('is what a measurement is rounded to, an exact half to the even digit', () => {
    // ASTM E29, rounding method (from memory, verify)
    for (const [value, place, rounded] of [
      [3.05, 0.1, 3.0],
      [3.15, 0.1, 3.2],
      [0.55, 0.1, 0.6],
      [0.65, 0.1, 0.6],
      [-0.55, 0.1, -0.6],
      [-0.65, 0.1, -0.6],
      [1.005, 0.01, 1.0],
      [1.015, 0.01, 1.02],
      [2.5, 1, 2],
      [0.5, 1, 0],
      [3 / 128, 1 / 64, 1 / 32],
      [5 / 128, 1 / 64, 1 / 32],
    ] as const) {
      expect(toPlace(value, place)).toBeCloseTo(rounded, 12);
    }
  });

  it('is the nearer one on either side of a half', () => {
    expect(toPlace(0.54, 0.1)).toBeCloseTo(0.5, 12);
    expect(toPlace(3.0501, 0.1)).toBeCloseTo(3.1, 12);
    expect(toPlace(3.1499, 0.1)).toBeCloseTo(3.1, 12);
    expect(toPlace(0.6500001, 0.1)).toBeCloseTo(0.7, 12);
  });

  it('is where a printed limit stands and one worked out mostly does not', () => {
    expect(standsAt(0.5, 0.1)).toBe(true);
    expect(standsAt(4.9497, 0.1)).toBe(false);
    expect(standsAt(3 / 64, 1 / 64)).toBe(true);
  });
});
