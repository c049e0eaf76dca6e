/** What the built-in sets don't use: a set written for these tests alone. */
import { describe, expect, it } from 'vitest';
import type { Measurements } from '../../src/measure/index.ts';
import { butt, flatFillet, measured, sheetWith, soundButt } from './hand-made.ts';
import { checksOf, row } from './own-rows.ts';

const weld = (values: object = {}): Measurements => measured(butt, { ...soundButt, ...values });

describe('a set of one’s own', () => {
  it('may lean on areas and angles, shown in the sum as what they are', async () => {
    const criteria = [
      row('area', 'underfill', { max: { any: 'weldArea / faceWidth' } }),
      row('angle', 'underfill', { max: { any: 'tMin × (1 - cos(toeAngle / 2))' } }),
      row('sheet', 'toeAngle', { min: { any: '90 deg + sheetAngle / 9' } }),
    ];
    const of = weld({ weldArea: 96.774, faceWidth: 12.7, toeAngle: 120 });
    const [area, angle, sheet] = await checksOf(criteria, of);
    // 96.774 / 12.7 = 7.62; 12 (1 − cos 60°) = 6; 90 + 90/9 = 100
    expect(area?.limit).toBeCloseTo(7.62, 9);
    expect(area?.working?.symbols[0]).toEqual({ symbol: 'weldArea', value: 96.774, unit: '' });
    expect(angle?.limit).toBeCloseTo(6, 9);
    expect(angle?.working?.substituted).toBe('12 mm × (1 − cos(120° / 2))');
    expect(angle?.working?.symbols[1]).toEqual({ symbol: 'toeAngle', value: 120, unit: 'deg' });
    expect(sheet?.limit).toBeCloseTo(100, 9);
    // in the inch column an area is in square inches: 0.15 in² / 0.5 in = 0.3 in
    const [inches] = await checksOf(criteria, of, sheetWith({ column: 'in' }));
    expect(inches?.printed?.value).toBeCloseTo(0.3, 9);
    expect(inches?.limit).toBeCloseTo(7.62, 9);
  });

  it('whose limit comes to no number for a section is not assessed', async () => {
    const criteria = [row('ratio', 'underfill', { max: { any: 'tMin^2 / faceWidth' } })];
    const [check] = await checksOf(criteria, weld({ faceWidth: 0 }));
    expect(check).toMatchObject({
      call: 'notAssessed',
      limit: null,
      reasons: [{ key: 'limits_reason_no_number' }],
      working: null,
    });
  });

  it('of an angle that can’t be measured is not assessed, in degrees', async () => {
    const criteria = [row('toe', 'toeAngle', { min: { any: '100 deg' } })];
    const [check] = await checksOf(criteria, weld({ toeAngle: null }));
    expect(check).toMatchObject({ call: 'notAssessed', unit: 'deg', sense: 'min' });
  });

  it('with a least of nothing refers a measurement of nothing inside a guard band', async () => {
    const guard = { factor: 1, lengthUncertainty: 0.2, angleUncertainty: 0 };
    const criteria = [row('past', 'capPastGroove1', { min: { mm: '0 mm' } })];
    const [check] = await checksOf(criteria, weld({ capPastGroove1: 0 }), sheetWith({ guard }));
    expect(check?.call).toBe('refer');
    expect(check?.reasons.map(({ key }) => key)).toEqual([
      'limits_reason_guard',
      'limits_reason_on_min',
    ]);
  });

  it('judges a negative measurement under a most of nothing as inside it', async () => {
    const criteria = [row('past', 'capPastGroove1', { max: { mm: '0 mm' } })];
    const [check] = await checksOf(criteria, weld({ capPastGroove1: -1 }));
    expect(check).toMatchObject({ call: 'accept', margin: 1 });
  });

  it('counts a short surplus from its nominal', async () => {
    const surplus = { max: { mm: '3 mm' }, short: true, nominal: { mm: '2 mm' } };
    const criteria = [row('cap', 'faceReinforcement.higher', surplus)];
    const call = async (height: number): Promise<string | undefined> =>
      (await checksOf(criteria, weld({ 'faceReinforcement.higher': height })))[0]?.call;
    expect(await call(2)).toBe('accept');
    expect(await call(2.04)).toBe('accept');
    expect(await call(2.06)).toBe('refer');
    expect(await call(3.1)).toBe('reject');
  });

  it('does not mix up a leg of the sheet with a doubtful leg of the section', async () => {
    const criteria = [row('sheet', 'convexity', { max: { any: '0.2 sheetLeg2' } })];
    const doubtful = measured({}, flatFillet, { leg2: { key: 'measure_note', refer: true } });
    const [check] = await checksOf(criteria, doubtful);
    // the sheet's leg, not the measured one: nothing doubtful in the limit
    expect(check).toMatchObject({ call: 'accept', limit: expect.closeTo(1.4, 9) as number });
  });
});
