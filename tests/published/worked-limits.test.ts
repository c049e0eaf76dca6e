/** Checks of single rows, each worked by hand from the row as it was read, with the document named. */
import { describe, expect, it } from 'vitest';
import { build, defaultJoint, type FilletJoint } from '../../src/joint/index.ts';
import { judge, type Check, type JobSheet } from '../../src/limits/index.ts';
import { measure, type MeasurementId, type Measurements } from '../../src/measure/index.ts';
import {
  butt,
  flatFillet,
  inch,
  limitSet,
  measured,
  mm,
  sheetWith,
  soundButt,
} from '../limits/hand-made.ts';

type Values = Readonly<Partial<Record<MeasurementId, number>>>;

const IN = 25.4;
const plates = (t: number): Values => ({ t1: t, t2: t, tMin: t, tMax: t });
const fillet = (values: Values, heading: object = {}): Measurements =>
  measured(heading, { ...flatFillet, sizeEqual: 8, ...values });
const weld = (values: Values, heading: object = {}): Measurements =>
  measured({ ...butt, ...heading }, { ...soundButt, ...values });

function checkOf(set: string, id: string, of: Measurements, sheet: JobSheet): Check {
  const check = judge(of, sheet, limitSet(set)).find((one) => one.id === id);
  if (check === undefined) throw new Error(`no check ${id}`);
  return check;
}
const throat = (a: number): Partial<JobSheet> => ({
  size: { as: 'throat', first: mm(a), second: null },
});
const service = (changes: Partial<JobSheet['service']>): Partial<JobSheet> => ({
  service: { ...sheetWith().service, ...changes },
});
/** The sheet in inches, and the margin in inches, so that figures read as the document prints them. */
const inches = (changes: Partial<JobSheet> = {}): JobSheet =>
  sheetWith({ column: 'in', ...changes });

describe('ISO 5817', () => {
  const levels = (id: string, of: Measurements, sheet = sheetWith()): readonly Check[] =>
    ['d', 'c', 'b'].map((level) => checkOf(`iso5817-${level}`, id, of, sheet));
  const limits = (checks: readonly Check[]): readonly (number | null)[] =>
    checks.map(({ limit }) => limit);
  const calls = (checks: readonly Check[]): readonly string[] => checks.map(({ call }) => call);
  const near = (value: number): number => expect.closeTo(value, 9) as number;

  it('502 (2003): a cap 14 mm wide and 2.5 mm high passes D and C, and fails B', () => {
    const of = weld({ faceWidth: 14, 'faceReinforcement.higher': 2.5 });
    const checks = levels('502:faceReinforcement.higher', of);
    // 1 + 0.25 × 14, 1 + 0.15 × 14, 1 + 0.1 × 14
    expect(limits(checks)).toEqual([near(4.5), near(3.1), near(2.4)]);
    expect(calls(checks)).toEqual(['accept', 'accept', 'reject']);
  });

  it('504 (2003): a root bead 6 mm wide and 3 mm high passes D, and fails B', () => {
    const of = weld({ ...plates(10), rootWidth: 6, 'rootReinforcement.higher': 3 });
    const [d, , b] = levels('504:rootReinforcement.higher', of);
    // min(1 + 6, 5); 1 + 0.2 × 6
    expect(d).toMatchObject({ limit: 5, call: 'accept' });
    expect(b).toMatchObject({ limit: near(2.2), call: 'reject' });
  });

  it('5011 (2003): t = 3.0 exactly is in the thin band, 0.3 mm at C for short lengths only', () => {
    const at = (extent: JobSheet['extent'], undercut1: number): Check =>
      checkOf(
        'iso5817-c',
        '5011-thin:undercut1',
        fillet({ ...plates(3), undercut1 }),
        sheetWith({ extent }),
      );
    // 20 mm in the worst 100 mm is short: accepted; 26 mm is not: rejected; unknown: refer
    expect(at('isolatedShort', 0.3)).toMatchObject({ limit: near(0.3), call: 'accept' });
    expect(at('typical', 0.3).call).toBe('reject');
    expect(at('unknown', 0.3).call).toBe('refer');
    expect(at('isolatedShort', 0.31).call).toBe('reject');
  });

  it('5072 (2023): a 6 mm tube 2.5 mm out of line passes D and C, and fails B', () => {
    const of = weld({ ...plates(6), centrelineOffset: 2.5 }, { product: 'pipe' });
    const checks = levels('5072:misalignment', of);
    // 0.5 × 6 = 3, at most 4, 3 and 2
    expect(limits(checks)).toEqual([3, 3, 2]);
    expect(calls(checks)).toEqual(['accept', 'accept', 'reject']);
  });

  it('512 and 503 (2003/2014): legs 10.5 and 8 on a 6 mm throat, face 13 mm, convexity 2.9, pass C', () => {
    const of = fillet({
      leg1: 10.5,
      leg2: 8,
      legDifference: 2.5,
      faceWidth: 13,
      convexity: 2.9,
      // flat at least: the largest isosceles triangle has the lesser leg, 8 cos 45° = 5.657
      isoscelesThroat: 5.657,
    });
    const at = (id: string): Check => checkOf('iso5817-c', id, of, sheetWith(throat(6)));
    // 2 + 0.15 × 6; 1 + 0.15 × 13
    expect(at('512:legDifference')).toMatchObject({ limit: near(2.9), call: 'accept' });
    expect(at('503:convexity')).toMatchObject({ limit: near(2.95), call: 'accept' });
    // these two rows only: the throat is 0.343 short, under the 0.9 allowed for short lengths
    expect(at('5213:isoscelesThroat').call).toBe('refer');
  });
});

describe('AWS D1.1', () => {
  it('Table 6.1 (7)(A): 0.050 in of undercut in 3/4 in plate passes by the exception, 0.065 in does not', () => {
    const at = (extent: JobSheet['extent'], depth: number): Check =>
      checkOf(
        'aws-d11-static',
        'd11-7A1:undercut1',
        fillet({ ...plates(0.75 * IN), undercut1: depth * IN }),
        inches({ extent }),
      );
    // over 1/32 = 0.03125, not over 1/16 = 0.0625; 1.5 in in the worst 12 in is short, 2.5 in is not
    expect(at('isolatedShort', 0.05).call).toBe('accept');
    expect(at('typical', 0.05).call).toBe('reject');
    expect(at('isolatedShort', 0.065).call).toBe('reject');
    // up to 1/32 in whatever the length
    expect(at('typical', 1 / 32).call).toBe('accept');
    expect(at('unknown', 0.05).call).toBe('refer');
    expect(at('unknown', 0.05).reasons.map(({ key }) => key)).toContain('limit_length_2_in_12');
  });

  it('5.22.1: under a gap of 1/8 in a 1/4 in fillet needs 3/8 in, so 5/16 in fails by 1/16 in', () => {
    const size = { as: 'leg', first: inch(0.25), second: null } as const;
    const at = (set: string, id: string, gap: number, leg1: number): Check =>
      checkOf(
        set,
        id,
        fillet({ rootGap: gap * IN, leg1: leg1 * IN, sizeEqual: leg1 * IN }),
        inches({ size, extent: 'isolatedShort' }),
      );
    const check = at('aws-d11-static', 'd11-gap2:leg1', 1 / 8, 5 / 16);
    expect(check).toMatchObject({ call: 'reject', printed: { value: 3 / 8, unit: 'in' } });
    expect(check.margin).toBeCloseTo(-IN / 16, 9);
    // exactly 1/16 in adds nothing here, and its own width in the text that says "or more"
    expect(at('aws-d11-static', 'd11-6b:leg1', 1 / 16, 1 / 4).call).toBe('accept');
    const austin = at('austin-723s', 'austin-gap2:leg1', 1 / 16, 1 / 4);
    expect(austin).toMatchObject({ call: 'reject', printed: { value: 5 / 16, unit: 'in' } });
  });

  it('Table 6.1 (7)(B): 0.9 mm of undercut passes the 1 mm of the metric column, and fails 1/32 in', () => {
    const at = (column: 'mm' | 'in'): Check =>
      checkOf(
        'aws-d11-cyclic',
        'd11-7B2:undercut1',
        fillet({ undercut1: 0.9 }),
        sheetWith({ column, ...service({ stress: 'other' }) }),
      );
    expect(at('mm')).toMatchObject({ call: 'accept', limit: 1 });
    // 25.4 / 32 = 0.79375
    expect(at('in')).toMatchObject({ call: 'reject', limit: 0.79375 });
  });

  it('annex on skewed tees: at 120° a throat of 1/4 in takes legs of 1/2 in, which a square gauge reads 0.433', () => {
    const joint: FilletJoint = {
      ...defaultJoint('fillet'),
      dihedralAngle: 120,
      leg1: 0.5 * IN,
      leg2: 0.5 * IN,
      convexity: 0,
    };
    const { values } = measure(build(joint));
    const read = (id: MeasurementId): number => (values[id]?.value ?? Number.NaN) / IN;
    // leg cos 60° = 0.25; 2 × 0.25 sin 60° = 0.4330; over the 0.25 √2 of a right angle, 1.2247
    expect(read('theoreticalThroat')).toBeCloseTo(0.25, 9);
    expect(read('perpendicularLeg1')).toBeCloseTo(0.433, 4);
    expect(read('perpendicularLeg1') / (read('theoreticalThroat') * Math.SQRT2)).toBeCloseTo(
      1.2247,
      4,
    );
  });
});

describe('piping, vessels and ships', () => {
  it('ASME B31.3 H and I: 0.9 mm in a 3 mm wall fails H and passes I', () => {
    const at = (set: string, id: string): Check =>
      checkOf(
        set,
        id,
        weld({ ...plates(3), undercut1: 0.9 }),
        sheetWith(service({ seam: 'girth' })),
      );
    // min(1, 0.75); min(1.5, max(0.75, 1))
    expect(at('b313-normal', 'b313-H-girth:undercut1')).toMatchObject({
      limit: 0.75,
      call: 'reject',
    });
    expect(at('b313-category-d', 'b313-I-girth:undercut1')).toMatchObject({
      limit: 1,
      call: 'accept',
    });
  });

  it('46 CFR 56.70-15: 0.28 in on a weld 2.4 in wide in 2.5 in plate passes, an eighth of the width counting', () => {
    const of = weld({
      ...plates(2.5 * IN),
      faceWidth: 2.4 * IN,
      'faceReinforcement.higher': 0.28 * IN,
    });
    const sheet = inches(service({ temperature: 'to750F' }));
    const check = checkOf('cfr46-5670', 'cfr46-5670-6b:faceReinforcement.higher', of, sheet);
    // max(0.25, 0.3)
    expect(check.printed?.value).toBeCloseTo(0.3, 12);
    expect(check.call).toBe('accept');
  });

  it('LANL 1.1.5: 0.100 in of penetration fails in a 0.375 in wall, 0.060 in passes in 0.188 in', () => {
    const at = (id: string, wall: number, height: number): Check =>
      checkOf(
        'lanl',
        `${id}:rootReinforcement.higher`,
        weld({ ...plates(wall * IN), 'rootReinforcement.higher': height * IN }),
        inches(),
      );
    // min(0.125, 0.09375); 0.0625
    expect(at('lanl-rp1', 0.375, 0.1)).toMatchObject({ call: 'reject' });
    expect(at('lanl-rp1', 0.375, 0.1).printed?.value).toBeCloseTo(0.09375, 12);
    expect(at('lanl-rp2', 0.188, 0.06)).toMatchObject({
      call: 'accept',
      printed: { value: 0.0625, unit: 'in' },
    });
    // at just 1/4 in the bands meet without a step
    expect(at('lanl-rp1', 0.25, 0.06).printed?.value).toBe(0.0625);
  });

  it('MIL-STD-2035A class 1: 0.014 in in 0.125 in plate fails, a tenth governing below 5/32 in', () => {
    const of = fillet({ ...plates(0.125 * IN), undercut1: 0.014 * IN });
    const check = checkOf('mil-2035a-1', 'mil2035-uc1:undercut1', of, inches());
    // min(0.015625, 0.0125)
    expect(check.printed?.value).toBeCloseTo(0.0125, 12);
    expect(check.call).toBe('reject');
  });
});
