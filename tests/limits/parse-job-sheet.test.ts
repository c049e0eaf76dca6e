import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultJobSheet, LimitsError, parseJobSheet } from '../../src/limits/index.ts';
import { runs } from '../runs.ts';
import { in64, inch, mm, sheetWith } from './hand-made.ts';

type Path = readonly string[];

/** The default sheet as plain data with one field set to something else, or taken out. */
function spoiled(path: Path, value: unknown): unknown {
  const sheet: unknown = structuredClone(defaultJobSheet());
  let at = sheet as Record<string, unknown>;
  for (const name of path.slice(0, -1)) at = at[name] as Record<string, unknown>;
  const last = path.at(-1) ?? '';
  if (value === undefined) Reflect.deleteProperty(at, last);
  else at[last] = value;
  return sheet;
}

function refusal(value: unknown): string {
  try {
    parseJobSheet(value);
    return 'taken';
  } catch (error) {
    if (error instanceof LimitsError) return `${error.field}: ${error.reason.key}`;
    throw error;
  }
}

describe('a job sheet from outside', () => {
  it('is taken as it is when it is whole', () => {
    const sheets = [
      sheetWith(),
      sheetWith({ column: 'in', size: { as: 'leg', first: in64(20), second: inch(0.5) } }),
      sheetWith({ size: { as: 'throat', first: mm(5), second: null }, extent: 'typical' }),
      sheetWith({ rounding: 'lastPlace', intendedAlignment: 'rootFlush', penetrationProven: true }),
      sheetWith({ intendedAlignment: 'faceFlush', extent: 'isolatedShort', job: '', weld: '' }),
      sheetWith({
        groove: {
          bevelAngle: { nominal: null, minus: 0, plus: 0 },
          grooveAngle: { nominal: 60, minus: 5, plus: 10 },
          rootOpening: { nominal: null, minus: mm(0), plus: mm(1) },
          rootFace: { nominal: in64(4), minus: in64(1), plus: in64(2) },
        },
      }),
      sheetWith({
        rootAccessible: false,
        service: { ...sheetWith().service, seam: 'longitudinal', category: 'B' },
        symbol: {
          contour: 'flush',
          allRound: true,
          field: false,
          tail: 'WPS 12',
          arrowSide: 'root',
        },
        groove: {
          bevelAngle: {
            nominal: 30,
            minus: 5,
            plus: 5,
            drawn: 32,
            detailed: { minus: 2, plus: 3 },
          },
          grooveAngle: { nominal: 60, minus: 5, plus: 5, drawn: 64 },
          rootOpening: {
            nominal: mm(2),
            minus: mm(1),
            plus: mm(1),
            drawn: mm(2.5),
            detailed: { minus: mm(0.5), plus: mm(1) },
          },
          rootFace: {
            nominal: mm(1),
            minus: mm(1),
            plus: mm(1),
            detailed: { minus: mm(0), plus: mm(1) },
          },
        },
      }),
    ];
    for (const sheet of sheets) {
      expect(parseJobSheet(JSON.parse(JSON.stringify(sheet)))).toEqual(sheet);
    }
  });

  it('takes a sheet of before there were such fields: a root that is reached, nothing known of the service', () => {
    const { rootAccessible, service, ...older } = sheetWith();
    expect(parseJobSheet(older)).toEqual({ ...older, rootAccessible: true, service });
    expect([rootAccessible, new Set(Object.values(service))]).toEqual([true, new Set(['unknown'])]);
    expect(refusal({ ...older, service: 7 })).toBe('service: limits_data_no_record');
    expect(refusal({ ...older, rootAccessible: 'yes' })).toMatch(/^rootAccessible: /u);
  });

  it('names the field of a tolerance as detailed that can’t be read', () => {
    const detailed = (value: unknown) =>
      refusal(spoiled(['groove', 'rootOpening', 'detailed'], value));
    expect(detailed(7)).toBe('groove.rootOpening.detailed: limits_data_no_record');
    expect(detailed({ minus: mm(1), plus: 7 })).toBe(
      'groove.rootOpening.detailed.plus: limits_data_no_record',
    );
    expect(detailed({ minus: 7, plus: mm(1) })).toBe(
      'groove.rootOpening.detailed.minus: limits_data_no_record',
    );
    expect(refusal(spoiled(['groove', 'rootOpening', 'drawn'], 7))).toBe(
      'groove.rootOpening.drawn: limits_data_no_record',
    );
  });

  it('leaves behind what a sheet does not have', () => {
    expect(parseJobSheet({ ...defaultJobSheet(), script: 'x' })).toEqual(defaultJobSheet());
  });

  it('is refused when it is no sheet', () => {
    for (const value of [null, undefined, 7, 'sheet', [], true]) {
      expect(refusal(value)).toBe('sheet: limits_data_no_record');
    }
    expect(refusal({})).toBe('guard: limits_data_no_record');
    expect(refusal(spoiled(['version'], 2))).toBe('version: limits_data_other_version');
    expect(refusal(spoiled(['version'], '1'))).toBe('version: limits_data_other_version');
  });

  it('is refused with the field that is wrong and the reason', () => {
    const cases: readonly (readonly [Path, unknown, string])[] = [
      [['job'], 7, 'job: limits_data_no_text'],
      [['job'], 'x'.repeat(201), 'job: limits_data_text_too_long'],
      [['weld'], null, 'weld: limits_data_no_text'],
      [['limitSet'], ' ', 'limitSet: limits_data_empty'],
      [['limitSet'], 7, 'limitSet: limits_data_no_text'],
      [['column'], 'cm', 'column: limits_data_no_choice'],
      [['size'], null, 'size: limits_data_no_record'],
      [['size', 'as'], 'toe', 'size.as: limits_data_no_choice'],
      [['size', 'first'], null, 'size.first: limits_data_no_record'],
      [['size', 'first', 'unit'], 'cm', 'size.first.unit: limits_data_no_choice'],
      [['size', 'first', 'value'], '7', 'size.first.value: limits_data_no_number'],
      [['size', 'first', 'value'], Number.NaN, 'size.first.value: limits_data_no_number'],
      [['size', 'first', 'value'], 0, 'size.first: limits_data_no_size'],
      [['size', 'first', 'value'], -1, 'size.first.value: limits_data_out_of_range'],
      [['size', 'first', 'value'], 100.1, 'size.first.value: limits_data_out_of_range'],
      [['size', 'first'], { unit: 'in', value: 4.1 }, 'size.first.value: limits_data_out_of_range'],
      [
        ['size', 'first'],
        { unit: 'in64', value: 257 },
        'size.first.value: limits_data_out_of_range',
      ],
      [
        ['size', 'first'],
        { unit: 'in64', value: 1.5 },
        'size.first.value: limits_data_no_whole_64ths',
      ],
      [['size', 'second'], undefined, 'size.second: limits_data_no_record'],
      [['size', 'second'], { unit: 'mm', value: 0 }, 'size.second: limits_data_no_size'],
      [
        ['size'],
        { as: 'throat', first: mm(5), second: mm(6) },
        'size.second: limits_data_two_throats',
      ],
      [['dihedralAngle'], 0, 'dihedralAngle: limits_data_no_corner'],
      [['dihedralAngle'], 180, 'dihedralAngle: limits_data_no_corner'],
      [['dihedralAngle'], 181, 'dihedralAngle: limits_data_out_of_range'],
      [['dihedralAngle'], null, 'dihedralAngle: limits_data_no_number'],
      [['groove'], 7, 'groove: limits_data_no_record'],
      [['groove', 'bevelAngle'], null, 'groove.bevelAngle: limits_data_no_record'],
      [
        ['groove', 'bevelAngle', 'nominal'],
        -1,
        'groove.bevelAngle.nominal: limits_data_out_of_range',
      ],
      [['groove', 'bevelAngle', 'minus'], null, 'groove.bevelAngle.minus: limits_data_no_number'],
      [['groove', 'grooveAngle', 'plus'], 200, 'groove.grooveAngle.plus: limits_data_out_of_range'],
      [['groove', 'rootOpening', 'plus'], 1, 'groove.rootOpening.plus: limits_data_no_record'],
      [
        ['groove', 'rootFace', 'nominal'],
        undefined,
        'groove.rootFace.nominal: limits_data_no_record',
      ],
      [['intendedAlignment'], 'bore', 'intendedAlignment: limits_data_no_choice'],
      [['rounding'], 'up', 'rounding: limits_data_no_choice'],
      [['guard', 'factor'], 11, 'guard.factor: limits_data_out_of_range'],
      [['guard', 'lengthUncertainty'], -0.1, 'guard.lengthUncertainty: limits_data_out_of_range'],
      [['guard', 'angleUncertainty'], '1', 'guard.angleUncertainty: limits_data_no_number'],
      [['extent'], 'all', 'extent: limits_data_no_choice'],
      [['leastImperfection'], undefined, 'leastImperfection: limits_data_no_record'],
      [['penetrationProven'], 'yes', 'penetrationProven: limits_data_no_flag'],
    ];
    for (const [path, value, expected] of cases) {
      expect(refusal(spoiled(path, value))).toBe(expected);
    }
  });

  it('names the choices or the bounds that there are', () => {
    const reasonOf = (path: Path, value: unknown): unknown => {
      try {
        return parseJobSheet(spoiled(path, value));
      } catch (error) {
        return error instanceof LimitsError ? error.reason : error;
      }
    };
    expect(reasonOf(['column'], 'cm')).toEqual({
      key: 'limits_data_no_choice',
      values: { choices: 'mm, in' },
    });
    expect(reasonOf(['guard', 'factor'], 11)).toEqual({
      key: 'limits_data_out_of_range',
      values: { least: 0, most: 10 },
    });
    expect(reasonOf(['job'], 'x'.repeat(201))).toEqual({
      key: 'limits_data_text_too_long',
      values: { most: 200 },
    });
  });

  it('carries its reason in the error’s own text as well', () => {
    const error = new LimitsError('column', {
      key: 'limits_data_no_choice',
      values: { choices: 'mm' },
    });
    expect(error.name).toBe('LimitsError');
    expect(error.message).toBe('column: limits_data_no_choice {"choices":"mm"}');
    expect(new LimitsError('job', { key: 'limits_data_no_text' }).message).toBe(
      'job: limits_data_no_text {}',
    );
  });

  it('of any shape is taken or refused by name, never left half read', () => {
    fc.assert(
      fc.property(
        fc.anything(),
        fc.constantFrom(...Object.keys(defaultJobSheet())),
        (value, field) => {
          const outcome = refusal({ ...defaultJobSheet(), [field]: value });
          expect(outcome).toMatch(/^taken$|: limits_data_/u);
        },
      ),
      { numRuns: runs(5_000) },
    );
  });
});
