import { describe, expect, it } from 'vitest';
import { normalShare } from '../../../src/limits/index.ts';
import { fittedEye } from '../../../src/quiz/eye/eye-posterior.ts';
import { isInCurve, placed, withoutSlips } from '../../../src/quiz/eye/kept-calls.ts';
import { marginsOf, meanOf, posteriorOf, spreadOf } from '../../../src/quiz/eye/posterior.ts';
import {
  afterAnswer,
  evenWeights,
  mostTelling,
  questPlus,
} from '../../../src/quiz/eye/quest-plus.ts';
import { quickShare } from '../../../src/quiz/eye/share-table.ts';
import { callWith, slipOf } from '../any-call.ts';

describe('a posterior on a grid', () => {
  const grid = { biases: [-1, 1], scatters: [1, 2], lapses: [0, 0.1] };

  it('weighs each eye by the chance of the calls under it', () => {
    // One section at 1, rejected. Chances of reject Φ((1 − b)/σ): b = −1: Φ(2) = 0.977250 and Φ(1) =
    // 0.841345; b = 1: 0.5 twice. With lapses of 0.1: 0.1 + 0.8 Φ: 0.881800, 0.773076, 0.5, 0.5.
    const { weights } = posteriorOf([{ distance: 1, rejected: true }], grid, () => 0);
    const chances = [0.97725, 0.8818, 0.841345, 0.773076, 0.5, 0.5, 0.5, 0.5];
    const all = chances.reduce((a, b) => a + b);
    chances.forEach((chance, i) => expect(weights[i]).toBeCloseTo(chance / all, 5));
  });

  it('takes the prior in', () => {
    const { weights } = posteriorOf([], grid, (bias, scatter) =>
      Math.log(bias === 1 ? scatter : 1),
    );
    // 1, 1, 1, 1, 1, 1, 2, 2 of 10
    expect([...weights].map((weight) => weight * 10)).toEqual(
      [1, 1, 1, 1, 1, 1, 2, 2].map((weight) => expect.closeTo(weight, 10) as number),
    );
  });

  it('keeps the odds of thousands of calls, each of which halves the chance', () => {
    // 3000 calls at the line of b = 1: 2^−3000 would be 0. For b = −1 they are the likelier: all rejected.
    const calls = Array.from({ length: 3000 }, () => ({ distance: 1, rejected: true }));
    const { bias } = marginsOf(posteriorOf(calls, grid, () => 0));
    expect(bias[0]).toBeCloseTo(1, 12);
    const even = calls.map((call, i) => ({ ...call, rejected: i % 2 === 0 }));
    expect(marginsOf(posteriorOf(even, grid, () => 0)).bias[1]).toBeCloseTo(1, 12);
  });

  it('has margins that add up over all else', () => {
    const weights = Float64Array.from([1, 2, 3, 4, 5, 6, 7, 8], (one) => one / 36);
    const { bias, scatter, lapse } = marginsOf({ grid, weights });
    expect([...bias].map((one) => one * 36)).toEqual([10, 26].map(near));
    expect([...scatter].map((one) => one * 36)).toEqual([14, 22].map(near));
    expect([...lapse].map((one) => one * 36)).toEqual([16, 20].map(near));
    expect(meanOf([10, 20], bias)).toBeCloseTo((10 * 10 + 20 * 26) / 36, 12);
  });

  it('has an interval that leaves a fortieth out at either end of cells evenly filled', () => {
    // Four cells of a quarter each about 1, 2, 3, 4: from 0.5 to 4.5; a fortieth in: 0.6 and 4.4.
    const spread = spreadOf([1, 2, 3, 4], evenWeights(4));
    expect(spread.value).toBeCloseTo(2.5, 12);
    expect(spread.low).toBeCloseTo(0.6, 12);
    expect(spread.high).toBeCloseTo(4.4, 12);
    // all in one cell: 2.5 to 3.5
    const one = spreadOf([1, 2, 3, 4], Float64Array.from([0, 0, 1, 0]));
    expect(one.low).toBeCloseTo(2.525, 12);
    expect(one.high).toBeCloseTo(3.475, 12);
  });
});

describe('an eye fitted to calls', () => {
  it('stands where accepted and rejected part, however many the calls', () => {
    // 20 accepted at 0.1 and nearer, 20 rejected at 0.2 and farther: the line lies between.
    const calls = Array.from({ length: 40 }, (_, i) => ({
      distance: i < 20 ? 0.1 - i / 100 : 0.2 + (i - 20) / 100,
      rejected: i >= 20,
    }));
    const { bias, scatter } = fittedEye(calls, 'ratio');
    expect(bias.value).toBeCloseTo(0.15, 2);
    expect(bias.low).toBeGreaterThan(0.08);
    expect(bias.high).toBeLessThan(0.22);
    expect(scatter.low).toBeGreaterThan(0);
    expect(scatter.high).toBeLessThan(0.2);
    const often = fittedEye(Array.from({ length: 30 }, () => calls).flat(), 'ratio');
    expect(often.bias.high - often.bias.low).toBeLessThan(bias.high - bias.low);
    expect(often.bias.value).toBeCloseTo(0.15, 2);
  });

  it('turns over with its calls', () => {
    const calls = [0.05, 0.1, 0.2, -0.1, 0.15].map((distance, i) => ({
      distance,
      rejected: i === 2 || i === 4,
    }));
    const turned = calls.map(({ distance, rejected }) => ({
      distance: -distance,
      rejected: !rejected,
    }));
    const [one, other] = [fittedEye(calls, 'ratio'), fittedEye(turned, 'ratio')];
    expect(other.bias.value).toBeCloseTo(-one.bias.value, 8);
    expect(other.bias.low).toBeCloseTo(-one.bias.high, 8);
    expect(other.scatter.value).toBeCloseTo(one.scatter.value, 8);
  });

  it('knows next to nothing without calls', () => {
    const { bias, scatter } = fittedEye([], 'ratio');
    expect(bias.value).toBeCloseTo(0, 10);
    expect(bias.high - bias.low).toBeGreaterThan(1);
    expect(scatter.high / scatter.low).toBeGreaterThan(20);
  });
});

describe('the share by table', () => {
  it('is that of the normal distribution to a millionth, and flat beyond 8', () => {
    for (let z = -9; z <= 9; z += 0.0137) {
      expect(Math.abs(quickShare(z) - normalShare(z))).toBeLessThan(1e-6);
    }
    expect(quickShare(-Infinity)).toBe(0);
    expect(quickShare(Infinity)).toBe(1);
    expect(quickShare(0)).toBeCloseTo(0.5, 14);
  });
});

describe('placement', () => {
  it('takes the first of equals, and of those that may be shown', () => {
    const quest = questPlus([-1, 1], [-2, 2], (x, eye) => (x * eye > 0 ? 0.9 : 0.1));
    expect(mostTelling(quest, evenWeights(2))).toBe(0);
    expect(mostTelling(quest, evenWeights(2), (x) => x > 0)).toBe(1);
    expect(mostTelling(quest, evenWeights(2), () => false)).toBe(-1);
  });

  it('shows what parts the hypotheses rather than what is as likely under each', () => {
    const quest = questPlus([0, 1], ['a', 'b'], (x, which) =>
      x === 0 ? 0.5 : which === 'a' ? 1 : 0,
    );
    expect(mostTelling(quest, evenWeights(2))).toBe(1);
    expect([...afterAnswer(quest, evenWeights(2), 1, true)]).toEqual([1, 0]);
    expect([...afterAnswer(quest, evenWeights(2), 1, false)]).toEqual([0, 1]);
    expect([...afterAnswer(quest, evenWeights(2), 0, true)]).toEqual([0.5, 0.5]);
  });
});

describe('the calls that are kept', () => {
  it('are those of a log less its slips, whichever stands first', () => {
    const [a, b, c] = ['a', 'b', 'c'].map((id) => callWith({ id }));
    if (a === undefined || b === undefined || c === undefined) throw Error();
    expect(withoutSlips([slipOf('b'), a, b, c, slipOf('unknown')])).toEqual([a, c]);
  });

  it('stand in the curve if they are accept or reject of a section that is one of them', () => {
    const call = callWith();
    expect(isInCurve(call)).toBe(true);
    expect(isInCurve({ ...call, truth: 'refer' })).toBe(false);
    expect(isInCurve({ ...call, answer: { ...call.answer, call: 'refer' } })).toBe(false);
    expect(isInCurve({ ...call, distance: -Infinity })).toBe(false);
    expect(isInCurve({ ...call, way: 'rareFaults' })).toBe(false);
    expect(placed(call)).toEqual({ distance: 0.2, rejected: true });
    expect(placed({ ...call, answer: { ...call.answer, call: 'accept' } }).rejected).toBe(false);
  });
});

const near = (value: number): number => expect.closeTo(value, 10) as number;
