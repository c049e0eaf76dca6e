import { checkRanges } from './check-ranges.ts';
import { buildFillet } from './fillet.ts';
import type { Joint } from './joint.ts';
import { refuse } from './refuse.ts';
import type { Section } from './section.ts';

/** The exact shape of a joint; a joint that cannot exist is refused with a JointError. */
export function build(joint: Joint): Section {
  checkRanges(joint);
  return joint.kind === 'fillet' ? buildFillet(joint) : refuse('kind', null, 'joint_error_kind');
}
