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
 * sides is two skills; what the sheet leaves open about it, so that Refer is among the answers, is
 * another.
 */
export interface Skill {
  readonly id: SkillId;
  readonly kind: 'fillet' | 'butt';
  readonly stage: Stage;
  readonly quantity: Quantity;
  readonly sense: Check['sense'];
  /** whether it is asked on what the sheet leaves open */
  readonly refers: boolean;
}

/** `fillet.welded.undercut.max`, `fillet.welded.undercut.max.refer` */
export type SkillId = `${Skill['kind']}.${Stage}.${Fault}${'' | '.refer'}`;
