import { build, type Joint, type Section } from '../joint/index.ts';

/** Joints are replaced, never changed, so a section can be kept as long as its joint is. */
const kept = new WeakMap<Joint, Section>();

/** The section of a joint, built once. Throws `JointError` as `build` does. */
export function sectionOf(joint: Joint): Section {
  const before = kept.get(joint);
  if (before !== undefined) return before;
  const section = build(joint);
  kept.set(joint, section);
  return section;
}
