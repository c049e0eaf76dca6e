import type { FormulaColumn } from '../limit-set.ts';
import type { Subject } from '../subject.ts';
import { knownSymbols, sourceOf } from '../known-symbols.ts';
import { sheetLegHere, standsFor, thicknessHere } from '../symbol.ts';
import { symbolsIn, type Tree } from '../tree.ts';
import type { Dimension } from './dimension.ts';
import { angle, area, dimensionOf, kindOf, length, sameDimension } from './dimension.ts';
import { FormulaError } from './formula-error.ts';
import { nearestName } from './nearest-name.ts';
import { parseFormula, type Parser } from './parse-formula.ts';
import { constantValue, toTree } from './to-tree.ts';

/** Where a formula stands: what it may name, the column it is printed in, what must come out. */
export interface FormulaContext {
  readonly subject: Subject;
  readonly symbols: Readonly<Record<string, string>>;
  readonly column: FormulaColumn;
  readonly gives: Dimension;
}

/**
 * Compiles one formula to a tree. Throws a FormulaError with the place when it
 * can't be read, names what doesn't exist, mixes unlike quantities or the
 * document's columns, or gives something other than what is asked.
 */
export function compileFormula(parser: Parser, text: string, context: FormulaContext): Tree {
  const tree = toTree(parseFormula(parser, text));
  refuseOtherColumn(tree, context.column);
  const found = dimensionOf(tree, (symbol) => symbolDimension(symbol, context));
  if (!sameDimension(found, context.gives)) {
    throw new FormulaError('limits_formula_gives', text, {
      kind: kindOf(found),
      wanted: kindOf(context.gives),
    });
  }
  if (symbolsIn(tree).length === 0 && !Number.isFinite(constantValue(tree))) {
    throw new FormulaError('limits_formula_no_number', text);
  }
  return tree;
}

/** A document's inch and metric columns are separate numbers and never stand in one formula. */
function refuseOtherColumn(tree: Tree, column: FormulaColumn): void {
  if (typeof tree === 'number' || typeof tree === 'string') return;
  const [operator, ...parts] = tree;
  const isLength = operator === 'mm' || operator === 'in';
  if (isLength && operator !== column) {
    throw new FormulaError('limits_formula_other_column', operator, { column });
  }
  for (const part of parts) refuseOtherColumn(part, column);
}

function symbolDimension(symbol: string, { subject, symbols }: FormulaContext): Dimension {
  const source = sourceOf(symbol, subject, symbols);
  if (source === null) throw unknownSymbol(symbol, symbols);
  if (source.unit === 'mm') return length;
  if (source.unit === 'deg') return angle;
  if (source.unit === 'mm2') return area;
  throw new FormulaError('limits_formula_unusable_symbol', symbol);
}

function unknownSymbol(symbol: string, symbols: Readonly<Record<string, string>>): FormulaError {
  // a symbol that the set declares is as good as what it stands for
  const name = standsFor(symbol, symbols);
  if (name === 't') return new FormulaError('limits_formula_bare_t', name);
  if (name === thicknessHere || name === sheetLegHere)
    return new FormulaError('limits_formula_no_plate', symbol);
  const meant = nearestName(name, knownSymbols(symbols));
  return meant === null
    ? new FormulaError('limits_formula_unknown_symbol', name)
    : new FormulaError('limits_formula_mistyped_symbol', name, { meant });
}
