import { describe, expect, it } from 'vitest';
import { isGiven, unknownService } from '../../src/limits/circumstance.ts';
import { judge, type Check, type JobSheet } from '../../src/limits/index.ts';
import { build, defaultJoint } from '../../src/joint/index.ts';
import { measure, type Measurements } from '../../src/measure/index.ts';
import { butt, mm, measured, sheetWith, soundButt } from './hand-made.ts';
import { checksOf, compiledSet, row } from './own-rows.ts';

const service = (changes: Partial<JobSheet['service']>): Partial<JobSheet> => ({
  service: { ...unknownService, ...changes },
});
const weld = (values: object = {}): Measurements => measured(butt, { ...soundButt, ...values });
const fillet = (leg1: number, leg2: number): Measurements =>
  measure(build({ ...defaultJoint('fillet', 'tee'), leg1, leg2 }));
const calls = (checks: readonly Check[]): readonly string[] => checks.map(({ call }) => call);

describe('a row for some circumstances only', () => {
  // three bands of temperature, as piping codes have them; the figures are ours
  const rows = [
    row('hot', 'faceReinforcement.higher', {
      given: { temperature: ['over750F'] },
      max: { mm: '1 mm' },
    }),
    row('warm', 'faceReinforcement.higher', {
      given: { temperature: ['to750F'] },
      max: { mm: '2 mm' },
    }),
    row('cool', 'faceReinforcement.higher', {
      given: { temperature: ['to350F', 'below0F'] },
      max: { mm: '3 mm' },
    }),
  ];

  it('counts when the sheet gives one of them, and stays away when it gives another', async () => {
    const of = weld({ 'faceReinforcement.higher': 1.5 });
    const at = (temperature: JobSheet['service']['temperature']) =>
      checksOf(rows, of, sheetWith(service({ temperature })));
    expect(calls(await at('over750F'))).toEqual(['reject']);
    expect(calls(await at('to750F'))).toEqual(['accept']);
    expect((await at('below0F'))[0]?.limit).toBe(3);
    expect((await at('to350F'))[0]?.limit).toBe(3);
  });

  it('says once what has to be known when the sheet does not say', async () => {
    const checks = await checksOf(rows, weld());
    expect(checks).toHaveLength(1);
    expect(checks[0]).toMatchObject({
      call: 'notAssessed',
      limit: null,
      measured: 1.2,
      reasons: [{ key: 'limits_reason_needs_temperature' }],
    });
  });

  it('asks although the first row of its table is for another thickness', async () => {
    const banded = [
      row('thin', 'underfill', {
        given: { temperature: ['over750F'] },
        when: { mm: 'tMin <= 3 mm' },
        max: { mm: '1 mm' },
      }),
      row('thick', 'underfill', {
        given: { temperature: ['over750F'] },
        when: { mm: 'tMin > 3 mm' },
        max: { mm: '2 mm' },
      }),
    ];
    // 12 mm plates: the thin row has nothing to ask
    expect((await checksOf(banded, weld())).map(({ id }) => id)).toEqual(['thick:underfill']);
  });

  it('asks for each measurement and each sense by itself', async () => {
    const given = { stress: ['acrossWeld'] };
    const both = [
      row('a', 'undercut1', { given, max: { mm: '0.3 mm' } }),
      row('b', 'undercut2', { given, max: { mm: '0.3 mm' } }),
      row('c', 'undercut2', { given, min: { mm: '0 mm' } }),
    ];
    expect(await checksOf(both, weld())).toHaveLength(3);
  });

  it('asks for what is missing only where the rest fits', () => {
    const given = { stress: ['acrossWeld'], category: ['A'] } as const;
    expect(isGiven(undefined, unknownService)).toBe(true);
    expect(isGiven(given, unknownService)).toBe('stress');
    expect(isGiven(given, { ...unknownService, stress: 'acrossWeld' })).toBe('category');
    expect(isGiven(given, { ...unknownService, category: 'B' })).toBe(false);
    expect(isGiven(given, { ...unknownService, stress: 'acrossWeld', category: 'A' })).toBe(true);
  });
});

describe('the root side that no eye gets to', () => {
  const rows = [
    row('root', 'rootReinforcement.higher', { max: { mm: '2 mm' } }),
    row('cap', 'faceReinforcement.higher', { max: { mm: '2 mm' } }),
  ];

  it('is referred whatever it measures, the face side judged as ever', async () => {
    const hidden = sheetWith({ rootAccessible: false });
    for (const height of [0.8, 2.5]) {
      const checks = await checksOf(rows, weld({ 'rootReinforcement.higher': height }), hidden);
      expect(calls(checks)).toEqual(['refer', 'accept']);
      expect(checks[0]?.reasons[0]?.key).toBe('limits_reason_root_hidden');
    }
    expect(calls(await checksOf(rows, weld({ 'rootReinforcement.higher': 2.5 })))).toEqual([
      'reject',
      'accept',
    ]);
  });

  it('is still open before welding', async () => {
    const open = measured({ ...butt, stage: 'fitUp' }, {
      rootReinforcement: 1,
      'rootReinforcement.higher': 1,
    } as object);
    const [check] = await checksOf([rows[0] ?? {}], open, sheetWith({ rootAccessible: false }));
    expect(check?.call).toBe('accept');
  });
});

describe('a row that stands for the sheet’s leg', () => {
  const undersize = row('leg', 'leg1', {
    measurements: ['leg1', 'leg2'],
    min: { mm: 'sheetLegHere - 1 mm' },
    nominal: { mm: 'sheetLegHere' },
    short: true,
    standsFor: 'leg',
    lengthAllowed: 'limits_note_house_throat',
  });
  const sheet = sheetWith({ size: { as: 'leg', first: mm(8), second: mm(6) } });
  const at = (leg1: number, leg2: number, changes: Partial<JobSheet> = {}) =>
    checksOf([undersize], fillet(leg1, leg2), { ...sheet, ...changes });

  it('reads the leg asked for on its own plate', async () => {
    expect((await at(8, 6)).map(({ limit }) => limit)).toEqual([7, 5]);
    expect(calls(await at(8, 6))).toEqual(['accept', 'accept']);
    expect(calls(await at(6.9, 6))).toEqual(['reject', 'accept']);
  });

  it('refers what is undersize within its allowance, and names the length allowed', async () => {
    const [first] = await at(7.5, 6);
    expect(first?.call).toBe('refer');
    expect(first?.reasons.map(({ key }) => key).slice(0, 2)).toEqual([
      'limits_reason_short_unknown',
      'limits_note_house_throat',
    ]);
    expect(calls(await at(7.5, 6, { extent: 'isolatedShort' }))).toEqual(['accept', 'accept']);
    expect(calls(await at(7.5, 6, { extent: 'typical' }))).toEqual(['reject', 'accept']);
  });

  it('takes the place of the sheet’s own leg checks', async () => {
    const limits = await compiledSet({ ...undersize, measurements: ['leg1'] });
    const ids = judge(fillet(8, 6), sheet, limits).map(({ id }) => id);
    expect(ids).not.toContain('sheet_leg:leg1');
    expect(ids).toContain('sheet_leg:leg2');
    expect(ids).toContain('leg:leg1');
  });
});

describe('a check by an instrument with its uncertainty', () => {
  it('says how likely the weld is to conform', async () => {
    const guard = { factor: 0, lengthUncertainty: 0.2, angleUncertainty: 2 };
    const [check] = await checksOf(
      [row('cap', 'faceReinforcement.higher', { max: { mm: '2 mm' } })],
      weld({ 'faceReinforcement.higher': 1.8 }),
      sheetWith({ guard }),
    );
    // one standard uncertainty inside: 84.1 %
    expect(check?.uncertainty).toBe(0.2);
    expect(check?.conformance).toBeCloseTo(0.84134, 4);
    const [toe] = await checksOf(
      [row('toe', 'toeAngle', { min: { any: '150 deg' } })],
      weld({ toeAngle: 148 }),
      sheetWith({ guard }),
    );
    expect(toe?.conformance).toBeCloseTo(1 - 0.84134, 4);
  });
});
