import { describe, expect, it } from 'vitest';
import { limitMarks, limitPlace, wideLine } from '../../../src/view/control/limit-line.ts';

describe('the line of a limit', () => {
  it('puts a measurement at its limit on the plumb line', () => {
    expect(limitPlace(0, 8, wideLine)).toBe(wideLine.plumb);
  });

  it('has all of the limit to the left end and pins what is further inside', () => {
    // 2.7 max and nothing measured: margin 2.7 is 100 % of the limit.
    expect(limitPlace(2.7, 2.7, wideLine)).toBe(7);
    expect(limitPlace(20, 2.7, wideLine)).toBe(7);
  });

  it('has 45 % of the limit to the right end and pins what is further outside', () => {
    expect(limitPlace(-0.45, 1, wideLine)).toBeCloseTo(106, 9);
    expect(limitPlace(-9, 1, wideLine)).toBe(106);
  });

  it('pins anything over a limit of nothing, for nothing has no share', () => {
    expect(limitPlace(0, 0, wideLine)).toBe(wideLine.plumb);
    expect(limitPlace(-0.1, 0, wideLine)).toBe(106);
  });

  it('spreads the guard band to both sides of the line', () => {
    const marks = limitMarks({ limit: 2, margin: 0, guard: 0.3 }, wideLine);
    const [inside, outside] = marks?.guard ?? [0, 0];
    // 15 % of 67.5 px to the left, 15 % ÷ 45 % of 31.5 px to the right.
    expect(inside).toBeCloseTo(74.5 - 10.125, 9);
    expect(outside).toBeCloseTo(74.5 + 10.5, 9);
    expect(marks?.place).toBe(wideLine.plumb);
  });

  it('marks nothing where there is no limit or no measurement', () => {
    expect(limitMarks({ limit: null, margin: 1, guard: 0 }, wideLine)).toBeNull();
    expect(limitMarks({ limit: 2, margin: null, guard: 0 }, wideLine)).toBeNull();
    expect(limitMarks({ limit: 2, margin: 1, guard: 0 }, wideLine)?.guard).toBeNull();
  });
});
