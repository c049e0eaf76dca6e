import type { Measurements } from '../measure/index.ts';
import type { Message } from '../units/index.ts';
import { mmToInch } from '../units/index.ts';
import type { Evaluate } from './evaluate.ts';
import { bind } from './evaluate.ts';
import type { CriterionSource } from './judging.ts';
import type { CompiledLimitSet, Criterion, FormulaColumn, Formulas, Trees } from './limit-set.ts';
import { printedPlace } from './last-place.ts';
import type { SheetValues } from './symbol.ts';
import type { Subject } from './subject.ts';
import { compiledSource, unitOfSubject, type SymbolSource } from './symbol.ts';
import { symbolsIn, type Tree } from './tree.ts';

/** What formulas read from. */
export interface Scope {
  readonly values: Measurements['values'];
  readonly sheet: SheetValues;
}

export interface PreparedSymbol {
  readonly symbol: string;
  readonly source: SymbolSource;
  readonly read: Evaluate<Scope>;
}

/** A formula tied to what its symbols are read from, its lengths in one column's unit. */
export interface PreparedFormula {
  readonly text: string;
  readonly tree: Tree;
  readonly unit: 'mm' | 'in';
  /** the last place that it is printed to; null when it prints no length or angle of its own */
  readonly lastPlace: number | null;
  readonly evaluate: Evaluate<Scope>;
  readonly symbols: readonly PreparedSymbol[];
}

type ByColumn = Readonly<Record<'mm' | 'in', PreparedFormula | null>>;

/** A criterion put to one subject, its formulas bound. */
export interface PreparedCriterion {
  readonly id: string;
  readonly criterion: Criterion;
  readonly subject: Subject;
  readonly name: Message;
  readonly sense: 'max' | 'min';
  readonly unit: 'mm' | 'deg';
  readonly when: ByColumn | null;
  readonly limit: ByColumn;
  readonly nominal: ByColumn | null;
  readonly source: CriterionSource;
}

export interface PreparedLimits {
  readonly set: CompiledLimitSet;
  readonly criteria: readonly PreparedCriterion[];
}

/** Sets are never changed, so what is bound once stays good. */
const kept = new WeakMap<CompiledLimitSet, PreparedLimits>();

/** Binds every formula of a set to what it reads, once for each set. */
export function prepareLimits(set: CompiledLimitSet): PreparedLimits {
  const before = kept.get(set);
  if (before !== undefined) return before;
  const criteria = set.criteria.flatMap((criterion) =>
    criterion.measurements.map((subject) => prepare(set, criterion, subject)),
  );
  const prepared: PreparedLimits = { set, criteria: [...criteria].sort(bySheetOrder) };
  kept.set(set, prepared);
  return prepared;
}

/** First what stands for the sheet's own throat, then how the plates lie, then the document's own order. */
const bySheetOrder = (a: PreparedCriterion, b: PreparedCriterion): number => rank(a) - rank(b);

const early: readonly Subject[] = ['angleDeparture', 'misalignment', 'angularMisalignment'];

function rank({ criterion, subject }: PreparedCriterion): number {
  if (criterion.standsFor === 'throat') return -early.length - 1;
  return early.includes(subject) ? early.indexOf(subject) - early.length : 0;
}

function prepare(set: CompiledLimitSet, criterion: Criterion, subject: Subject): PreparedCriterion {
  const trees = set.trees[criterion.id] ?? {};
  const declared = { ...set.symbols, ...criterion.symbols };
  const bound = (formulas: Formulas | undefined, of: Trees | undefined): ByColumn => ({
    mm: formulaFor('mm', formulas, of, subject, declared),
    in: formulaFor('in', formulas, of, subject, declared),
  });
  const side = /[12]$/u.exec(subject)?.[0];
  const { document, edition, clause, status, note } = criterion;
  const source = { document, edition, clause, status } as const;
  return {
    id: `${criterion.id}:${subject}`,
    criterion,
    subject,
    name:
      side === undefined
        ? { key: criterion.name }
        : { key: criterion.name, values: { side: Number(side) } },
    sense: criterion.min === undefined ? 'max' : 'min',
    unit: unitOfSubject(subject) === 'deg' ? 'deg' : 'mm',
    when: criterion.when === undefined ? null : bound(criterion.when, trees.when),
    limit: bound(criterion.min ?? criterion.max, trees.limit),
    nominal: criterion.nominal === undefined ? null : bound(criterion.nominal, trees.nominal),
    source: note === undefined ? source : { ...source, note },
  };
}

/** A column's own formula, or the one for both; none is never made from the other column's. */
function formulaFor(
  column: 'mm' | 'in',
  formulas: Formulas | undefined,
  trees: Trees | undefined,
  subject: Subject,
  declared: Readonly<Record<string, string>>,
): PreparedFormula | null {
  const from: FormulaColumn = formulas?.[column] === undefined ? 'any' : column;
  const text = formulas?.[from];
  const tree = trees?.[from];
  if (text === undefined || tree === undefined) return null;
  const readers = new Map<string, PreparedSymbol>();
  for (const symbol of symbolsIn(tree)) {
    const source = compiledSource(symbol, subject, declared);
    if (source !== null) readers.set(symbol, { symbol, source, read: readerOf(source, column) });
  }
  const evaluate = bind<Scope>(tree, (symbol) => readers.get(symbol)?.read ?? unknown);
  return {
    text,
    tree,
    unit: column,
    lastPlace: printedPlace(tree),
    evaluate,
    symbols: [...readers.values()],
  };
}

const unknown = (): number => Number.NaN;

function readerOf(source: SymbolSource, column: 'mm' | 'in'): Evaluate<Scope> {
  const plain: Evaluate<Scope> =
    source.from === 'sheet'
      ? (scope) => scope.sheet[source.field]
      : (scope) => scope.values[source.id]?.value ?? Number.NaN;
  if (column === 'mm' || source.unit === 'deg') return plain;
  return source.unit === 'mm2'
    ? (scope) => mmToInch(mmToInch(plain(scope)))
    : (scope) => mmToInch(plain(scope));
}
