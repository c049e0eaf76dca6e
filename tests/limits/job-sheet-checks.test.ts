import { describe, expect, it } from 'vitest';
import { build, defaultJoint, type ButtJoint, type FilletJoint } from '../../src/joint/index.ts';
import {
  judge,
  limitSets,
  specifiedSize,
  twinSize,
  type Check,
  type CompiledLimitSet,
  type JobSheet,
} from '../../src/limits/index.ts';
import { measure, type Measurements } from '../../src/measure/index.ts';
import { flatFillet, in64, inch, iso, measured, mm, sheetWith } from './hand-made.ts';

/** A set that asks nothing, so that only the sheet is judged. */
const nothing: CompiledLimitSet = { ...iso, id: 'nothing', criteria: [], trees: {} };
const checksOf = (of: Measurements, sheet: JobSheet, set = nothing): readonly Check[] =>
  judge(of, sheet, set);
function checkOf(id: string, of: Measurements, sheet: JobSheet, set = nothing): Check {
  const check = checksOf(of, sheet, set).find((one) => one.id === id);
  if (check === undefined) throw new Error(`no check ${id}`);
  return check;
}
const idsOf = (of: Measurements, sheet: JobSheet, set = nothing): readonly string[] =>
  checksOf(of, sheet, set).map(({ id }) => id);

const built = (changes: Partial<FilletJoint>): Measurements =>
  measure(build({ ...defaultJoint('fillet'), ...changes }));
const fillet = (changes: object = {}): Measurements => measured({}, { ...flatFillet, ...changes });
const legs = (first: number, second: number | null = null): JobSheet =>
  sheetWith({ size: { as: 'leg', first: mm(first), second: second === null ? null : mm(second) } });
const throat = (first: number): JobSheet =>
  sheetWith({ size: { as: 'throat', first: mm(first), second: null } });

describe('leg and throat', () => {
  it('are twins of one size: a = z cos(ψ/2)', () => {
    // 90°: z / √2; 60°: cos 30° = 0.8660254; 120°: cos 60° = 0.5
    expect(twinSize('leg', 8, 90)).toBeCloseTo(5.656854249, 9);
    expect(twinSize('throat', 5.656854249, 90)).toBeCloseTo(8, 8);
    expect(twinSize('leg', 10, 60)).toBeCloseTo(8.660254038, 9);
    expect(twinSize('leg', 10, 120)).toBeCloseTo(5, 12);
    expect(twinSize('throat', 5, 120)).toBeCloseTo(10, 12);
  });

  it('as a sheet specifies them', () => {
    expect(specifiedSize(legs(8))).toEqual({
      leg1: 8,
      leg2: 8,
      throat: 8 * Math.cos(Math.PI / 4),
      isoscelesThroat: 8 * Math.cos(Math.PI / 4),
      equal: true,
      angle: 90,
    });
    expect(specifiedSize(legs(8, 8)).equal).toBe(true);
    const byThroat = specifiedSize(throat(5));
    expect(byThroat).toMatchObject({ throat: 5, isoscelesThroat: 5, equal: true });
    expect(byThroat.leg1).toBeCloseTo(7.071067812, 9);
    expect(byThroat.leg2).toBe(byThroat.leg1);
    // 8 × 12 at 90°: 8·12/√(64 + 144) = 96/14.4222 = 6.656402; isosceles 8/√2
    const unequal = specifiedSize(legs(8, 12));
    expect(unequal).toMatchObject({ leg1: 8, leg2: 12, equal: false });
    expect(unequal.throat).toBeCloseTo(6.656402, 6);
    expect(unequal.isoscelesThroat).toBeCloseTo(5.656854, 6);
    expect(specifiedSize(legs(12, 8)).isoscelesThroat).toBeCloseTo(5.656854, 6);
    const inches = specifiedSize(
      sheetWith({ size: { as: 'leg', first: in64(20), second: inch(0.5) } }),
    );
    expect([inches.leg1, inches.leg2]).toEqual([7.9375, 12.7]);
  });

  it('of unequal legs at another angle: the height of the triangle on its third side', () => {
    // legs 6 and 10 at 120°: third side √(36 + 100 + 60) = 14; area 0.5·60·sin 120° = 25.98076;
    // height 2·25.98076/14 = 3.711537
    const skewed = sheetWith({ ...legs(6, 10), dihedralAngle: 120 });
    expect(specifiedSize(skewed).throat).toBeCloseTo(3.711537, 6);
  });
});

describe('the size that a sheet asks for', () => {
  it('is put to each leg, more is allowed', () => {
    const sheet = legs(7);
    expect(checkOf('sheet_leg:leg1', fillet(), sheet)).toMatchObject({
      call: 'accept',
      sense: 'min',
      limit: 7,
      measured: 8,
      margin: 1,
      printed: { value: 7, unit: 'mm' },
      name: { key: 'limits_name_leg', values: { side: 1 } },
      source: { document: 'Lock gate 3', edition: '', clause: 'weld 14', status: 'sheet' },
      working: {
        formula: 'z',
        symbols: [{ symbol: 'z', value: 7, unit: 'mm' }],
        substituted: '7 mm',
      },
    });
    expect(checkOf('sheet_leg:leg2', fillet({ leg2: 6.9 }), sheet)).toMatchObject({
      call: 'reject',
      measured: 6.9,
      name: { values: { side: 2 } },
    });
    expect(checkOf('sheet_leg:leg1', fillet({ leg1: 30 }), sheet).call).toBe('accept');
  });

  it('is put to the throat of the largest isosceles triangle', () => {
    // a = 7 cos 45° = 4.949747
    const check = checkOf('sheet_throat:isoscelesThroat', fillet(), legs(7));
    expect(check).toMatchObject({ call: 'accept', sense: 'min', unit: 'mm' });
    expect(check.name).toEqual({ key: 'limits_name_throat' });
    expect(check.limit).toBeCloseTo(4.949747, 6);
    expect(check.working).toEqual({
      formula: 'z cos(psi / 2)',
      symbols: [
        { symbol: 'z', value: 7, unit: 'mm' },
        { symbol: 'psi', value: 90, unit: 'deg' },
      ],
      substituted: '7 mm × cos(90° / 2)',
    });
    expect(
      checkOf('sheet_throat:isoscelesThroat', fillet({ isoscelesThroat: 4.9 }), legs(7)).call,
    ).toBe('reject');
  });

  it('given as a throat asks for the legs of its triangle', () => {
    const sheet = throat(5);
    const leg = checkOf('sheet_leg:leg1', fillet(), sheet);
    expect(leg.limit).toBeCloseTo(7.071068, 6);
    expect(leg.working).toMatchObject({
      formula: 'a / cos(psi / 2)',
      substituted: '5 mm / cos(90° / 2)',
    });
    expect(checkOf('sheet_throat:isoscelesThroat', fillet(), sheet)).toMatchObject({
      limit: 5,
      working: { formula: 'a', substituted: '5 mm' },
    });
    expect(checkOf('sheet_leg:leg2', fillet({ leg2: 7.07 }), sheet).call).toBe('reject');
    expect(checkOf('sheet_leg:leg2', fillet({ leg2: 7.08 }), sheet).call).toBe('accept');
  });

  it('in inch fractions is compared in exact 64ths', () => {
    const sheet = sheetWith({ column: 'in', size: { as: 'leg', first: in64(20), second: null } });
    const at = (leg1: number): Check => checkOf('sheet_leg:leg1', fillet({ leg1 }), sheet);
    expect(at(7.9375)).toMatchObject({
      call: 'accept',
      limit: 7.9375,
      printed: { value: 0.3125, unit: 'in' },
      margin: 0,
      working: { substituted: '5/16 in' },
    });
    expect(at(7.9375 - 1e-6).call).toBe('reject');
    // rounded to the 64th: 0.305 in is 19.52 64ths, 0.304 in is 19.46
    const rounded = { ...sheet, rounding: 'lastPlace' } as const;
    const near = (inches: number): string =>
      checkOf('sheet_leg:leg1', fillet({ leg1: inches * 25.4 }), rounded).call;
    expect(near(0.305)).toBe('accept');
    expect(near(0.304)).toBe('reject');
    const decimal = { ...rounded, size: { as: 'leg', first: inch(0.3), second: null } } as const;
    const decimals = (inches: number): string =>
      checkOf('sheet_leg:leg1', fillet({ leg1: inches * 25.4 }), decimal).call;
    expect(decimals(0.296)).toBe('accept');
    expect(decimals(0.294)).toBe('reject');
    const throatCheck = checkOf('sheet_throat:isoscelesThroat', fillet(), sheet);
    expect(throatCheck.printed?.unit).toBe('in');
    // 0.3125 / √2 = 0.220971 in = 5.612660 mm
    expect(throatCheck.printed?.value).toBeCloseTo(0.220971, 6);
    expect(throatCheck.limit).toBeCloseTo(5.61266, 6);
  });

  it('of unequal legs is put to the largest triangle in the specified ratio', () => {
    // specified 8 × 12, welded 8 × 12 flat: the triangle is the weld, throat 6.656402
    const flat = built({ leg1: 8, leg2: 12, convexity: 0 });
    const sheet = legs(8, 12);
    const check = checkOf('sheet_throat:theoreticalThroat', flat, sheet);
    expect(check.call).toBe('accept');
    expect(check.measured).toBeCloseTo(6.656402, 6);
    expect(check.limit).toBeCloseTo(6.656402, 6);
    expect(check.reasons.map(({ key }) => key)).toEqual(['limits_reason_on_min']);
    expect(check.working?.substituted).toBe(
      '8 mm × 12 mm × sin(90°) / sqrt((8 mm)^2 + (12 mm)^2 − 2 × 8 mm × 12 mm × cos(90°))',
    );
    expect(idsOf(flat, sheet)).toEqual([
      'sheet_leg:leg1',
      'sheet_leg:leg2',
      'sheet_throat:theoreticalThroat',
    ]);
    expect(checkOf('sheet_leg:leg2', flat, sheet).limit).toBe(12);
    // welded 12 × 8 instead: only 8 × 12 shrunk to fit counts. Face x/12 + y/8 = 1 and triangle
    // x/8k + y/12k = 1 touch at the toe of leg 2: 12k = 8, so k = 2/3 and the throat 4.437602
    const turned = built({ leg1: 12, leg2: 8, convexity: 0 });
    const wrong = checkOf('sheet_throat:theoreticalThroat', turned, sheet);
    expect(wrong.measured).toBeCloseTo(4.437602, 6);
    expect(wrong.call).toBe('reject');
  });

  it('of unequal legs refers when the edge that leg 2 stops at has melted away', () => {
    const lap = built({ arrangement: 'lap', edgeMelt: 1, leg1: 8, leg2: 12 });
    const check = checkOf('sheet_throat:theoreticalThroat', lap, legs(8, 12));
    expect(check.call).toBe('refer');
    expect(check.reasons[0]).toMatchObject({ refer: true });
  });

  it('counts proven penetration on top of the triangle, and says how much', () => {
    const deep = fillet({ isoscelesThroat: 4.5, throatPenetration: 0.7, deepThroat: 5.3 });
    const sheet = throat(5);
    const id = 'sheet_throat:isoscelesThroat';
    expect(checkOf(id, deep, sheet)).toMatchObject({ measured: 4.5, call: 'reject' });
    const proven = checkOf(id, deep, { ...sheet, penetrationProven: true });
    expect(proven.measured).toBeCloseTo(5.2, 12);
    expect(proven.call).toBe('accept');
    const { key, values } = proven.reasons.at(-1) ?? { key: 'none' };
    expect(key).toBe('limits_reason_penetration_counts');
    expect(values?.['depth']).toMatchObject({ unit: 'mm' });
    const unknown = checkOf(id, fillet({ isoscelesThroat: 4.5, throatPenetration: null }), {
      ...sheet,
      penetrationProven: true,
    });
    expect(unknown.measured).toBe(4.5);
  });

  it('of unequal legs has it on top of the triangle in their ratio', () => {
    const unequal = { ...legs(8, 12), penetrationProven: true };
    const deepUnequal = built({ leg1: 8, leg2: 12, rootPenetration: 2 });
    const check = checkOf('sheet_throat:theoreticalThroat', deepUnequal, unequal);
    // 8 · 12 / √(8² + 12²), and 2 cos 45° behind the root
    expect(check.measured).toBeCloseTo(96 / Math.sqrt(208) + 2 * Math.SQRT1_2, 9);
    expect(check.reasons.at(-1)?.key).toBe('limits_reason_penetration_counts');
  });

  it('is no larger for penetration that is proven and isn’t there, whatever the legs', () => {
    for (const [leg1, leg2] of [
      [8, 8],
      [6, 10],
      [14, 5],
    ] as const) {
      const weld = built({ leg1, leg2, rootPenetration: 0 });
      const id = 'sheet_throat:isoscelesThroat';
      const [plain, proven] = [false, true].map((penetrationProven) =>
        checkOf(id, weld, { ...throat(5), penetrationProven }),
      );
      expect(proven?.measured).toBe(plain?.measured);
      // the lesser leg's triangle
      expect(proven?.measured).toBeCloseTo(Math.min(leg1, leg2) * Math.SQRT1_2, 9);
      expect(proven?.reasons.at(-1)).toEqual({ key: 'limits_reason_no_penetration' });
    }
  });

  it('is not assessed when the section has no such measurement', () => {
    const { leg1, isoscelesThroat, ...without } = flatFillet;
    expect([leg1, isoscelesThroat]).not.toContain(null);
    const of = measured({}, without);
    expect(checkOf('sheet_leg:leg1', of, legs(7))).toMatchObject({
      call: 'notAssessed',
      reasons: [{ key: 'limits_reason_not_measured' }],
    });
    expect(checkOf('sheet_throat:isoscelesThroat', of, legs(7)).call).toBe('notAssessed');
  });

  it('asks nothing of a fillet before it is welded', () => {
    expect(idsOf(built({ stage: 'fitUp' }), legs(7))).toEqual([]);
  });
});

describe('a set that says how far under its nominal a throat may be', () => {
  const short = fillet({ isoscelesThroat: 4.5, leg2: 6.4 });

  it('stands for the sheet’s own throat check, so that the two don’t contradict each other', () => {
    expect(idsOf(fillet(), legs(7), iso)).not.toContain('sheet_throat:isoscelesThroat');
    expect(idsOf(fillet(), legs(7), iso)).toContain('sheet_leg:leg1');
    expect(checkOf('5213:isoscelesThroat', short, throat(5), iso).call).toBe('refer');
    // legs were never specified: they only follow from the throat
    expect(idsOf(short, throat(5), iso)).not.toContain('sheet_leg:leg1');
  });

  it('lets the sheet speak again where it can’t be assessed, or where legs are unequal', () => {
    const inches = sheetWith({ column: 'in', size: { as: 'leg', first: in64(18), second: null } });
    expect(idsOf(fillet(), inches, iso)).toContain('sheet_throat:isoscelesThroat');
    const flat = built({ leg1: 8, leg2: 12 });
    const unequal = idsOf(flat, legs(8, 12), iso);
    expect(unequal).toContain('sheet_throat:theoreticalThroat');
    expect(unequal).toContain('5213:isoscelesThroat');
  });

  it('leaves no leg check behind where it steps in for a specified throat', () => {
    const legIds = (set: CompiledLimitSet): readonly string[] =>
      idsOf(fillet(), throat(5), set).filter((id) => id.startsWith('sheet_leg'));
    // without such a row the sheet's throat is put to the legs of its triangle too
    expect(legIds(nothing)).toEqual(['sheet_leg:leg1', 'sheet_leg:leg2']);
    expect(idsOf(fillet(), throat(5), iso)[0]).toBe('5213:isoscelesThroat');
    expect(legIds(iso)).toEqual([]);
  });

  it('stands to its nominal, and to what a short length may have only past that', () => {
    // ISO 5817 level C: 5 mm asked for; over a short length 0.3 + 0.1 · 5 = 0.8 mm less, public extract
    const told = (found: number) => {
      const check = checkOf(
        '5213:isoscelesThroat',
        fillet({ isoscelesThroat: found }),
        throat(5),
        iso,
      );
      const { key, values } = check.reasons.at(-1) ?? { key: 'none' };
      return [check.call, key, values?.['limit'], values?.['margin']];
    };
    const mm1 = (value: number) => ({ value: expect.closeTo(value, 9) as number, unit: 'mm' });
    expect(told(5.66)).toEqual(['accept', 'limits_reason_inside_min', mm1(5), mm1(0.66)]);
    expect(told(4.6)).toEqual(['refer', 'limits_reason_outside_min', mm1(5), mm1(0.4)]);
    expect(told(4)).toEqual(['reject', 'limits_reason_outside_min', mm1(4.2), mm1(0.2)]);
  });

  it('counts proven penetration too', () => {
    const deep = fillet({ isoscelesThroat: 4.5, throatPenetration: 0.7, deepThroat: 5.2 });
    const sheet = { ...throat(5), penetrationProven: true };
    expect(checkOf('5213:isoscelesThroat', deep, sheet, iso)).toMatchObject({
      measured: 5.2,
      call: 'accept',
    });
    // a surplus is of the throat that the eye sees
    expect(checkOf('5214:isoscelesThroat', deep, sheet, iso).measured).toBe(4.5);
  });

  it('counts no more of it than the deep throat bears out', () => {
    const deep = fillet({ isoscelesThroat: 4.5, throatPenetration: 0.7, deepThroat: 5.1 });
    const sheet = { ...throat(5), penetrationProven: true };
    expect(checkOf('5213:isoscelesThroat', deep, sheet, iso).measured).toBe(5.1);
  });
});

describe('the preparation that a sheet asks for', () => {
  const fitUp = (changes: Partial<ButtJoint> = {}): Measurements =>
    measure(build({ ...defaultJoint('butt'), stage: 'fitUp', ...changes }));
  const grooveWith = (changes: Partial<JobSheet['groove']>): JobSheet =>
    sheetWith({ groove: { ...sheetWith().groove, ...changes } });

  it('is put to each dimension at fit-up, as a least and a most', () => {
    expect(idsOf(fitUp(), sheetWith())).toEqual([
      'sheet_min:grooveAngle',
      'sheet_max:grooveAngle',
      'sheet_min:bevelAngle1',
      'sheet_max:bevelAngle1',
      'sheet_min:bevelAngle2',
      'sheet_max:bevelAngle2',
      'sheet_min:rootOpening',
      'sheet_max:rootOpening',
      'sheet_min:rootFace',
      'sheet_max:rootFace',
    ]);
    const welded = measure(build(defaultJoint('butt')));
    expect(idsOf(welded, sheetWith())).toEqual([]);
  });

  it('has its sum shown', () => {
    expect(checkOf('sheet_min:bevelAngle2', fitUp(), sheetWith())).toMatchObject({
      sense: 'min',
      unit: 'deg',
      limit: 28,
      name: { key: 'limits_name_bevel_angle', values: { side: 2 } },
      working: {
        formula: 'nominal - minus',
        symbols: [
          { symbol: 'nominal', value: 30, unit: 'deg' },
          { symbol: 'minus', value: 2, unit: 'deg' },
        ],
        substituted: '30° − 2°',
      },
    });
    expect(checkOf('sheet_max:rootOpening', fitUp(), sheetWith())).toMatchObject({
      sense: 'max',
      unit: 'mm',
      limit: 3,
      name: { key: 'limits_name_root_opening' },
      working: { formula: 'nominal + plus', substituted: '2 mm + 1 mm' },
    });
    expect(checkOf('sheet_max:grooveAngle', fitUp(), sheetWith()).name).toEqual({
      key: 'limits_name_groove_angle',
    });
    expect(checkOf('sheet_max:bevelAngle1', fitUp(), sheetWith()).name).toEqual({
      key: 'limits_name_bevel_angle',
      values: { side: 1 },
    });
    expect(checkOf('sheet_max:rootFace', fitUp(), sheetWith())).toMatchObject({
      limit: 2,
      name: { key: 'limits_name_root_face' },
    });
  });

  it('puts a least root face to the lesser of unequal plates, a most to the greater', () => {
    // asked 1.5 mm, 0.5 under and 0.5 over: 1 to 2 mm
    const uneven = (first: number, second: number): Measurements =>
      measure(
        build({
          ...defaultJoint('butt', 'singleV'),
          stage: 'fitUp',
          rootFace1: first,
          rootFace2: second,
        }),
      );
    const sheet = grooveWith({ rootFace: { nominal: mm(1.5), minus: mm(0.5), plus: mm(0.5) } });
    const [thick, thin] = [uneven(1.5, 4), uneven(0.5, 1.5)];
    expect(checkOf('sheet_max:rootFace', thick, sheet)).toMatchObject({
      measurement: 'rootFace2',
      call: 'reject',
    });
    expect(checkOf('sheet_max:rootFace', thick, sheet).measured).toBeCloseTo(4, 9);
    expect(checkOf('sheet_max:rootFace', thick, sheet).reasons).toContainEqual({
      key: 'limits_reason_greater_root_face',
      values: { side: 2 },
    });
    expect(checkOf('sheet_min:rootFace', thick, sheet)).toMatchObject({
      measurement: 'rootFace1',
      call: 'accept',
    });
    expect(checkOf('sheet_min:rootFace', thin, sheet)).toMatchObject({
      measurement: 'rootFace1',
      call: 'reject',
    });
    expect(checkOf('sheet_max:rootFace', thin, sheet).call).toBe('accept');
    expect(checkOf('sheet_max:rootFace', uneven(1.5, 1.5), sheet).measurement).toBe('rootFace');
  });

  it('takes no plate cut square for one with a root face', () => {
    const bevel = measure(build({ ...defaultJoint('butt', 'singleBevel'), stage: 'fitUp' }));
    expect(bevel.values.rootFace2).toBeUndefined();
    const sheet = grooveWith({ rootFace: { nominal: mm(1.5), minus: mm(1.5), plus: mm(2) } });
    expect(checkOf('sheet_max:rootFace', bevel, sheet).call).toBe('accept');
  });

  it('asks for nothing where the sheet gives no nominal', () => {
    const sheet = grooveWith({
      bevelAngle: { nominal: null, minus: 0, plus: 0 },
      rootFace: { nominal: null, minus: mm(0), plus: mm(0) },
    });
    expect(idsOf(fitUp(), sheet)).toEqual([
      'sheet_min:grooveAngle',
      'sheet_max:grooveAngle',
      'sheet_min:rootOpening',
      'sheet_max:rootOpening',
    ]);
  });

  it('asks no opening or root face to be at least nothing', () => {
    const sheet = grooveWith({ rootOpening: { nominal: mm(1), minus: mm(1), plus: mm(1) } });
    expect(idsOf(fitUp(), sheet)).not.toContain('sheet_min:rootOpening');
    const flat = grooveWith({ bevelAngle: { nominal: 0, minus: 0, plus: 5 } });
    expect(idsOf(fitUp(), flat)).toContain('sheet_min:bevelAngle1');
    const loose = grooveWith({ bevelAngle: { nominal: 5, minus: 6, plus: 5 } });
    expect(idsOf(fitUp(), loose)).not.toContain('sheet_min:bevelAngle1');
  });

  it('asks no bevel of a plate that is cut square on purpose', () => {
    const ids = idsOf(fitUp({ preparation: 'singleBevel' }), sheetWith());
    expect(ids).toContain('sheet_min:bevelAngle1');
    expect(ids).not.toContain('sheet_min:bevelAngle2');
  });

  it('is asked once, and not assessed, where the edges have no such thing', () => {
    const square = fitUp({ preparation: 'square' });
    expect(idsOf(square, sheetWith())).toEqual([
      'sheet_max:grooveAngle',
      'sheet_max:bevelAngle1',
      'sheet_min:rootOpening',
      'sheet_max:rootOpening',
      'sheet_max:rootFace',
    ]);
    expect(checkOf('sheet_max:grooveAngle', square, sheetWith())).toMatchObject({
      call: 'notAssessed',
      reasons: [{ key: 'limits_reason_not_measured' }],
    });
  });

  it('is compared in the unit of its nominal, tolerances of another unit brought to it', () => {
    const sheet = grooveWith({
      rootOpening: { nominal: in64(8), minus: in64(2), plus: mm(1.27) },
    });
    const most = checkOf('sheet_max:rootOpening', fitUp(), sheet);
    // 1/8 in + 0.05 in = 0.175 in = 4.445 mm
    expect(most.printed).toEqual({ value: expect.closeTo(0.175, 12) as number, unit: 'in' });
    expect(most.limit).toBeCloseTo(4.445, 9);
    // 1/8 − 1/32 = 3/32 in, exact
    expect(checkOf('sheet_min:rootOpening', fitUp(), sheet).printed?.value).toBe(0.09375);
  });

  it('is judged by every set alike', () => {
    for (const set of limitSets) {
      expect(idsOf(fitUp(), sheetWith(), set)).toEqual(
        expect.arrayContaining(['sheet_min:grooveAngle', 'sheet_max:rootFace']) as string[],
      );
    }
  });
});
