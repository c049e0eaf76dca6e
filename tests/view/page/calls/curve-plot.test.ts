import { describe, expect, it } from 'vitest';
import { curvePlot, type CurveCall } from '../../../../src/view/page/calls/progress/curve-plot.ts';

const size = { width: 400, height: 200 };
const call = (distance: number, rejected: boolean): CurveCall => ({ distance, rejected });
const steep = { bias: 0.04, scatter: 0.05, lapse: 0 };

describe('a person’s curve for one skill', () => {
  it('has the limit in the middle and the half-way point where the bias is', () => {
    const plot = curvePlot([call(-0.2, false), call(0.2, true)], steep, 'ratio', size);
    expect(plot.limit).toBe(200);
    // 0.2 · 1.08 = 0.216 to either side: 0.04 stands 0.04 / 0.216 of the right half past it
    expect(plot.half).toBeCloseTo(200 + (200 * 0.04) / 0.216, 6);
  });

  it('runs from none rejected to all rejected and through half at the bias', () => {
    const plot = curvePlot([call(-0.2, false), call(0.2, true)], steep, 'ratio', size);
    const points = plot.curve
      .replace('M', '')
      .split('L')
      .map((pair) => pair.split(',').map(Number));
    const heights = points.map(([, y]) => y ?? Number.NaN);
    expect(heights.every((y, index) => index === 0 || y <= (heights[index - 1] ?? 0))).toBe(true);
    expect(heights[0]).toBeGreaterThan(199);
    expect(heights.at(-1)).toBeLessThan(1);
  });

  it('gathers calls at like distances into marks: every call in one, and each as often rejected as it was', () => {
    const calls = Array.from({ length: 50 }, (_, index) => call(index / 100 - 0.25, index % 3 > 0));
    const { marks } = curvePlot(calls, null, 'ratio', size);
    expect(marks.length).toBeLessThanOrEqual(9);
    expect(marks.reduce((sum, mark) => sum + mark.calls, 0)).toBe(50);
    expect(marks.reduce((sum, mark) => sum + mark.rejected, 0)).toBe(
      calls.filter(({ rejected }) => rejected).length,
    );
    for (const mark of marks) expect(mark.y).toBeCloseTo(200 * (1 - mark.rejected / mark.calls), 9);
  });

  it('ticks per cents of the limit where a distance is a ratio: ten per cent past it is ln 1.1', () => {
    const { ticks, limit } = curvePlot([call(-0.25, false)], null, 'ratio', size);
    const ten = ticks.find(({ past }) => past === 10);
    // 0.25 · 1.08 = 0.27 to either side
    expect(ten?.at).toBeCloseTo(limit + (200 * Math.log(1.1)) / 0.27, 6);
    expect(ticks.find(({ past }) => past === 0)?.at).toBe(limit);
  });

  it('ticks degrees where a distance is an angle', () => {
    const { ticks } = curvePlot([call(-9, false), call(7, true)], null, 'deg', size);
    expect(ticks.map(({ past }) => past)).toEqual([-5, 0, 5]);
  });

  it('draws no curve and no half-way point while nothing is fitted, and nothing breaks without a call', () => {
    const plot = curvePlot([], null, 'mm', size);
    expect(plot.curve).toBe('');
    expect(plot.half).toBeNull();
    expect(plot.marks).toEqual([]);
    expect(plot.limit).toBe(200);
  });
});
