import { measurementCatalogue, measurementIds } from '../../measure/index.ts';
import { isCompared } from '../distance.ts';
import { faultOf, isOneWith, lookAlikesOf, quantityOf } from '../quantity.ts';
import type { Fault, Skill } from '../skill.ts';
import type { Placed } from './pair.ts';

/** Quantities that `judge` works out from a measurement and the sheet. */
const workedOut: Readonly<Record<string, Skill['kind']>> = {
  misalignment: 'butt',
  angleDeparture: 'fillet',
};

/**
 * What may be answered to "what is wrong", in an order that says nothing: the faults that the sheet
 * assesses on such a joint, and what an eye takes the fault in question for. What is right by the
 * same cause as the fault isn't offered beside it.
 */
export function choicesFor({ checks, decisive }: Placed, skill: Skill): readonly Fault[] {
  const asked = faultOf(decisive);
  const assessed = checks.filter(isCompared).map(faultOf);
  const alike = lookAlikesOf(asked).filter((fault) => canBe(fault, skill));
  const others = [...assessed, ...alike].filter((fault) => !isOneWith(asked, fault));
  return [...new Set([asked, ...others])].sort();
}

/** Whether a joint of this kind and stage can have such a fault at all. */
function canBe(fault: Fault, { kind, stage }: Skill): boolean {
  const quantity = fault.replace(/\..*$/u, '');
  const own = workedOut[quantity];
  if (own !== undefined) return own === kind;
  return measurementIds.some((id) => {
    const { kinds, stages } = measurementCatalogue[id];
    return quantityOf(id) === quantity && kinds.includes(kind) && stages.includes(stage);
  });
}
