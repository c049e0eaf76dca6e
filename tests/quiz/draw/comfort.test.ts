import { describe, expect, it } from 'vitest';
import { defaultJoint } from '../../../src/joint/index.ts';
import type { Check } from '../../../src/limits/index.ts';
import { binding, comfortOf, intruders } from '../../../src/quiz/draw/comfort.ts';
import { madeCheck } from './made-check.ts';

const comfort = (
  changed: Parameters<typeof madeCheck>[0],
  others: readonly Check[] = [],
): number => {
  const check = madeCheck(changed);
  return comfortOf(check, [check, ...others]);
};

describe('the check that binds', () => {
  it('is the one furthest out of its measurement and sense, whatever their order', () => {
    const loose = madeCheck({ id: 'loose', limit: 2 });
    const tight = madeCheck({ id: 'tight', limit: 0.5 });
    const other = madeCheck({ id: 'other', measurement: 'undercut2', limit: 0.1 });
    const least = madeCheck({ id: 'least', sense: 'min', limit: 5 });
    for (const list of [
      [loose, tight, other, least],
      [least, other, tight, loose],
    ]) {
      expect(binding(list, 'undercut1', 'max')).toBe(tight);
      expect(binding(list, 'undercut1', 'min')).toBe(least);
    }
  });

  it('is none where nothing was compared', () => {
    expect(binding([], 'undercut1', 'max')).toBeNull();
    const open = { ...madeCheck({}), limit: null } as unknown as Check;
    expect(binding([open, madeCheck({ call: 'notAssessed' })], 'undercut1', 'max')).toBeNull();
  });
});

describe('comfortably inside', () => {
  it('is a tenth of a length, and across a thick plate at most 0.8 mm of it', () => {
    expect(comfort({ limit: 2 })).toBe(0.1);
    expect(comfort({ limit: 8 })).toBe(0.1);
    expect(comfort({ limit: 16 })).toBe(0.05);
  });

  it('is next to nothing of a plate’s own thickness: there is no more across a weld', () => {
    expect(comfort({ measurement: 'jointThickness', sense: 'min', limit: 10 })).toBe(0.005);
  });

  it('is none where nothing is permitted', () => {
    expect(comfort({ limit: 0, measured: 0 })).toBe(0);
  });

  it('is 2.5°, and of a greatest angle at most three tenths', () => {
    expect(comfort({ unit: 'deg', sense: 'min', limit: 90, measured: 120 })).toBe(2.5);
    expect(comfort({ unit: 'deg', sense: 'min', limit: 4, measured: 120 })).toBe(2.5);
    expect(comfort({ unit: 'deg', limit: 30, measured: 10 })).toBe(2.5);
    expect(comfort({ unit: 'deg', limit: 4, measured: 1 })).toBeCloseTo(1.2, 12);
  });

  it('is at most three tenths of the room between two limits', () => {
    // from 55° to 60° there are 5°: 1.5° on either side
    const least = madeCheck({ measurement: 'grooveAngle', unit: 'deg', sense: 'min', limit: 55 });
    const most = madeCheck({ measurement: 'grooveAngle', unit: 'deg', sense: 'max', limit: 60 });
    expect(comfortOf(most, [most, least])).toBeCloseTo(1.5, 12);
    expect(comfortOf(least, [most, least])).toBeCloseTo(1.5, 12);
    // ln(2.2 / 2) = 0.0953
    const gap = { measurement: 'rootOpening', measured: 2.1 } as const;
    const [low, high] = [
      madeCheck({ ...gap, sense: 'min', limit: 2 }),
      madeCheck({ ...gap, sense: 'max', limit: 2.2 }),
    ];
    expect(comfortOf(high, [low, high])).toBeCloseTo(0.3 * Math.log(1.1), 12);
    // limits that cross leave no room
    const crossed = madeCheck({ ...gap, sense: 'min', limit: 3 });
    expect(comfortOf(high, [crossed, high])).toBe(0);
  });
});

describe('a second question beside the one asked', () => {
  const joint = defaultJoint('fillet');
  const decisive = madeCheck({ id: 'asked', limit: 0.5, measured: 0.6, call: 'reject' });
  const found = (other: Check, before: readonly string[] = [], asked = decisive): number =>
    intruders(
      { joint, checks: [asked, other], measurements: { values: {} } as never },
      asked,
      new Set(before),
    ).length;
  const leg = (measured: number, changed: Partial<typeof decisive> = {}) =>
    madeCheck({ measurement: 'leg1', sense: 'min', limit: 6, measured, ...changed });

  it('is whatever is out, or not comfortably in', () => {
    expect(found(leg(5.9, { call: 'reject' }))).toBe(1);
    expect(found(leg(6.1))).toBe(1);
    // 6 mm e^0.1 = 6.631
    expect([found(leg(6.63)), found(leg(6.64))]).toEqual([1, 0]);
    // where nothing is permitted, none is no question however it is called
    const none = madeCheck({ measurement: 'overlap1', limit: 0, measured: 0 });
    expect([found(none), found({ ...none, call: 'reject' })]).toEqual([0, 1]);
  });

  it('is what is left open, unless nobody can see the root', () => {
    const open = leg(9, { call: 'refer' });
    expect(found(open)).toBe(1);
    const hidden = { key: 'limits_reason_root_hidden' };
    expect(found({ ...open, reasons: [hidden] })).toBe(0);
    expect(found({ ...open, reasons: [{ key: 'made' }, hidden] })).toBe(1);
  });

  it('is another row of the same measurement that is further out', () => {
    expect(found(madeCheck({ id: 'row', limit: 0.4, measured: 0.6, call: 'reject' }))).toBe(1);
    expect(found(madeCheck({ id: 'row', limit: 0.5, measured: 0.6, call: 'reject' }))).toBe(0);
    expect(found(madeCheck({ id: 'row', limit: 0.7, measured: 0.6 }))).toBe(0);
  });

  it('is the same fault by another measure only where that is further out', () => {
    const short = leg(5.5, { id: 'asked', call: 'reject' });
    const throat = (measured: number) =>
      madeCheck({ measurement: 'isoscelesThroat', sense: 'min', limit: 4.2, measured });
    // ln(6 / 5.5) = 0.087: of 4.2 mm that is 3.85
    expect(found(throat(3.86), [], short)).toBe(0);
    expect(found(throat(3.84), [], short)).toBe(1);
    // inside, the other must not be nearer than comfort
    const good = leg(6.6, { id: 'asked' });
    expect(found(throat(4.65), [], good)).toBe(0);
    expect(found(throat(4.55), [], good)).toBe(1);
    // a leg is not short because its throat is
    const thin = { ...throat(3.9), id: 'asked' };
    expect(found(leg(6.1), [], thin)).toBe(1);
  });

  it('is none of what follows on another scale once the fault is there: overlap makes a sharp toe', () => {
    const rolled = madeCheck({ id: 'asked', measurement: 'overlap1', limit: 0, measured: 1 });
    const toe = (measured: number) =>
      madeCheck({ measurement: 'toeAngle1', unit: 'deg', sense: 'min', limit: 90, measured });
    expect(found(toe(20), [], { ...rolled, call: 'reject' })).toBe(0);
    // what is only in doubt is no fault for a sharp toe to follow from
    expect(found(toe(20), [], { ...rolled, call: 'refer' })).toBe(1);
    expect(found(toe(91), [], { ...rolled, measured: 0 })).toBe(1);
    expect(found(toe(95), [], { ...rolled, measured: 0 })).toBe(0);
  });

  it('is what was not assessed and is there, but for what was so before', () => {
    const open = (changed: Partial<Check>): Check => ({
      ...madeCheck({ id: 'open', measurement: 'overlap1', call: 'notAssessed' }),
      ...changed,
    });
    expect(found(open({}))).toBe(1);
    expect(found(open({}), ['open'])).toBe(0);
    expect(found(open({ measured: 0 }))).toBe(0);
    expect(found(open({ measured: null }))).toBe(0);
    expect(found(open({ measured: 0, sense: 'min' }))).toBe(1);
    // of the measurement in question nothing may be open
    expect(found(open({ measurement: 'undercut1', measured: 0 }), ['open'])).toBe(1);
  });
});
