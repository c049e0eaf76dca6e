import type { Answer, Fault, Quantity, SkillId } from '../../../quiz/index.ts';
import { skillOf } from '../../../quiz/index.ts';
import type { MeasurementId } from '../../../measure/index.ts';
import type { Message } from '../../../units/index.ts';
import { known } from '../../text.ts';
import { measurementName } from '../measurement-name.ts';

/** What a quantity is called, whichever toe or plate it is measured at. */
export function quantityName(quantity: Quantity): Message {
  const own = `calls_quantity_${quantity.toLowerCase()}`;
  return known(own) ? { key: own } : measurementName(quantity as MeasurementId);
}

/** What a fault is called: undersize, undercut, a groove angle too small. */
export function faultName(fault: Fault): Message {
  const [quantity = '', sense = 'max'] = fault.split('.');
  const own = `calls_fault_${quantity.toLowerCase()}_${sense}`;
  return known(own)
    ? { key: own }
    : { key: `calls_fault_other_${sense}`, values: { name: quantityName(quantity) } };
}

/** What was answered to "what is wrong". */
export const answeredName = (fault: NonNullable<Answer['fault']>): Message =>
  fault === 'somethingElse' || fault === 'notSure'
    ? { key: `calls_fault_${fault.toLowerCase()}` }
    : faultName(fault);

/**
 * What a skill is called wherever it stands: the joint it belongs to and its stage, the quantity and
 * the sense of its limit. An undercut of a fillet and of a butt weld are two skills.
 */
export function skillName(id: SkillId): Message {
  const skill = skillOf(id);
  if (skill === null) return { key: 'calls_error_no_such_skill' };
  return {
    key: skill.refers ? 'calls_skill_open' : 'calls_skill',
    values: {
      joint: { key: `calls_skill_${skill.kind}_${skill.stage.toLowerCase()}` },
      name: quantityName(skill.quantity),
      sense: { key: `calls_sense_${skill.sense}` },
    },
  };
}
