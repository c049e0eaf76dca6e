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

  it('is what a measurement is rounded to, halves away from zero', () => {
    expect(toPlace(0.55, 0.1)).toBeCloseTo(0.6, 12);
    expect(toPlace(-0.55, 0.1)).toBeCloseTo(-0.6, 12);
    expect(toPlace(0.54, 0.1)).toBeCloseTo(0.5, 12);
  });

  it('is where a printed limit stands and one worked out mostly does not', () => {
    expect(standsAt(0.5, 0.1)).toBe(true);
    expect(standsAt(4.9497, 0.1)).toBe(false);
    expect(standsAt(3 / 64, 1 / 64)).toBe(true);
  });
});
