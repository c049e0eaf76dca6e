import { isCompared } from '../distance.ts';
import { faultOn } from '../quantity.ts';
import type { Fault } from '../skill.ts';
import type { Placed } from './pair.ts';

/**
 * What may be answered to "what is wrong", in an order that says nothing: every fault that the sheet
 * assesses on such a joint, the same list whatever the truth, so that it can't give the answer away.
 */
export const choicesFor = ({ joint, checks }: Pick<Placed, 'joint' | 'checks'>): readonly Fault[] =>
  [...new Set(checks.filter(isCompared).map((check) => faultOn(joint, check)))].sort();
