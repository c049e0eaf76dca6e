import { buildButt } from './butt.ts';
import { checkRanges } from './check-ranges.ts';
import { buildFillet } from './fillet.ts';
import type { Joint } from './joint.ts';
import type { Section } from './section.ts';

/** The exact shape of a joint; a joint that cannot exist is refused with a JointError. */
export function build(joint: Joint): Section {
  checkRanges(joint);
  return joint.kind === 'fillet' ? buildFillet(joint) : buildButt(joint);
}
