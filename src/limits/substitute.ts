import { formatInch64, roundHalfAway, sixtyFourths } from '../units/index.ts';
import type { Operator, Tree } from './tree.ts';

/** A symbol's value as it is put into a sum, in the unit written behind it. */
export interface SymbolValue {
  readonly value: number;
  readonly unit: 'mm' | 'in' | 'deg' | '';
}

const decimals = { mm: 2, in: 3, deg: 1, '': 4 } as const;

/** How tightly each sign holds what stands beside it; a looser part needs brackets. */
const strength: Readonly<Partial<Record<Operator, number>>> = {
  or: 1,
  and: 2,
  not: 3,
  '<': 4,
  '<=': 4,
  '>': 4,
  '>=': 4,
  '==': 4,
  '!=': 4,
  '+': 5,
  '-': 5,
  '*': 6,
  '/': 6,
  neg: 7,
  '^': 8,
};

const signs: Readonly<Partial<Record<Operator, string>>> = {
  '*': ' × ',
  '/': ' / ',
  '-': ' − ',
  '^': '^',
  '==': ' = ',
  '!=': ' not ',
  '<=': ' at most ',
  '>=': ' at least ',
};

/** A number with its unit as a sum shows it: 11.31 mm, 0.315 in, 5/16 in, 90°. */
export function writeValue({ value, unit }: SymbolValue): string {
  const count = value * sixtyFourths;
  if (unit === 'in' && Number.isInteger(count)) return `${formatInch64(count)} in`;
  const text = String(roundHalfAway(value, decimals[unit])).replace('-', '−');
  if (unit === '') return text;
  return unit === 'deg' ? `${text}°` : `${text} ${unit}`;
}

/** A formula with numbers in place of its symbols: `min(1 mm + 0.15 × 11.31 mm, 4 mm)`. */
export function substitute(tree: Tree, valueOf: (symbol: string) => SymbolValue): string {
  return writeTree(tree, (symbol) => writeValue(valueOf(symbol)));
}

/** A tree as a line of text, with as few brackets as its meaning allows. */
export function writeTree(tree: Tree, writeSymbol: (symbol: string) => string): string {
  const write = (part: Tree): string => writeTree(part, writeSymbol);
  if (typeof tree === 'number') return String(tree).replace('-', '−');
  if (typeof tree === 'string') return writeSymbol(tree);
  const [operator, ...parts] = tree;
  // a fraction of an inch is one number, written without spaces
  if (operator === 'mm' || operator === 'in' || operator === 'deg') {
    const number = parts.map(write).join('').replace(' / ', '/');
    return operator === 'deg' ? `${number}°` : `${number} ${operator}`;
  }
  const own = strength[operator];
  // a function brackets its own parts
  if (own === undefined) return `${operator}(${parts.map(write).join(', ')})`;
  const within = (part: Tree, least: number): string =>
    looseness(part) < least ? `(${write(part)})` : write(part);
  const [left = 0, right] = parts;
  if (right === undefined) return `${operator === 'not' ? 'not ' : '−'}${within(left, own + 1)}`;
  // a − (b − c) and a / (b / c) keep their brackets, and a power binds to what it stands behind
  const leftLeast = operator === '^' ? own + 1 : own;
  return `${within(left, leftLeast)}${signs[operator] ?? ` ${operator} `}${within(right, own + 1)}`;
}

/** A value with a unit needs brackets before a power: (11.31 mm)^2. */
function looseness(tree: Tree): number {
  if (typeof tree === 'number') return tree < 0 ? 7 : 9;
  if (typeof tree === 'string' || tree[0] === 'mm' || tree[0] === 'in' || tree[0] === 'deg')
    return 8;
  return strength[tree[0]] ?? 9;
}
