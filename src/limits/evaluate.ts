import { atMost, same } from './document-tolerance.ts';
import type { Operator, Tree } from './tree.ts';

/** A formula ready to be worked out; a condition gives 1 or 0, and NaN where a missing input has a say. */
export type Evaluate<Scope> = (scope: Scope) => number;

const radians = Math.PI / 180;

const oneToOne: Readonly<Partial<Record<Operator, (a: number) => number>>> = {
  mm: (a) => a,
  in: (a) => a,
  deg: (a) => a,
  neg: (a) => -a,
  abs: Math.abs,
  sqrt: Math.sqrt,
  sin: (a) => Math.sin(a * radians),
  cos: (a) => Math.cos(a * radians),
  tan: (a) => Math.tan(a * radians),
  not: (a) => (Number.isNaN(a) ? a : Number(a === 0)),
};

type Pair = (a: number, b: number) => number;

/** 1 or 0; nothing can be said of what isn't known. */
const condition =
  (holds: (a: number, b: number) => boolean): Pair =>
  (a, b) =>
    Number.isNaN(a) || Number.isNaN(b) ? Number.NaN : Number(holds(a, b));

const twoToOne: Readonly<Partial<Record<Operator, Pair>>> = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  '/': (a, b) => a / b,
  '^': (a, b) => a ** b,
  min: Math.min,
  max: Math.max,
  '<': condition((a, b) => !atMost(b, a)),
  '<=': condition((a, b) => atMost(a, b)),
  '>': condition((a, b) => !atMost(a, b)),
  '>=': condition((a, b) => atMost(b, a)),
  '==': condition((a, b) => same(a, b)),
  '!=': condition((a, b) => !same(a, b)),
  and: condition((a, b) => a !== 0 && b !== 0),
  or: condition((a, b) => a !== 0 || b !== 0),
};

/**
 * Ties a tree to the places that its symbols are read from, once, so that
 * working it out is a few calls. Lengths are plain numbers in one unit
 * throughout, the column's; angles are degrees.
 */
export function bind<Scope>(
  tree: Tree,
  readerOf: (symbol: string) => Evaluate<Scope>,
): Evaluate<Scope> {
  if (typeof tree === 'number') return () => tree;
  if (typeof tree === 'string') return readerOf(tree);
  const [operator, ...parts] = tree;
  const bound = parts.map((part) => bind(part, readerOf));
  const single = oneToOne[operator];
  const [first = nothing] = bound;
  if (single !== undefined) return (scope) => single(first(scope));
  const pair = twoToOne[operator] ?? nothing;
  return bound.reduce((a, b) => (scope) => pair(a(scope), b(scope)));
}

const nothing = (): number => Number.NaN;
