import { describe, expect, it } from 'vitest';
import { defaultJoint } from '../../src/joint/index.ts';
import type { Joint } from '../../src/joint/index.ts';
import type { SymbolElement, SymbolMarks, WeldSymbol } from '../../src/limits/index.ts';
import {
  LimitsError,
  marksOf,
  plainMarks,
  sheetFromSymbol,
  symbolOf,
} from '../../src/limits/index.ts';
import { in64, mm, sheetWith } from './hand-made.ts';
import { doubleV, joints, refusal, sheets, singleV, tee } from './symbol-cases.ts';

/** A symbol with its arrow side's mark changed. */
const withArrowSide = (symbol: WeldSymbol, changes: Partial<SymbolElement>): WeldSymbol => ({
  ...symbol,
  arrowSide: { ...(symbol.arrowSide as SymbolElement), ...changes },
});

/** The WPS's 60°, 30° and 2 mm, and a drawing that details other ones within what it may. */
const detailed = sheetWith({
  groove: {
    ...sheetWith().groove,
    grooveAngle: { nominal: 60, minus: 5, plus: 5, drawn: 50, detailed: { minus: 10, plus: 10 } },
    rootOpening: { nominal: mm(2), minus: mm(1), plus: mm(1), drawn: mm(3) },
  },
});

describe('a symbol on a drawing that details its own groove', () => {
  it('says what is drawn, not what the WPS has', () => {
    expect(symbolOf(singleV, detailed, 'AWS').arrowSide).toMatchObject({
      grooveAngle: 50,
      rootOpening: mm(3),
    });
    expect(sheetFromSymbol(symbolOf(singleV, detailed, 'AWS'), detailed, singleV)).toEqual(
      detailed,
    );
  });

  it('changes what is drawn and leaves the WPS alone', () => {
    const symbol = symbolOf(singleV, detailed, 'AWS');
    const next = sheetFromSymbol(
      withArrowSide(symbol, { grooveAngle: 54, rootOpening: mm(2.5) }),
      detailed,
      singleV,
    );
    expect(next.groove.grooveAngle).toEqual({ ...detailed.groove.grooveAngle, drawn: 54 });
    expect(next.groove.rootOpening).toEqual({ ...detailed.groove.rootOpening, drawn: mm(2.5) });
    // half of it on each plate, drawn too
    expect(next.groove.bevelAngle).toEqual({ ...detailed.groove.bevelAngle, drawn: 27 });
  });

  it('leaves it to the WPS where it says nothing', () => {
    const silent = withArrowSide(symbolOf(singleV, detailed, 'AWS'), { rootOpening: null });
    const { drawn, ...ofWps } = detailed.groove.rootOpening;
    expect(drawn).toEqual(mm(3));
    expect(sheetFromSymbol(silent, detailed, singleV).groove.rootOpening).toEqual(ofWps);
  });
});

describe('a sheet from a symbol', () => {
  it('stays as it is when the symbol was drawn from it', () => {
    for (const joint of joints) {
      for (const sheet of sheets) {
        for (const system of ['AWS', 'ISO'] as const) {
          for (const arrowSide of ['face', 'root'] as const) {
            const marks: SymbolMarks = { ...plainMarks, arrowSide };
            const symbol = symbolOf(joint, sheet, system, marks);
            expect(sheetFromSymbol(symbol, sheet, joint)).toEqual(sheet);
          }
        }
      }
    }
  });

  it('stays as it is when it asks for an angle that makes no groove, which no symbol is given', () => {
    const { groove } = sheetWith();
    for (const nominal of [0, 180]) {
      const sheet = sheetWith({
        groove: { ...groove, grooveAngle: { ...groove.grooveAngle, nominal } },
      });
      const symbol = symbolOf(doubleV, sheet, 'AWS');
      expect(symbol.arrowSide?.grooveAngle).toBeNull();
      expect(symbol.otherSide?.grooveAngle).toBeNull();
      expect(sheetFromSymbol(symbol, sheet, doubleV)).toEqual(sheet);
    }
  });

  it('takes a size as leg or throat by its letter, and in AWS as the leg', () => {
    const iso = symbolOf(tee, sheetWith(), 'ISO');
    const sized = (prefix: '' | 'z' | 'a', second: ReturnType<typeof mm> | null = null) => ({
      size: { prefix, first: mm(6), second },
    });
    expect(sheetFromSymbol(withArrowSide(iso, sized('a')), sheetWith(), tee).size).toEqual({
      as: 'throat',
      first: mm(6),
      second: null,
    });
    expect(sheetFromSymbol(withArrowSide(iso, sized('z', mm(9))), sheetWith(), tee).size).toEqual({
      as: 'leg',
      first: mm(6),
      second: mm(9),
    });
    const aws = symbolOf(tee, sheetWith(), 'AWS');
    expect(sheetFromSymbol(withArrowSide(aws, sized('')), sheetWith(), tee).size).toEqual({
      as: 'leg',
      first: mm(6),
      second: null,
    });
  });

  it('takes two legs that are the same length for one', () => {
    const symbol = withArrowSide(symbolOf(tee, sheetWith(), 'ISO'), {
      // 1 in is 25.4 mm
      size: { prefix: 'z', first: mm(25.4), second: in64(64) },
    });
    expect(sheetFromSymbol(symbol, sheetWith(), tee).size.second).toBeNull();
  });

  it('takes the groove angle, and half of it on each plate of a V', () => {
    const symbol = withArrowSide(symbolOf(singleV, sheetWith(), 'ISO'), {
      grooveAngle: 70,
      rootOpening: mm(3),
    });
    const { groove } = sheetFromSymbol(symbol, sheetWith(), singleV);
    const { groove: before } = sheetWith();
    expect(groove).toEqual({
      ...before,
      grooveAngle: { ...before.grooveAngle, nominal: 70 },
      bevelAngle: { ...before.bevelAngle, nominal: 35 },
      rootOpening: { ...before.rootOpening, nominal: mm(3) },
    });
  });

  it('takes the whole angle for the one prepared plate of a bevel', () => {
    const joint = defaultJoint('butt', 'singleBevel');
    const symbol = withArrowSide(symbolOf(joint, sheetWith(), 'ISO'), { grooveAngle: 45 });
    expect(sheetFromSymbol(symbol, sheetWith(), joint).groove.bevelAngle.nominal).toBe(45);
  });

  it('takes a depth of preparation that the joint has, and refuses another', () => {
    const symbol = symbolOf(singleV, sheetWith(), 'AWS');
    // 12 less a root face of 1.5 is 10.5
    const deep = (depth: number) =>
      refusal(() =>
        sheetFromSymbol(withArrowSide(symbol, { depth: mm(depth) }), sheetWith(), singleV),
      );
    expect(deep(10.5)).toBe('taken');
    expect(deep(9)).toBe('arrowSide.depth: symbol_joint_other_depth');
  });

  it('is refused by the field that this joint has no place for', () => {
    const fillet = symbolOf(tee, sheetWith(), 'AWS');
    const groove = symbolOf(singleV, sheetWith(), 'AWS');
    const both = symbolOf(doubleV, sheetWith(), 'AWS');
    const refused = (symbol: WeldSymbol, joint: Joint) =>
      refusal(() => sheetFromSymbol(symbol, sheetWith(), joint));
    expect(refused(groove, tee)).toBe('arrowSide.kind: symbol_joint_other_kind');
    expect(refused({ ...fillet, otherSide: fillet.arrowSide }, tee)).toBe(
      'otherSide: symbol_joint_has_none',
    );
    expect(refused(both, singleV)).toBe('otherSide: symbol_joint_has_none');
    expect(refused(groove, doubleV)).toBe('otherSide: symbol_joint_has_more');
    expect(refused({ ...groove, preparedPlate: 2 }, singleV)).toBe(
      'preparedPlate: symbol_joint_other_plate',
    );
    const root = (changes: Partial<SymbolElement>): WeldSymbol => ({
      ...both,
      otherSide: { ...(both.otherSide as SymbolElement), ...changes },
    });
    expect(refused(root({ rootOpening: mm(2) }), doubleV)).toBe(
      'otherSide.rootOpening: symbol_opening_once',
    );
    expect(refused(root({ contour: 'flush' }), doubleV)).toBe(
      'otherSide.contour: symbol_one_contour',
    );
    expect(refused(root({ grooveAngle: 70 }), doubleV)).toBe(
      'otherSide.grooveAngle: symbol_joint_other_angle',
    );
    expect(refused(root({ grooveAngle: null }), doubleV)).toBe('taken');
  });

  it('says what it asks and what the joint has where it is refused', () => {
    const reasonOf = (symbol: WeldSymbol, joint: Joint, sheet = sheetWith()) => {
      try {
        sheetFromSymbol(symbol, sheet, joint);
      } catch (error) {
        if (error instanceof LimitsError) return error.reason;
      }
      return null;
    };
    const groove = symbolOf(singleV, sheetWith(), 'AWS');
    const both = symbolOf(doubleV, sheetWith(), 'AWS');
    const root = {
      ...groove,
      otherSide: { ...(both.otherSide as SymbolElement), grooveAngle: 70 },
    };
    const [fillet, v] = [{ key: 'symbol_kind_fillet' }, { key: 'symbol_kind_v' }];
    expect(reasonOf(groove, tee)?.values).toEqual({ asked: v, has: fillet });
    expect(reasonOf(groove, doubleV)?.values).toEqual({ has: v });
    expect(reasonOf(both, singleV)?.values).toBeUndefined();
    expect(reasonOf(withArrowSide(groove, { depth: mm(9) }), singleV)?.values).toEqual({
      asked: { value: 9, unit: 'mm' },
      has: { value: 10.5, unit: 'mm' },
    });
    expect(reasonOf(root, doubleV)?.values).toEqual({
      asked: { value: 70, unit: 'deg' },
      has: { value: 60, unit: 'deg' },
    });
  });

  it('takes a letter or a unit alone for another size', () => {
    const symbol = symbolOf(tee, sheetWith(), 'ISO');
    const sized = (size: Partial<NonNullable<SymbolElement['size']>>) =>
      sheetFromSymbol(
        withArrowSide(symbol, { size: { prefix: 'z', first: mm(7), second: null, ...size } }),
        sheetWith(),
        tee,
      ).size;
    expect(sized({ prefix: 'a' })).toEqual({ as: 'throat', first: mm(7), second: null });
    expect(sized({ first: in64(7) })).toEqual({ as: 'leg', first: in64(7), second: null });
    expect(sized({ second: mm(9) })).toEqual({ as: 'leg', first: mm(7), second: mm(9) });
    expect(sized({})).toEqual(sheetWith().size);
  });

  it('turns each plate of a U by half of its angle', () => {
    const singleU = defaultJoint('butt', 'singleU');
    const symbol = withArrowSide(symbolOf(singleU, sheetWith(), 'AWS'), { grooveAngle: 30 });
    const { groove } = sheetFromSymbol(symbol, sheetWith(), singleU);
    expect([groove.grooveAngle.nominal, groove.bevelAngle.nominal]).toEqual([30, 15]);
  });

  it('leaves the bevel to the sheet where it takes the groove angle away', () => {
    const symbol = withArrowSide(symbolOf(singleV, sheetWith(), 'AWS'), { grooveAngle: null });
    const { groove } = sheetFromSymbol(symbol, sheetWith(), singleV);
    expect(groove.grooveAngle.nominal).toBeNull();
    expect(groove.bevelAngle).toEqual(sheetWith().groove.bevelAngle);
  });

  it('tells a face from a root side by depth where no opening does', () => {
    const { groove } = sheetWith();
    const shut = sheetWith({
      groove: { ...groove, rootOpening: { ...groove.rootOpening, nominal: null } },
    });
    for (const rootSideShare of [0.3, 0.7]) {
      const uneven = { ...doubleV, rootSideShare };
      for (const arrowSide of ['face', 'root'] as const) {
        const marks = { ...plainMarks, arrowSide };
        expect(marksOf(symbolOf(uneven, shut, 'ISO', marks), uneven)).toEqual(marks);
      }
    }
    // nothing tells two like sides apart: the arrow side
    expect(marksOf(symbolOf(doubleV, shut, 'ISO'), doubleV).arrowSide).toBe('face');
  });

  it('gives back the marks that it was drawn with', () => {
    const marked: SymbolMarks = {
      contour: 'flush',
      allRound: true,
      field: true,
      tail: 'WPS 12',
      arrowSide: 'root',
    };
    for (const joint of joints) {
      for (const marks of [plainMarks, marked]) {
        expect(marksOf(symbolOf(joint, sheetWith(), 'ISO', marks), joint)).toEqual(marks);
      }
    }
  });
});
