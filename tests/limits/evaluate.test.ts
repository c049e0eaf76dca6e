import { describe, expect, it } from 'vitest';
import { bind } from '../../src/limits/evaluate.ts';
import { symbolsIn, type Tree } from '../../src/limits/tree.ts';

const given: Readonly<Record<string, number>> = { t: 12, b: 11, x: -3, zero: 0 };
const work = (tree: Tree): number =>
  bind<typeof given>(tree, (symbol) => (scope) => scope[symbol] ?? Number.NaN)(given);

describe('working out a tree', () => {
  it('gives numbers, symbols and units as they stand', () => {
    expect(work(7)).toBe(7);
    expect(work('t')).toBe(12);
    expect(work(['mm', 4])).toBe(4);
    expect(work(['in', ['/', 3, 16]])).toBe(0.1875);
    expect(work(['deg', 30])).toBe(30);
  });

  it('does each kind of sum', () => {
    expect(work(['+', 't', 3])).toBe(15);
    expect(work(['-', 't', 3])).toBe(9);
    expect(work(['*', 't', 3])).toBe(36);
    expect(work(['/', 't', 3])).toBe(4);
    expect(work(['^', 'x', 2])).toBe(9);
    expect(work(['neg', 't'])).toBe(-12);
    expect(work(['abs', 'x'])).toBe(3);
    expect(work(['sqrt', ['+', 't', 4]])).toBe(4);
  });

  it('takes the least and the most of any number of parts', () => {
    expect(work(['min', 't', 'b', 20])).toBe(11);
    expect(work(['min', 20, 't', 'b'])).toBe(11);
    expect(work(['max', 't', 'b', 3])).toBe(12);
    expect(work(['max', 3, 'b', 't'])).toBe(12);
  });

  it('takes angles in degrees', () => {
    // sin 30° = 0.5, cos 60° = 0.5, tan 45° = 1
    expect(work(['sin', ['deg', 30]])).toBeCloseTo(0.5, 14);
    expect(work(['cos', ['deg', 60]])).toBeCloseTo(0.5, 14);
    expect(work(['tan', ['deg', 45]])).toBeCloseTo(1, 14);
  });

  it('compares with the same tolerance that limits have', () => {
    const just = 12 + 5e-10;
    const clearly = 12 + 2e-9;
    expect(work(['>', just, 't'])).toBe(0);
    expect(work(['>', clearly, 't'])).toBe(1);
    expect(work(['<=', just, 't'])).toBe(1);
    expect(work(['<=', clearly, 't'])).toBe(0);
    expect(work(['<', 't', just])).toBe(0);
    expect(work(['<', 't', clearly])).toBe(1);
    expect(work(['>=', 't', just])).toBe(1);
    expect(work(['>=', 't', clearly])).toBe(0);
    expect(work(['==', 't', just])).toBe(1);
    expect(work(['==', 't', clearly])).toBe(0);
    expect(work(['!=', 't', just])).toBe(0);
    expect(work(['!=', 't', clearly])).toBe(1);
  });

  it('joins conditions', () => {
    const yes: Tree = ['>', 't', 3];
    const no: Tree = ['<', 't', 3];
    expect([work(['and', yes, yes]), work(['and', yes, no]), work(['and', no, yes])]).toEqual([
      1, 0, 0,
    ]);
    expect([work(['or', no, no]), work(['or', yes, no]), work(['or', no, yes])]).toEqual([0, 1, 1]);
    expect([work(['not', yes]), work(['not', no])]).toEqual([0, 1]);
  });

  it('lets a missing input show in what comes out', () => {
    expect(work(['min', 'missing', 4])).toBeNaN();
    expect(work(['+', 1, 'missing'])).toBeNaN();
    // a comparison with what isn't known is neither so nor not so
    for (const operator of ['<', '<=', '>', '>=', '==', '!='] as const) {
      expect(work([operator, 'missing', 3])).toBeNaN();
      expect(work([operator, 3, 'missing'])).toBeNaN();
    }
    const unknown: Tree = ['<', 'missing', 3];
    expect(work(['not', unknown])).toBeNaN();
    expect(work(['and', unknown, ['>', 't', 3]])).toBeNaN();
    expect(work(['or', ['>', 't', 3], unknown])).toBeNaN();
    expect(work(['/', 1, 'zero'])).toBe(Number.POSITIVE_INFINITY);
  });

  it('names the symbols of a tree, each once, in order', () => {
    expect(symbolsIn(['min', ['+', 't', 'b'], ['*', 't', 2]])).toEqual(['t', 'b']);
    expect(symbolsIn(['mm', 4])).toEqual([]);
    expect(symbolsIn(4)).toEqual([]);
    expect(symbolsIn('t')).toEqual(['t']);
  });
});
