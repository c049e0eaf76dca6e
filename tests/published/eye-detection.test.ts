import { describe, expect, it } from 'vitest';
import { agreementOf } from '../../src/quiz/eye/agreement.ts';
import {
  areaOf,
  areaOfRates,
  correctedRates,
  criterion,
  dPrime,
  grierBias,
  logBeta,
  standardErrorOfDPrime,
} from '../../src/quiz/eye/detection.ts';
import { normalQuantile } from '../../src/quiz/eye/normal-quantile.ts';
import { clopperPearson, wilson } from '../../src/quiz/eye/proportion.ts';
import { areaOfRatings } from '../../src/quiz/eye/ratings.ts';
import { surenessOf } from '../../src/quiz/eye/sureness.ts';
import { normalShare } from '../../src/limits/index.ts';

describe('telling good from bad', () => {
  it('gives the indices of a perfect hit rate repaired to 0.99 (sdt-01)', () => {
    // Source: synopsis of Statistics::SDT (metacpan.org/pod/Statistics::SDT), which says that it
    // agrees with the example of Stanislaw and Todorov 1999: 50 of 50 hits, 17 of 25 false alarms,
    // the extreme rate alone repaired to 49.5/50. To two decimals.
    const rates = { hits: 0.99, falseAlarms: 0.68 };
    expect(Math.abs(dPrime(rates) - 1.86)).toBeLessThan(0.006);
    expect(Math.abs(criterion(rates) + 1.4)).toBeLessThan(0.006);
    expect(Math.abs(logBeta(rates) + 2.6)).toBeLessThan(0.006);
    expect(Math.abs(Math.exp(logBeta(rates)) - 0.07)).toBeLessThan(0.006);
    expect(Math.abs(areaOfRates(rates) - 0.82)).toBeLessThan(0.006);
    expect(Math.abs(areaOf(dPrime(rates)) - 0.91)).toBeLessThan(0.006);
    expect(Math.abs(grierBias(rates) + 0.91)).toBeLessThan(0.006);
  });

  it('gives other indices for the same counts with the log-linear correction (sdt-02)', () => {
    // Source: formula of Hautus 1995; worked twice apart from this program, no published value.
    const rates = correctedRates({ hits: 50, bad: 50, falseAlarms: 17, good: 25 });
    expect(rates.hits).toBeCloseTo(0.9901960784, 8);
    expect(rates.falseAlarms).toBeCloseTo(0.6730769231, 8);
    expect(dPrime(rates)).toBeCloseTo(1.8853430915, 8);
    expect(criterion(rates)).toBeCloseTo(-1.391097029, 8);
    expect(Math.exp(logBeta(rates))).toBeCloseTo(0.0726069107, 8);
    expect(areaOfRates(rates)).toBeCloseTo(0.8225676207, 8);
  });

  it.each([
    [0.7, 0.1, 1.806, 1.981],
    [0.5, 0.4, 0.253, 1.033],
    [0.85, 0.05, 2.681, 2.261],
  ])('gives the table of lecture notes at hits %d and false alarms %d (sdt-03 to 05)', (...row) => {
    // Source: W. Schneider, Short Notes on Theory of Signal Detection, docstoc.com/docs/111295505.
    const [hits, falseAlarms, d, beta] = row;
    expect(Math.abs(dPrime({ hits, falseAlarms }) - d)).toBeLessThan(0.0006);
    expect(Math.abs(Math.exp(logBeta({ hits, falseAlarms })) - beta)).toBeLessThan(0.0006);
  });

  it('gives the indices of 40 of 50 hits and 5 of 50 false alarms (sdt-06)', () => {
    // Source: counts and rates in the same notes; indices worked apart from this program.
    const rates = { hits: 0.8, falseAlarms: 0.1 };
    expect(dPrime(rates)).toBeCloseTo(2.1231727991, 8);
    expect(criterion(rates)).toBeCloseTo(0.219965166, 8);
    expect(Math.exp(logBeta(rates))).toBeCloseTo(1.5952397799, 8);
    expect(areaOfRates(rates)).toBeCloseTo(0.9131944444, 8);
    expect(areaOf(dPrime(rates))).toBeCloseTo(0.9333622851, 8);
    expect(grierBias(rates)).toBeCloseTo(0.28, 8);
  });

  it('keeps a perfect session finite, with no bias (sdt-07)', () => {
    // Source: formula of Hautus 1995; worked twice apart from this program.
    const rates = correctedRates({ hits: 20, bad: 20, falseAlarms: 0, good: 20 });
    expect(rates.hits).toBeCloseTo(0.9761904762, 8);
    expect(rates.falseAlarms).toBeCloseTo(0.0238095238, 8);
    expect(dPrime(rates)).toBeCloseTo(3.9615047933, 8);
    expect(criterion(rates)).toBeCloseTo(0, 8);
    expect(Math.exp(logBeta(rates))).toBeCloseTo(1, 8);
  });

  it('has no d′ and half an area where hits are no more than false alarms (edge case)', () => {
    // By the formulas: z(H) = z(F).
    const rates = { hits: 0.3, falseAlarms: 0.3 };
    expect(dPrime(rates)).toBe(0);
    expect(areaOfRates(rates)).toBe(0.5);
    expect(logBeta(rates)).toBeCloseTo(0, 12);
    expect(grierBias(rates)).toBeCloseTo(0, 12);
    expect(grierBias({ hits: 1, falseAlarms: 0 })).toBe(0);
  });

  it('takes the other branch of the area below chance (sdt-09)', () => {
    // Source: A′ with its sign (Snodgrass and Corwin), from memory; worked apart from this program.
    const rates = { hits: 0.1, falseAlarms: 0.7 };
    expect(dPrime(rates)).toBeCloseTo(-1.8059520783, 8);
    expect(areaOfRates(rates)).toBeCloseTo(0.119047619, 8);
  });

  it.each([
    [1, 0.7602499389, 0.6914624613],
    [2, 0.9213503965, 0.8413447461],
    [3, 0.9830525733, 0.9331927987],
  ])('gives the area and the best share right of a d′ of %d (sdt-10)', (d, area, right) => {
    // Source: Az = Φ(d′/√2) and Φ(d′/2), from memory; worked apart from this program.
    expect(areaOf(d)).toBeCloseTo(area, 9);
    expect(normalShare(d / 2)).toBeCloseTo(right, 9);
  });

  it('gives d′ of the share right between two (sdt-11)', () => {
    // Source: d′ = √2 z(share), from memory; worked apart from this program.
    expect(Math.SQRT2 * normalQuantile(0.75)).toBeCloseTo(0.9538725524, 9);
  });

  it('gives the standard error of d′ at hits 0.8 and false alarms 0.1 of 50 each (sdt-12)', () => {
    // Source: Gourevitch and Galanter 1967, from memory; worked apart from this program.
    const rates = { hits: 0.8, falseAlarms: 0.1 };
    expect(standardErrorOfDPrime(rates, { bad: 50, good: 50 })).toBeCloseTo(0.315, 3);
  });
});

describe('the area under ratings', () => {
  it('is that of the CT example (sdt-13)', () => {
    // Source: Hanley and McNeil, Radiology 143:29–36, 1982: 0.893, standard error 0.032; counts from memory.
    const { area, standardError } = areaOfRatings([33, 6, 6, 11, 2], [3, 2, 2, 11, 33]) ?? never();
    expect(area).toBeCloseTo(0.8931710615, 8);
    expect(standardError).toBeCloseTo(0.0324865796, 8);
  });

  it('is three quarters where one pair of four stands the wrong way (sdt-14)', () => {
    // Source: example of scikit-learn's roc_auc_score, from memory: scores 0.1 and 0.4 good, 0.35 and
    // 0.8 bad, here as four ratings in order.
    expect(areaOfRatings([1, 0, 1, 0], [0, 1, 0, 1])?.area).toBeCloseTo(0.75, 12);
  });

  it('takes six steps of sureness, whose middle gives d′ and c (sdt-15)', () => {
    // Made for this program and worked apart from it. Rejected: the last three steps.
    const [good, bad] = [
      [20, 12, 6, 5, 4, 3],
      [2, 3, 4, 8, 13, 20],
    ] as const;
    expect(areaOfRatings(good, bad)?.area).toBeCloseTo(0.8468, 8);
    const rates = { hits: (8 + 13 + 20) / 50, falseAlarms: (5 + 4 + 3) / 50 };
    expect(dPrime(rates)).toBeCloseTo(1.6216676507, 8);
    expect(criterion(rates)).toBeCloseTo(-0.1045312625, 8);
  });

  it('is none without good or without bad sections', () => {
    expect(areaOfRatings([0, 0], [3, 1])).toBeNull();
    expect(areaOfRatings([3, 1], [0, 0])).toBeNull();
  });
});

describe('limits of a share', () => {
  it.each([
    [20, 100, 0.95, 0.1266555521019559, 0.2918426890886281, 9],
    [3, 50, 0.99, 0.006872485, 0.202706269, 8],
    [0, 10, 0.95, 0, 0.3084971, 7],
    [10, 10, 0.95, 0.6915029, 1, 7],
    [7, 50, 0.95, 0.05819170033997342, 0.26739600249700846, 9],
  ])(
    'are exact for %d of %d at %d (ci-01 to ci-05)',
    (found, of, confidence, low, high, places) => {
      // Source: SciPy 1.17.1 test_morestats.py with values of R 3.6.2 binom.test, and its docstring.
      const limits = clopperPearson(found, of, confidence);
      expect(limits.low).toBeCloseTo(low, places);
      expect(limits.high).toBeCloseTo(high, places);
    },
  );

  it('are exact at one end alone: 10 of 10, and 29 of 29 for nine in ten', () => {
    // Source: R 3.6.2 binom.test in SciPy's tests (0.7411344); 0.05^(1/29) = 0.9018553724.
    expect(clopperPearson(10, 10, 0.9).low).toBeCloseTo(0.7411344, 7);
    expect(clopperPearson(29, 29, 0.9).low).toBeCloseTo(0.9018553724, 9);
  });

  it.each([
    [3, 10, 0.95, 0.1077913, 0.6032219, 7],
    [3, 10, 0.99, 0.07956632, 0.6799753, 7],
    [0, 10, 0.95, 0, 0.2775328, 7],
    [10, 10, 0.95, 0.7224672, 1, 7],
    [42, 50, 0.95, 0.7148578394, 0.9166257932, 9],
    [45, 50, 0.95, 0.7863976856, 0.9565242351, 9],
    [40, 50, 0.95, 0.6696289407, 0.8875624998, 9],
  ])('are Wilson’s for %d of %d at %d (ci-06 to ci-10)', (found, of, level, low, high, places) => {
    // Source: SciPy 1.17.1 test_morestats.py with values of R 3.6.2 prop.test(correct=FALSE); the
    // counts of 50 worked from the formula.
    const limits = wilson(found, of, level);
    expect(limits.low).toBeCloseTo(low, places);
    expect(limits.high).toBeCloseTo(high, places);
  });
});

describe('sureness', () => {
  const levels = [
    [0.5, 10, 5],
    [0.6, 10, 7],
    [0.7, 10, 7],
    [0.8, 20, 15],
    [0.9, 25, 22],
    [1, 25, 25],
  ].map(([stated = 0, calls = 0, right = 0]) => ({ stated, calls, right }));

  it('has a Brier score that comes apart as Murphy has it (cal-01)', () => {
    // Made for this program and worked apart from it; the identity is Murphy's, 1973.
    const found = surenessOf(levels) ?? never();
    expect(found.brier).toBeCloseTo(0.1325, 12);
    expect(found.reliability).toBeCloseTo(0.0016, 12);
    expect(found.resolution).toBeCloseTo(0.023, 12);
    expect(found.uncertainty).toBeCloseTo(0.1539, 12);
    expect(found.calibrationError).toBeCloseTo(0.025, 12);
    expect(found.overconfidence).toBeCloseTo(0.005, 12);
    expect(found.calls).toBe(100);
  });

  it('scores a quarter for a half always, and nothing for what came true (cal-02)', () => {
    // Source: futurestudies.ai, on the Brier score.
    expect(surenessOf([{ stated: 0.5, calls: 4, right: 3 }])?.brier).toBeCloseTo(0.25, 12);
    const sure = [
      { stated: 1, calls: 2, right: 2 },
      { stated: 0, calls: 2, right: 0 },
    ];
    expect(surenessOf(sure)?.brier).toBe(0);
  });
});

describe('agreement with the truth', () => {
  it('is the kappa of a printed table, with its errors and interval (agr-04)', () => {
    // Source: statsmodels test_inter_rater.py (commit 039c320d), there from a SAS printout.
    const table = [
      [0, 4, 1],
      [0, 8, 0],
      [0, 1, 5],
    ];
    const { kappa, standardError, standardErrorOfNone } = agreementOf(table) ?? never();
    expect(Math.abs(kappa.value - 0.4842)).toBeLessThan(6e-5);
    expect(Math.abs(standardError - 0.138)).toBeLessThan(6e-5);
    expect(Math.abs(kappa.low - 0.2137)).toBeLessThan(6e-5);
    expect(Math.abs(kappa.high - 0.7547)).toBeLessThan(6e-5);
    expect(Math.abs(standardErrorOfNone - 0.1484)).toBeLessThan(6e-5);
    expect(Math.abs(kappa.value / standardErrorOfNone - 3.2626)).toBeLessThan(6e-5);
  });
});

describe('the inverse normal', () => {
  it.each([
    [0.975, 1.959963984540054],
    [0.001, -3.090232306167813],
    [0.84, 0.994457883209753],
    [0.5, 0],
  ])('of %d is a standard value (num-01)', (share, z) => {
    // Source: standard values, from memory; worked apart from this program.
    expect(Math.abs(normalQuantile(share) - z)).toBeLessThan(1e-12);
  });
});

function never(): never {
  throw new Error('nothing was worked out');
}
