import { describe, expect, it } from 'vitest';
import {
  agreeingOf,
  leaningOf,
  sureWorthOf,
  tellingOf,
} from '../../../src/quiz/eye/plain-verdict.ts';

// The thresholds are the program's own choice, no source; what is held here is that a verdict is given
// only where the whole interval bears it.
const between = (low: number, high: number) => ({ value: (low + high) / 2, low, high });

describe('a verdict in plain words', () => {
  it.each([
    [-0.4, 0.4, 'coin'],
    [-0.4, 0.6, 'weak'],
    [0.4, 0.9, 'weak'],
    [0.4, 1.6, null],
    [1.1, 2.4, 'fair'],
    [2.1, 3, 'well'],
  ])('on a d′ between %d and %d is %s', (low, high, verdict) => {
    expect(tellingOf(between(low, high))).toBe(verdict);
  });

  it.each([
    [0.1, 0.6, 'accept'],
    [-0.6, -0.1, 'reject'],
    [-0.2, 0.25, 'neither'],
    [-0.2, 0.5, null],
  ])('on a c between %d and %d is %s', (low, high, verdict) => {
    expect(leaningOf(between(low, high))).toBe(verdict);
  });

  it.each([
    [-0.4, -0.1, 'chance'],
    [-0.2, 0.3, 'poor'],
    [0.3, 0.6, null],
    [0.45, 0.8, 'partly'],
    [0.8, 0.95, 'close'],
  ])('on a kappa between %d and %d is %s', (low, high, verdict) => {
    expect(agreeingOf(between(low, high))).toBe(verdict);
  });

  it.each([
    [0.1, 0.2, 'better'],
    [0.2, 0.3, null],
    [0.25, 0.25, null],
    [0.3, 0.4, 'worse'],
  ])('on a Brier score between %d and %d is %s', (low, high, verdict) => {
    expect(sureWorthOf(between(low, high))).toBe(verdict);
  });
});
