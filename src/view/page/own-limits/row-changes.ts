import type { Circumstance, Criterion, Formulas, LimitSet } from '../../../limits/index.ts';
import type { LimitsProblem } from '../../../state/read-limits.ts';

/** What the fields of an own set's row are given. */
export interface RowProps {
  readonly row: Criterion;
  /** `criteria[2]` */
  readonly path: string;
  readonly problems: readonly LimitsProblem[];
  /** the id of the list of names that a formula may use */
  readonly list: string;
  readonly onchange: (row: Criterion) => void;
}

/** What a row limits: the most that may be, the least that must be, or nothing, with the reason said. */
export type Side = 'max' | 'min' | 'unassessed';

export const sideOf = (row: Criterion): Side =>
  row.max !== undefined ? 'max' : row.min !== undefined ? 'min' : 'unassessed';

/** The row with one field set, or left out where the value is undefined. */
export function withField(row: Criterion, field: keyof Criterion, value: unknown): Criterion {
  const others = Object.entries(row).filter(([name]) => name !== field);
  const all = value === undefined ? others : [...others, [field, value]];
  const fields: unknown = Object.fromEntries(all);
  return fields as Criterion;
}

/**
 * The row with a condition, or a figure for short imperfections, as it is typed; where nothing is
 * left of it in any column, the row has none: no field would be there to mend an empty one.
 */
export const withOptional = (
  row: Criterion,
  field: 'when' | 'nominal',
  formulas: Formulas,
): Criterion =>
  withField(
    row,
    field,
    Object.values(formulas).every((formula) => formula.trim() === '') ? undefined : formulas,
  );

/** The formulas with one column typed; an emptied column is left out. */
export function withColumn(
  formulas: Formulas | undefined,
  column: keyof Formulas,
  typed: string,
): Formulas {
  const others = Object.entries(formulas ?? {}).filter(([name]) => name !== column);
  // one formula for both columns stays the one that is typed in, were it empty for a moment
  const isLeftOut = typed.trim() === '' && column !== 'any';
  return Object.fromEntries(isLeftOut ? others : [...others, [column, typed]]);
}

/**
 * The row limiting on the other side; the formulas go with it, or come back where the row had none
 * for a while. None are made up: what is missing is said.
 */
export function withSide(
  row: Criterion,
  side: Side,
  reason: string,
  formerly: Formulas = {},
): Criterion {
  const before = sideOf(row);
  if (side === before) return row;
  const formulas = row.max ?? row.min ?? formerly;
  return withField(
    withField(row, before, undefined),
    side,
    side === 'unassessed' ? reason : formulas,
  );
}

/** The circumstances of one name that the row is for, commas between them; empty where it names none. */
export const givenOf = (row: Criterion, name: Circumstance): string =>
  (row.given?.[name] ?? []).join(',');

/** The row for those circumstances of one name; empty: whatever they are. */
export function withGiven(row: Criterion, name: Circumstance, values: string): Criterion {
  const others = Object.entries(row.given ?? {}).filter(([other]) => other !== name);
  const all = values === '' ? others : [...others, [name, values.split(',')]];
  return withField(row, 'given', all.length === 0 ? undefined : Object.fromEntries(all));
}

/** The rows with the one at `from` moved by `step`, where there is a place to move to. */
export function moved<Item>(rows: readonly Item[], from: number, step: -1 | 1): readonly Item[] {
  const row = rows[from];
  const other = rows[from + step];
  if (row === undefined || other === undefined) return rows;
  return rows.with(from, other).with(from + step, row);
}

/** A row like another under an id of its own, put behind it. */
export function duplicated(set: LimitSet, at: number): readonly Criterion[] {
  const row = set.criteria[at];
  if (row === undefined) return set.criteria;
  return set.criteria.toSpliced(at + 1, 0, { ...row, id: freshId(set, row.id) });
}

/** An id that no row of the set goes by. */
export function freshId(set: LimitSet, like: string): string {
  const taken = new Set(set.criteria.map(({ id }) => id));
  const stem = like.replace(/-\d+$/u, '');
  for (let n = 2; ; n++) if (!taken.has(`${stem}-${n}`)) return `${stem}-${n}`;
}

/** What is wrong at a field, or at a part of it that has no field of its own. */
export const problemsAt = (
  problems: readonly LimitsProblem[],
  path: string,
): readonly LimitsProblem[] =>
  problems.filter((problem) => problem.path === path || problem.path.startsWith(`${path}[`));
