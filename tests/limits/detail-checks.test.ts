import { describe, expect, it } from 'vitest';
import { detailChecks, type JobSheet } from '../../src/limits/index.ts';
import { grooveSheet, in64, mm, sheetWith } from './hand-made.ts';

const sheet = grooveSheet();
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
