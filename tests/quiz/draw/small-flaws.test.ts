import { describe, expect, it } from 'vitest';
import { defaultJoint } from '../../../src/joint/index.ts';
import type { Joint } from '../../../src/joint/index.ts';
import type { Check } from '../../../src/limits/index.ts';
import type { Fields } from '../../../src/quiz/draw/joint-fields.ts';
import { smallFlaws } from '../../../src/quiz/draw/small-flaws.ts';
import { random } from '../../../src/quiz/random.ts';
import { madeCheck } from './made-check.ts';

const seeds = Array.from({ length: 1200 }, (_, seed) => seed);
const flawsOf = (joint: Joint, checks: readonly Check[] = [], scant = false): readonly Fields[] =>
  seeds.map((seed) => smallFlaws(random(seed), joint, checks, scant));
const valuesOf = (flaws: readonly Fields[], name: string): readonly number[] =>
  flaws.map((one) => Number(one[name] ?? 0));
const some = (values: readonly number[]): readonly number[] => values.filter((one) => one !== 0);

/** Where there is any it fills a range, and so large a share of joints have it. */
function expectSome(values: readonly number[], low: number, high: number, share: number): void {
  const there = some(values);
  const near = (high - low) / 15;
  expect(Math.min(...there)).toBeGreaterThanOrEqual(low - 1e-9);
  expect(Math.min(...there)).toBeLessThanOrEqual(low + near);
  expect(Math.max(...there)).toBeLessThanOrEqual(high + 1e-9);
  expect(Math.max(...there)).toBeGreaterThanOrEqual(high - near);
  const spare = 3 * Math.sqrt((share * (1 - share)) / values.length) + 0.01;
  expect(Math.abs(there.length / values.length - share)).toBeLessThan(spare);
}

const tee = defaultJoint('fillet');
const butt = { ...defaultJoint('butt'), capHeight: 2 };

describe('what is a little amiss with a fillet', () => {
  const flaws = () => flawsOf(tee);

  it('is a groove at either toe four times in ten: 0.15 to 0.85 of 0.4 mm where nothing is said', () => {
    for (const side of [1, 2]) {
      const depths = valuesOf(flaws(), `undercut${side}Depth`);
      expectSome(depths, 0.15 * 0.4, 0.85 * 0.4, 0.4);
      const grooves = flaws().filter((_, i) => depths[i] !== 0);
      const shape = (one: Fields) => one[`undercut${side}Shape`];
      const sharp = grooves.filter((one) => shape(one) === 'sharp').length / grooves.length;
      expect(sharp).toBeGreaterThan(0.42);
      expect(sharp).toBeLessThan(0.58);
      expect(new Set(flaws().map(shape))).toEqual(new Set(['sharp', 'rounded']));
    }
  });

  it('is 2.6 to 5 times as wide as deep, half a mm at least', () => {
    for (const one of flaws()) {
      const [depth, width] = [Number(one['undercut1Depth']), Number(one['undercut1Width'])];
      expect(width).toBeGreaterThanOrEqual(Math.max(0.5, 2.6 * depth));
      expect(width).toBeLessThanOrEqual(Math.max(0.5, 5 * depth));
    }
    const deep = flawsOf(tee, [madeCheck({ measurement: 'undercut1', limit: 4 })]);
    const times = deep.flatMap((one) => {
      const depth = Number(one['undercut1Depth']);
      return depth > 0.3 ? [Number(one['undercut1Width']) / depth] : [];
    });
    expectSome(times, 2.6, 5, 1);
  });

  it('is a share of what is comfortably inside the limit, at most of twice the usual', () => {
    // 0.5 mm less 1.2 times a tenth: 0.5 e^-0.12 = 0.4435
    const tight = flawsOf(tee, [madeCheck({ measurement: 'undercut1', limit: 0.5 })]);
    const most = 0.5 * Math.exp(-0.12);
    expectSome(valuesOf(tight, 'undercut1Depth'), 0.15 * most, 0.85 * most, 0.4);
    const wide = flawsOf(tee, [madeCheck({ measurement: 'undercut1', limit: 3 })]);
    expectSome(valuesOf(wide, 'undercut1Depth'), 0.15 * 0.8, 0.85 * 0.8, 0.4);
    const none = flawsOf(tee, [madeCheck({ measurement: 'undercut1', limit: 0, measured: 0 })]);
    expect(some(valuesOf(none, 'undercut1Depth'))).toEqual([]);
    expectSome(valuesOf(none, 'undercut2Depth'), 0.15 * 0.4, 0.85 * 0.4, 0.4);
  });

  it('is a gap four times in ten: of 0.8 mm welded, of 1 mm at fit-up, where there is nothing else', () => {
    expectSome(valuesOf(flaws(), 'rootGap'), 0.15 * 0.8, 0.85 * 0.8, 0.4);
    const fitUp = flawsOf({ ...tee, stage: 'fitUp' });
    expectSome(valuesOf(fitUp, 'rootGap'), 0.15, 0.85, 0.4);
    expect(new Set(fitUp.flatMap((one) => Object.keys(one)))).toEqual(new Set(['rootGap']));
  });

  it('is a wave in the face two times in ten, none so small that nobody sees it', () => {
    const waves = valuesOf(flaws(), 'reverseCurve');
    expectSome(waves.map(Math.abs), 0.1, 0.4, 0.15);
    const [up, down] = [
      waves.filter((one) => one > 0).length,
      waves.filter((one) => one < 0).length,
    ];
    expect(Math.abs(up - down)).toBeLessThan(45);
  });

  it('is a leg as scant as it may be, three times in ten, always where a throat is asked about', () => {
    const asked = [
      madeCheck({ measurement: 'leg1', sense: 'min', limit: 6, measured: 7 }),
      madeCheck({ measurement: 'leg2', sense: 'min', limit: 8, measured: 9 }),
    ];
    const low = (limit: number) => limit * Math.exp(0.11);
    const high = (limit: number) => limit * Math.exp(0.24);
    expectSome(valuesOf(flawsOf(tee, asked), 'leg1'), low(6), high(6), 0.3);
    const scant = flawsOf(tee, asked, true);
    expectSome(valuesOf(scant, 'leg1'), low(6), high(6), 1);
    expectSome(valuesOf(scant, 'leg2'), low(8), high(8), 1);
    // nothing is asked of the legs
    expect(some(valuesOf(flawsOf(tee, [], true), 'leg1'))).toEqual([]);
  });
});

describe('what is a little amiss with a butt weld', () => {
  const flaws = () => flawsOf(butt);

  it('is a bend of up to 1° or plates up to 0.48 mm out of line, either way', () => {
    const bends = valuesOf(flaws(), 'angularMisalignment');
    expectSome(bends.map(Math.abs), 0.15, 0.85, 0.4);
    const steps = valuesOf(flaws(), 'offset');
    expectSome(steps.map(Math.abs), 0.15 * 0.48, 0.85 * 0.48, 0.4);
    for (const list of [bends, steps]) {
      const up = list.filter((one) => one > 0).length / some(list).length;
      expect(up).toBeGreaterThan(0.42);
      expect(up).toBeLessThan(0.58);
    }
    const raised = valuesOf(flawsOf({ ...butt, offset: 2 }), 'offset');
    for (const offset of raised) expect(Math.abs(offset - 2)).toBeLessThanOrEqual(0.41);
  });

  it('is that alone at fit-up', () => {
    const fitUp = flawsOf({ ...butt, stage: 'fitUp' });
    expect(new Set(fitUp.flatMap((one) => Object.keys(one)))).toEqual(
      new Set(['angularMisalignment', 'offset']),
    );
  });

  it('is a groove at a face toe, and at a root toe where no strip lies over it', () => {
    for (const name of ['undercut1', 'undercut2', 'rootUndercut1', 'rootUndercut2']) {
      const depths = valuesOf(flaws(), `${name}Depth`);
      expect([name, Math.max(...depths) <= 0.34]).toEqual([name, true]);
      // a steep toe has no groove beside it: one in eight joints at either
      const there = some(depths).length / depths.length;
      expect(there).toBeGreaterThan(name.startsWith('root') ? 0.36 : 0.3);
      expect(there).toBeLessThan(name.startsWith('root') ? 0.44 : 0.4);
    }
    const backed = flawsOf({ ...butt, backing: 'strip' });
    const names = new Set(backed.flatMap((one) => Object.keys(one)));
    expect([...names].filter((name) => name.startsWith('root'))).toEqual([]);
    expect(names).toContain('undercut1Depth');
  });

  it('is a dip in the cap three times in ten, whose bottom stays above the plates', () => {
    expectSome(valuesOf(flaws(), 'capDip'), 0.4, 1.2, 0.3);
  });

  it('is a high cap leaning over a toe one time in four, and no groove at that toe', () => {
    const leaning = flaws().filter((one) => one['crownShift'] !== undefined);
    expectSome(valuesOf(flaws(), 'crownShift').map(Math.abs), 0.32, 0.46, 0.25);
    expectSome(valuesOf(leaning, 'capHeight'), 2.6, 3.4, 1);
    const over = (sign: 1 | -1) =>
      leaning.filter((one) => Math.sign(Number(one['crownShift'])) === sign);
    expect(over(-1).every((one) => one['undercut1Depth'] === 0)).toBe(true);
    expect(over(1).every((one) => one['undercut2Depth'] === 0)).toBe(true);
    expect(over(-1).some((one) => Number(one['undercut2Depth']) > 0)).toBe(true);
    expect(over(1).some((one) => Number(one['undercut1Depth']) > 0)).toBe(true);
    expect(Math.abs(over(1).length - over(-1).length)).toBeLessThan(70);
    // a fillet has none
    expect(flawsOf(tee).some((one) => 'crownShift' in one)).toBe(false);
  });
});
