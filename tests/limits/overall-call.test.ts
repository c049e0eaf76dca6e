import { describe, expect, it } from 'vitest';
import { allowedRange, judge, overallCall, type Call, type Check } from '../../src/limits/index.ts';
import { build, defaultJoint } from '../../src/joint/index.ts';
import { measure } from '../../src/measure/index.ts';
import { flatFillet, house, limitSet, measured, sheetWith } from './hand-made.ts';

const check = (call: Call, id = call, changes: Partial<Check> = {}): Check =>
  ({ id, call, margin: null, limit: null, sense: 'max', measurement: 'leg1', ...changes }) as Check;

describe('the call on the joint', () => {
  it('is reject with any reject', () => {
    const checks = [check('accept'), check('notAssessed'), check('refer'), check('reject')];
    const overall = overallCall(checks);
    expect(overall.call).toBe('reject');
    expect(overall.decides?.id).toBe('reject');
    expect(overall.rejected.map(({ id }) => id)).toEqual(['reject']);
    expect(overall.referred.map(({ id }) => id)).toEqual(['refer']);
    expect(overall.notAssessed.map(({ id }) => id)).toEqual(['notAssessed']);
  });

  it('is refer with anything open, never an accept', () => {
    expect(overallCall([check('accept'), check('refer')]).call).toBe('refer');
    expect(overallCall([check('accept'), check('notAssessed')]).call).toBe('refer');
    expect(overallCall([check('notAssessed')]).decides?.id).toBe('notAssessed');
    expect(overallCall([check('notAssessed'), check('refer')]).decides?.id).toBe('refer');
  });

  it('is accept only when every check accepts, and no call at all without checks', () => {
    expect(overallCall([check('accept'), check('accept', 'other' as Call)])).toMatchObject({
      call: 'accept',
      decides: null,
      rejected: [],
    });
    expect(overallCall([])).toMatchObject({ call: 'notAssessed', decides: null });
  });

  it('is decided by the check furthest out for its limit, the first of equals', () => {
    const out = (id: string, margin: number, limit: number): Check =>
      check('reject', id as Call, { margin, limit });
    // 0.1 over 0.5 is a fifth, 0.5 under 8 a sixteenth
    const checks = [out('leg', -0.5, 8), out('undercut', -0.1, 0.5), out('also', -0.2, 1)];
    expect(overallCall(checks).decides?.id).toBe('undercut');
    expect(overallCall([out('first', -0.2, 1), out('second', -0.1, 0.5)]).decides?.id).toBe(
      'first',
    );
    // anything at all where nothing is permitted comes before everything else
    expect(overallCall([...checks, out('overlap', -0.01, 0)]).decides?.id).toBe('overlap');
    expect(overallCall([out('overlap', -0.01, 0), ...checks]).decides?.id).toBe('overlap');
    const [leg] = checks;
    if (leg === undefined) throw new Error('no check');
    expect(overallCall([check('reject', 'unknown' as Call, { margin: -1 }), leg]).decides?.id).toBe(
      'leg',
    );
    const near = (id: string, margin: number): Check =>
      check('refer', id as Call, { margin, limit: 1 });
    expect(overallCall([near('far', 0.3), near('close', 0.1)]).decides?.id).toBe('close');
    expect(overallCall([check('notAssessed'), near('measured', 0.1)]).decides?.id).toBe('measured');
    expect(
      overallCall([near('none', 0), check('refer', 'zero' as Call, { margin: 0, limit: 0 })])
        .decides?.id,
    ).toBe('none');
  });

  it('is not decided by an imperfection that is neither permitted nor there, whatever comes first', () => {
    const none = check('refer', 'hidden' as Call, { margin: 0, limit: 0 });
    const near = check('refer', 'near' as Call, { margin: 0.1, limit: 1 });
    expect(overallCall([none, near]).decides?.id).toBe('near');
    expect(overallCall([near, none]).decides?.id).toBe('near');
    const ends = check('refer', 'ends' as Call, { margin: 0, limit: 0, sense: 'min' });
    expect(overallCall([near, ends]).decides?.id).toBe('ends');
    const well = check('refer', 'well' as Call, { margin: 0.3, limit: 0, sense: 'min' });
    expect(overallCall([near, well]).decides?.id).toBe('near');
  });

  it('is decided by the toe angle within its guard, not by a hidden root with nothing wrong', () => {
    // ISO 5817 B from a public extract, a cap of 2.2 mm; the guard band is common practice, no source
    const joint = { ...defaultJoint('butt'), capHeight: 2.2 };
    const sheet = sheetWith({ rootAccessible: false });
    const guarded = { ...sheet, guard: { ...sheet.guard, factor: 2 } };
    const checks = judge(measure(build(joint)), guarded, limitSet('iso5817-b'));
    const { call, decides } = overallCall(checks);
    expect(call).toBe('refer');
    // 151.2° at the toe lies within 2° of its least, 150°
    expect(decides?.measurement).toBe('toeAngle');
  });
});

describe('the room that the checks leave', () => {
  it('is from the greatest least to the least most', () => {
    const limits = [
      check('accept', 'a' as Call, { sense: 'min', limit: 7 }),
      check('accept', 'b' as Call, { sense: 'min', limit: 6 }),
      check('accept', 'c' as Call, { sense: 'max', limit: 10 }),
      check('accept', 'd' as Call, { sense: 'max', limit: 12 }),
      check('accept', 'e' as Call, { sense: 'min', limit: 9, measurement: 'leg2' }),
      check('notAssessed', 'f' as Call, { sense: 'min' }),
      check('notAssessed', 'g' as Call, { sense: 'max' }),
    ];
    expect(allowedRange(limits, 'leg1')).toEqual({ least: 7, most: 10 });
    expect(allowedRange([...limits].reverse(), 'leg1')).toEqual({ least: 7, most: 10 });
    expect(allowedRange(limits, 'leg2')).toEqual({ least: 9, most: null });
    expect(allowedRange(limits, 'convexity')).toEqual({ least: null, most: null });
  });

  it('comes from sheet and set together', () => {
    const checks = judge(measured({}, flatFillet), sheetWith(), house);
    // the sheet asks for 7, the house for no more than 3.5 over it
    expect(allowedRange(checks, 'leg1')).toEqual({ least: 7, most: 10.5 });
    expect(allowedRange(checks, 'undercut2')).toEqual({ least: null, most: 0.65 });
  });
});
