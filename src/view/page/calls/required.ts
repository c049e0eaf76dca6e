import type { Check } from '../../../limits/index.ts';
import { faultOf, quantityOf, type Question } from '../../../quiz/index.ts';
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

/** Lines that fit over a drawing and can be kept in mind. */
const MOST = 7;

/**
 * What the sheet requires of a question's joint, a line for each quantity and sense: its own order,
 * the decisive one among them whatever its place, never pointed out.
 */
export function requiredOf(question: Question, reading: Reading): readonly Required[] {
  const { checks, decisive, choices } = question;
  const decides = faultOf(decisive);
  const seen = new Set<string>();
  const lines: { readonly check: Check; readonly line: Required }[] = [];
  for (const check of checks) {
    const fault = faultOf(check);
    if (check.limit === null || !choices.includes(fault) || seen.has(fault)) continue;
    // two plates may have two limits: the decisive one's is told
    if (fault === decides && check.id !== decisive.id) continue;
    seen.add(fault);
    const name = quantityName(quantityOf(check.measurement));
    lines.push({ check, line: { name, limit: checkReading(check, reading).required } });
  }
  const at = lines.findIndex(({ check }) => check.id === decisive.id);
  const start = Math.max(0, Math.min(at - MOST + 1, lines.length - MOST));
  return lines.slice(start, start + MOST).map(({ line }) => line);
}
