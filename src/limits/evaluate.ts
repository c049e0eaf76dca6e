import { atMost, same } from './document-tolerance.ts';
import type { Operator, Tree } from './tree.ts';

/** A formula ready to be worked out; a condition gives 1 or 0, a missing input NaN. */
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
  not: (a) => (a === 0 ? 1 : 0),
};

const twoToOne: Readonly<Partial<Record<Operator, (a: number, b: number) => number>>> = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  '/': (a, b) => a / b,
  '^': (a, b) => a ** b,
  min: Math.min,
  max: Math.max,
  '<': (a, b) => Number(!atMost(b, a)),
  '<=': (a, b) => Number(atMost(a, b)),
  '>': (a, b) => Number(!atMost(a, b)),
  '>=': (a, b) => Number(atMost(b, a)),
  '==': (a, b) => Number(same(a, b)),
  '!=': (a, b) => Number(!same(a, b)),
  and: (a, b) => Number(a !== 0 && b !== 0),
  or: (a, b) => Number(a !== 0 || b !== 0),
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
