import { describe, expect, it } from 'vitest';
import { defaultJoint, type ButtJoint, type Joint } from '../../src/joint/index.ts';
import type { JobSheet, SymbolElement, SymbolMarks, WeldSymbol } from '../../src/limits/index.ts';
import {
  contours,
  LimitsError,
  marksOf,
  parseSymbolMarks,
  parseWeldSymbol,
  plainMarks,
  sheetFromSymbol,
  symbolOf,
} from '../../src/limits/index.ts';
import { in64, inch, mm, sheetWith } from './hand-made.ts';
import { preparations } from '../joint/forms.ts';

const tee = defaultJoint('fillet', 'tee');
const singleV = defaultJoint('butt', 'singleV');
const doubleV = defaultJoint('butt', 'doubleV');

/** A symbol with its arrow side's mark changed. */
const withArrowSide = (symbol: WeldSymbol, changes: Partial<SymbolElement>): WeldSymbol => ({
  ...symbol,
  arrowSide: { ...(symbol.arrowSide as SymbolElement), ...changes },
});

function refusal(work: () => unknown): string {
  try {
    work();
    return 'taken';
  } catch (error) {
    if (error instanceof LimitsError) return `${error.field}: ${error.reason.key}`;
    throw error;
  }
}

const joints: readonly Joint[] = [
  tee,
  defaultJoint('fillet', 'lap'),
  ...preparations.map((form) => defaultJoint('butt', form)),
  { ...singleV, backing: 'strip' },
  { ...doubleV, rootSideShare: 0.3, rootBevelAngle1: 40 },
];
const sheets: readonly JobSheet[] = [
  sheetWith(),
  sheetWith({ size: { as: 'throat', first: mm(5), second: null }, dihedralAngle: 75 }),
  sheetWith({ column: 'in', size: { as: 'throat', first: in64(13), second: null } }),
  sheetWith({ size: { as: 'leg', first: in64(20), second: inch(0.5) } }),
  sheetWith({
    groove: {
      ...sheetWith().groove,
      grooveAngle: { nominal: null, minus: 0, plus: 0 },
      rootOpening: { nominal: null, minus: mm(0), plus: mm(1) },
    },
  }),
];

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

describe('a symbol from outside', () => {
  /** The symbol of an uneven double V as plain data, with one field set to something else. */
  function spoiled(joint: Joint, path: readonly string[], value: unknown): unknown {
    const symbol: unknown = structuredClone(symbolOf(joint, sheetWith(), 'ISO'));
    let at = symbol as Record<string, unknown>;
    for (const name of path.slice(0, -1)) at = at[name] as Record<string, unknown>;
    at[path.at(-1) ?? ''] = value;
    return symbol;
  }
  const uneven: ButtJoint = { ...doubleV, rootSideShare: 0.3 };

  it('is taken as it is when it is whole', () => {
    for (const joint of joints) {
      for (const sheet of sheets) {
        const symbol = symbolOf(joint, sheet, 'ISO');
        expect(parseWeldSymbol(JSON.parse(JSON.stringify(symbol)))).toEqual(symbol);
      }
    }
  });

  it('is refused without the letter that ISO 2553 makes compulsory, and in AWS with it', () => {
    // Rows sym-iso and sym-aws of the collected limits, each seen in a public extract.
    expect(refusal(() => parseWeldSymbol(spoiled(tee, ['arrowSide', 'size', 'prefix'], '')))).toBe(
      'arrowSide.size.prefix: symbol_data_prefix_missing',
    );
    expect(refusal(() => parseWeldSymbol(spoiled(tee, ['system'], 'AWS')))).toBe(
      'arrowSide.size.prefix: symbol_data_prefix_not_aws',
    );
  });

  it.each([
    [tee, ['system'], 'JIS', 'system: limits_data_no_choice'],
    [tee, ['arrowSide'], null, 'arrowSide: symbol_data_no_element'],
    [tee, ['arrowSide'], 7, 'arrowSide: limits_data_no_record'],
    [tee, ['arrowSide', 'kind'], 'plug', 'arrowSide.kind: limits_data_no_choice'],
    [tee, ['arrowSide', 'size'], null, 'arrowSide.size: limits_data_no_record'],
    [tee, ['arrowSide', 'size', 'first'], mm(0), 'arrowSide.size.first: limits_data_no_size'],
    [tee, ['arrowSide', 'rootOpening'], mm(1), 'arrowSide.rootOpening: symbol_data_not_at_mark'],
    [tee, ['arrowSide', 'contour'], 'flat', 'arrowSide.contour: limits_data_no_choice'],
    [tee, ['preparedPlate'], 3, 'preparedPlate: limits_data_no_choice'],
    [tee, ['allRound'], 'yes', 'allRound: limits_data_no_flag'],
    [tee, ['field'], null, 'field: limits_data_no_flag'],
    [tee, ['tail'], 12, 'tail: limits_data_no_text'],
    [uneven, ['otherSide', 'size'], {}, 'otherSide.size: symbol_data_not_at_mark'],
    [uneven, ['otherSide', 'depth'], mm(0), 'otherSide.depth: limits_data_no_size'],
    [uneven, ['otherSide', 'grooveAngle'], 0, 'otherSide.grooveAngle: symbol_data_no_angle'],
    [uneven, ['otherSide', 'grooveAngle'], 180, 'otherSide.grooveAngle: symbol_data_no_angle'],
    [uneven, ['otherSide', 'grooveAngle'], 200, 'otherSide.grooveAngle: limits_data_out_of_range'],
    [uneven, ['arrowSide', 'kind'], 'square', 'arrowSide.depth: symbol_data_not_at_mark'],
    [singleV, ['arrowSide', 'kind'], 'square', 'arrowSide.grooveAngle: symbol_data_not_at_mark'],
    [singleV, ['arrowSide', 'kind'], 'strip', 'arrowSide.grooveAngle: symbol_data_not_at_mark'],
  ] as const)('is refused by its field and the reason: %#', (joint, path, value, reason) => {
    expect(refusal(() => parseWeldSymbol(spoiled(joint, path, value)))).toBe(reason);
  });

  it('is refused with a second size behind a throat', () => {
    const size = { prefix: 'a', first: mm(5), second: mm(6) };
    expect(refusal(() => parseWeldSymbol(spoiled(tee, ['arrowSide', 'size'], size)))).toBe(
      'arrowSide.size.second: limits_data_two_throats',
    );
  });
});

describe('marks from outside', () => {
  it('are taken as they are when they are whole, whatever the contour', () => {
    for (const contour of contours) {
      const marks: SymbolMarks = { ...plainMarks, contour, tail: 'process 135' };
      expect(parseSymbolMarks(JSON.parse(JSON.stringify(marks)))).toEqual(marks);
    }
  });

  it.each([
    [null, 'symbol: limits_data_no_record'],
    [{ ...plainMarks, contour: 'ground' }, 'symbol.contour: limits_data_no_choice'],
    [{ ...plainMarks, allRound: 1 }, 'symbol.allRound: limits_data_no_flag'],
    [{ ...plainMarks, field: 1 }, 'symbol.field: limits_data_no_flag'],
    [{ ...plainMarks, tail: 'x'.repeat(201) }, 'symbol.tail: limits_data_text_too_long'],
    [{ ...plainMarks, arrowSide: 'left' }, 'symbol.arrowSide: limits_data_no_choice'],
  ])('are refused by their field and the reason: %#', (marks, reason) => {
    expect(refusal(() => parseSymbolMarks(marks))).toBe(reason);
  });
});
