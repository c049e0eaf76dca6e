import { describe, expect, it } from 'vitest';
import type { ButtJoint, Joint } from '../../src/joint/index.ts';
import type { SymbolMarks } from '../../src/limits/index.ts';
import {
  contours,
  parseSymbolMarks,
  parseWeldSymbol,
  plainMarks,
  symbolOf,
} from '../../src/limits/index.ts';
import { mm, sheetWith } from './hand-made.ts';
import { doubleV, joints, refusal, sheets, singleV, tee } from './symbol-cases.ts';

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
