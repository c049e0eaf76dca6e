import { beforeAll, describe, expect, it } from 'vitest';
import type { Check } from '../../../src/limits/index.ts';
import { plainCheck } from '../../limits/plain-check.ts';
import { checkReading, tellingReading } from '../../../src/view/page/check-reading.ts';
import { conformanceText } from '../../../src/view/page/conformance-text.ts';
import { parameterText, parseParameter, scaleUnit } from '../../../src/view/page/parameter-text.ts';
import { sheetLengthText } from '../../../src/view/sheet-length.ts';
import { parameterName } from '../../../src/view/parameter-name.ts';
import { fetchRest, quantity, type Reading } from '../../../src/view/text.ts';

const mm: Reading = { units: 'mm', inches: 'decimal', terms: 'US' };
const fraction: Reading = { ...mm, units: 'in', inches: 'fraction' };
const inch: Reading = { ...mm, units: 'in' };

/** A leg of 8 mm where the sheet asks for 7, and what a test says. */
const check = (change: Partial<Check>): Check => ({
  ...plainCheck,
  measurement: 'leg1',
  sense: 'min',
  limit: 7,
  measured: 8,
  margin: 1,
  ...change,
});

describe('a limit in fractions of an inch', () => {
  // 1/8 in is 3.175 mm, 3 mm is 0.118 in: who obeyed an eighth would pass 3.1 mm
  it('is one only where it is one: 3 mm is no eighth', () => {
    const metric = check({ sense: 'max', limit: 3, measured: 3.1, margin: -0.1, call: 'reject' });
    expect(checkReading(metric, fraction)).toEqual({ required: '0.118 max', measured: '0.122' });
    const accepted = check({ sense: 'max', limit: 3, measured: 2.9, margin: 0.1, call: 'accept' });
    expect(checkReading(accepted, fraction)).toEqual({ required: '0.118 max', measured: '0.114' });
    // what a person chose for inches has no say while millimetres are read
    const inMm: Reading = { ...fraction, units: 'mm' };
    expect(tellingReading(accepted, inMm)).toBe(inMm);
    const inches = check({ sense: 'max', limit: 3.175, measured: 3, margin: 0.175 });
    expect(checkReading(inches, fraction)).toEqual({ required: '1/8 max', measured: '1/8' });
  });
});

describe('a check’s numbers', () => {
  it('carry one decimal where the limit does, two where it is small or finer', () => {
    expect(checkReading(check({}), mm)).toEqual({ required: '7.0 min', measured: '8.0' });
    expect(checkReading(check({ limit: 0.5, measured: 0.4 }), mm).required).toBe('0.50 min');
    expect(checkReading(check({ limit: 4.95, measured: 5.657 }), mm)).toEqual({
      required: '4.95 min',
      measured: '5.66',
    });
  });

  it('are what the whole length has to keep first, then what a short one may have', () => {
    // AWS D1.1 undersize, 5/16 in less 1/8 in, and undercut 1/32 in, up to 1/16 in in 2 in of 12
    const leg = check({ limit: 4.7625, ordinary: 7.9375, measured: 6, call: 'refer' });
    expect(checkReading(leg, fraction)).toMatchObject({
      required: '5/16 min',
      short: '3/16 short',
    });
    const cut = check({ sense: 'max', limit: 1.5875, ordinary: 0.79375, measured: 1 });
    expect(checkReading(cut, fraction)).toMatchObject({
      required: '1/32 max',
      short: '1/16 short',
    });
    const throat = check({ limit: 4.15, ordinary: 4.95, measured: 4.5, call: 'refer' });
    expect(checkReading(throat, mm)).toEqual({
      required: '4.95 min',
      short: '4.15 short',
      measured: '4.50',
    });
    // short over a typical length: a reject that would read 4.95 beside 4.95 min
    const hair = check({ limit: 4.15, ordinary: 4.95, measured: 4.949, call: 'reject' });
    expect(checkReading(hair, mm)).toMatchObject({ required: '4.95 min', measured: '4.949' });
  });

  it('give a measurement as fine as the drawing beside them, whatever the limit carries', () => {
    expect(checkReading(check({ sense: 'max', limit: 1, measured: 0.84 }), mm)).toEqual({
      required: '1.0 max',
      measured: '0.84',
    });
    const toe = check({ unit: 'deg', limit: 90, measured: 97.6 });
    expect(checkReading(toe, mm)).toEqual({ required: '90° min', measured: '97.6°' });
    // the legs of a rule: a thousandth of an inch either way
    expect(checkReading(check({ limit: 1, measured: 0.84 }), inch).measured).toBe('0.033');
  });

  it('carry whole degrees', () => {
    const toe = check({ unit: 'deg', limit: 100, measured: 114.95 });
    expect(checkReading(toe, mm)).toEqual({ required: '100° min', measured: '115°' });
  });

  it('never show a reject with one figure twice', () => {
    // 6.96 would read 7.0 beside 7.0 min, and yet be a reject.
    const short = check({ measured: 6.96, margin: -0.04, call: 'reject' });
    expect(checkReading(short, mm)).toEqual({ required: '7.0 min', measured: '6.96' });
    const hair = check({ measured: 6.9996, margin: -0.0004, call: 'reject' });
    expect(checkReading(hair, mm)).toEqual({ required: '7.0 min', measured: '6.9996' });
    // 7.8 mm is 19.65 sixty-fourths, and would read 5/16 (0.3125 in) beside 5/16 min; 0.30709 in.
    const eighth = { limit: 7.9375, printed: { value: 5 / 16, unit: 'in' } } as const;
    const five = check({ ...eighth, measured: 7.8, margin: -0.1375, call: 'reject' });
    expect(checkReading(five, fraction)).toEqual({ required: '0.313 min', measured: '0.307' });
    // 7.998 ÷ 25.4 = 0.314882 and 8 ÷ 25.4 = 0.314961: three decimals would make both 0.315.
    const thin = check({ limit: 8, measured: 7.998, margin: -0.002, call: 'reject' });
    expect(checkReading(thin, inch)).toEqual({ required: '0.315 min', measured: '0.3149' });
  });

  it('show a reject on its true side: 7.9385 is over 7.9375, and 7.94 would hide it', () => {
    const over = check({ sense: 'max', limit: 7.9375, measured: 7.9385, call: 'reject' });
    expect(checkReading(over, mm)).toEqual({ required: '7.938 max', measured: '7.939' });
  });

  it('stay fractions in anything but such a reject', () => {
    const five = check({ limit: 7.9375, measured: 7.8, call: 'refer' });
    expect(checkReading(five, fraction)).toEqual({ required: '5/16 min', measured: '5/16' });
    const clear = check({ limit: 7.9375, measured: 7.2, call: 'reject' });
    expect(checkReading(clear, fraction)).toEqual({ required: '5/16 min', measured: '9/32' });
  });

  it('are told apart the same way in the sentences of an opened reject', () => {
    const five = check({ limit: 7.9375, measured: 7.8, call: 'reject' });
    const telling = tellingReading(five, fraction);
    expect(quantity(7.8, 'mm', telling)).toBe('0.307 in');
    expect(quantity(7.9375, 'mm', telling)).toBe('0.313 in');
  });

  it('are put into inches for a reader of inches', () => {
    // 7 ÷ 25.4 = 0.27559, 8 ÷ 25.4 = 0.31496.
    expect(checkReading(check({}), inch)).toEqual({ required: '0.276 min', measured: '0.315' });
  });

  it('say so where there is nothing', () => {
    expect(checkReading(check({ limit: null, measured: null, margin: null }), mm)).toEqual({
      required: 'not set',
      measured: 'none',
    });
  });
});

describe('a parameter', () => {
  it('is named by the words of its field', () => {
    expect(parameterName('undercut1Depth').key).toBe('bench_parameter_undercut1_depth');
    expect(parameterName('spatter.3.place').key).toBe('bench_parameter_spatter_place');
  });

  it('shows every model step and one decimal more between two steps', () => {
    expect(parameterText(8, { unit: 'mm', step: 0.1 }, mm)).toBe('8.0');
    expect(parameterText(8.333, { unit: 'mm', step: 0.1 }, mm)).toBe('8.33');
    expect(parameterText(0.6, { unit: 'mm', step: 0.05 }, mm)).toBe('0.60');
    expect(parameterText(90, { unit: 'deg', step: 1 }, mm)).toBe('90.0°');
    expect(parameterText(0.25, { unit: 'ratio', step: 0.05 }, mm)).toBe('0.25');
  });

  it('is typed in the reader’s unit, and what cannot be read says so', () => {
    expect(parseParameter('5/16', { unit: 'mm' }, inch)).toEqual({ value: 7.9375 });
    expect(parseParameter('0.5', { unit: 'mm' }, inch)).toEqual({ value: 12.7 });
    expect(parseParameter('30°', { unit: 'deg' }, inch)).toEqual({ value: 30 });
    expect(parseParameter('wide', { unit: 'mm' }, mm)).toMatchObject({
      problem: { key: 'units_not_a_number' },
    });
  });

  it('has a scale divided in the reader’s unit', () => {
    expect(scaleUnit({ unit: 'mm' }, mm)).toBe('mm');
    expect(scaleUnit({ unit: 'mm' }, inch)).toBe('in');
    expect(scaleUnit({ unit: 'mm' }, { ...inch, inches: 'fraction' })).toBe('in64');
    expect(scaleUnit({ unit: 'deg' }, inch)).toBe('deg');
  });
});

describe('a length of the job sheet', () => {
  it('stands as it was entered, its unit only when that is not the sheet’s', () => {
    expect(sheetLengthText({ unit: 'mm', value: 7 }, 'mm')).toBe('7');
    expect(sheetLengthText({ unit: 'in64', value: 20 }, 'in')).toBe('5/16');
    expect(sheetLengthText({ unit: 'in64', value: 20 }, 'mm')).toBe('5/16 in');
    expect(sheetLengthText({ unit: 'mm', value: 7 }, 'in')).toBe('7 mm');
    expect(sheetLengthText(null, 'mm')).toBe('');
  });
});

describe('the probability that a weld conforms', () => {
  beforeAll(fetchRest);

  it('is a whole percent, and never certain', () => {
    expect(conformanceText(0.84134, mm)).toBe('84 %');
    expect(conformanceText(0.5, mm)).toBe('50 %');
    expect(conformanceText(0.9999, mm)).toBe('more than 99 %');
    expect(conformanceText(1, mm)).toBe('more than 99 %');
    expect(conformanceText(0.001, mm)).toBe('less than 1 %');
  });
});
