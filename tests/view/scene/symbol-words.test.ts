import { beforeAll, describe, expect, test } from 'vitest';
import { defaultJoint } from '../../../src/joint/index.ts';
import type { JobSheet, SymbolMarks, WeldSymbol } from '../../../src/limits/index.ts';
import { defaultJobSheet, plainMarks, symbolOf } from '../../../src/limits/index.ts';
import { symbolSentence } from '../../../src/view/scene/symbol-words.ts';
import { fetchRest, text, type Reading } from '../../../src/view/text.ts';

const us: Reading = { units: 'mm', inches: 'decimal', terms: 'US' };
const iso: Reading = { ...us, terms: 'ISO' };
const sheet = defaultJobSheet();
const tee = defaultJoint('fillet', 'tee');
const sentence = (symbol: WeldSymbol, reading: Reading): string =>
  symbolSentence(symbol, (message) => text(message, reading));
const sized = (size: JobSheet['size']): JobSheet => ({ ...sheet, size });

beforeAll(fetchRest);

describe('A symbol in words', () => {
  test('says what stands on either side', () => {
    expect(sentence(symbolOf(tee, sheet, 'AWS'), us)).toBe(
      'Welding symbol by AWS A2.4. Arrow side: fillet weld, leg 7 mm. Other side: no weld.',
    );
    const doubleV = { ...defaultJoint('butt', 'doubleV'), rootSideShare: 0.3 };
    expect(
      sentence(symbolOf(doubleV, sheet, 'ISO', { ...plainMarks, contour: 'flush' }), iso),
    ).toBe(
      'Welding symbol by ISO 2553, system A. ' +
        'Arrow side: V butt weld, prepared 13 mm deep, groove angle 60°, root gap 2 mm, flush. ' +
        'Other side: V butt weld, prepared 5.5 mm deep, groove angle 60°, flush.',
    );
  });

  test('tells a throat from a leg, and gives both of two legs in their own units', () => {
    const throat = sized({ as: 'throat', first: { unit: 'mm', value: 5 }, second: null });
    expect(sentence(symbolOf(tee, throat, 'ISO'), iso)).toContain('fillet weld, throat 5 mm.');
    const unequal = sized({
      as: 'leg',
      first: { unit: 'in64', value: 20 },
      second: { unit: 'in', value: 0.5 },
    });
    expect(sentence(symbolOf(tee, unequal, 'AWS'), us)).toContain('legs 5/16 in and 0.5 in.');
  });

  test('says all that the symbol is marked with', () => {
    const marks: SymbolMarks = {
      contour: 'concave',
      allRound: true,
      field: true,
      tail: 'WPS 12',
      arrowSide: 'root',
    };
    expect(sentence(symbolOf(tee, sheet, 'ISO', marks), us)).toBe(
      'Welding symbol by ISO 2553, system A. Arrow side: no weld. ' +
        'Other side: fillet weld, leg 7 mm, concave face. ' +
        'Weld all round. Weld on site. Tail: WPS 12.',
    );
    const flat = symbolOf(tee, sheet, 'ISO', { ...plainMarks, contour: 'flush' });
    expect(sentence(flat, us)).toContain('flat face');
  });

  test('says which plate is to be prepared', () => {
    const bevel = symbolOf(defaultJoint('butt', 'singleBevel'), sheet, 'AWS');
    expect(sentence(bevel, us)).toContain('The arrow is broken and points to plate 1');
  });

  test('has a word for every mark in both trades', () => {
    const kinds = ['fillet', 'square', 'V', 'bevel', 'U', 'J', 'backRun', 'strip'] as const;
    const plain = symbolOf(tee, sheet, 'AWS');
    const mark = { size: null, depth: null, grooveAngle: null, rootOpening: null } as const;
    for (const kind of kinds) {
      for (const reading of [us, iso]) {
        const arrowSide = { ...mark, kind, contour: 'none' as const };
        expect(sentence({ ...plain, arrowSide }, reading)).not.toContain('symbol_');
      }
    }
  });
});
