import type { Message } from '../../units/index.ts';
import { mmToInch } from '../../units/index.ts';
import type {
  CompiledLimitSet,
  Criterion,
  CriterionTrees,
  FormulaColumn,
  Formulas,
  LimitSet,
  Trees,
} from '../limit-set.ts';
import { unitOfSubject } from '../symbol.ts';
import type { Tree } from '../tree.ts';
import { compileFormula, type FormulaContext } from './compile-formula.ts';
import { angle, length, type Dimension } from './dimension.ts';
import { FormulaError } from './formula-error.ts';
import { loadParser, type Parser } from './parse-formula.ts';
import { anyThickness, reach, reachOf } from './reach.ts';

/** A formula that can't be compiled: which criterion, which of its fields, why. */
export interface FormulaProblem {
  readonly criterion: string;
  readonly field: string;
  readonly reason: Message;
}

export type CompileResult =
  | { readonly ok: true; readonly limits: CompiledLimitSet }
  | { readonly ok: false; readonly problems: readonly FormulaProblem[] };

/** Compiles every formula of a set; when one fails none is taken, and all that fail are named. */
export async function compileLimits(set: LimitSet): Promise<CompileResult> {
  const parser = await loadParser();
  const problems: FormulaProblem[] = [];
  const compiled = set.criteria.map(
    (criterion) => [criterion.id, compileCriterion(parser, set, criterion, problems)] as const,
  );
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, limits: { ...set, trees: Object.fromEntries(compiled) } };
}

function compileCriterion(
  parser: Parser,
  set: LimitSet,
  criterion: Criterion,
  problems: FormulaProblem[],
): CriterionTrees {
  const { max, min, when, nominal, measurements } = criterion;
  const [subject] = measurements;
  const gives = subject !== undefined && unitOfSubject(subject) === 'deg' ? angle : length;
  const fields = { when, limit: min ?? max, nominal };
  const compiled: Partial<Record<keyof CriterionTrees, Trees>> = {};
  for (const field of ['when', 'limit', 'nominal'] as const) {
    const formulas = fields[field];
    if (formulas === undefined) continue;
    const name = field === 'limit' ? (min === undefined ? 'max' : 'min') : field;
    const wanted = field === 'when' ? 'condition' : gives;
    compiled[field] = compileColumns(parser, set, criterion, formulas, wanted, (column, reason) =>
      problems.push({ criterion: criterion.id, field: `${name}.${column}`, reason }),
    );
  }
  return compiled;
}

function compileColumns(
  parser: Parser,
  set: LimitSet,
  criterion: Criterion,
  formulas: Formulas,
  gives: Dimension,
  refuse: (column: FormulaColumn, reason: Message) => void,
): Trees {
  const symbols = { ...set.symbols, ...criterion.symbols };
  const trees: Partial<Record<FormulaColumn, Tree>> = {};
  for (const column of ['mm', 'in', 'any'] as const) {
    const text = formulas[column];
    if (text === undefined) continue;
    try {
      // the symbols must mean something for every measurement that the row is put to
      for (const subject of criterion.measurements) {
        const tree = compileFormula(parser, text, { subject, symbols, column, gives });
        refuseIdle(tree, text, criterion, { subject, symbols, column, gives });
        trees[column] = tree;
      }
    } catch (error) {
      if (!(error instanceof FormulaError)) throw error;
      refuse(column, error.reason);
    }
  }
  return trees;
}

/** A row that can never count, or that no weld can ever meet, is a slip: better said now than judged by. */
function refuseIdle(
  tree: Tree,
  text: string,
  { nominal, min, measurements }: Criterion,
  { subject, symbols, column, gives }: FormulaContext,
): void {
  if (gives === 'condition') {
    const [, most] = reach(tree, subject, symbols, column, anyThickness);
    if (most === 0) throw new FormulaError('limits_formula_never_counts', text);
    return;
  }
  const [least, most] = reach(tree, subject, symbols, column);
  // a nominal asks for nothing
  if (Object.values(nominal ?? {}).includes(text)) return;
  const inColumn = (value: number): number =>
    column === 'in' && gives !== angle ? mmToInch(value) : value;
  // a row of several measurements need only fit one of them
  const isNever = measurements.every((one) => {
    const [lowest, highest] = reachOf(one);
    return min === undefined ? most < inColumn(lowest) : least > inColumn(highest);
  });
  if (isNever) throw new FormulaError('limits_formula_never_met', text);
}
