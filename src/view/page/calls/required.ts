import type { Check } from '../../../limits/index.ts';
import { faultOn, type Question } from '../../../quiz/index.ts';
import type { Message } from '../../../units/index.ts';
import type { Reading } from '../../text.ts';
import { checkReading } from '../check-reading.ts';
import { quantityName } from './fault-name.ts';

/** A line of the sheet that a question is judged by. */
export interface Required {
  readonly name: Message;
  /** 7.0 min, 0.50 max */
  readonly limit: string;
}

/**
 * What the sheet requires of a question's joint, a line for each quantity and sense, all of them in
 * the sheet's own order: neither the decisive one nor what was measured leaves a trace.
 */
export function requiredOf(question: Question, reading: Reading): readonly Required[] {
  const { checks, decisive, joint } = question;
  const decides = faultOn(joint, decisive);
  const seen = new Set<string>();
  return checks.flatMap((check) => {
    const fault = faultOn(joint, check);
    if (check.limit === null || seen.has(fault)) return [];
    // two plates may have two limits: the decisive one's is told
    const told = fault === decides ? decisive : check;
    seen.add(fault);
    const [quantity = ''] = fault.split('.');
    return [
      { name: quantityName(quantity), limit: checkReading(unmeasured(told), reading).required },
    ];
  });
}

/** The check before anything is measured: a figure is written finer where that tells two apart. */
const unmeasured = ({ limit, sense, unit }: Check): Check =>
  ({ limit, sense, unit, measured: null, call: 'notAssessed' }) as Check;
