import { describe, expect, it } from 'vitest';
import { deg, mm, rad, toDeg, toRad } from '../../src/units/index.ts';

describe('branded numbers', () => {
  it('are the plain number, marked with what it is', () => {
    expect([mm(7.5), deg(30), rad(1)]).toEqual([7.5, 30, 1]);
  });

  it('angles turn from degrees to radians and back', () => {
    expect(toRad(deg(180))).toBe(Math.PI);
    expect(toDeg(rad(Math.PI / 2))).toBe(90);
    expect(toDeg(toRad(deg(37.5)))).toBeCloseTo(37.5, 12);
  });
});
