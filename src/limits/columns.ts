import type { Measurements } from '../measure/index.ts';
import { judge } from './judge.ts';
import type { JobSheet } from './job-sheet.ts';
import type { Check } from './judging.ts';
import type { CompiledLimitSet } from './limit-set.ts';

/** One requirement that a document's two columns answer differently on one joint. */
export interface ColumnConflict {
  readonly mm: Check;
  readonly in: Check;
}

/**
 * The rows whose metric and inch columns lead to different calls on this joint,
 * in the set's order. Rows with one column only can't disagree.
 */
export function columnConflicts(
  measurements: Measurements,
  sheet: JobSheet,
  limits: CompiledLimitSet,
): readonly ColumnConflict[] {
  const metric = judge(measurements, { ...sheet, column: 'mm' }, limits);
  const inches = new Map(
    judge(measurements, { ...sheet, column: 'in' }, limits).map((check) => [check.id, check]),
  );
  return metric.flatMap((mm) => {
    const other = inches.get(mm.id);
    const isBoth = mm.limit !== null && other !== undefined && other.limit !== null;
    return isBoth && other.call !== mm.call ? [{ mm, in: other }] : [];
  });
}
