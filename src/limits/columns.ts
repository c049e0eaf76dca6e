import type { Measurements } from '../measure/index.ts';
import { judge } from './judge.ts';
import type { JobSheet } from './job-sheet.ts';
import type { Call, Check } from './judging.ts';
import type { CompiledLimitSet } from './limit-set.ts';

/** One requirement that a document's two columns answer differently on one joint. */
export interface ColumnConflict {
  readonly mm: Check;
  readonly in: Check;
}

/**
 * The measurements that the metric and the inch column of a set lead to
 * different calls on, in the set's order. Bands of thickness may fall between
 * the columns, so that a row of the one stands against another row of the
 * other: what governs is compared, for each measurement and sense. What has a
 * limit in one column only can't disagree.
 */
export function columnConflicts(
  measurements: Measurements,
  sheet: JobSheet,
  limits: CompiledLimitSet,
): readonly ColumnConflict[] {
  const governingIn = (column: 'mm' | 'in'): ReadonlyMap<string, Check> =>
    governing(judge(measurements, { ...sheet, column }, limits));
  const inches = governingIn('in');
  return [...governingIn('mm')].flatMap(([asked, mm]) => {
    const other = inches.get(asked);
    return other !== undefined && other.call !== mm.call ? [{ mm, in: other }] : [];
  });
}

/** Of the document's rows for one measurement and sense, the one that the call rests on. */
function governing(checks: readonly Check[]): ReadonlyMap<string, Check> {
  const found = new Map<string, Check>();
  for (const check of checks) {
    // the sheet has no columns to disagree
    if (check.limit === null || check.source.status === 'sheet') continue;
    const asked = `${check.measurement} ${check.sense}`;
    const before = found.get(asked);
    if (before === undefined || isStricter(check, before)) found.set(asked, check);
  }
  return found;
}

const strictness: readonly Call[] = ['accept', 'refer', 'reject'];

/** The worse call first, then the less room. */
function isStricter(check: Check, than: Check): boolean {
  const worse = strictness.indexOf(check.call) - strictness.indexOf(than.call);
  return worse > 0 || (worse === 0 && (check.margin ?? 0) < (than.margin ?? 0));
}
