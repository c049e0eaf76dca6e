import type { Check, CompiledLimitSet } from '../../../limits/index.ts';
import { faultOn, type Question } from '../../../quiz/index.ts';
import type { Message } from '../../../units/index.ts';
import type { Reading } from '../../text.ts';
import { checkReading } from '../check-reading.ts';
import { quantityName } from './fault-name.ts';
import { ruleOf } from './rule.ts';

/** A line of the sheet that a question is judged by. */
export interface Required {
  readonly name: Message;
  /** 7.0 min, 0.50 max; of two plates with a limit each both; a rule where the limit follows the weld */
  readonly limit: string;
}

/**
 * What the sheet requires of a question's joint, a line for each quantity and sense, all of them in
 * the sheet's own order, as they would be whatever the joint came to: neither the decisive one nor
 * what was measured leaves a trace.
 */
export function requiredOf(
  { either, joint, sheet }: Question,
  limits: CompiledLimitSet,
  reading: Reading,
): readonly Required[] {
  const lines = new Map<string, Set<string>>();
  for (const check of either) {
    if (check.limit === null) continue;
    const fault = faultOn(joint, check);
    const told = ruleOf(check, sheet, limits, reading) ?? figures(unmeasured(check), reading);
    lines.set(fault, (lines.get(fault) ?? new Set()).add(told));
  }
  return [...lines].map(([fault, told]) => {
    const [quantity = ''] = fault.split('.');
    return { name: quantityName(quantity), limit: [...told].sort().join(' / ') };
  });
}

/** The check before anything is measured: a figure is written finer where that tells two apart. */
const unmeasured = (check: Check): Check => ({ ...check, measured: null, call: 'notAssessed' });

/** 8.0 min (7.0 short) */
function figures(check: Check, reading: Reading): string {
  const { required, short } = checkReading(check, reading);
  return short === undefined ? required : `${required} (${short})`;
}
