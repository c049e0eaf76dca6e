import type { Joint } from '../../joint/index.ts';
import type { Check } from '../../limits/index.ts';
import { isCompared } from '../distance.ts';
import { faultOn } from '../quantity.ts';
import type { Fault } from '../skill.ts';

/**
 * What may be answered to "what is wrong", in an order that says nothing: every fault that the sheet
 * assesses on such a joint, whatever its truth, so that the list can't give the answer away.
 */
export const choicesFor = (joint: Joint, either: readonly Check[]): readonly Fault[] =>
  [...new Set(either.filter(isCompared).map((check) => faultOn(joint, check)))].sort();
