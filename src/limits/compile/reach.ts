import { measurementCatalogue, unitOf, type MeasurementId } from '../../measure/index.ts';
import { mmToInch } from '../../units/index.ts';
import { parametersFor } from '../../joint/index.ts';
import type { FormulaColumn } from '../limit-set.ts';
import { isMeasured, type Subject } from '../subject.ts';
import { sourceOf } from '../known-symbols.ts';
import { unitOfSubject, type SymbolSource } from '../symbol.ts';
import type { Tree } from '../tree.ts';
import { FormulaError } from './formula-error.ts';
import { writeTree } from '../substitute.ts';

/** The least and the most that something can come to. */
export type Reach = readonly [least: number, most: number];

const anything: Reach = [-Infinity, Infinity];
const halfTurn = 180;
/** No dimension of these joints, and none on a sheet, is longer, mm. */
const longest = 200;

/** What thicknesses the program can draw, mm. */
const thickness: Reach = (() => {
  const rows = [...parametersFor('fillet'), ...parametersFor('butt')].filter(
    ({ field }) => field === 't1' || field === 't2',
  );
  return [Math.min(...rows.map(({ min }) => min)), Math.max(...rows.map(({ max }) => max))];
})();

/** What thicknesses a document draws its bands for, mm: they go past the plates drawn here. */
export const anyThickness: Reach = [0, longest];

/** What a measurement can come to on any joint, mm or degrees. */
function reachOfMeasurement(id: MeasurementId, plates: Reach): Reach {
  if (/^t(?:1|2|Min|Max)$/u.test(id)) return plates;
  const most = unitOf(id) === 'deg' ? 2 * halfTurn : longest;
  return [measurementCatalogue[id].signed === true ? -most : 0, most];
}

/** What is put to a limit on any joint, mm or degrees: plates out of line count by size, whichever way they go. */
export function reachOf(subject: Subject, plates: Reach = thickness): Reach {
  if (!isMeasured(subject) || subject === 'angularMisalignment') {
    return [0, unitOfSubject(subject) === 'deg' ? 2 * halfTurn : longest];
  }
  return reachOfMeasurement(subject, plates);
}

function reachOfSymbol(source: SymbolSource, column: FormulaColumn, plates: Reach): Reach {
  const [least, most]: Reach =
    source.from === 'measurement'
      ? reachOfMeasurement(source.id, plates)
      : source.unit === 'deg'
        ? [0, halfTurn]
        : [0, longest];
  if (source.unit === 'mm2') return [0, Infinity];
  return column === 'in' && source.unit === 'mm'
    ? [mmToInch(least), mmToInch(most)]
    : [least, most];
}

/**
 * The least and the most that a formula can come to over everything its symbols
 * can be, in the column's unit; a condition: 0 never, 1 always. Bounds, not
 * tight ones: what they leave out can't happen, what they leave in may not.
 * Interval arithmetic (Moore). Throws a FormulaError for a division by what is
 * always nothing.
 */
export function reach(
  tree: Tree,
  subject: Subject,
  symbols: Readonly<Record<string, string>>,
  column: FormulaColumn,
  plates: Reach = thickness,
): Reach {
  const of = (part: Tree): Reach => reach(part, subject, symbols, column, plates);
  if (typeof tree === 'number') return [tree, tree];
  if (typeof tree === 'string') {
    const source = sourceOf(tree, subject, symbols);
    return source === null ? anything : reachOfSymbol(source, column, plates);
  }
  const [operator, ...parts] = tree;
  // a difference of a thing and itself is nothing, whatever the thing is
  if (operator === '-' && JSON.stringify(parts[0]) === JSON.stringify(parts[1])) return [0, 0];
  const reaches = parts.map(of);
  const [a = anything, b = anything] = reaches;
  switch (operator) {
    case 'mm':
    case 'in':
    case 'deg':
      return a;
    case 'neg':
      return [-a[1], -a[0]];
    case '+':
      return spanOf([a[0] + b[0], a[1] + b[1]]);
    case '-':
      return spanOf([a[0] - b[1], a[1] - b[0]]);
    case '*':
      return spanOf(products(a, b));
    case '/':
      if (b[0] === 0 && b[1] === 0) {
        throw new FormulaError(
          'limits_formula_division_by_zero',
          writeTree(tree, (name) => name),
        );
      }
      return b[0] <= 0 && b[1] >= 0
        ? anything
        : spanOf(a.flatMap((one) => b.map((other) => one / other)));
    case '^':
      return powers(a, b[0]);
    case 'min':
      return [
        Math.min(...reaches.map(([least]) => least)),
        Math.min(...reaches.map(([, most]) => most)),
      ];
    case 'max':
      return [
        Math.max(...reaches.map(([least]) => least)),
        Math.max(...reaches.map(([, most]) => most)),
      ];
    case 'abs':
      return a[0] >= 0 ? a : a[1] <= 0 ? [-a[1], -a[0]] : [0, Math.max(-a[0], a[1])];
    case 'sqrt':
      return [Math.sqrt(Math.max(0, a[0])), Math.sqrt(Math.max(0, a[1]))];
    case 'sin':
    case 'cos':
      return [-1, 1];
    case 'tan':
      return anything;
    case '<':
      return [Number(a[1] < b[0]), Number(a[0] < b[1])];
    case '<=':
      return [Number(a[1] <= b[0]), Number(a[0] <= b[1])];
    case '>':
      return [Number(a[0] > b[1]), Number(a[1] > b[0])];
    case '>=':
      return [Number(a[0] >= b[1]), Number(a[1] >= b[0])];
    case '==':
    case '!=':
      return [0, 1];
    case 'and':
      return [Math.min(a[0], b[0]), Math.min(a[1], b[1])];
    case 'or':
      return [Math.max(a[0], b[0]), Math.max(a[1], b[1])];
    case 'not':
      return [1 - a[1], 1 - a[0]];
  }
}

const products = (a: Reach, b: Reach): readonly number[] =>
  // nothing of anything is nothing, however much there may be of it
  a.flatMap((one) => b.map((other) => (one === 0 || other === 0 ? 0 : one * other)));

/** From the least to the most of some values; what has no bound (∞ less ∞) may be anything. */
const spanOf = (values: readonly number[]): Reach =>
  values.some(Number.isNaN) ? anything : [Math.min(...values), Math.max(...values)];

function powers(base: Reach, power: number): Reach {
  const ends = [base[0] ** power, base[1] ** power];
  const throughNothing = base[0] < 0 && base[1] > 0;
  if (power < 0 && base[0] <= 0 && base[1] >= 0) return anything;
  return spanOf(throughNothing ? [0, ...ends] : ends);
}
