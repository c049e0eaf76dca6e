import { describe, expect, it } from 'vitest';
import { distanceOf, exceedanceOf, scaleOf, valueAt } from '../../src/quiz/index.ts';

const most = { sense: 'max', unit: 'mm', limit: 2, measured: 3 } as const;
const least = { sense: 'min', unit: 'mm', limit: 7, measured: 6 } as const;
const angle = { sense: 'min', unit: 'deg', limit: 110, measured: 104 } as const;
const none = { sense: 'max', unit: 'mm', limit: 0, measured: 0.4 } as const;

describe('distance past a limit', () => {
  it('is taken as a ratio of lengths, in degrees, or in mm where nothing is permitted', () => {
    expect([most, least, angle, none].map(scaleOf)).toEqual(['ratio', 'ratio', 'deg', 'mm']);
  });

  // ln(3/2) = 0.405465, ln(7/6) = 0.154151
  it('is positive on the reject side whatever the sense of the limit', () => {
    expect(distanceOf(most)).toBeCloseTo(0.405465, 6);
    expect(distanceOf(least)).toBeCloseTo(0.154151, 6);
    expect(distanceOf(angle)).toBe(6);
    expect(distanceOf(none)).toBe(0.4);
    expect(distanceOf({ ...most, measured: 1 })).toBeCloseTo(-Math.LN2, 12);
    expect(distanceOf({ ...least, measured: 14 })).toBeCloseTo(-Math.LN2, 12);
  });

  it('is as far inside as can be where there is none of what may be', () => {
    expect(distanceOf({ ...most, measured: 0 })).toBe(Number.NEGATIVE_INFINITY);
    expect(distanceOf({ ...least, measured: 0 })).toBe(Number.POSITIVE_INFINITY);
  });

  it('is told in mm or degrees too', () => {
    expect([most, least, angle, none].map(exceedanceOf)).toEqual([1, 1, 6, 0.4]);
  });

  it('leads back to the value that stands there', () => {
    for (const check of [most, least, angle, none]) {
      expect(valueAt(distanceOf(check), check)).toBeCloseTo(check.measured, 12);
    }
    expect(valueAt(-1, none)).toBe(0);
  });
});
