import { describe, expect, it } from 'vitest';
import { substitute, writeTree, type SymbolValue } from '../../src/limits/substitute.ts';
import type { Tree } from '../../src/limits/tree.ts';

const values: Readonly<Record<string, SymbolValue>> = {
  b: { value: 8 * Math.SQRT2, unit: 'mm' },
  w: { value: 0.3149606, unit: 'in' },
  psi: { value: 90, unit: 'deg' },
  k: { value: 1.23456, unit: '' },
  d: { value: -1.5, unit: 'mm' },
  z: { value: 0.3125, unit: 'in' },
};
const put = (tree: Tree): string =>
  substitute(tree, (symbol) => values[symbol] ?? { value: 0, unit: '' });
const plain = (tree: Tree): string => writeTree(tree, (symbol) => symbol);

describe('the sum with numbers put in', () => {
  it('shows each symbol as its value with the unit', () => {
    // 8 √2 = 11.3137
    expect(put(['min', ['+', ['mm', 1], ['*', 0.15, 'b']], ['mm', 4]])).toBe(
      'min(1 mm + 0.15 × 11.31 mm, 4 mm)',
    );
    expect(put('w')).toBe('0.315 in');
    expect(put('z')).toBe('5/16 in');
    expect(put('k')).toBe('1.2346');
    expect(put('d')).toBe('−1.5 mm');
    expect(put(['cos', ['/', 'psi', 2]])).toBe('cos(90° / 2)');
  });

  it('writes a fraction of an inch as one number', () => {
    expect(put(['+', ['in', ['/', 3, 16]], 'w'])).toBe('3/16 in + 0.315 in');
    expect(put(['deg', ['/', 75, 2]])).toBe('75/2°');
  });

  it('keeps the brackets that the meaning needs, and no others', () => {
    expect(plain(['-', 'a', ['-', 'b', 'c']])).toBe('a − (b − c)');
    expect(plain(['-', ['-', 'a', 'b'], 'c'])).toBe('a − b − c');
    expect(plain(['*', ['+', 'a', 'b'], 'c'])).toBe('(a + b) × c');
    expect(plain(['+', 'a', ['*', 'b', 'c']])).toBe('a + b × c');
    expect(plain(['/', 'a', ['*', 'b', 'c']])).toBe('a / (b × c)');
    expect(plain(['/', ['*', 'a', 'b'], 'c'])).toBe('a × b / c');
    expect(plain(['^', ['+', 'a', 'b'], 2])).toBe('(a + b)^2');
    expect(plain(['^', 'a', 2])).toBe('(a)^2');
    expect(plain(['neg', ['+', 'a', 'b']])).toBe('−(a + b)');
    expect(plain(['neg', 'a'])).toBe('−a');
    expect(plain(['+', -2, 'a'])).toBe('−2 + a');
    expect(plain(['*', 'a', -2])).toBe('a × −2');
    expect(plain(['^', -2, 2])).toBe('(−2)^2');
  });

  it('writes conditions in words where a font may lack the sign', () => {
    expect(plain(['and', ['>=', 't', ['mm', 0.5]], ['<=', 't', ['mm', 3]]])).toBe(
      't at least 0.5 mm and t at most 3 mm',
    );
    expect(plain(['or', ['==', 'a', 'b'], ['and', ['<', 'a', 'c'], ['>', 'b', 'c']]])).toBe(
      'a = b or a < c and b > c',
    );
    expect(plain(['and', ['or', 'p', 'q'], 'r'])).toBe('(p or q) and r');
    expect(plain(['not', ['==', 'a', 'b']])).toBe('not a = b');
    expect(plain(['!=', 'a', 'b'])).toBe('a not b');
    expect(plain(['max', 'a', ['abs', 'b']])).toBe('max(a, abs(b))');
  });
});
