import type { MeasurementId, Measurements } from '../measure/index.ts';
import { assess } from './assess.ts';
import type { JobSheet } from './job-sheet.ts';
import { judge } from './judge.ts';
import type { Check } from './judging.ts';
import type { CompiledLimitSet } from './limit-set.ts';

/**
 * Imperfections that a document may forbid outside its table of figures, and what a row on them is
 * called: where a set has none, an accept would say more of the weld than was looked at.
 */
const FAULTS: readonly (readonly [MeasurementId, string])[] = [
  ['undercut1', 'undercut'],
  ['undercut2', 'undercut'],
  ['rootUndercut1', 'undercut_second'],
  ['rootUndercut2', 'undercut_second'],
  ['overlap1', 'overlap'],
  ['overlap2', 'overlap'],
  ['incompletePenetration', 'incomplete_penetration'],
];

/**
 * Every requirement put to what was measured, as `judge` does, and a row that is not assessed for each
 * imperfection that is there and that the set says nothing of.
 */
export function judgeAll(
  measurements: Measurements,
  sheet: JobSheet,
  limits: CompiledLimitSet,
): readonly Check[] {
  const checks = judge(measurements, sheet, limits);
  const unjudged: Check[] = [];
  for (const [subject, name] of FAULTS) {
    const value = measurements.values[subject]?.value ?? 0;
    if (value <= 0 || checks.some(({ measurement }) => measurement === subject)) continue;
    const { document = '', edition = '' } = limits.criteria[0] ?? {};
    const requirement = {
      id: `unjudged:${subject}`,
      subject,
      name: { key: `limits_name_${name}`, values: { side: subject.slice(-1) } },
      sense: 'max',
      documentUnit: 'mm',
      limit: { key: 'limits_reason_no_row' },
      shortFrom: null,
      lengthAllowed: null,
      lastPlace: 1,
      // the document may have a word on it that the set here hasn't
      source: { document, edition, clause: '', status: 'memory' },
      working: () => null,
    } as const;
    unjudged.push(assess(requirement, { value, remarks: [], refer: false }, sheet));
  }
  return unjudged.length === 0 ? checks : [...checks, ...unjudged];
}
