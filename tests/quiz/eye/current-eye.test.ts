import { describe, expect, it } from 'vitest';
import { chanceOfReject, distanceOfReject } from '../../../src/quiz/eye/curve.ts';
import {
  chanceOfRight,
  currentEye,
  distanceFor,
  practiceDistance,
  tellingDistance,
} from '../../../src/quiz/eye/current-eye.ts';
import { callAt } from '../../property/simulated-eyes.ts';

describe('the eye that questions are placed by', () => {
  it('has no bias before the first call, and the width of all that is possible', () => {
    // Bias 0 ± 10 %, scatter about 8 %: together √(8² + 10²) = 12.8 % on the grid's nodes.
    const eye = currentEye([], 'ratio');
    expect(eye.bias).toBeCloseTo(0, 10);
    expect(eye.scatter).toBeGreaterThan(0.12);
    expect(eye.scatter).toBeLessThan(0.135);
    expect(eye.lapse).toBeCloseTo(0.02, 12);
    expect(currentEye([], 'deg').scatter / 5).toBeCloseTo(eye.scatter / 0.08, 10);
    expect(currentEye([], 'mm').scatter / 0.3).toBeCloseTo(eye.scatter / 0.08, 10);
  });

  it('turns lenient with a section accepted past the limit, strict with one rejected inside', () => {
    expect(currentEye([callAt(0.1, 'accept')], 'ratio').bias).toBeGreaterThan(0.01);
    expect(currentEye([callAt(-0.1, 'reject')], 'ratio').bias).toBeLessThan(-0.01);
  });

  it('looks at the latest 60 calls of its scale alone', () => {
    const recent = Array.from({ length: 60 }, (_, i) => callAt(0.02 * (i % 7), 'accept'));
    const old = Array.from({ length: 30 }, () => callAt(-0.2, 'reject'));
    const apart = [callAt(0.1, 'reject', { scale: 'deg' }), callAt(0.1, 'refer')];
    expect(currentEye([...old, ...recent, ...apart], 'ratio')).toEqual(currentEye(recent, 'ratio'));
    expect(currentEye([...recent, ...old.slice(0, 1)], 'ratio')).not.toEqual(
      currentEye(recent, 'ratio'),
    );
  });
});

describe('the distance for a chance of a right call', () => {
  const eye = { bias: 0.02, scatter: 0.1, lapse: 0.01 };

  it('has the bias in it: farther past the limit for a lenient eye, nearer inside', () => {
    // z = Φ⁻¹((0.85 − 0.01)/0.98) = Φ⁻¹(0.857143) = 1.067571 (SciPy 1.17.1):
    // reject 0.02 + 0.1067571, accept −(0.1067571 − 0.02).
    expect(distanceFor(0.85, eye, 'reject')).toBeCloseTo(0.1267571, 6);
    expect(distanceFor(0.85, eye, 'accept')).toBeCloseTo(-0.0867571, 6);
    expect(chanceOfRight(distanceFor(0.85, eye, 'reject'), eye)).toBeCloseTo(0.85, 10);
    expect(chanceOfRight(distanceFor(0.85, eye, 'accept'), eye)).toBeCloseTo(0.85, 10);
  });

  it('keeps at least half a scatter and at most 4 from the limit', () => {
    const lenient = { ...eye, bias: 0.35 };
    expect(distanceFor(0.85, lenient, 'accept')).toBeCloseTo(-0.05, 12);
    expect(distanceFor(0.85, lenient, 'reject')).toBeCloseTo(0.4, 12);
    expect(distanceFor(0.85, { ...eye, lapse: 0.2 }, 'reject')).toBeCloseTo(0.4, 12);
    expect(distanceFor(0.001, eye, 'reject')).toBeCloseTo(0.05, 12);
  });

  it('makes up in practice on the hard side for a side that a bias leaves too easy', () => {
    const biased = { bias: 0.2, scatter: 0.1, lapse: 0.01 };
    const [easy, hard] = [practiceDistance(biased, 'accept'), practiceDistance(biased, 'reject')];
    expect(easy).toBeCloseTo(-0.05, 12);
    const mean = (chanceOfRight(easy, biased) + chanceOfRight(hard, biased)) / 2;
    expect(mean).toBeCloseTo(0.85, 10);
    expect(practiceDistance(eye, 'reject')).toBeCloseTo(distanceFor(0.85, eye, 'reject'), 12);
    const strict = { ...biased, bias: -0.2 };
    expect(practiceDistance(strict, 'accept')).toBeCloseTo(-hard, 10);
  });
});

describe('the curve of an eye', () => {
  const eye = { bias: 0.1, scatter: 0.05, lapse: 0.02 };

  it('rejects half at its bias and, far off, all but its lapses', () => {
    expect(chanceOfReject(0.1, eye)).toBeCloseTo(0.5, 12);
    expect(chanceOfReject(10, eye)).toBeCloseTo(0.98, 12);
    expect(chanceOfReject(-10, eye)).toBeCloseTo(0.02, 12);
    // one scatter past: 0.02 + 0.96 × 0.8413447461
    expect(chanceOfReject(0.15, eye)).toBeCloseTo(0.8276909563, 9);
  });

  it('gives back the distance of a chance, infinite where lapses forbid it', () => {
    expect(distanceOfReject(0.8276909562, eye)).toBeCloseTo(0.15, 8);
    expect(distanceOfReject(0.99, eye)).toBe(Infinity);
    expect(distanceOfReject(0.01, eye)).toBe(-Infinity);
  });
});

describe('the section that tells most of a limit', () => {
  it('never stands at the limit itself nor out of reach', () => {
    const calls = [callAt(0.1, 'accept'), callAt(0.3, 'reject')];
    for (const reach of [0.1, 0.2, 0.7]) {
      const distance = tellingDistance(calls, 'ratio', reach);
      expect(Math.abs(distance)).toBeGreaterThanOrEqual(0.01 - 1e-12);
      expect(Math.abs(distance)).toBeLessThanOrEqual(reach);
    }
    expect(Math.abs(tellingDistance(calls, 'ratio', 0.001))).toBeCloseTo(0.01, 12);
    expect(Math.abs(tellingDistance(calls, 'deg', 15))).toBeGreaterThanOrEqual(0.625 - 1e-12);
  });

  it('goes after the line: past the limit for one who accepts there', () => {
    const lenient = [0.05, 0.1, 0.15].map((distance) => callAt(distance, 'accept'));
    expect(tellingDistance(lenient, 'ratio', 0.7)).toBeGreaterThan(0.05);
    const strict = lenient.map((call) => callAt(-call.distance, 'reject'));
    expect(tellingDistance(strict, 'ratio', 0.7)).toBeLessThan(-0.05);
  });
});
