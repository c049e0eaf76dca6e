/** Facts of the trade as instructors give them. All are: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { build, defaultJoint, type ButtJoint, type FilletJoint } from '../../src/joint/index.ts';
import {
  compileLimits,
  judge,
  parseLimitSet,
  type Call,
  type CompiledLimitSet,
  type JobSheet,
} from '../../src/limits/index.ts';
import { measure, type Measurements } from '../../src/measure/index.ts';
import { parseLength } from '../../src/units/index.ts';
import { in64, mm, sheetWith } from './hand-made.ts';

const inches = (text: string): number => {
  const read = parseLength(text, 'in');
  if (!read.ok) throw new Error(text);
  return read.mm;
};
const fitUp = (changes: Partial<ButtJoint>): Measurements =>
  measure(build({ ...defaultJoint('butt'), stage: 'fitUp', ...changes }));
const welded = (changes: Partial<ButtJoint>): Measurements =>
  measure(build({ ...defaultJoint('butt'), ...changes }));
const fillet = (changes: Partial<FilletJoint>): Measurements =>
  measure(build({ ...defaultJoint('fillet'), ...changes }));

/** Everyday limits as a set of its own, in the inches that they are said in. */
async function everyday(): Promise<CompiledLimitSet> {
  const row = (id: string, measurements: readonly string[], limit: string) => ({
    id,
    name: 'limits_name_undercut',
    measurements,
    max: { in: limit },
    document: 'common practice',
    edition: 'no source',
    clause: 'none',
    status: 'memory',
    confidence: 'medium',
  });
  const set = parseLimitSet({
    version: 1,
    id: 'everyday',
    name: 'n',
    about: 'a',
    columns: ['in'],
    readings: { reinforcementDatum: 'higher', note: 'n' },
    symbols: {},
    lastPlace: { mm: 0.1, in: 0.01, deg: 1 },
    criteria: [
      row('reinforcement', ['faceReinforcement.higher'], '3/32 in'),
      row('undercut', ['undercut1', 'undercut2'], '1/32 in'),
    ],
    checklist: [],
  });
  const result = await compileLimits(set);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.limits;
}

const callOf = (
  id: string,
  of: Measurements,
  sheet: JobSheet,
  set: CompiledLimitSet,
): Call | undefined => judge(of, sheet, set).find((check) => check.id === id)?.call;

describe('common practice, no source', async () => {
  const set = await everyday();
  const sheet = sheetWith({ column: 'in' });

  it('a 30° bevel is held within 2°, or within 5°', () => {
    const calls = (tolerance: number, bevel: number): readonly (Call | undefined)[] => {
      const bevelAngle = { nominal: 30, minus: tolerance, plus: tolerance };
      const asked = { ...sheet, groove: { ...sheet.groove, bevelAngle } };
      const of = fitUp({ bevelAngle1: bevel });
      return ['sheet_min:bevelAngle1', 'sheet_max:bevelAngle1'].map((id) =>
        callOf(id, of, asked, set),
      );
    };
    for (const tolerance of [2, 5]) {
      expect(calls(tolerance, 30)).toEqual(['accept', 'accept']);
      expect(calls(tolerance, 30 - tolerance)).toEqual(['accept', 'accept']);
      expect(calls(tolerance, 30 + tolerance)).toEqual(['accept', 'accept']);
      expect(calls(tolerance, 30 - tolerance - 0.5)).toEqual(['reject', 'accept']);
      expect(calls(tolerance, 30 + tolerance + 0.5)).toEqual(['accept', 'reject']);
    }
  });

  it('a closed root opens by at most 1/32 in, or 1/16 in', () => {
    for (const [most, text] of [
      [2, '1/32'],
      [4, '1/16'],
    ] as const) {
      const rootOpening = { nominal: in64(0), minus: in64(0), plus: in64(most) };
      const asked = { ...sheet, groove: { ...sheet.groove, rootOpening } };
      const call = (opening: number): Call | undefined =>
        callOf('sheet_max:rootOpening', fitUp({ rootOpening: opening }), asked, set);
      expect(call(0)).toBe('accept');
      expect(call(inches(text))).toBe('accept');
      expect(call(inches(text) + 0.01)).toBe('reject');
    }
  });

  it('reinforcement is flush to 3/32 in', () => {
    const call = (capHeight: number): Call | undefined =>
      callOf('reinforcement:faceReinforcement.higher', welded({ capHeight }), sheet, set);
    expect(call(0)).toBe('accept');
    expect(call(inches('3/32') - 0.01)).toBe('accept');
    expect(call(inches('3/32') + 0.01)).toBe('reject');
  });

  it('undercut is at most 1/32 in', () => {
    const call = (undercut1Depth: number): Call | undefined =>
      callOf('undercut:undercut1', fillet({ undercut1Depth, undercut1Width: 3 }), sheet, set);
    expect(call(0)).toBe('accept');
    expect(call(inches('1/32') - 0.01)).toBe('accept');
    expect(call(inches('1/32') + 0.01)).toBe('reject');
  });

  it('a leg is not under the specified, more is allowed', () => {
    const asked = { ...sheet, size: { as: 'leg', first: in64(20), second: null } } as const;
    const call = (leg1: number): Call | undefined =>
      callOf('sheet_leg:leg1', fillet({ leg1, leg2: 10 }), asked, set);
    expect(call(inches('5/16'))).toBe('accept');
    expect(call(inches('5/16') - 0.01)).toBe('reject');
    expect(call(inches('1/2'))).toBe('accept');
  });

  it('a throat is not under the theoretical', () => {
    // 8 mm legs have a theoretical throat of 5.657 mm; hollow by 0.5 mm the weld falls short
    const asked = sheetWith({ size: { as: 'leg', first: mm(8), second: null } });
    const call = (convexity: number): Call | undefined =>
      callOf('sheet_throat:isoscelesThroat', fillet({ leg1: 8, leg2: 8, convexity }), asked, set);
    expect(call(0)).toBe('accept');
    expect(call(1)).toBe('accept');
    expect(call(-0.5)).toBe('reject');
  });
});
