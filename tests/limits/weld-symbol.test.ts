import { describe, expect, it } from 'vitest';
import { defaultJoint } from '../../src/joint/index.ts';
import type { SymbolElement, SymbolMarks } from '../../src/limits/index.ts';
import { plainMarks, symbolOf } from '../../src/limits/index.ts';
import { in64, inch, mm, sheetWith } from './hand-made.ts';

const tee = defaultJoint('fillet', 'tee');
const throat5 = sheetWith({ size: { as: 'throat', first: mm(5), second: null } });
const blank: SymbolElement = {
  kind: 'fillet',
  size: null,
  depth: null,
  grooveAngle: null,
  rootOpening: null,
  contour: 'none',
};

describe('the symbol of a fillet', () => {
  it('carries the compulsory z of a leg in ISO 2553, and the number alone in AWS A2.4', () => {
    // Rows sym-iso and sym-aws of the collected limits, each seen in a public extract.
    expect(symbolOf(tee, sheetWith(), 'ISO').arrowSide?.size).toEqual({
      prefix: 'z',
      first: mm(7),
      second: null,
    });
    expect(symbolOf(tee, sheetWith(), 'AWS').arrowSide?.size).toEqual({
      prefix: '',
      first: mm(7),
      second: null,
    });
  });

  it('carries the a of a throat in ISO 2553', () => {
    expect(symbolOf(tee, throat5, 'ISO').arrowSide?.size).toEqual({
      prefix: 'a',
      first: mm(5),
      second: null,
    });
  });

  it('gives in AWS the leg that holds the throat asked for, rounded up to what a drawing is read to', () => {
    const legFor = (first: ReturnType<typeof mm | typeof inch | typeof in64>, dihedralAngle = 90) =>
      symbolOf(
        tee,
        sheetWith({ size: { as: 'throat', first, second: null }, dihedralAngle }),
        'AWS',
      ).arrowSide?.size?.first;
    // a4 is about z5.7 (row sym-iso: z = a√2 at 90°): 4 × 1.41421 = 5.657.
    expect(legFor(mm(4))).toEqual(mm(5.7));
    // 5 × 1.41421 = 7.0711, up.
    expect(legFor(mm(5))).toEqual(mm(7.1));
    // a = z cos(ψ/2): at 120° z = a / 0.5; at 60° 5 / 0.866025 = 5.7735, up.
    expect(legFor(mm(5), 120)).toEqual(mm(10));
    expect(legFor(mm(5), 60)).toEqual(mm(5.8));
    // 0.2 × 1.41421 = 0.28284 in, up; 16/64 × 1.41421 = 22.63/64, up.
    expect(legFor(inch(0.2))).toEqual(inch(0.29));
    expect(legFor(in64(16))).toEqual(in64(23));
  });

  it('gives both of two unequal legs', () => {
    const sheet = sheetWith({ size: { as: 'leg', first: mm(6), second: mm(10) } });
    expect(symbolOf(tee, sheet, 'AWS').arrowSide?.size).toEqual({
      prefix: '',
      first: mm(6),
      second: mm(10),
    });
  });

  it('stands on the arrow side alone, or on the other when the arrow touches the back', () => {
    for (const form of ['tee', 'lap', 'corner'] as const) {
      const symbol = symbolOf(defaultJoint('fillet', form), sheetWith(), 'AWS');
      expect(symbol.arrowSide?.kind).toBe('fillet');
      expect(symbol.otherSide).toBeNull();
    }
    const turned = symbolOf(tee, sheetWith(), 'AWS', { ...plainMarks, arrowSide: 'root' });
    expect(turned.arrowSide).toBeNull();
    expect(turned.otherSide?.kind).toBe('fillet');
  });

  it('says what else it is marked with', () => {
    const marks: SymbolMarks = {
      contour: 'concave',
      allRound: true,
      field: true,
      tail: 'WPS 12',
      arrowSide: 'face',
    };
    const symbol = symbolOf(tee, sheetWith(), 'ISO', marks);
    expect(symbol).toMatchObject({ allRound: true, field: true, tail: 'WPS 12' });
    expect(symbol.arrowSide?.contour).toBe('concave');
  });
});

describe('the symbol of a groove', () => {
  it('has the sheet’s angle and opening at one V on the arrow side', () => {
    const symbol = symbolOf(defaultJoint('butt', 'singleV'), sheetWith(), 'ISO');
    expect(symbol.arrowSide).toEqual({ ...blank, kind: 'V', grooveAngle: 60, rootOpening: mm(2) });
    expect(symbol.otherSide).toBeNull();
    expect(symbol.preparedPlate).toBeNull();
  });

  it('has no angle on square edges', () => {
    const symbol = symbolOf(defaultJoint('butt', 'square'), sheetWith(), 'ISO');
    expect(symbol.arrowSide).toEqual({ ...blank, kind: 'square', rootOpening: mm(2) });
  });

  it('has both sides of a double V or bevel, and the opening once', () => {
    for (const form of ['doubleV', 'doubleBevel'] as const) {
      const symbol = symbolOf(defaultJoint('butt', form), sheetWith(), 'AWS');
      expect(symbol.otherSide?.kind).toBe(symbol.arrowSide?.kind);
      expect(symbol.arrowSide?.rootOpening).toEqual(mm(2));
      expect(symbol.otherSide?.rootOpening).toBeNull();
      // as deep on both sides: goes without saying (AWS A2.4, from memory, verify)
      expect(symbol.arrowSide?.depth).toBeNull();
      expect(symbol.otherSide?.grooveAngle).toBe(60);
    }
  });

  it('gives both depths where the sides differ', () => {
    const joint = { ...defaultJoint('butt', 'doubleV'), rootSideShare: 0.3 };
    const symbol = symbolOf(joint, sheetWith(), 'AWS');
    // 20 less the sheet's root face 1.5 is 18.5: 0.7 × 18.5 = 12.95, given as 13; the rest is 5.5.
    expect(symbol.arrowSide?.depth).toEqual(mm(13));
    expect(symbol.otherSide?.depth).toEqual(mm(5.5));
    const inches = symbolOf(joint, sheetWith({ column: 'in' }), 'AWS');
    // 18.5 / 25.4 = 0.72835 in: 0.7 of it 0.50984, given as 0.51; the rest 0.21835 as 0.22.
    expect(inches.arrowSide?.depth).toEqual(inch(0.51));
    expect(inches.otherSide?.depth).toEqual(inch(0.22));
  });

  it('gives the root side its own angle where the joint’s two differ', () => {
    const joint = { ...defaultJoint('butt', 'doubleV'), rootBevelAngle1: 45, rootBevelAngle2: 45 };
    expect(symbolOf(joint, sheetWith(), 'AWS').otherSide?.grooveAngle).toBe(90);
  });

  it('points a broken arrow to plate 1 where only that is prepared', () => {
    const plateOf = (form: Parameters<typeof defaultJoint>[1]) =>
      symbolOf(defaultJoint('butt', form), sheetWith(), 'AWS').preparedPlate;
    expect(plateOf('singleBevel')).toBe(1);
    expect(plateOf('doubleBevel')).toBe(1);
    expect(plateOf('singleJ')).toBe(1);
    expect(plateOf('singleU')).toBeNull();
    expect(plateOf('square')).toBeNull();
  });

  it('has the backing strip on the side away from the groove', () => {
    const joint = { ...defaultJoint('butt', 'singleV'), backing: 'strip' as const };
    expect(symbolOf(joint, sheetWith(), 'ISO').otherSide).toEqual({ ...blank, kind: 'strip' });
  });
});
