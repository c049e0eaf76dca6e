import { describe, expect, it } from 'vitest';
import type { Check, JobSheet } from '../../src/limits/index.ts';
import { judge } from '../../src/limits/index.ts';
import { build, defaultJoint } from '../../src/joint/index.ts';
import { measure, type Measurements } from '../../src/measure/index.ts';
import {
  butt,
  flatFillet,
  house,
  iso,
  limitSet,
  measured,
  mm,
  sheetWith,
  soundButt,
} from './hand-made.ts';

const find = (checks: readonly Check[], id: string): Check | undefined =>
  checks.find((check) => check.id === id);

/** The check of that id; a test that asks for one that isn't made fails here. */
function checkOf(id: string, of: Measurements, sheet: JobSheet = sheetWith(), set = iso): Check {
  const check = find(judge(of, sheet, set), id);
  if (check === undefined) throw new Error(`no check ${id}`);
  return check;
}
const fillet = (changes: object = {}): Measurements => measured({}, { ...flatFillet, ...changes });
const weld = (changes: object = {}, heading: object = {}): Measurements =>
  measured({ ...butt, ...heading }, { ...soundButt, ...changes });
const keys = (check: Check): readonly string[] => check.reasons.map(({ key }) => key);

describe('one check', () => {
  it('carries limit, printed limit, measured, margin, source and the reason', () => {
    const check = checkOf('503:convexity', fillet({ convexity: 1 }));
    // b = 8 √2 = 11.3137, 1 + 0.15 b = 2.69706, inside by 1.69706
    expect(check).toMatchObject({
      id: '503:convexity',
      measurement: 'convexity',
      name: { key: 'limits_name_convexity' },
      sense: 'max',
      unit: 'mm',
      limit: expect.closeTo(2.69706, 5) as number,
      printed: { value: expect.closeTo(2.69706, 5) as number, unit: 'mm' },
      measured: 1,
      margin: expect.closeTo(1.69706, 5) as number,
      guard: 0,
      call: 'accept',
      source: {
        document: 'ISO 5817',
        edition: '2003 (EN ISO 5817:2007)',
        clause: 'Table 1 no. 1.10 (503)',
        status: 'seen',
        note: 'limits_note_b_face_width',
      },
    });
    expect(check.reasons).toEqual([
      {
        key: 'limits_reason_inside_max',
        values: {
          measured: { value: 1, unit: 'mm' },
          limit: { value: check.limit, unit: 'mm' },
          margin: { value: check.margin, unit: 'mm' },
        },
      },
    ]);
  });

  it('shows the sum with numbers put in', () => {
    expect(checkOf('503:convexity', fillet()).working).toEqual({
      formula: 'min(1 mm + 0.15 b, 4 mm)',
      symbols: [{ symbol: 'b', value: 8 * Math.SQRT2, unit: 'mm' }],
      substituted: 'min(1 mm + 0.15 × 11.31 mm, 4 mm)',
    });
    expect(checkOf('505-fillet:toeAngle', fillet()).working).toEqual({
      formula: '100 deg',
      symbols: [],
      substituted: '100°',
    });
    // 8 mm is 0.31496 in, its √2-fold 0.44542 in
    const inches = checkOf('convexity:convexity', fillet(), sheetWith({ column: 'in' }), house);
    expect(inches.working).toMatchObject({
      formula: '0.03 in + 0.09 faceWidth',
      substituted: '0.03 in + 0.09 × 0.445 in',
      symbols: [{ symbol: 'faceWidth', value: expect.closeTo(0.44542, 5) as number, unit: 'in' }],
    });
  });

  it('says by how much a reject is out, and a least limit the other way round', () => {
    const over = checkOf('5011:undercut2', fillet({ undercut2: 0.6 }));
    expect(over.call).toBe('reject');
    expect(over.margin).toBeCloseTo(-0.1, 12);
    expect(over.reasons[0]).toMatchObject({
      key: 'limits_reason_outside_max',
      values: { margin: { value: expect.closeTo(0.1, 12) as number, unit: 'mm' } },
    });
    const steep = checkOf('505-fillet:toeAngle', fillet({ toeAngle: 95 }));
    expect(steep).toMatchObject({ call: 'reject', sense: 'min', unit: 'deg', margin: -5 });
    expect(steep.printed).toEqual({ value: 100, unit: 'deg' });
    expect(keys(steep)).toEqual(['limits_reason_outside_min']);
  });

  it('names the toe that it is about', () => {
    expect(checkOf('5011:undercut1', fillet()).name).toEqual({
      key: 'limits_name_undercut',
      values: { side: 1 },
    });
    expect(checkOf('5011:undercut2', fillet()).name.values).toEqual({ side: 2 });
  });
});

describe('on the limit', () => {
  it('a measurement is inside, with nothing to spare but the noise of binary arithmetic', () => {
    const at = (undercut2: number): Check => checkOf('5011:undercut2', fillet({ undercut2 }));
    expect(at(0.5).call).toBe('accept');
    expect(keys(at(0.5))).toEqual(['limits_reason_on_max']);
    expect(at(0.5 + 9e-10).call).toBe('accept');
    expect(at(0.5 + 2e-9).call).toBe('reject');
    expect(at(0.5 - 2e-9)).toMatchObject({ call: 'accept' });
    expect(keys(at(0.5 - 2e-9))).toEqual(['limits_reason_inside_max']);
    const angle = (toeAngle: number): Check => checkOf('505-fillet:toeAngle', fillet({ toeAngle }));
    expect(angle(100 - 9e-10).call).toBe('accept');
    expect(angle(100 - 2e-9).call).toBe('reject');
    expect(keys(angle(100))).toEqual(['limits_reason_on_min']);
  });

  it('the tolerance is of the document’s unit: in the inch column of an inch', () => {
    const sheet = sheetWith({ column: 'in' });
    // house, undercut over 3/8 in plate: 0.026 in
    const at = (inches: number): string =>
      checkOf('undercut:undercut2', fillet({ undercut2: inches * 25.4 }), sheet, house).call;
    expect(at(0.026 + 9e-10)).toBe('accept');
    expect(at(0.026 + 2e-9)).toBe('reject');
  });

  it('none permitted and none there is an accept, any at all a reject', () => {
    expect(keys(checkOf('506:overlap1', fillet()))).toEqual(['limits_reason_none_found']);
    const some = checkOf('506:overlap1', fillet({ overlap1: 0.1 }));
    expect(some.call).toBe('reject');
    expect(some.reasons).toEqual([
      { key: 'limits_reason_none_permitted', values: { measured: { value: 0.1, unit: 'mm' } } },
    ]);
  });
});

describe('the guard band', () => {
  const guard = { factor: 2, lengthUncertainty: 0.1, angleUncertainty: 1.5 };
  const sheet = sheetWith({ guard });
  const at = (undercut2: number): Check => checkOf('5011:undercut2', fillet({ undercut2 }), sheet);

  it('refers what is nearer to the limit than the instrument can tell', () => {
    // limit 0.5, guard 2 × 0.1 = 0.2: refer over 0.3 and up to 0.7
    expect(at(0.29).call).toBe('accept');
    expect(at(0.3).call).toBe('accept');
    expect(at(0.31).call).toBe('refer');
    expect(at(0.5).call).toBe('refer');
    expect(at(0.69).call).toBe('refer');
    expect(at(0.71).call).toBe('reject');
    expect(at(0.31).guard).toBe(0.2);
  });

  it('says so first, with the distance and the guard', () => {
    expect(at(0.4).reasons).toEqual([
      {
        key: 'limits_reason_guard',
        values: {
          margin: { value: expect.closeTo(0.1, 12) as number, unit: 'mm' },
          guard: { value: 0.2, unit: 'mm' },
        },
      },
      expect.objectContaining({ key: 'limits_reason_inside_max' }),
    ]);
    expect(keys(at(0.6))).toEqual(['limits_reason_guard', 'limits_reason_outside_max']);
    expect(keys(at(0.1))).toEqual(['limits_reason_inside_max']);
    expect(keys(at(0.9))).toEqual(['limits_reason_outside_max']);
  });

  it('has its own uncertainty for angles', () => {
    const toe = (toeAngle: number): Check =>
      checkOf('505-fillet:toeAngle', fillet({ toeAngle }), sheet);
    expect(toe(103).call).toBe('accept');
    expect(toe(102).call).toBe('refer');
    expect(toe(98).call).toBe('refer');
    expect(toe(96).call).toBe('reject');
    expect(toe(102)).toMatchObject({ guard: 3 });
  });

  it('is the same length in the inch column', () => {
    const inches = { ...sheet, column: 'in' } as const;
    const check = checkOf('undercut:undercut2', fillet({ undercut2: 0.6 }), inches, house);
    // limit 0.026 in = 0.6604 mm, 0.06 mm inside, guard 0.2 mm
    expect(check.call).toBe('refer');
    expect(check.guard).toBeCloseTo(0.2, 12);
  });

  it('leaves nothing found at nothing permitted', () => {
    expect(checkOf('506:overlap1', fillet(), sheet).call).toBe('accept');
    expect(checkOf('506:overlap1', fillet({ overlap1: 0.15 }), sheet).call).toBe('refer');
    expect(checkOf('506:overlap1', fillet({ overlap1: 0.25 }), sheet).call).toBe('reject');
  });
});

describe('rounding to the last place of the limit', () => {
  const sheet = sheetWith({ rounding: 'lastPlace' });
  const at = (undercut2: number): Check => checkOf('5011:undercut2', fillet({ undercut2 }), sheet);

  it('rounds what was measured before comparing, and says so', () => {
    // limit 0.5 printed to 0.1: 0.54 is 0.5, 0.55 is 0.6
    expect(at(0.54).call).toBe('accept');
    expect(at(0.55).call).toBe('reject');
    expect(keys(at(0.54))).toEqual(['limits_reason_on_max', 'limits_reason_rounded']);
    expect(at(0.54).reasons[1]).toMatchObject({
      values: { rounded: { value: expect.closeTo(0.5, 12) as number, unit: 'mm' } },
    });
    expect(at(0.54).measured).toBe(0.54);
    expect(keys(at(0.4))).toEqual(['limits_reason_inside_max']);
    expect(checkOf('5011:undercut2', fillet({ undercut2: 0.54 })).call).toBe('reject');
  });

  it('never rounds the limit: 0.74 mm is not accepted against 0.65 mm', () => {
    const undercut = (value: number): Check =>
      checkOf('undercut:undercut1', fillet({ undercut1: value }), sheet, house);
    expect(undercut(0.74).limit).toBeCloseTo(0.65, 12);
    expect(undercut(0.74).call).toBe('reject');
    expect(undercut(0.654).call).toBe('accept');
    expect(undercut(0.656).call).toBe('reject');
  });

  it('compares as measured where the limit is worked out and falls between two places', () => {
    // 1 + 0.15 × 11.3137 = 2.697
    const convexity = (value: number): Check =>
      checkOf('503:convexity', fillet({ convexity: value }), sheet);
    expect(convexity(2.69).call).toBe('accept');
    expect(convexity(2.7)).toMatchObject({
      call: 'reject',
      limit: expect.closeTo(2.697, 3) as number,
    });
    expect(keys(convexity(2.69))).not.toContain('limits_reason_rounded');
  });

  it('rounds angles to the degree and inches to the place they are printed to', () => {
    const toe = (toeAngle: number): string =>
      checkOf('505-fillet:toeAngle', fillet({ toeAngle }), sheet).call;
    expect(toe(99.5)).toBe('accept');
    expect(toe(99.4)).toBe('reject');
    const inches = sheetWith({ rounding: 'lastPlace', column: 'in' });
    // house concavity 0.035 in, short only: 0.0354 in is 0.035, 0.0356 in is 0.036
    const concavity = (value: number): string =>
      checkOf('concavity:concavity', fillet({ concavity: value * 25.4 }), inches, house).call;
    expect(concavity(0.0356)).toBe('reject');
    expect(concavity(0.0354)).toBe('refer');
  });

  it('rounds to the places that a sheet dimension is entered to, at least a tenth', () => {
    const leg = (value: number, first: number): string =>
      checkOf('sheet_leg:leg1', fillet({ leg1: value }), {
        ...sheet,
        size: { as: 'leg', first: mm(first), second: null },
      }).call;
    expect(leg(6.95, 7)).toBe('accept');
    expect(leg(6.94, 7)).toBe('reject');
    expect(leg(6.2451, 6.25)).toBe('accept');
    // an exact half goes to the even 6.24 (ASTM E29, from memory, verify)
    expect(leg(6.245, 6.25)).toBe('reject');
    expect(leg(6.255, 6.26)).toBe('accept');
  });
});

describe('rows for short imperfections', () => {
  // ISO 5817 511, t = 12: at most min(1.2, 1) = 1 mm, over a short length only
  const at = (underfill: number, changes: Partial<JobSheet> = {}): Check =>
    checkOf('511:underfill', weld({ underfill }), sheetWith(changes));

  it('accept nothing, and what is too small to count', () => {
    expect(at(0).call).toBe('accept');
    expect(keys(at(0))).toEqual(['limits_reason_none_found']);
    expect(at(0.049).call).toBe('accept');
    expect(keys(at(0.049))[0]).toBe('limits_reason_short_nothing');
    expect(at(0.05).call).toBe('refer');
    expect(at(0.08, { leastImperfection: mm(0.1) }).call).toBe('accept');
    expect(at(0.08, { leastImperfection: mm(0) }).call).toBe('refer');
    expect(at(0.049, { extent: 'typical' }).call).toBe('accept');
  });

  it('carry what the whole length has to keep beside what is allowed over a short one', () => {
    // ISO 5817 C, public extract: nothing, up to 1 mm over a short length
    expect(at(0.5)).toMatchObject({ limit: 1, ordinary: 0 });
    // AWS D1.1 Table 6.1 (7)(A), public extract: 1/32 in, up to 1/16 in over 2 in in 12
    const inches = judge(weld({}), sheetWith({ column: 'in' }), limitSet('aws-d11-static'));
    const cut = inches.find(({ id }) => id === 'd11-7A1:undercut1');
    expect(cut?.limit).toBeCloseTo(25.4 / 16, 9);
    expect(cut?.ordinary).toBeCloseTo(25.4 / 32, 9);
    // a row for any length has one limit only
    expect(inches.find(({ id }) => id.startsWith('sheet_throat'))?.ordinary).toBeUndefined();
  });

  it('refer up to the limit, since one section shows no length', () => {
    expect(at(0.5).call).toBe('refer');
    expect(at(1).call).toBe('refer');
    expect(keys(at(0.5))).toEqual(['limits_reason_short_unknown', 'limits_reason_inside_max']);
  });

  it('do as the sheet says when it says how far the section reaches', () => {
    expect(at(0.5, { extent: 'isolatedShort' }).call).toBe('accept');
    expect(keys(at(0.5, { extent: 'isolatedShort' }))[0]).toBe('limits_reason_short_isolated');
    expect(at(0.5, { extent: 'typical' }).call).toBe('reject');
    expect(keys(at(0.5, { extent: 'typical' }))[0]).toBe('limits_reason_short_typical');
  });

  it('reject past the limit whatever the length', () => {
    for (const extent of ['unknown', 'isolatedShort', 'typical'] as const) {
      const over = at(1.01, { extent });
      expect(over.call).toBe('reject');
      expect(keys(over)).toEqual(['limits_reason_short_any_length', 'limits_reason_outside_max']);
    }
  });

  it('keep to the guard band inside the length rule', () => {
    const guard = { factor: 1, lengthUncertainty: 0.2, angleUncertainty: 0 };
    expect(at(0.9, { extent: 'isolatedShort', guard }).call).toBe('refer');
    expect(at(0.7, { extent: 'isolatedShort', guard }).call).toBe('accept');
    expect(at(1.1, { extent: 'typical', guard }).call).toBe('reject');
    expect(at(1.1, { guard }).call).toBe('refer');
    expect(at(0.04, { guard: { ...guard, lengthUncertainty: 2 } }).call).toBe('accept');
  });

  it('count a throat’s shortfall from the specified throat', () => {
    // a = 7 cos 45° = 4.94975; allowed short by min(0.3 + 0.494975, 1) = 0.794975: down to 4.154773
    const throat = (isoscelesThroat: number): Check =>
      checkOf('5213:isoscelesThroat', fillet({ isoscelesThroat }));
    expect(throat(4.95).call).toBe('accept');
    expect(keys(throat(4.95))).toEqual(['limits_reason_inside_min']);
    expect(throat(4.91).call).toBe('accept');
    expect(keys(throat(4.91))[0]).toBe('limits_reason_short_nothing');
    expect(throat(4.89).call).toBe('refer');
    expect(throat(4.155).call).toBe('refer');
    expect(throat(4.154).call).toBe('reject');
    expect(throat(4.5).limit).toBeCloseTo(4.154773, 6);
  });

  it('read the least imperfection in its own unit', () => {
    const sheet = { column: 'in', leastImperfection: { unit: 'in', value: 0.004 } } as const;
    // 0.004 in = 0.1016 mm
    const concavity = (value: number): string =>
      checkOf('concavity:concavity', fillet({ concavity: value }), sheetWith(sheet), house).call;
    expect(concavity(0.101)).toBe('accept');
    expect(concavity(0.102)).toBe('refer');
  });
});

describe('what is missing or doubtful', () => {
  it('is not assessed when the section gives no value, with the note that says why', () => {
    const of = measured(
      {},
      { ...flatFillet, undercut1: null },
      { undercut1: { key: 'measure_note_edge_unknown' } },
    );
    expect(checkOf('5011:undercut1', of)).toMatchObject({
      call: 'notAssessed',
      limit: null,
      printed: null,
      measured: null,
      margin: null,
      guard: 0,
      working: null,
      sense: 'max',
      unit: 'mm',
      reasons: [{ key: 'limits_reason_not_measured' }, { key: 'measure_note_edge_unknown' }],
    });
  });

  it('is not assessed when the limit needs what the section does not show', () => {
    const { faceWidth, ...without } = flatFillet;
    expect(faceWidth).toBeGreaterThan(0);
    const check = checkOf('503:convexity', measured({}, { ...without, convexity: 1 }));
    expect(check).toMatchObject({
      call: 'notAssessed',
      measured: 1,
      reasons: [{ key: 'limits_reason_missing_input', values: { symbol: 'b' } }],
    });
  });

  it('is not assessed when even the condition of the row can’t be told', () => {
    const { tMin, ...without } = flatFillet;
    expect(tMin).toBe(12);
    const check = checkOf('503:convexity', measured({}, without));
    expect(check.reasons).toEqual([
      { key: 'limits_reason_missing_input', values: { symbol: 't' } },
    ]);
  });

  it('makes no check of what this joint does not have', () => {
    const { undercut1, ...without } = flatFillet;
    expect(undercut1).toBe(0);
    const checks = judge(measured({}, without), sheetWith(), iso);
    expect(find(checks, '5011:undercut1')).toBeUndefined();
    expect(find(checks, '5011:undercut2')).toBeDefined();
  });

  it('refers what a measurement marks as not to be settled, reject or not', () => {
    const note = { key: 'measure_note_edge_gone', refer: true };
    const of = measured({}, { ...flatFillet, leg2: 6 }, { leg2: note });
    const check = checkOf('sheet_leg:leg2', of);
    expect(check.call).toBe('refer');
    expect(keys(check)).toEqual(['measure_note_edge_gone', 'limits_reason_outside_min']);
    expect(check.limit).toBe(7);
  });

  it('keeps a plain note as the last reason and lets the call stand', () => {
    const of = measured({}, flatFillet, { leg2: { key: 'measure_note_plain' } });
    const check = checkOf('sheet_leg:leg2', of);
    expect(check.call).toBe('accept');
    expect(keys(check)).toEqual(['limits_reason_inside_min', 'measure_note_plain']);
  });

  it('refers a limit that is worked out from a doubtful measurement', () => {
    const doubt = { key: 'measure_note_doubt', refer: true };
    const of = measured({}, flatFillet, { faceWidth: doubt });
    expect(checkOf('503:convexity', of)).toMatchObject({
      call: 'refer',
      reasons: [{ key: 'measure_note_doubt' }, { key: 'limits_reason_inside_max' }],
    });
    const plain = measured({}, flatFillet, { faceWidth: { key: 'measure_note_plain' } });
    expect(checkOf('503:convexity', plain).call).toBe('accept');
    const both = measured({}, flatFillet, {
      faceWidth: doubt,
      convexity: { key: 'own', refer: true },
    });
    expect(keys(checkOf('503:convexity', both))).toEqual(['own', 'limits_reason_inside_max']);
  });

  it('is not assessed in a column that the document does not have, never converted', () => {
    const inches = sheetWith({ column: 'in' });
    const check = checkOf('503:convexity', fillet({ convexity: 9 }), inches);
    expect(check).toMatchObject({
      call: 'notAssessed',
      measured: 9,
      reasons: [{ key: 'limits_reason_no_in_column' }],
    });
    // one row for its thickness, not both bands
    expect(judge(fillet(), inches, iso).map(({ id }) => id)).not.toContain('5011-thin:undercut1');
    // a degree is a degree in either column
    expect(checkOf('505-fillet:toeAngle', fillet(), inches).call).toBe('accept');
  });

  it('is not assessed where the set has no row that was read', () => {
    const of = weld({ incompletePenetration: 1 }, { form: 'doubleV' });
    expect(checkOf('402:incompletePenetration', of)).toMatchObject({
      call: 'notAssessed',
      reasons: [{ key: 'limits_reason_no_row' }],
      measured: 1,
    });
    const sound = judge(weld({}, { form: 'doubleV' }), sheetWith(), iso);
    expect(find(sound, '402:incompletePenetration')).toBeUndefined();
  });
});

describe('which rows are for which joint', () => {
  const ids = (of: Measurements, sheet = sheetWith(), set = iso): readonly string[] =>
    judge(of, sheet, set).map(({ id }) => id);

  it('follows kind, product, preparation and stage', () => {
    expect(ids(weld())).toContain('5071:misalignment');
    expect(ids(weld())).not.toContain('5072:misalignment');
    expect(ids(weld({}, { product: 'pipe' }))).toContain('5072:misalignment');
    expect(ids(weld({}, { product: 'pipe' }))).not.toContain('5071:misalignment');
    expect(ids(weld())).not.toContain('505-fillet:toeAngle');
    expect(ids(fillet())).not.toContain('505-butt:toeAngle');
    expect(ids(weld())).toContain('504:rootReinforcement.higher');
    expect(ids(weld({}, { form: 'doubleV' }))).not.toContain('504:rootReinforcement.higher');
    expect(ids(weld({}, { form: 'doubleV' }))).toContain('502-second:rootReinforcement.higher');
    expect(ids(fillet())).toContain('617:rootGap');
    expect(ids(fillet())).not.toContain('617-fit-up:rootGap');
    const fitUp = measured(
      { stage: 'fitUp' },
      { tMin: 12, t1: 12, t2: 12, dihedralAngle: 90, rootGap: 1 },
    );
    expect(ids(fitUp)).toEqual(['617-fit-up:rootGap']);
    expect(ids(fitUp, sheetWith(), house)).toEqual([
      'angle-departure:angleDeparture',
      'gap-fit-up:rootGap',
    ]);
  });

  it('follows the thickness of the plate, with the tolerance of a limit at the edge of a band', () => {
    const band = (t: number): readonly string[] =>
      ids(weld({ t1: t, t2: t, tMin: t })).filter((id) => /^5011\D*:undercut1$/u.test(id));
    expect(band(3)).toEqual(['5011-thin:undercut1']);
    expect(band(3 + 9e-10)).toEqual(['5011-thin:undercut1']);
    expect(band(3 + 2e-9)).toEqual(['5011:undercut1']);
    expect(band(0.4)).toEqual([]);
  });

  it('takes the thickness of the plate that the undercut lies in, the thinner one elsewhere', () => {
    const of = weld({ t1: 4, t2: 20, tMin: 4, undercut1: 0.45, undercut2: 0.45 });
    expect(checkOf('5011:undercut1', of)).toMatchObject({ limit: 0.4, call: 'reject' });
    expect(checkOf('5011:undercut2', of)).toMatchObject({ limit: 0.5, call: 'accept' });
    expect(checkOf('511:underfill', of).limit).toBe(0.4);
    expect(checkOf('5013:rootUndercut1', of).limit).toBe(0.4);
    expect(checkOf('5013:rootUndercut2', of).limit).toBe(1);
  });

  it('uses the house’s own bands in the unit of the column', () => {
    // 9.5 mm plate: over 9 mm in the metric column, under 3/8 in = 9.525 mm in the inch column
    const of = fillet({ t1: 9.5, t2: 9.5, tMin: 9.5 });
    expect(ids(of, sheetWith(), house)).toContain('undercut:undercut1');
    const inches = ids(of, sheetWith({ column: 'in' }), house);
    expect(inches).toContain('undercut-thin:undercut1');
    expect(inches).not.toContain('undercut:undercut1');
  });

  it('judges asymmetry only where equal legs are specified', () => {
    expect(ids(fillet())).toContain('512:legDifference');
    const unequal = sheetWith({ size: { as: 'leg', first: mm(8), second: mm(12) } });
    const built = measure(build(defaultJoint('fillet')));
    expect(ids(built)).toContain('512:legDifference');
    expect(ids(built, unequal)).not.toContain('512:legDifference');
  });

  it('puts the sheet first, then the lie of the plates, then the document’s order', () => {
    expect(ids(fillet()).slice(0, 4)).toEqual([
      'sheet_leg:leg1',
      'sheet_leg:leg2',
      '5213:isoscelesThroat',
      '5011:undercut1',
    ]);
    expect(ids(weld(), sheetWith(), house).slice(0, 3)).toEqual([
      'misalignment-plate:misalignment',
      'angular-misalignment:angularMisalignment',
      'face-reinforcement:faceReinforcement.higher',
    ]);
    const all = ids(fillet(), sheetWith(), house);
    expect(new Set(all).size).toBe(all.length);
  });
});

describe('how the plates lie', () => {
  const of = weld({ centrelineOffset: -1.2, faceStep: 0.4, rootStep: 2.1 });
  const step = (intendedAlignment: JobSheet['intendedAlignment']): Check =>
    checkOf('5071:misalignment', of, sheetWith({ intendedAlignment }));

  it('is judged by the step that the sheet does not intend, whichever way it goes', () => {
    // t = 12: 0.15 t = 1.8
    expect(step('centrelines')).toMatchObject({ measured: 1.2, call: 'accept' });
    expect(step('centrelines').limit).toBeCloseTo(1.8, 12);
    expect(step('faceFlush')).toMatchObject({ measured: 0.4, call: 'accept' });
    expect(step('rootFlush')).toMatchObject({ measured: 2.1, call: 'reject' });
  });

  it('is judged by size where it has a sign', () => {
    const turned = weld({ angularMisalignment: -3 });
    const check = checkOf('angular-misalignment:angularMisalignment', turned, sheetWith(), house);
    expect(check).toMatchObject({ measured: 3, call: 'reject', limit: 2.4, unit: 'deg' });
  });

  it('of a fillet is judged by its departure from the sheet’s angle', () => {
    const at = (dihedralAngle: number, asked: number): Check =>
      checkOf(
        'angle-departure:angleDeparture',
        fillet({ dihedralAngle }),
        sheetWith({ dihedralAngle: asked }),
        house,
      );
    expect(at(93, 90)).toMatchObject({ measured: 3, call: 'accept' });
    expect(at(86, 90)).toMatchObject({ measured: 4, call: 'reject' });
    expect(at(120, 120)).toMatchObject({ measured: 0, call: 'accept' });
  });

  it('is not assessed when it can’t be measured', () => {
    const unknown = weld({ centrelineOffset: null });
    expect(checkOf('5071:misalignment', unknown).call).toBe('notAssessed');
  });
});
