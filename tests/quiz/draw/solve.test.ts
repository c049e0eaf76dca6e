import { describe, expect, it } from 'vitest';
import { solve } from '../../../src/quiz/draw/solve.ts';

/** Solves f(x) = asked and counts how often f was worked out. */
function solved(
  f: (x: number) => number | null,
  { from = 0, slope = 1, range = [-10, 10] as readonly [number, number], most = 25 } = {},
) {
  const tried: number[] = [];
  const found = solve(
    (x) => {
      tried.push(x);
      const off = f(x);
      return off === null ? null : { off, found: x };
    },
    from,
    slope,
    range,
  );
  expect(tried.length).toBeLessThanOrEqual(most);
  for (const x of tried) {
    expect(x).toBeGreaterThanOrEqual(range[0]);
    expect(x).toBeLessThanOrEqual(range[1]);
  }
  return { found, tried };
}

describe('the place where a measurement is what was asked', () => {
  it('is found at once where it stands there already', () => {
    expect(solved(() => 0, { from: 3 })).toEqual({ found: 3, tried: [3] });
  });

  it('takes one step along a slope that holds', () => {
    expect(solved((x) => 2 * x - 3, { slope: 2 })).toEqual({ found: 1.5, tried: [0, 1.5] });
    expect(solved((x) => -2 * x - 3, { slope: -2 })).toEqual({ found: -1.5, tried: [0, -1.5] });
  });

  it('follows the chord where the slope was guessed: two steps on a line', () => {
    const { found, tried } = solved((x) => 5 * x - 3, { slope: 1 });
    expect(found).toBeCloseTo(0.6, 9);
    expect(tried).toHaveLength(3);
  });

  // x² = 2, e^x = 3, |x|^(1/3) = 1.5: the roots by hand
  it.each([
    ['a square', (x: number) => x * x - 2, Math.SQRT2, 10],
    ['a power', (x: number) => Math.exp(x) - 3, Math.log(3), 12],
    ['a flattening curve', (x: number) => Math.cbrt(x) - 1.5, 3.375, 14],
  ])('closes in on %s', (_, f, root, most) => {
    const { found } = solved(f, { from: 0.5, range: [0, 10], most });
    expect(found).toBeCloseTo(root, 7);
  });

  it('halves what lies between where a step leaves it: a curve with a knee', () => {
    const { found } = solved((x) => (x < 4 ? -1 + 0.001 * x : 50 * (x - 4) - 0.996), {
      range: [0, 10],
    });
    expect(found).toBeCloseTo(4.01992, 6);
  });

  it('comes half the way back from where there is nothing to measure', () => {
    const { found, tried } = solved((x) => (x > 5 ? null : x - 4), { slope: 0.4, range: [0, 20] });
    expect(tried.slice(0, 3)).toEqual([0, 10, 5]);
    expect(found).toBe(4);
  });

  it('is none where nothing can be measured to begin with, or no number', () => {
    expect(solved(() => null)).toEqual({ found: null, tried: [0] });
    expect(solved(() => Number.NaN)).toEqual({ found: null, tried: [0] });
  });

  it('is none past the end of what may be moved, and not tried there twice', () => {
    expect(solved((x) => x - 12)).toEqual({ found: null, tried: [0, 10] });
    expect(solved((x) => x + 12)).toEqual({ found: null, tried: [0, -10] });
  });

  it('begins within what may be moved', () => {
    expect(solved((x) => x - 10, { from: 40 })).toEqual({ found: 10, tried: [10] });
    expect(solved((x) => x + 10, { from: -40 })).toEqual({ found: -10, tried: [-10] });
  });

  it('is none across a jump: nothing stands there', () => {
    const { found, tried } = solved((x) => (x < Math.E ? -1 : 1));
    expect(found).toBeNull();
    expect(tried).toHaveLength(25);
    expect(tried.at(-1)).toBeCloseTo(Math.E, 2);
  });

  it('is near enough within a hundred-millionth, and not a little before', () => {
    expect(solved(() => 1e-8, { from: 2 }).found).toBe(2);
    expect(solved(() => -1e-8, { from: 2 }).found).toBe(2);
    expect(solved((x) => (x === 2 ? 1.01e-8 : 1), { from: 2 }).found).toBeNull();
  });
});
