/** AWS D1.1 on built sections: what its rows do to the sheet's own checks, and what the sheet has to say first. */
import { describe, expect, it } from 'vitest';
import { build, defaultJoint, type ButtJoint, type FilletJoint } from '../../src/joint/index.ts';
import { judge, type Check, type JobSheet } from '../../src/limits/index.ts';
import { measure, type Measurements } from '../../src/measure/index.ts';
import { flatFillet, limitSet, measured, mm, sheetWith } from './hand-made.ts';

const fillet = (changes: Partial<FilletJoint>): Measurements =>
  measure(build({ ...defaultJoint('fillet'), convexity: 0, ...changes }));
const fitUp = (changes: Partial<ButtJoint> = {}): Measurements =>
  measure(build({ ...defaultJoint('butt'), stage: 'fitUp', ...changes }));
const judged = (of: Measurements, sheet: JobSheet, set = 'aws-d11-static'): readonly Check[] =>
  judge(of, sheet, limitSet(set));
const ids = (checks: readonly Check[], part: string): readonly string[] =>
  checks.map(({ id }) => id).filter((id) => id.includes(part));
const find = (checks: readonly Check[], id: string): Check | undefined =>
  checks.find((check) => check.id === id);

const eight = { as: 'leg', first: mm(8), second: null } as const;

describe('a fillet under its size', () => {
  it('is judged by the undersize rows in place of the sheet’s own leg and throat', () => {
    const of = fillet({ leg1: 7, leg2: 8 });
    const at = (extent: JobSheet['extent']) => judged(of, sheetWith({ size: eight, extent }));
    expect(ids(at('unknown'), 'sheet_')).toEqual([]);
    // 1 mm under, 3 mm allowed over a tenth of the length
    expect(find(at('unknown'), 'd11-6c:leg1')).toMatchObject({ call: 'refer', limit: 5 });
    expect(find(at('isolatedShort'), 'd11-6c:leg1')?.call).toBe('accept');
    expect(find(at('typical'), 'd11-6c:leg1')?.call).toBe('reject');
    expect(find(at('unknown'), 'd11-6c:leg2')?.call).toBe('accept');
    expect(find(at('unknown'), 'd11-6c-size:sizeEqual')?.call).toBe('refer');
  });

  it('with full legs and a hollow face falls short by the triangle that fits in it', () => {
    const checks = judged(fillet({ leg1: 8, leg2: 8, convexity: -1 }), sheetWith({ size: eight }));
    expect(find(checks, 'd11-6c:leg1')?.call).toBe('accept');
    expect(find(checks, 'd11-6c-size:sizeEqual')?.call).toBe('refer');
  });

  it('of unequal legs keeps the sheet’s throat, which no row replaces', () => {
    const size = { as: 'leg', first: mm(8), second: mm(10) } as const;
    const checks = judged(fillet({ leg1: 8, leg2: 10 }), sheetWith({ size }));
    expect(ids(checks, 'sheet_')).toEqual(['sheet_throat:theoreticalThroat']);
    expect(ids(checks, 'd11-6')).toEqual(['d11-6c:leg1', 'd11-6c:leg2']);
  });

  it('over a gap that adds to its legs is judged by them as added to, without any undersize', () => {
    const of = fillet({ leg1: 11, leg2: 11, rootGap: 3 });
    const checks = judged(of, sheetWith({ size: eight, extent: 'isolatedShort' }));
    // the least gap is 3 mm: 8 + 3
    expect(find(checks, 'd11-gap2:leg1')).toMatchObject({ call: 'accept', limit: 11 });
    expect(ids(checks, 'd11-6')).toEqual([]);
    expect(ids(checks, 'sheet_')).toEqual([]);
  });
});

describe('what a section doesn’t show', () => {
  it('is asked of the sheet: which way the stress runs', () => {
    const checks = judged(fillet({}), sheetWith({ size: eight }), 'aws-d11-cyclic');
    const asking = checks.filter(({ reasons: [reason] }) =>
      reason?.key.startsWith('limits_reason_needs'),
    );
    expect(asking.map(({ measurement, call }) => [measurement, call])).toEqual([
      ['undercut1', 'notAssessed'],
      ['undercut2', 'notAssessed'],
    ]);
  });

  it('leaves a tee outside 60° to 135° to rules that are not in the set', () => {
    const skewed = (dihedralAngle: number): string | undefined => {
      const of = measured({}, { ...flatFillet, dihedralAngle });
      const sheet = sheetWith({ size: eight, dihedralAngle });
      return find(judged(of, sheet), 'd11-skew:isoscelesThroat')?.reasons[0]?.key;
    };
    expect([60, 90, 135].map(skewed)).toEqual([undefined, undefined, undefined]);
    expect([59, 136].map(skewed)).toEqual(['limit_reason_skewed', 'limit_reason_skewed']);
  });
});

describe('the fit-up beside the sheet’s preparation', () => {
  const groove = sheetWith().groove;
  const inInches = (changes: Partial<JobSheet['groove']> = {}): JobSheet =>
    sheetWith({ column: 'in', groove: { ...groove, ...changes } });
  const most = (of: Measurements, sheet: JobSheet, row: string): number | null | undefined =>
    find(judged(of, sheet), row)?.limit;

  it('goes by the drawing where it differs, and by the WPS elsewhere', () => {
    const row = 'd11-fit-r0-most:rootOpening';
    // 2 mm on the WPS, and 1/16 in
    expect(most(fitUp(), inInches(), row)).toBeCloseTo(2 + 25.4 / 16, 9);
    const drawn = { rootOpening: { ...groove.rootOpening, drawn: mm(3) } };
    expect(most(fitUp(), inInches(drawn), row)).toBeCloseTo(3 + 25.4 / 16, 9);
    const angle = { grooveAngle: { ...groove.grooveAngle, drawn: 70 } };
    expect(most(fitUp(), inInches(angle), 'd11-fit-ang-most:grooveAngle')).toBe(80);
    expect(most(fitUp(), inInches(), 'd11-fit-ang-most:grooveAngle')).toBe(70);
  });

  it('is not assessed where neither says, nor in a column that was not read', () => {
    const unset = {
      rootOpening: { ...groove.rootOpening, nominal: null },
      rootFace: { ...groove.rootFace, nominal: null },
      grooveAngle: { ...groove.grooveAngle, nominal: null },
    };
    const checks = judged(fitUp(), inInches(unset));
    for (const id of ['f-most:rootFace', 'r0-most:rootOpening', 'ang-most:grooveAngle']) {
      expect(find(checks, `d11-fit-${id}`)).toMatchObject({
        call: 'notAssessed',
        reasons: [{ key: 'limits_reason_missing_on_sheet' }],
      });
    }
    const metric = judged(fitUp(), sheetWith());
    expect(find(metric, 'd11-fit-r0-most:rootOpening')?.reasons[0]?.key).toBe(
      'limits_reason_no_mm_figure',
    );
    const federal = judge(
      measure(build(defaultJoint('butt'))),
      sheetWith({ service: { ...sheetWith().service, temperature: 'to350F' } }),
      limitSet('cfr46-5670'),
    );
    expect(federal[0]?.reasons[0]?.key).toBe('limits_reason_no_mm_column');
  });

  it('may be wider over a backing strip than over none', () => {
    const bare = judged(fitUp(), inInches());
    const backed = judged(fitUp({ backing: 'strip' }), inInches());
    expect(ids(bare, 'd11-fit-r')).toEqual([
      'd11-fit-r0-least:rootOpening',
      'd11-fit-r0-most:rootOpening',
    ]);
    expect(ids(backed, 'd11-fit-r')).toEqual([
      'd11-fit-rb-least:rootOpening',
      'd11-fit-rb-most:rootOpening',
    ]);
  });
});
