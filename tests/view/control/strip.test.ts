import { describe, expect, it } from 'vitest';
import { stripMarks, stripPlace, wideStrip } from '../../../src/view/control/strip.ts';

describe('strip', () => {
  it('puts a measurement at its limit on the plumb line', () => {
    expect(stripPlace(0, 8, wideStrip)).toBe(wideStrip.plumb);
  });

  it('has all of the limit to the left end and pins what is further inside', () => {
    // 2.7 max and nothing measured: margin 2.7 is 100 % of the limit.
    expect(stripPlace(2.7, 2.7, wideStrip)).toBe(7);
    expect(stripPlace(20, 2.7, wideStrip)).toBe(7);
  });

  it('has 45 % of the limit to the right end and pins what is further outside', () => {
    expect(stripPlace(-0.45, 1, wideStrip)).toBeCloseTo(106, 9);
    expect(stripPlace(-9, 1, wideStrip)).toBe(106);
  });

  it('pins anything over a limit of nothing, for nothing has no share', () => {
    expect(stripPlace(0, 0, wideStrip)).toBe(wideStrip.plumb);
    expect(stripPlace(-0.1, 0, wideStrip)).toBe(106);
  });

  it('spreads the guard band to both sides of the line', () => {
    const marks = stripMarks({ limit: 2, margin: 0, guard: 0.3 }, wideStrip);
    const [inside, outside] = marks?.guard ?? [0, 0];
    // 15 % of 67.5 px to the left, 15 % ÷ 45 % of 31.5 px to the right.
    expect(inside).toBeCloseTo(74.5 - 10.125, 9);
    expect(outside).toBeCloseTo(74.5 + 10.5, 9);
    expect(marks?.place).toBe(wideStrip.plumb);
  });

  it('marks nothing where there is no limit or no measurement', () => {
    expect(stripMarks({ limit: null, margin: 1, guard: 0 }, wideStrip)).toBeNull();
    expect(stripMarks({ limit: 2, margin: null, guard: 0 }, wideStrip)).toBeNull();
    expect(stripMarks({ limit: 2, margin: 1, guard: 0 }, wideStrip)?.guard).toBeNull();
  });
});
