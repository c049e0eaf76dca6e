import { describe, expect, it } from 'vitest';
import { calibrationLength } from '../../../src/view/page/calibration-length.ts';

describe('the length that a screen is calibrated by', () => {
  it('is 50 mm of a ruler, or the long side of a bank card: 85.60 mm (ISO/IEC 7810, ID-1)', () => {
    expect(calibrationLength('ruler', 150, false)).toBe(50);
    expect(calibrationLength('card', 150, false)).toBe(85.6);
  });

  it('is the short side of the card, 53.98 mm, where the long one would not fit', () => {
    expect(calibrationLength('card', 80, false)).toBe(53.98);
  });

  it('is a length that stands on the ruler that the reader has', () => {
    expect(calibrationLength('ruler', 150, true)).toBeCloseTo(50.8, 9);
    expect(calibrationLength('ruler', 50, true)).toBeCloseTo(38.1, 9);
    expect(calibrationLength('ruler', 50, false)).toBe(40);
  });

  it('is the shortest that there is on a screen with no room at all', () => {
    expect(calibrationLength('ruler', 0, false)).toBe(20);
  });
});
