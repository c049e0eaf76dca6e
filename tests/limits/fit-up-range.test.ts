import { describe, expect, it } from 'vitest';
import { defaultJoint, type ButtJoint } from '../../src/joint/index.ts';
import { detailChecks, fitUpRange, type JobSheet } from '../../src/limits/index.ts';
import { mm, in64, sheetWith } from './hand-made.ts';

const toleranced = { minus: mm(1), plus: mm(1) };
const sheet = sheetWith({
  groove: {
    bevelAngle: { nominal: 30, minus: 5, plus: 5 },
    grooveAngle: { nominal: 60, minus: 5, plus: 5 },
    rootOpening: { nominal: mm(2), ...toleranced },
    rootFace: { nominal: mm(1.5), ...toleranced },
  },
});
const joint = (changes: Partial<ButtJoint> = {}): ButtJoint => ({
  ...defaultJoint('butt', 'singleV'),
  t1: 12,
  t2: 12,
  ...changes,
});
const at = (of: ButtJoint, on: JobSheet, field: string, end: string) =>
  fitUpRange(of, on).find((one) => one.field === field && one.end === end);

describe('what the fit-up tolerances mean for the weld', () => {
  // a V on both plates, t 12, root face f, opening g: g t + (t − f)² tan β
  const area = (g: number, f: number, bevel: number): number =>
    g * 12 + (12 - f) ** 2 * Math.tan((bevel * Math.PI) / 180);

  it('is the area of the groove with each dimension at its ends, the others as drawn', () => {
    const drawn = area(2, 1.5, 30);
    for (const [field, end, expected] of [
      ['rootOpening', 'least', area(1, 1.5, 30)],
      ['rootOpening', 'most', area(3, 1.5, 30)],
      ['rootFace', 'least', area(2, 0.5, 30)],
      ['rootFace', 'most', area(2, 2.5, 30)],
      ['bevelAngle', 'least', area(2, 1.5, 25)],
      ['bevelAngle', 'most', area(2, 1.5, 35)],
    ] as const) {
      const found = at(joint(), sheet, field, end);
      expect(found?.area).toBeCloseTo(expected, 9);
      expect(found?.ratio).toBeCloseTo(expected / drawn, 9);
    }
    // 3 mm of opening more than fills a fifth more than as drawn: 12/87.7
    expect(at(joint(), sheet, 'rootOpening', 'most')?.ratio).toBeCloseTo(1.1369, 3);
  });

  it('leaves a plate that is cut square on purpose square', () => {
    const single = joint({ preparation: 'singleBevel' });
    // one plate only: g t + (t − f)² tan β / 2
    const one = 2 * 12 + (10.5 ** 2 * Math.tan((35 * Math.PI) / 180)) / 2;
    expect(at(single, sheet, 'bevelAngle', 'most')?.area).toBeCloseTo(one, 9);
  });

  it('has no groove to fill where the plates can’t be set up so', () => {
    const face = { nominal: mm(1.5), minus: mm(0), plus: mm(30) };
    const thick = sheetWith({ groove: { ...sheet.groove, rootFace: face } });
    expect(at(joint(), thick, 'rootFace', 'most')).toMatchObject({ area: null, ratio: null });
  });

  it('starts from what is drawn where that differs from the WPS, and passes over what is not required', () => {
    const groove = {
      ...sheet.groove,
      bevelAngle: { nominal: null, minus: 0, plus: 0 },
      rootOpening: { nominal: mm(2), drawn: mm(3), minus: mm(1), plus: mm(1) },
    };
    const ends = fitUpRange(joint(), sheetWith({ groove }));
    expect(ends.map(({ field, value }) => [field, value])).toEqual([
      ['rootOpening', 2],
      ['rootOpening', 4],
      ['rootFace', 0.5],
      ['rootFace', 2.5],
    ]);
  });

  it('never opens less than nothing', () => {
    const groove = { ...sheet.groove, rootOpening: { nominal: mm(0), ...toleranced } };
    expect(at(joint(), sheetWith({ groove }), 'rootOpening', 'least')?.value).toBe(0);
  });
});

describe('what the drawing details against what the WPS lets it', () => {
  it('is nothing to ask while the drawing says no other than the WPS', () => {
    expect(detailChecks(sheet)).toEqual([]);
  });

  it('keeps to the tolerance as detailed, which is not the one as fitted', () => {
    const angle = { nominal: 60, minus: 5, plus: 10, detailed: { minus: 0, plus: 10 } };
    const of = (drawn: number) =>
      detailChecks(sheetWith({ groove: { ...sheet.groove, grooveAngle: { ...angle, drawn } } }))[0];
    expect(of(70)).toMatchObject({ field: 'grooveAngle', least: 60, most: 70, accept: true });
    expect(of(71)?.accept).toBe(false);
    expect(of(59)?.accept).toBe(false);
    expect(of(60)?.accept).toBe(true);
  });

  it('asks each dimension by its own name, only where drawn value, nominal and tolerance are all there', () => {
    const length = { nominal: mm(2), minus: mm(1), plus: mm(1) };
    const within = { minus: mm(0.5), plus: mm(1) };
    const angle = { nominal: 30, minus: 5, plus: 5, drawn: 34, detailed: { minus: 2, plus: 3 } };
    const full = {
      bevelAngle: angle,
      grooveAngle: { ...angle, nominal: 60, drawn: 61 },
      rootOpening: { ...length, drawn: mm(2.5), detailed: within },
      rootFace: { ...length, drawn: mm(1.4), detailed: within },
    };
    const fields = (groove: JobSheet['groove']) =>
      detailChecks(sheetWith({ groove })).map(({ field, accept }) => [field, accept]);
    expect(fields(full)).toEqual([
      ['bevelAngle', false],
      ['grooveAngle', true],
      ['rootOpening', true],
      ['rootFace', false],
    ]);
    const [bevel, , opening] = detailChecks(sheetWith({ groove: full }));
    expect(bevel).toMatchObject({ unit: 'deg', drawn: 34, nominal: 30, least: 28, most: 33 });
    expect(opening).toMatchObject({ unit: 'mm', drawn: 2.5, nominal: 2, least: 1.5, most: 3 });
    const notDrawn = { nominal: 30, minus: 5, plus: 5, detailed: angle.detailed };
    const noTolerance = { nominal: 30, minus: 5, plus: 5, drawn: 34 };
    const openingNotDrawn = { ...length, detailed: within };
    const openingNoTolerance = { ...length, drawn: mm(2.5) };
    for (const bevelAngle of [notDrawn, noTolerance, { ...angle, nominal: null }]) {
      expect(fields({ ...full, bevelAngle })[0]).toEqual(['grooveAngle', true]);
    }
    for (const rootOpening of [
      openingNotDrawn,
      openingNoTolerance,
      { ...full.rootOpening, nominal: null },
    ]) {
      expect(fields({ ...full, rootOpening }).map(([field]) => field)).toEqual([
        'bevelAngle',
        'grooveAngle',
        'rootFace',
      ]);
    }
  });

  it('compares lengths in the unit of the WPS, fractions exactly', () => {
    const rootOpening = {
      nominal: in64(8),
      drawn: in64(12),
      minus: in64(4),
      plus: in64(4),
      detailed: { minus: in64(0), plus: in64(4) },
    };
    const [check] = detailChecks(sheetWith({ groove: { ...sheet.groove, rootOpening } }));
    expect(check).toEqual({
      field: 'rootOpening',
      unit: 'in',
      drawn: 3 / 16,
      nominal: 1 / 8,
      least: 1 / 8,
      most: 3 / 16,
      accept: true,
    });
  });
});
