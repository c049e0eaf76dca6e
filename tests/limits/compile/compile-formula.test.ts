import { beforeAll, describe, expect, it } from 'vitest';
import {
  compileFormula,
  type FormulaContext,
} from '../../../src/limits/compile/compile-formula.ts';
import {
  angle,
  area,
  length,
  pure,
  type Dimension,
} from '../../../src/limits/compile/dimension.ts';
import { FormulaError } from '../../../src/limits/compile/formula-error.ts';
import { loadParser, type Parser } from '../../../src/limits/compile/parse-formula.ts';
import type { Message } from '../../../src/units/index.ts';
import type { Tree } from '../../../src/limits/tree.ts';

let parser: Parser;
beforeAll(async () => {
  parser = await loadParser();
});

const usual: FormulaContext = {
  subject: 'undercut1',
  symbols: { b: 'faceWidth', r: 'faceReinforcement.higher', wrong: 'nothingSuch' },
  column: 'mm',
  gives: length,
};
const compile = (text: string, changes: Partial<FormulaContext> = {}): Tree =>
  compileFormula(parser, text, { ...usual, ...changes });

function refusal(text: string, changes: Partial<FormulaContext> = {}): Message {
  try {
    return { key: `compiled to ${JSON.stringify(compile(text, changes))}` };
  } catch (error) {
    if (error instanceof FormulaError) return error.reason;
    throw error;
  }
}
const refused = (text: string, gives: Dimension = length): string => refusal(text, { gives }).key;

describe('compiling a formula', () => {
  it('turns the formulas of the sets into small trees', () => {
    expect(compile('min(1 mm + 0.15 b, 4 mm)')).toEqual([
      'min',
      ['+', ['mm', 1], ['*', 0.15, 'b']],
      ['mm', 4],
    ]);
    expect(compile('0.1 tHere')).toEqual(['*', 0.1, 'tHere']);
    expect(compile('tMin > 3 mm', { gives: 'condition' })).toEqual(['>', 'tMin', ['mm', 3]]);
    expect(compile('not (tMin > 3 mm) or b <= 2 mm and r != 0 mm', { gives: 'condition' })).toEqual(
      [
        'or',
        ['not', ['>', 'tMin', ['mm', 3]]],
        ['and', ['<=', 'b', ['mm', 2]], ['!=', 'r', ['mm', 0]]],
      ],
    );
  });

  it('knows every sign that it lets through', () => {
    expect(compile('t1 + t2')).toEqual(['+', 't1', 't2']);
    expect(compile('t1 - t2')).toEqual(['-', 't1', 't2']);
    expect(compile('t1 − t2')).toEqual(['-', 't1', 't2']);
    expect(compile('2 * t1')).toEqual(['*', 2, 't1']);
    expect(compile('2 × t1')).toEqual(['*', 2, 't1']);
    expect(compile('t1 / 2')).toEqual(['/', 't1', 2]);
    expect(compile('t1 ÷ 2')).toEqual(['/', 't1', 2]);
    expect(compile('-t1')).toEqual(['neg', 't1']);
    expect(compile('(t1)')).toBe('t1');
    expect(compile('max(t1, t2, b)')).toEqual(['max', 't1', 't2', 'b']);
    expect(compile('abs(t1 - t2)')).toEqual(['abs', ['-', 't1', 't2']]);
    const condition = { gives: 'condition' } as const;
    for (const sign of ['<', '<=', '>', '>=', '==', '!=']) {
      expect(compile(`t1 ${sign} t2`, condition)).toEqual([sign, 't1', 't2']);
    }
  });

  it('keeps a fraction of an inch as it is written', () => {
    expect(compile('3/16 in + 0.1 b', { column: 'in' })).toEqual([
      '+',
      ['in', ['/', 3, 16]],
      ['*', 0.1, 'b'],
    ]);
    expect(compile('min(1 in, b) + 2 in', { column: 'in' })).toEqual([
      '+',
      ['min', ['in', 1], 'b'],
      ['in', 2],
    ]);
    // the value comes first, a unit by itself is one of it
    expect(compile('t1 * (t2 / mm)')).toEqual(['*', 't1', ['/', 't2', ['mm', 1]]]);
    expect(compile('(1 + 2) mm')).toEqual(['*', ['+', 1, 2], ['mm', 1]]);
  });

  it('works with angles, roots and powers', () => {
    expect(compile('sqrt(t1^2 + t2^2)')).toEqual(['sqrt', ['+', ['^', 't1', 2], ['^', 't2', 2]]]);
    expect(compile('t1 cos(dihedralAngle / 2)')).toEqual([
      '*',
      't1',
      ['cos', ['/', 'dihedralAngle', 2]],
    ]);
    expect(compile('t1 sin(30 deg) tan(45 deg)')).toEqual([
      '*',
      ['*', 't1', ['sin', ['deg', 30]]],
      ['tan', ['deg', 45]],
    ]);
    expect(compile('104 deg', { gives: angle, column: 'any' })).toEqual(['deg', 104]);
    expect(compile('t1^3 t2^-2')).toEqual(['*', ['^', 't1', 3], ['^', 't2', ['neg', 2]]]);
    expect(compile('weldArea / t1')).toEqual(['/', 'weldArea', 't1']);
    expect(compile('t1 t2', { gives: area })).toEqual(['*', 't1', 't2']);
    expect(compile('t1 / t2', { gives: pure })).toEqual(['/', 't1', 't2']);
    expect(compile('t1^6 / t2^5')).toEqual(['/', ['^', 't1', 6], ['^', 't2', 5]]);
  });
});

describe('what a formula may not do', () => {
  it('loops, defines, assigns, indexes, quotes, chooses or calls nothing of the parser’s own', () => {
    const hostile = [
      'x = 3 mm',
      'f(x) = 2 mm',
      't1 = 3 mm',
      '1:3',
      '[t1, t2]',
      't1[1]',
      '{a: t1}',
      't1.constructor',
      't1 > 3 mm ? t1 : t2',
      't1; t2',
      't1\nt2',
      '"text"',
      'true',
      '1e999 mm',
      '3!',
      "t1'",
      't1 % t2',
      't1 to mm',
      't1 | t2',
      't1 xor t2',
      '+t1',
      't1 .* t2',
    ];
    for (const text of hostile) {
      expect([text, refused(text)]).toEqual([
        text,
        expect.stringMatching(/^limits_formula_(not_allowed|unreadable)$/u),
      ]);
    }
    const calls = [
      'import("fs")',
      'evaluate("1")',
      'parse("1")',
      'createUnit("foo")',
      'range(1, 3)',
      'toString(t1)',
      'constructor(t1)',
      'hasOwnProperty(t1)',
      't1.min(t2)',
      'unit("1 mm")',
      'random()',
    ];
    for (const text of calls)
      expect([text, refused(text)]).toEqual([text, 'limits_formula_unknown_function']);
  });

  it('is empty, endless or broken off', () => {
    expect(refused('')).toBe('limits_formula_empty');
    expect(refused('  ')).toBe('limits_formula_empty');
    expect(refused('t1 +'.repeat(80))).toBe('limits_formula_too_long');
    // 39 × 5 + 5 = 200 characters: as long as a formula may be
    expect(refused(`${'t1 + '.repeat(39)}t1+t2`)).toMatch(/^compiled/u);
    expect(refusal('min(t1, t2')).toEqual({
      key: 'limits_formula_broken_off',
      values: { place: 'min(t1, t2' },
    });
    expect(refusal('t1 + ) t2')).toEqual({
      key: 'limits_formula_unreadable',
      values: { place: ') t2' },
    });
    expect(refusal('1 in + ) t2', { column: 'in' })).toEqual({
      key: 'limits_formula_unreadable',
      values: { place: ') t2' },
    });
    expect(refused('t1 @ t2')).toBe('limits_formula_unreadable');
    expect(refused('t1, t2')).toBe('limits_formula_unreadable');
  });

  it('with a decimal comma is told that a point is wanted', () => {
    expect(refusal('0,1 t1')).toEqual({
      key: 'limits_formula_decimal_comma',
      values: { place: '0,1', meant: '0.1' },
    });
    expect(refusal('t1 + 12,25 mm')).toEqual({
      key: 'limits_formula_decimal_comma',
      values: { place: '12,25', meant: '12.25' },
    });
    expect(refused('min(1,2) t1 + ) t2')).toBe('limits_formula_unreadable');
  });

  it('compares twice in one go', () => {
    expect(refusal('1 mm < t1 < 3 mm', { gives: 'condition' })).toEqual({
      key: 'limits_formula_two_comparisons',
      values: { place: '1 mm < t1 < 3 mm' },
    });
  });

  it('divides by what comes to nothing, or gives no number', () => {
    expect(refusal('t1 / 0')).toEqual({
      key: 'limits_formula_division_by_zero',
      values: { place: 't1 / 0' },
    });
    expect(refused('t1 / (2 - 2)')).toBe('limits_formula_division_by_zero');
    expect(refused('t1 t2 / (0 mm)')).toBe('limits_formula_division_by_zero');
    expect(refused('sqrt(-4) mm')).toBe('limits_formula_no_number');
    expect(refused('t1 t1 / (t2 - t2)')).toMatch(/^compiled/u);
  });

  it('raises to anything but a small whole number', () => {
    expect(refusal('t1^0.5')).toEqual({
      key: 'limits_formula_power',
      values: { place: 't1 ^ 0.5', most: 6 },
    });
    expect(refused('t1^7')).toBe('limits_formula_power');
    expect(refused('t1^-7')).toBe('limits_formula_power');
    expect(refused('t1^(1 mm)')).toBe('limits_formula_power');
    expect(refused('2^t1')).toBe('limits_formula_power');
    expect(refused('t1^(3 - 2)')).toMatch(/^compiled/u);
  });

  it('uses a function without its brackets or with too few values', () => {
    expect(refusal('min')).toEqual({
      key: 'limits_formula_function_alone',
      values: { place: 'min' },
    });
    expect(refusal('min(t1)')).toEqual({
      key: 'limits_formula_wrong_count',
      values: { place: 'min(t1)', name: 'min', least: 2 },
    });
    expect(refused('max(t1)')).toBe('limits_formula_wrong_count');
    expect(refused('abs(t1, t2)')).toBe('limits_formula_wrong_count');
    expect(refused('sqrt()')).toBe('limits_formula_wrong_count');
    expect(refused('abs()')).toBe('limits_formula_wrong_count');
    expect(refusal('ceil(t1)')).toEqual({
      key: 'limits_formula_unknown_function',
      values: { place: 'ceil(t1)', name: 'ceil' },
    });
  });
});

describe('dimensions', () => {
  it('are checked in every sum, and the sum is named', () => {
    expect(refusal('1 + 0.15 b')).toEqual({
      key: 'limits_formula_unlike',
      values: { place: '1 + 0.15 × b', first: 'number', second: 'length' },
    });
    expect(refused('t1 - 30 deg')).toBe('limits_formula_unlike');
    expect(refused('min(t1, 4)')).toBe('limits_formula_unlike');
    expect(refused('max(t1, t2, 4)')).toBe('limits_formula_unlike');
    expect(refused('t1 > 3', 'condition')).toBe('limits_formula_unlike');
    expect(refused('t1 == t1 t2', 'condition')).toBe('limits_formula_unlike');
    expect(refused('t1 + t1^2')).toBe('limits_formula_unlike');
  });

  it('keep conditions out of sums and sums out of conditions', () => {
    expect(refused('t1 + (t1 > t2)')).toBe('limits_formula_condition_in_sum');
    expect(refused('(t1 > t2) + t1')).toBe('limits_formula_condition_in_sum');
    expect(refused('t1 * (t1 > t2)')).toBe('limits_formula_condition_in_sum');
    expect(refused('(t1 > t2) / t1')).toBe('limits_formula_condition_in_sum');
    expect(refused('-(t1 > t2)')).toBe('limits_formula_condition_in_sum');
    expect(refused('sqrt(t1 > t2)')).toBe('limits_formula_condition_in_sum');
    expect(refused('(t1 > t2)^2')).toBe('limits_formula_condition_in_sum');
    expect(refused('(t1 > t2) == (t1 < t2)', 'condition')).toBe('limits_formula_condition_in_sum');
    expect(refused('t1 and t2', 'condition')).toBe('limits_formula_not_a_condition');
    expect(refused('t1 > t2 or t2', 'condition')).toBe('limits_formula_not_a_condition');
    expect(refused('not t1', 'condition')).toBe('limits_formula_not_a_condition');
  });

  it('ask for an angle where one belongs, and for a root that means something', () => {
    expect(refusal('t1 cos(30)')).toEqual({
      key: 'limits_formula_not_an_angle',
      values: { place: 'cos(30)' },
    });
    expect(refused('t1 sin(t1)')).toBe('limits_formula_not_an_angle');
    expect(refused('t1 tan(t1 > t2)')).toBe('limits_formula_not_an_angle');
    expect(refusal('sqrt(t1)')).toEqual({
      key: 'limits_formula_root_of',
      values: { place: 'sqrt(t1)', kind: 'length' },
    });
    expect(refused('sqrt(30 deg)')).toBe('limits_formula_root_of');
  });

  it('of the whole must be what the row needs', () => {
    expect(refusal('0.1')).toEqual({
      key: 'limits_formula_gives',
      values: { place: '0.1', kind: 'number', wanted: 'length' },
    });
    expect(refusal('t1 t2')).toEqual({
      key: 'limits_formula_gives',
      values: { place: 't1 t2', kind: 'area', wanted: 'length' },
    });
    expect(refusal('t1 t2 b').values).toMatchObject({ kind: 'mixed' });
    expect(refusal('30 deg').values).toMatchObject({ kind: 'angle' });
    expect(refusal('t1 > t2').values).toMatchObject({ kind: 'condition', wanted: 'length' });
    expect(refusal('t1', { gives: 'condition' }).values).toMatchObject({
      kind: 'length',
      wanted: 'condition',
    });
    expect(refusal('t1', { gives: angle }).key).toBe('limits_formula_gives');
  });

  it('never mix the columns of a document', () => {
    expect(refusal('1/16 in')).toEqual({
      key: 'limits_formula_other_column',
      values: { place: 'in', column: 'mm' },
    });
    expect(refusal('min(0.1 b, 1 mm)', { column: 'in' }).key).toBe('limits_formula_other_column');
    expect(refusal('1 mm', { column: 'any' }).key).toBe('limits_formula_other_column');
    expect(refusal('1 in', { column: 'any' }).key).toBe('limits_formula_other_column');
    expect(compile('0.1 b', { column: 'any' })).toEqual(['*', 0.1, 'b']);
  });
});

describe('symbols', () => {
  it('that nobody knows are named, with the nearest one that is known', () => {
    expect(refusal('0.1 tMinn')).toEqual({
      key: 'limits_formula_mistyped_symbol',
      values: { place: 'tMinn', meant: 'tMin' },
    });
    expect(refusal('0.1 tmin').values).toMatchObject({ meant: 'tMin' });
    expect(refusal('0.1 facewitdh').values).toMatchObject({ meant: 'faceWidth' });
    expect(refusal('0.1 sheetTroat').values).toMatchObject({ meant: 'sheetThroat' });
    expect(refusal('0.1 tThere').values).toMatchObject({ meant: 'tHere' });
    expect(refusal('0.1 nonsense')).toEqual({
      key: 'limits_formula_unknown_symbol',
      values: { place: 'nonsense' },
    });
    expect(refused('0.1 i')).toBe('limits_formula_unknown_symbol');
    expect(refused('0.1 qq')).toBe('limits_formula_unknown_symbol');
    expect(refused('0.1 pi')).toBe('limits_formula_unknown_symbol');
    expect(refused('toString')).toBe('limits_formula_unknown_symbol');
    expect(refused('wrong')).toBe('limits_formula_unknown_symbol');
  });

  it('a bare t is refused until the set says which thickness it is', () => {
    expect(refusal('0.1 t')).toEqual({ key: 'limits_formula_bare_t', values: { place: 't' } });
    expect(compile('0.1 t', { symbols: { t: 'tMin' } })).toEqual(['*', 0.1, 't']);
  });

  it('the plate that an imperfection lies in must be one of the two', () => {
    expect(refusal('0.1 tHere', { subject: 'underfill' })).toEqual({
      key: 'limits_formula_no_plate',
      values: { place: 'tHere' },
    });
    expect(refusal('0.1 t', { subject: 'underfill', symbols: { t: 'tHere' } }).key).toBe(
      'limits_formula_no_plate',
    );
    expect(compile('0.1 tHere', { subject: 'rootUndercut2' })).toEqual(['*', 0.1, 'tHere']);
  });

  it('that are neither length nor angle nor area are of no use', () => {
    expect(refusal('t1 mass')).toEqual({
      key: 'limits_formula_unusable_symbol',
      values: { place: 'mass' },
    });
  });
});
