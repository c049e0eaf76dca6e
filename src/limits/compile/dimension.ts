import type { Tree } from '../tree.ts';
import { writeTree } from '../substitute.ts';
import { FormulaError } from './formula-error.ts';
import { constantValue } from './to-tree.ts';

/** What a part of a formula is a quantity of: powers of length and of angle, or a condition. */
export type Dimension = { readonly length: number; readonly angle: number } | 'condition';

export const pure: Dimension = { length: 0, angle: 0 };
export const length: Dimension = { length: 1, angle: 0 };
export const area: Dimension = { length: 2, angle: 0 };
export const angle: Dimension = { length: 0, angle: 1 };

export const sameDimension = (a: Dimension, b: Dimension): boolean =>
  a === 'condition' || b === 'condition' ? a === b : a.length === b.length && a.angle === b.angle;

/** The kind of quantity as a word for a message key. */
export function kindOf(dimension: Dimension): string {
  if (dimension === 'condition') return 'condition';
  const named = { number: pure, length, area, angle };
  const found = Object.entries(named).find(([, known]) => sameDimension(known, dimension));
  return found?.[0] ?? 'mixed';
}

/** The dimension of a tree; refuses sums of unlike quantities and what has no meaning. */
export function dimensionOf(tree: Tree, symbolDimension: (symbol: string) => Dimension): Dimension {
  if (typeof tree === 'number') return pure;
  if (typeof tree === 'string') return symbolDimension(tree);
  const [operator, ...parts] = tree;
  const dimensions = parts.map((part) => dimensionOf(part, symbolDimension));
  const [first = pure, second = pure] = dimensions;
  const place = writeTree(tree, (symbol) => symbol);
  switch (operator) {
    case 'mm':
    case 'in':
      return length;
    case 'deg':
      return angle;
    case '+':
    case '-':
    case 'min':
    case 'max':
    case 'neg':
    case 'abs':
      return alike(quantities(dimensions, place), place);
    case '<':
    case '<=':
    case '>':
    case '>=':
    case '==':
    case '!=':
      alike(quantities(dimensions, place), place);
      return 'condition';
    case 'and':
    case 'or':
    case 'not':
      if (dimensions.some((one) => one !== 'condition')) {
        throw new FormulaError('limits_formula_not_a_condition', place);
      }
      return 'condition';
    case 'sin':
    case 'cos':
    case 'tan':
      if (!sameDimension(first, angle)) {
        throw new FormulaError('limits_formula_not_an_angle', place);
      }
      return pure;
    case 'sqrt':
      return scaled(first, 1 / 2, place);
    case '^':
      return scaled(first, constantValue(parts[1] ?? Number.NaN), place);
    case '*':
      return joined(first, second, 1, place);
    case '/':
      return joined(first, second, -1, place);
  }
}

function quantities(dimensions: readonly Dimension[], place: string): readonly Dimension[] {
  if (dimensions.includes('condition')) {
    throw new FormulaError('limits_formula_condition_in_sum', place);
  }
  return dimensions;
}

function alike(dimensions: readonly Dimension[], place: string): Dimension {
  const [first = pure, ...others] = dimensions;
  const odd = others.find((one) => !sameDimension(one, first));
  if (odd !== undefined) {
    throw new FormulaError('limits_formula_unlike', place, {
      first: kindOf(first),
      second: kindOf(odd),
    });
  }
  return first;
}

function scaled(dimension: Dimension, by: number, place: string): Dimension {
  if (dimension === 'condition') throw new FormulaError('limits_formula_condition_in_sum', place);
  const powers = { length: dimension.length * by, angle: dimension.angle * by };
  if (!Number.isInteger(powers.length) || !Number.isInteger(powers.angle)) {
    throw new FormulaError('limits_formula_root_of', place, { kind: kindOf(dimension) });
  }
  return powers;
}

function joined(a: Dimension, b: Dimension, sign: 1 | -1, place: string): Dimension {
  if (a === 'condition' || b === 'condition') {
    throw new FormulaError('limits_formula_condition_in_sum', place);
  }
  return { length: a.length + sign * b.length, angle: a.angle + sign * b.angle };
}
