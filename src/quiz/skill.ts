import type { Stage } from '../joint/index.ts';
import type { Check } from '../limits/index.ts';

/**
 * What is measured, whichever toe, plate or datum it is measured at: `undercut1` and `undercut2`
 * are one quantity to an eye.
 */
export type Quantity = string;

/** A quantity past a limit of one sense: `leg.min` is a leg too short. */
export type Fault = `${Quantity}.${Check['sense']}`;

/**
 * What is practised: a quantity of one family of joints against one sense of limit. A limit on both
 * sides is two skills.
 */
export interface Skill {
  readonly id: SkillId;
  readonly kind: 'fillet' | 'butt';
  readonly stage: Stage;
  readonly quantity: Quantity;
  readonly sense: Check['sense'];
}

/** `fillet.welded.undercut.max` */
export type SkillId = `${Skill['kind']}.${Stage}.${Quantity}.${Check['sense']}`;
