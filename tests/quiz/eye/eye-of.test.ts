import { describe, expect, it } from 'vitest';
import { isParted } from '../../../src/quiz/eye/curve.ts';
import { eyeOf, verdictOf } from '../../../src/quiz/eye/eye-of.ts';
import type { CallRecord } from '../../../src/quiz/index.ts';
import { random } from '../../../src/quiz/random.ts';
import { callAt, calls } from '../../property/simulated-eyes.ts';

/** Calls of an eye at even steps about the limit, from a fixed seed. */
function made(
  bias: number,
  count: number,
  other: Partial<CallRecord> = {},
  { scatter = 0.08, seed = 5, reach = 0.3 } = {},
): readonly CallRecord[] {
  const chance = random(seed);
  return Array.from({ length: count }, (_, i) => {
    const distance = reach * (2 * (((i * 7) % count) / (count - 1)) - 1) + 0.001;
    return callAt(distance, calls({ bias, scatter, lapse: 0 }, distance, chance), other);
  });
}

/** Calls that one distance parts, so many. */
const parted = (count: number, other: Partial<CallRecord> = {}): readonly CallRecord[] =>
  Array.from({ length: count }, (_, i) => {
    const distance = 0.02 * (i - count / 2 + 0.5);
    return callAt(distance, distance > 0 ? 'reject' : 'accept', other);
  });

describe('the eye of a skill', () => {
  it('is none without calls', () => {
    expect(eyeOf([])).toBeNull();
  });

  it('shows its bias from 20 calls and its scatter from 60', () => {
    expect(eyeOf(made(0.1, 19))).toMatchObject({
      calls: 19,
      bias: null,
      scatter: null,
      verdict: null,
    });
    const at20 = eyeOf(made(0.1, 20));
    expect(at20?.bias).not.toBeNull();
    expect(at20?.scatter).toBeNull();
    expect(eyeOf(made(0.1, 59))?.scatter).toBeNull();
    const at60 = eyeOf(made(0.1, 60));
    expect(at60?.scatter).toMatchObject({ value: expect.any(Number) as number });
  });

  it('lies about the bias and the scatter that the calls were made with', () => {
    const eye = eyeOf(made(0.1, 400));
    const { bias, scatter } = eye ?? {};
    expect(bias?.low).toBeLessThan(0.1);
    expect(bias?.high).toBeGreaterThan(0.1);
    expect((bias?.high ?? 9) - (bias?.low ?? 0)).toBeLessThan(0.06);
    expect(bias?.value).toBeCloseTo(0.1, 1);
    if (scatter === null || scatter === undefined || scatter === 'sharperThanShown') throw Error();
    expect(scatter.low).toBeLessThan(0.08);
    expect(scatter.high).toBeGreaterThan(0.08);
    expect(scatter.high / scatter.low).toBeLessThan(2);
  });

  it('is the same on each scale, in its unit', () => {
    // 5 degrees is to degrees what 0.08 is to the ratio: all grids are laid out in usual scatters.
    const ratio = eyeOf(made(0.08, 80));
    const degrees = eyeOf(
      made(0.08, 80).map((call) => ({
        ...call,
        scale: 'deg',
        distance: (call.distance * 5) / 0.08,
      })),
    );
    expect(degrees?.scale).toBe('deg');
    expect(((degrees?.bias?.value ?? NaN) * 0.08) / 5).toBeCloseTo(ratio?.bias?.value ?? NaN, 6);
  });

  it('is sharper than the spacing shown where one distance parts all its calls', () => {
    const eye = eyeOf(parted(60));
    expect(eye?.scatter).toBe('sharperThanShown');
    expect(eye?.bias?.low).toBeLessThan(0);
    expect(eye?.bias?.high).toBeGreaterThan(0);
    expect(eye?.verdict).toBe('fair');
    expect(eyeOf(parted(59))?.scatter).toBeNull();
  });

  it('says strict, lenient, fair or nothing yet, as far as the interval bears it', () => {
    expect(verdictOf({ value: -0.1, low: -0.2, high: -0.01 }, 0.05)).toBe('strict');
    expect(verdictOf({ value: 0.1, low: 0.01, high: 0.2 }, 0.05)).toBe('lenient');
    expect(verdictOf({ value: 0, low: -0.05, high: 0.05 }, 0.05)).toBe('fair');
    // past the limit by so little that it is fair, though surely not nothing
    expect(verdictOf({ value: 0.02, low: 0.01, high: 0.03 }, 0.05)).toBe('fair');
    expect(verdictOf({ value: 0, low: -0.06, high: 0.04 }, 0.05)).toBeNull();
    expect(verdictOf({ value: 0.1, low: 0, high: 0.2 }, 0.05)).toBeNull();
    expect(verdictOf({ value: -0.1, low: -0.2, high: 0 }, 0.05)).toBeNull();
    expect(eyeOf(made(0.15, 200))?.verdict).toBe('lenient');
    expect(eyeOf(made(-0.15, 200))?.verdict).toBe('strict');
  });

  it('leaves out what says nothing of the line, and what was made on another scale', () => {
    const base = made(0, 30);
    const others = [
      callAt(0.1, 'refer'),
      callAt(0.1, 'accept', { truth: 'refer' }),
      callAt(-Infinity, 'accept'),
      callAt(0.3, 'accept', { way: 'rareFaults' }),
      callAt(0.1, 'accept', { scale: 'deg' }),
    ];
    const eye = eyeOf([...others, ...base]);
    expect(eye).toEqual(eyeOf(base));
    expect(eye?.calls).toBe(30);
  });

  it('parts only where all that was accepted stands no farther than all that was rejected', () => {
    const call = (distance: number, rejected: boolean) => ({ distance, rejected });
    expect(isParted([call(1, false), call(2, true)])).toBe(true);
    expect(isParted([call(1, false), call(1, true)])).toBe(true);
    expect(isParted([call(2, false), call(1, true)])).toBe(false);
    expect(isParted([call(1, true), call(2, true)])).toBe(true);
  });
});

describe('calls at several magnifications', () => {
  it('are one group within a tenth of one middle, and two beyond', () => {
    // 18 and 22 lie a tenth on either side of 20; 22.1 doesn't.
    const mixed = (wide: number) => [
      ...made(0, 30, { pxPerMm: 18 }),
      ...made(0, 20, { pxPerMm: wide }),
    ];
    expect(eyeOf(mixed(22))?.groups).toHaveLength(1);
    expect(eyeOf(mixed(22.1))?.groups).toHaveLength(2);
  });

  it('are pooled where their intervals overlap, the larger group first', () => {
    const eye = eyeOf([...made(0, 30, { pxPerMm: 10 }), ...made(0, 40, { pxPerMm: 30 })]);
    expect(eye?.calls).toBe(70);
    expect(eye?.pxPerMm).toBe(30);
    expect(eye?.groups.map(({ calls: n, pxPerMm, pooled }) => [n, pxPerMm, pooled])).toEqual([
      [40, 30, true],
      [30, 10, true],
    ]);
    expect(eye?.scatter).not.toBeNull();
    expect(eye?.groups[0]?.scatter).toBeNull();
  });

  it('stay apart where their biases differ, and the larger group speaks', () => {
    const [large, small] = [made(0.2, 200, { pxPerMm: 30 }), made(-0.15, 60, { pxPerMm: 10 })];
    const eye = eyeOf([...small, ...large]);
    expect(eye?.calls).toBe(200);
    expect(eye?.pxPerMm).toBe(30);
    expect(eye?.verdict).toBe('lenient');
    expect(eye?.groups.map(({ pooled, verdict }) => [pooled, verdict])).toEqual([
      [true, 'lenient'],
      [false, 'strict'],
    ]);
  });

  it('stay apart where their scatters differ, though their biases agree', () => {
    const sharp = made(0, 200, { pxPerMm: 30 }, { scatter: 0.02, seed: 7, reach: 0.1 });
    const blunt = made(0, 200, { pxPerMm: 10 }, { scatter: 0.2, seed: 8, reach: 0.6 });
    expect(eyeOf([...sharp, ...blunt])?.groups.map(({ pooled }) => pooled)).toEqual([true, false]);
  });
});
