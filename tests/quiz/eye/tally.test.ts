import { describe, expect, it } from 'vitest';
import { shiftOf, tallyOf } from '../../../src/quiz/eye/tally.ts';
import type { Answer, CallRecord } from '../../../src/quiz/index.ts';
import { callWith } from '../any-call.ts';

/** So many calls of sections of one truth, answered alike. */
function many(
  count: number,
  truth: CallRecord['truth'],
  call: Answer['call'],
  { sure = 80, fault = null as Answer['fault'] } = {},
): readonly CallRecord[] {
  return Array.from({ length: count }, () =>
    callWith({
      truth,
      fault: truth === 'reject' ? 'undercut.max' : null,
      answer: { call, fault, sure },
    }),
  );
}

describe('what calls add up to', () => {
  it('is nothing but their number without calls', () => {
    expect(tallyOf([])).toEqual({
      calls: 0,
      right: 0,
      misses: null,
      falseAlarms: null,
      referred: { calls: 0, decidable: 0, open: 0 },
      dPrime: null,
      criterion: null,
      sureness: null,
      reliability: [],
      agreement: null,
      named: { calls: 0, right: 0 },
      confusions: [],
    });
  });

  const calls = [
    ...many(7, 'reject', 'reject'),
    ...many(3, 'reject', 'accept'),
    ...many(10, 'accept', 'accept'),
  ];

  it('has misses and false alarms with Wilson limits, of ten sections each or none', () => {
    // Source: Wilson 3 of 10 and 0 of 10, SciPy 1.17.1 test_morestats.py from R 3.6.2.
    const { misses, falseAlarms, right } = tallyOf(calls);
    expect(right).toBe(17);
    expect(misses?.value).toBeCloseTo(0.3, 12);
    expect(misses?.low).toBeCloseTo(0.1077913, 7);
    expect(misses?.high).toBeCloseTo(0.6032219, 7);
    expect(misses?.calls).toBe(10);
    expect(falseAlarms).toMatchObject({ value: 0, low: 0, calls: 10 });
    expect(falseAlarms?.high).toBeCloseTo(0.2775328, 7);
    expect(tallyOf(calls.slice(1)).misses).toBeNull();
    expect(tallyOf(calls.slice(1)).falseAlarms).not.toBeNull();
    expect(tallyOf(calls.slice(0, -1)).falseAlarms).toBeNull();
  });

  it('has d′ and c with the log-linear correction, of ten sections each or none', () => {
    // H = 7.5/11 = 0.68182, z = 0.47279; F = 0.5/11 = 0.04545, z = −1.69062:
    // d′ = 2.16341, c = 0.60892 (inverse normal by SciPy 1.17.1).
    const { dPrime, criterion } = tallyOf(calls);
    expect(dPrime?.value).toBeCloseTo(2.16341, 4);
    expect(criterion?.value).toBeCloseTo(0.60892, 4);
    expect(dPrime?.calls).toBe(20);
    // φ(0.47279) = 0.35676, φ(1.69062) = 0.09555: variances 0.21694/(10 × 0.12728) = 0.17045 and
    // 0.04339/(10 × 0.00913) = 0.47524; the root of their sum 0.80355, times 1.95996 = 1.57494.
    expect((dPrime?.high ?? NaN) - (dPrime?.value ?? NaN)).toBeCloseTo(1.575, 2);
    expect((criterion?.value ?? NaN) - (criterion?.low ?? NaN)).toBeCloseTo(1.575 / 2, 2);
    expect(tallyOf(calls.slice(1)).dPrime).toBeNull();
    expect(tallyOf(calls.slice(0, -1)).criterion).toBeNull();
  });

  it('counts a refer answered to a reject as no miss, and leaves it out of d′', () => {
    const referred = [...calls, ...many(5, 'reject', 'refer'), ...many(5, 'refer', 'reject')];
    const { misses, dPrime, calls: all } = tallyOf(referred);
    expect(misses?.value).toBeCloseTo(3 / 15, 12);
    expect(dPrime?.value).toBeCloseTo(tallyOf(calls).dPrime?.value ?? NaN, 12);
    expect(all).toBe(30);
  });

  it('tells what was referred apart: what could be decided, and what the sheet leaves open', () => {
    const referred = [
      ...many(3, 'reject', 'refer'),
      ...many(2, 'accept', 'refer'),
      ...many(4, 'refer', 'refer'),
      ...many(1, 'refer', 'accept'),
      ...many(6, 'accept', 'accept'),
    ];
    expect(tallyOf(referred).referred).toEqual({ calls: 9, decidable: 5, open: 5 });
  });

  it('has agreement as kappa from 20 calls', () => {
    // Table accept 10, 0 / reject 3, 7: agreed 17/20 = 0.85; by chance 0.5 × 0.65 + 0.5 × 0.35 = 0.5;
    // kappa 0.35/0.5 = 0.7.
    const { agreement } = tallyOf(calls);
    expect(agreement?.value).toBeCloseTo(0.7, 12);
    expect(agreement?.calls).toBe(20);
    expect(tallyOf(calls.slice(1)).agreement).toBeNull();
    expect(tallyOf(many(20, 'accept', 'accept')).agreement).toBeNull();
  });

  it('has a Brier score from 20 calls, and points of the curve from 10 at one sureness', () => {
    const stated = [
      ...many(9, 'accept', 'accept', { sure: 100 }),
      ...many(8, 'accept', 'accept', { sure: 60 }),
      ...many(2, 'accept', 'reject', { sure: 60 }),
    ];
    expect(tallyOf(stated).sureness).toBeNull();
    const { sureness, reliability } = tallyOf([
      ...stated,
      ...many(1, 'accept', 'reject', { sure: 100 }),
    ]);
    // 8 at 0.6 right: 0.16 each, 2 wrong: 0.36; 9 sure and right: 0, one sure and wrong: 1. (1.28 + 0.72 + 1)/20
    expect(sureness?.brier).toBeCloseTo(0.15, 12);
    // The scores' squares: 8 × 0.0256 + 2 × 0.1296 + 1 = 1.464; variance 0.0732 − 0.0225 = 0.0507; its
    // root over 20 is 0.05035, times 1.95996 = 0.09868.
    expect(sureness?.brierRange.high).toBeCloseTo(0.24868, 4);
    expect(sureness?.brierRange.low).toBeCloseTo(0.05132, 4);
    expect(reliability.map(({ stated: said, calls: n, right }) => [said, n, right])).toEqual([
      [0.6, 10, 8],
      [1, 10, 9],
    ]);
    expect(reliability[0]?.share.value).toBeCloseTo(0.8, 12);
    expect(tallyOf(stated).reliability).toHaveLength(1);
  });

  it('has what faults were taken for, the commonest first, and no right name among it', () => {
    const named = [
      ...many(2, 'reject', 'reject', { fault: 'undercut.max' }),
      ...many(1, 'reject', 'reject', { fault: 'notSure' }),
      ...many(1, 'reject', 'reject', { fault: 'underfill.max' }),
      ...many(3, 'reject', 'reject', { fault: 'overlap.max' }),
      ...many(1, 'reject', 'reject', { fault: 'somethingElse' }),
      ...many(4, 'reject', 'reject'),
      ...many(4, 'accept', 'reject', { fault: 'overlap.max' }),
    ];
    const { confusions, named: counted } = tallyOf(named);
    expect(counted).toEqual({ calls: 8, right: 2 });
    // not to be sure, or to see something else, is to take it for no other name
    expect(confusions).toEqual([
      { fault: 'undercut.max', takenFor: 'overlap.max', calls: 3 },
      { fault: 'undercut.max', takenFor: 'underfill.max', calls: 1 },
    ]);
  });

  it('counts a fault that the geometry brings along as named', () => {
    const short = callWith({
      truth: 'reject',
      fault: 'leg.min',
      answer: { call: 'reject', fault: 'isoscelesThroat.min', sure: 80 },
    });
    expect(tallyOf([short])).toMatchObject({ named: { calls: 1, right: 1 }, confusions: [] });
  });
});

describe('the shift that rare faults cause', () => {
  const common = [
    ...many(40, 'reject', 'reject'),
    ...many(10, 'reject', 'accept'),
    ...many(10, 'accept', 'reject'),
    ...many(40, 'accept', 'accept'),
  ];
  const rare = [
    ...many(6, 'reject', 'reject'),
    ...many(4, 'reject', 'accept'),
    ...many(2, 'accept', 'reject'),
    ...many(98, 'accept', 'accept'),
  ];

  it('is how much more reluctant to reject a person grows, with its interval', () => {
    // Common: H = 40.5/51, F = 10.5/51, c = 0. Rare: H = 6.5/11 = 0.59091, z = 0.22988; F = 2.5/101 =
    // 0.02475, z = −1.96422: c = 0.86717 (inverse normal by SciPy 1.17.1).
    const shift = shiftOf(common, rare);
    expect(shift?.value).toBeCloseTo(0.86717, 4);
    expect(shift?.calls).toBe(210);
    expect(shift?.low).toBeGreaterThan(0);
    expect((shift?.high ?? 0) - (shift?.value ?? 0)).toBeCloseTo(
      (shift?.value ?? 0) - (shift?.low ?? 0),
      12,
    );
    expect(shiftOf(rare, common)?.value).toBeCloseTo(-0.86717, 4);
  });

  it('is nothing with fewer than ten sections of either kind in either', () => {
    expect(shiftOf(common, rare.slice(1))).toBeNull();
    expect(shiftOf(common.slice(41), rare)).toBeNull();
    expect(shiftOf([], rare)).toBeNull();
  });
});
