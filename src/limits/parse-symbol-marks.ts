import { choiceOf, fieldsOf, flagOf, joined, textOf } from './read-value.ts';
import type { SymbolContour, SymbolMarks } from './weld-symbol.ts';

export const contours: readonly SymbolContour[] = ['none', 'flush', 'convex', 'concave'];

/**
 * What a sheet from outside has its symbol say besides the joint, taken whole or
 * refused with a LimitsError that names the field under `path`.
 */
export function parseSymbolMarks(value: unknown, path = 'symbol'): SymbolMarks {
  const marks = fieldsOf(value, path);
  return {
    contour: choiceOf(marks['contour'], contours, joined(path, 'contour')),
    allRound: flagOf(marks['allRound'], joined(path, 'allRound')),
    field: flagOf(marks['field'], joined(path, 'field')),
    tail: textOf(marks['tail'], joined(path, 'tail')),
    arrowSide: choiceOf(marks['arrowSide'], ['face', 'root'], joined(path, 'arrowSide')),
  };
}
