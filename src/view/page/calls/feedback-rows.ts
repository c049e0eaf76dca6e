import type { Check } from '../../../limits/index.ts';
import { faultOn, type Answer, type Question } from '../../../quiz/index.ts';
import { rejectsFirst } from '../../../state/rejects-first.ts';

/** As many as are read at a glance, beside the drawing. */
const MOST = 5;

/** The decisive check, what was named instead, then others that an eye may have looked at, rejects first. */
export function feedbackRows(
  { decisive, joint, checks }: Question,
  named: Answer['fault'],
): readonly Check[] {
  const others = checks.filter(
    ({ id, limit, measured }) => id !== decisive.id && limit !== null && measured !== null,
  );
  const isNamed = (check: Check): boolean => faultOn(joint, check) === named;
  return [
    decisive,
    ...others.filter(isNamed),
    ...rejectsFirst(others.filter((check) => !isNamed(check))),
  ].slice(0, MOST);
}
