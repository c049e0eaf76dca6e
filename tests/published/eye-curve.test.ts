import { describe, expect, it } from 'vitest';
import { chanceOfReject } from '../../src/quiz/eye/curve.ts';
import { distanceFor } from '../../src/quiz/eye/current-eye.ts';
import { fitCurve, type CurveShape, type Level } from '../../src/quiz/eye/fit-curve.ts';
import { normalQuantile } from '../../src/quiz/eye/normal-quantile.ts';
import { afterAnswer, questPlus } from '../../src/quiz/eye/quest-plus.ts';

const levels = (
  xs: readonly number[],
  calls: readonly number[],
  rejected: readonly number[],
): readonly Level[] =>
  xs.map((x, i) => ({ x, calls: calls[i] ?? NaN, rejected: rejected[i] ?? NaN }));

const plain = (link: CurveShape['link']): CurveShape => ({ link, guess: 0, lapse: 0 });
const within = (value: number, expected: number, tolerance: number): void =>
  expect(Math.abs(value - expected)).toBeLessThan(tolerance);

describe('a curve of greatest likelihood', () => {
  const beetles = levels(
    [1.6907, 1.7242, 1.7552, 1.7842, 1.8113, 1.8369, 1.861, 1.8839],
    [59, 60, 62, 56, 63, 59, 62, 60],
    [6, 13, 18, 28, 52, 53, 61, 60],
  );

  it('is the logit of the beetle data (psy-01)', () => {
    // Source: Bliss 1935 as in several public files; R's printed −60.72 (5.18), 34.27 (2.91),
    // deviance 11.2; more places worked apart from this program.
    const fit = fitCurve(beetles, plain('logit')) ?? never();
    within(fit.intercept, -60.7174545843, 1e-4);
    within(fit.slope, 34.2703257403, 1e-4);
    within(fit.standardErrors.intercept, 5.1807, 5e-4);
    within(fit.standardErrors.slope, 2.9121, 5e-4);
    within(fit.deviance, 11.2322, 1e-3);
    within(fit.half, 1.7717209648, 1e-7);
  });

  it('is the probit of the beetle data (psy-02)', () => {
    // Source: −34.935, 19.728 and deviance 10.12 (Dobson), from memory; worked apart from this program.
    const fit = fitCurve(beetles, plain('probit')) ?? never();
    within(fit.intercept, -34.9352588311, 1e-4);
    within(fit.slope, 19.7279341744, 1e-4);
    within(fit.standardErrors.intercept, 2.6479, 5e-4);
    within(fit.standardErrors.slope, 1.4872, 5e-4);
    within(fit.deviance, 10.1198, 1e-3);
    within(fit.half, 1.770852362, 1e-7);
    within(fit.scatter, 0.0506895446, 1e-7);
  });

  const sizes = levels(
    [2.4, 2.6, 2.8, 3, 3.2, 3.4, 3.6],
    [20, 20, 20, 20, 20, 20, 20],
    [0, 2, 5, 8, 14, 18, 20],
  );

  it('is that of an eye about a limit of 3 mm, with errors (psy-03)', () => {
    // Made for this program; fitted with SciPy 1.17.1.
    const fit = fitCurve(sizes) ?? never();
    within(fit.half, 3.0275383959, 1e-6);
    within(fit.scatter, 0.2847093823, 1e-6);
    within(fit.half - 3, 0.0275383959, 1e-6);
    within(normalQuantile(0.75) * fit.scatter, 0.1920335602, 1e-6);
    within(fit.standardErrors.half, 0.0401458, 1e-5);
    within(fit.standardErrors.scatter, 0.0389652, 1e-5);
    within(fit.half + normalQuantile(0.05) * fit.scatter, 2.5592331358, 1e-5);
    within(fit.half + normalQuantile(0.95) * fit.scatter, 3.4958436561, 1e-5);
    within(fit.deviance, 2.3180604, 1e-5);
  });

  it('stands elsewhere as a logit (psy-04)', () => {
    // Made for this program; fitted with SciPy 1.17.1: half at 3.0308.
    within(fitCurve(sizes, plain('logit'))?.half ?? NaN, 3.0308, 5e-5);
  });

  it('is that of right answers between two (psy-05)', () => {
    // Data: psignifit, docs/basic-usage.md (commit 29efbe53); fitted with SciPy 1.17.1.
    const between = levels(
      [
        0.001, 0.0015, 0.002, 0.0025, 0.003, 0.0035, 0.004, 0.0045, 0.005, 0.006, 0.007, 0.008,
        0.01,
      ],
      Array.from({ length: 13 }, () => 90),
      [45, 50, 44, 44, 52, 53, 62, 64, 76, 79, 88, 90, 90],
    );
    const fit = fitCurve(between, { link: 'probit', guess: 0.5, lapse: 0 }) ?? never();
    within(fit.half, 0.0046478171, 1e-8);
    within(fit.scatter, 0.0014162573, 1e-8);
    within(fit.deviance, 5.932813, 1e-4);
  });

  it('is none where one level parts all that was accepted from all that was rejected (psy-06)', () => {
    const calls = [10, 10, 10, 10];
    const at = [2.5, 2.7, 3.3, 3.5];
    expect(fitCurve(levels(at, calls, [0, 0, 10, 10]))).toBeNull();
    expect(fitCurve(levels(at, calls, [0, 0, 5, 10]))).toBeNull();
    expect(fitCurve(levels(at, calls, [0, 0, 0, 0]))).toBeNull();
    expect(fitCurve(levels(at, calls, [0, 1, 9, 10]))).not.toBeNull();
  });

  it('is none where more is rejected inside the limit than past it, or all stood at one level', () => {
    expect(fitCurve(levels([1, 2, 3], [10, 10, 10], [8, 5, 2]))).toBeNull();
    expect(fitCurve(levels([2, 2], [10, 10], [4, 6]))).toBeNull();
  });

  it('promises least error of both bias and scatter 1.138 scatters, or 1.543 units, off (psy-11)', () => {
    // Source: D-optimal points of the probit and the logit, a standard result, from memory. Two levels,
    // a and −a, with the shares that the curve itself has there; intercept and slope are independent by
    // symmetry, and the product of their errors is least at the D-optimal a.
    const product = (link: CurveShape['link'], a: number): number => {
      const share = (z: number): number =>
        link === 'probit'
          ? chanceOfReject(z, { bias: 0, scatter: 1, lapse: 0 })
          : 1 / (1 + Math.exp(-z));
      const calls = 1000;
      const seen = levels([-a, a], [calls, calls], [calls * share(-a), calls * share(a)]);
      const { intercept, slope } = (fitCurve(seen, plain(link)) ?? never()).standardErrors;
      return intercept * slope;
    };
    for (const [link, best] of [
      ['probit', 1.1381012773],
      ['logit', 1.5434046383],
    ] as const) {
      let [low, high] = [0.5, 2.5];
      while (high - low > 1e-7) {
        const [left, right] = [low + (high - low) / 3, high - (high - low) / 3];
        if (product(link, left) < product(link, right)) high = right;
        else low = left;
      }
      within(low, best, 1e-6);
    }
  });

  it('has errors that shrink with the calls as planned (psy-12)', () => {
    // Source: 7 equal levels over ±1.5 scatters: 0.25, 0.18, 0.125 and 0.088 scatters for the half
    // after 35, 70, 140 and 280 calls; worked apart from this program.
    const at = [-1.5, -1, -0.5, 0, 0.5, 1, 1.5];
    const share = (z: number): number => chanceOfReject(z, { bias: 0, scatter: 1, lapse: 0 });
    for (const [all, error, tolerance] of [
      [35, 0.25, 0.005],
      [70, 0.18, 0.005],
      [140, 0.125, 0.0005],
      [280, 0.088, 0.0005],
    ] as const) {
      const each = at.map(() => all / 7);
      const seen = levels(
        at,
        each,
        at.map((z) => (all / 7) * share(z)),
      );
      within(fitCurve(seen)?.standardErrors.half ?? NaN, error, tolerance);
    }
  });
});

describe('the distance of a chance', () => {
  const eye = { bias: 0, scatter: 2, lapse: 0 };

  it('is one scatter for the error that is best to learn from (psy-10)', () => {
    // Source: Wilson, Shenhav, Straccia and Cohen, Nature Communications 10:4646, 2019: error 15.87 %.
    expect(1 - chanceOfReject(2, eye)).toBeCloseTo(0.1586552539, 9);
    expect(distanceFor(0.8413447461, eye, 'reject') / eye.scatter).toBeCloseTo(1, 8);
  });

  it('is where so many right calls in a row are an even chance (psy-07)', () => {
    // Source: Levitt 1971, from memory: one step down after n right calls holds p^n = 1/2.
    const targets = [0.7071067812, 0.793700526, 0.8408964153];
    for (const [i, target] of targets.entries()) {
      const right = chanceOfReject(distanceFor(target, eye, 'reject'), eye);
      expect(right ** (i + 2)).toBeCloseTo(0.5, 9);
    }
  });
});

describe('two sizes and one curve', () => {
  it('give d′ as their distance in scatters, and c as how far the half lies past their middle (psy-16)', () => {
    // By the model (derived): z(H) = (x2 − b)/σ, z(F) = (x1 − b)/σ.
    const eye = { bias: 0.3, scatter: 0.5, lapse: 0 };
    const z = (x: number): number => normalQuantile(chanceOfReject(x, eye));
    expect(z(0.6) - z(-0.2)).toBeCloseTo(0.8 / 0.5, 10);
    expect(-(z(0.6) + z(-0.2)) / 2).toBeCloseTo((0.3 - 0.2) / 0.5, 10);
  });

  it('agree with the analytic method of a gauge study (psy-17)', () => {
    // Source: two public help texts on the attribute study by the analytic method; counts from one of
    // them; half-count correction from memory; lower limit 1.5 chosen here. A straight line by least
    // squares through z(share), for which bias and repeatability are read.
    const at = [1.35, 1.4, 1.45, 1.5, 1.55, 1.6, 1.65, 1.7];
    const accepts = [0, 3, 8, 13, 15, 18, 19, 20];
    const shares = accepts.map((a) => (a < 10 ? a + 0.5 : a > 10 ? a - 0.5 : 10) / 20);
    expect(shares).toEqual([0.025, 0.175, 0.425, 0.625, 0.725, 0.875, 0.925, 0.975]);
    const z = shares.map(normalQuantile);
    const mean = (all: readonly number[]): number => all.reduce((a, b) => a + b, 0) / all.length;
    const [x0, z0] = [mean(at), mean(z)];
    const slope =
      mean(at.map((x, i) => (x - x0) * ((z[i] ?? NaN) - z0))) / mean(at.map((x) => (x - x0) ** 2));
    const intercept = z0 - slope * x0;
    expect(slope).toBeCloseTo(10.3827675656, 6);
    expect(intercept).toBeCloseTo(-15.5358989596, 6);
    expect(1.5 + intercept / slope).toBeCloseTo(0.0036842189, 7);
    const wide = normalQuantile(0.995) - normalQuantile(0.005);
    expect(wide / slope / 1.08).toBeCloseTo(0.4594203073, 7);
    // The same counts by greatest likelihood: the same half, to within two standard errors.
    const seen = levels(
      at,
      at.map(() => 20),
      accepts,
    );
    const fit = fitCurve(seen) ?? never();
    within(fit.half, -intercept / slope, 2 * fit.standardErrors.half);
  });
});

describe('the posterior of a threshold', () => {
  it('has the means and modes of a QUEST session (psy-15)', () => {
    // Source: beta 3.5, delta 0.01, grain 0.01 of psychopy/contrib/quest.py; a grid of its own, worked
    // apart from this program.
    const [beta, delta, gamma, wanted] = [3.5, 0.01, 0.5, 0.82];
    // Share right = δγ + (1 − δ)(1 − (1 − γ) exp(−10^(βx))): solved for x at 0.82.
    const inner = (1 - (wanted - delta * gamma) / (1 - delta)) / (1 - gamma);
    const xThreshold = Math.log10(-Math.log(inner)) / beta;
    expect(xThreshold).toBeCloseTo(0.0048394371, 9);
    const thresholds = Array.from({ length: 501 }, (_, i) => -1 + (i - 250) * 0.01);
    const trials = [
      [-1, true],
      [-1.2, true],
      [-1.4, false],
      [-1.3, true],
      [-1.4, true],
      [-1.5, false],
    ] as const;
    const quest = questPlus(
      trials.map(([x]) => x),
      thresholds,
      (x, threshold) => {
        const reach = Math.exp(-(10 ** (beta * (x - threshold + xThreshold))));
        return delta * gamma + (1 - delta) * (1 - (1 - gamma) * reach);
      },
    );
    let weights = Float64Array.from(thresholds, (t) => Math.exp(-0.5 * ((t + 1) / 2) ** 2));
    const found = trials.map(([, right], i) => {
      weights = afterAnswer(quest, weights, i, right) as typeof weights;
      const mean = thresholds.reduce((sum, t, k) => sum + t * (weights[k] ?? NaN), 0);
      return { mean, mode: thresholds[weights.indexOf(Math.max(...weights))] ?? NaN };
    });
    const means = [
      -1.3566319967, -1.6630114941, -0.406704955, -0.5516170645, -0.6887573136, -0.5073923301,
    ];
    const modes = [-1.22, -1.4, -1.21, -1.27, -1.32, -1.28];
    found.forEach(({ mean, mode }, i) => {
      within(mean, means[i] ?? NaN, 1e-6);
      within(mode, modes[i] ?? NaN, 1e-9);
    });
  });
});

function never(): never {
  throw new Error('no curve was fitted');
}
