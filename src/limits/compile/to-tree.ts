import type {
  ConstantNode,
  FunctionNode,
  MathNode,
  OperatorNode,
  ParenthesisNode,
  SymbolNode,
} from 'mathjs';
import { bind } from '../evaluate.ts';
import { symbolsIn, type Operator, type Tree } from '../tree.ts';
import { FormulaError } from './formula-error.ts';
import { inchSymbol } from './parse-formula.ts';

const units: Readonly<Record<string, 'mm' | 'in' | 'deg'>> = {
  mm: 'mm',
  [inchSymbol]: 'in',
  deg: 'deg',
};

/** mathjs's names of the operators that a formula may use. */
const operators: Readonly<Record<string, Operator>> = {
  add: '+',
  subtract: '-',
  multiply: '*',
  divide: '/',
  pow: '^',
  unaryMinus: 'neg',
  smaller: '<',
  smallerEq: '<=',
  larger: '>',
  largerEq: '>=',
  equal: '==',
  unequal: '!=',
  and: 'and',
  or: 'or',
  not: 'not',
};

/** Functions that a formula may use, with the number of parts each takes (least, most). */
const functions = {
  min: [2, Number.POSITIVE_INFINITY],
  max: [2, Number.POSITIVE_INFINITY],
  abs: [1, 1],
  sqrt: [1, 1],
  sin: [1, 1],
  cos: [1, 1],
  tan: [1, 1],
} as const satisfies Partial<Record<Operator, readonly [number, number]>>;

const largestPower = 6;

/** Turns a syntax tree into a tree of our own, letting through only what is listed above. */
export function toTree(node: MathNode): Tree {
  switch (node.type) {
    case 'ConstantNode':
      return constant(node as ConstantNode);
    case 'SymbolNode':
      return symbol(node as SymbolNode);
    case 'ParenthesisNode':
      return toTree((node as ParenthesisNode).content);
    case 'OperatorNode':
      return operation(node as OperatorNode);
    case 'FunctionNode':
      return call(node as FunctionNode);
    case 'RelationalNode':
      throw new FormulaError('limits_formula_two_comparisons', textOf(node));
    default:
      throw new FormulaError('limits_formula_not_allowed', textOf(node));
  }
}

function constant(node: ConstantNode): Tree {
  const value: unknown = node.value;
  if (typeof value === 'number' && Number.isFinite(value)) return value;
  throw new FormulaError('limits_formula_not_allowed', textOf(node));
}

function symbol(node: SymbolNode): Tree {
  if (isFunction(node.name)) {
    throw new FormulaError('limits_formula_function_alone', node.name);
  }
  // a unit on its own is one of it: "t / mm"
  const unit = Object.hasOwn(units, node.name) ? units[node.name] : undefined;
  return unit === undefined ? node.name : [unit, 1];
}

function operation(node: OperatorNode): Tree {
  const operator = Object.hasOwn(operators, node.fn) ? operators[node.fn] : undefined;
  if (operator === undefined) throw new FormulaError('limits_formula_not_allowed', textOf(node));
  const [left, right] = node.args.map(toTree);
  if (left === undefined) throw new FormulaError('limits_formula_not_allowed', textOf(node));
  if (right === undefined) return [operator, left];
  if (operator === '/' && isZero(right)) {
    throw new FormulaError('limits_formula_division_by_zero', textOf(node));
  }
  if (operator === '^' && !isSmallWhole(right)) {
    throw new FormulaError('limits_formula_power', textOf(node), { most: largestPower });
  }
  return operator === '*' ? product(left, right) : [operator, left, right];
}

/** A number times a unit is that number with its unit: ["mm", 4]. */
function product(left: Tree, right: Tree): Tree {
  return isPlainNumber(left) && isUnit(right) ? [right[0], left] : ['*', left, right];
}

/** A decimal, or a fraction of two. */
const isPlainNumber = (tree: Tree): boolean =>
  typeof tree === 'number' ||
  (Array.isArray(tree) &&
    tree[0] === '/' &&
    tree.every((part, at) => at === 0 || typeof part === 'number'));

function isUnit(tree: Tree): tree is readonly ['mm' | 'in' | 'deg', 1] {
  if (typeof tree === 'number' || typeof tree === 'string') return false;
  return tree[1] === 1 && isUnitName(tree[0]);
}

const isUnitName = (operator: Operator): boolean =>
  operator === 'mm' || operator === 'in' || operator === 'deg';

function hasUnit(tree: Tree): boolean {
  if (typeof tree === 'number' || typeof tree === 'string') return false;
  const [operator, ...parts] = tree;
  return isUnitName(operator) || parts.some(hasUnit);
}

/** Whether a part without symbols comes to nothing. */
const isZero = (tree: Tree): boolean => symbolsIn(tree).length === 0 && constantValue(tree) === 0;

const isSmallWhole = (tree: Tree): boolean => {
  if (symbolsIn(tree).length > 0 || hasUnit(tree)) return false;
  const value = constantValue(tree);
  return Number.isInteger(value) && Math.abs(value) <= largestPower;
};

/** What a part without symbols comes to. */
export const constantValue = (tree: Tree): number => bind(tree, () => () => Number.NaN)(null);

function call(node: FunctionNode): Tree {
  // the parser's own types leave out that a function may be looked up: "a.min(b)"
  const named: MathNode = node.fn;
  const name = named.type === 'SymbolNode' ? node.fn.name : '';
  if (!isFunction(name)) {
    throw new FormulaError('limits_formula_unknown_function', textOf(node), { name });
  }
  const [least, most] = functions[name];
  if (node.args.length < least || node.args.length > most) {
    throw new FormulaError('limits_formula_wrong_count', textOf(node), { name, least });
  }
  return [name, ...node.args.map(toTree)];
}

const isFunction = (name: string): name is keyof typeof functions => Object.hasOwn(functions, name);

/** A piece of the formula as a person would write it. */
const textOf = (node: MathNode): string =>
  node.toString().replaceAll(inchSymbol, 'in').slice(0, 60);
