/** Formulas from anybody: each compiles to something that gives numbers, or says what is wrong. */
import fc from 'fast-check';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { compileFormula } from '../../src/limits/compile/compile-formula.ts';
import { length } from '../../src/limits/compile/dimension.ts';
import { FormulaError } from '../../src/limits/compile/formula-error.ts';
import { loadParser, type Parser } from '../../src/limits/compile/parse-formula.ts';
import { bind } from '../../src/limits/evaluate.ts';
import { writeTree } from '../../src/limits/substitute.ts';
import type { Tree } from '../../src/limits/tree.ts';
import { runs } from '../runs.ts';

// the full proof takes as long as it takes
vi.setConfig({ testTimeout: 600_000 });

let parser: Parser;
beforeAll(async () => {
  parser = await loadParser();
});

const values: Readonly<Record<string, number>> = { t1: 12, t2: 9.5, faceWidth: 14, toeAngle: 130 };
const work = (tree: Tree): number => bind(tree, (symbol) => () => values[symbol] ?? 7)(null);

const compile = (text: string): Tree =>
  compileFormula(parser, text, {
    subject: 'undercut1',
    symbols: {},
    column: 'mm',
    gives: length,
  });

const token = fc.constantFrom(
  ...[
    't1',
    't2',
    'faceWidth',
    'toeAngle',
    'tHere',
    'zz',
    'mm',
    'in',
    'deg',
    '1',
    '0',
    '2.5',
    '1e9',
  ],
  ...['+', '-', '*', '/', '^', '<', '<=', '==', 'and', 'or', 'not', '(', ')', ',', ' ', ' '],
  ...['min(', 'max(', 'abs(', 'sqrt(', 'cos(', 'import(', '=', ';', ':', '[', ']', '"', '.', '!'],
  ...['?', '{', '}', '%', "'", '#', '\n', '_', '×', '−', 'é'],
);

/** Formulas of lengths that are right by construction, with the value that they come to. */
interface Sum {
  readonly text: string;
  readonly value: number;
}
const leaf: fc.Arbitrary<Sum> = fc.oneof(
  fc.integer({ min: 1, max: 400 }).map((n) => ({ text: `${n / 10} mm`, value: n / 10 })),
  fc.constantFrom('t1', 't2', 'faceWidth').map((text) => ({ text, value: values[text] ?? 0 })),
);
const { sum } = fc.letrec<{ sum: Sum }>((tie) => ({
  sum: fc.oneof(
    { maxDepth: 3 },
    leaf,
    fc.tuple(tie('sum'), tie('sum')).map(([a, b]) => ({
      text: `(${a.text}) + (${b.text})`,
      value: a.value + b.value,
    })),
    fc.tuple(tie('sum'), tie('sum')).map(([a, b]) => ({
      text: `${a.text} - (${b.text})`,
      value: a.value - b.value,
    })),
    fc.tuple(fc.integer({ min: 1, max: 9 }), tie('sum')).map(([n, a]) => ({
      text: `0.${n} (${a.text})`,
      value: Number(`0.${n}`) * a.value,
    })),
    fc.tuple(tie('sum'), tie('sum')).map(([a, b]) => ({
      text: `min(${a.text}, ${b.text})`,
      value: Math.min(a.value, b.value),
    })),
    fc.tuple(tie('sum'), tie('sum')).map(([a, b]) => ({
      text: `sqrt((${a.text})^2 + (${b.text})^2)`,
      value: Math.hypot(a.value, b.value),
    })),
    tie('sum').map((a) => ({ text: `-abs(${a.text})`, value: -Math.abs(a.value) })),
  ),
}));

describe('formulas', () => {
  it('of any text compile to numbers or are refused with a message that names the place', () => {
    const anything = fc.oneof(
      fc.array(token, { maxLength: 24 }).map((tokens) => tokens.join('')),
      fc.array(token, { maxLength: 12 }).map((tokens) => tokens.join(' ')),
      fc.string({ maxLength: 40 }),
    );
    fc.assert(
      fc.property(anything, (text) => {
        try {
          expect(typeof work(compile(text))).toBe('number');
        } catch (error) {
          if (!(error instanceof FormulaError)) throw error;
          expect(error.reason.key).toMatch(/^limits_formula_/u);
          expect(error.reason.values).toHaveProperty('place');
        }
      }),
      { numRuns: runs(10_000) },
    );
  });

  it('come to what arithmetic says', () => {
    fc.assert(
      fc.property(sum, ({ text, value }) => {
        // longer than a line of a table
        fc.pre(text.length <= 200);
        const found = work(compile(text));
        expect(Math.abs(found - value)).toBeLessThanOrEqual(1e-12 * (1 + Math.abs(value)) * 100);
      }),
      { numRuns: runs(10_000) },
    );
  });

  it('written out again mean the same', () => {
    fc.assert(
      fc.property(sum, ({ text }) => {
        fc.pre(text.length <= 200);
        const tree = compile(text);
        const written = writeTree(tree, (symbol) => symbol);
        fc.pre(written.length <= 200);
        expect(work(compile(written))).toBe(work(tree));
      }),
      { numRuns: runs(10_000) },
    );
  });

  it('nested as deep as a line allows are read or refused, and never overflow', () => {
    for (const text of [
      '('.repeat(99) + 't1' + ')'.repeat(99),
      '-'.repeat(198) + 't1',
      'abs('.repeat(50),
    ]) {
      try {
        expect(Math.abs(work(compile(text)))).toBe(12);
      } catch (error) {
        expect(error).toBeInstanceOf(FormulaError);
      }
    }
  });
});
