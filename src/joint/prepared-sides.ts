import type { ButtJoint } from './joint.ts';

/** Whether both sides of a plate are bevelled: the root side is then welded as a second cap. */
export const isTwoSided = ({ preparation }: Pick<ButtJoint, 'preparation'>): boolean =>
  preparation === 'doubleV' || preparation === 'doubleBevel';

/** Whether both plates are bevelled: a single or double bevel and a J leave plate 2 square. */
export const bevelsBothPlates = ({ preparation }: Pick<ButtJoint, 'preparation'>): boolean =>
  preparation === 'singleV' || preparation === 'doubleV' || preparation === 'singleU';
