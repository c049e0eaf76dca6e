import { buildFillet, checkRanges, JointError, type Joint, type Section } from '../joint/index.ts';
import { measureFillet, type Measurements } from '../measure/index.ts';
import type { Message } from '../units/index.ts';

type ButtKind = typeof import('./butt-kind.ts');

/** What is special to butt joints, once it has been fetched. */
let butt: ButtKind | null = null;

/** Fetches what a kind of joint needs; to be waited for before the first joint of that kind is built. */
export async function fetchKind(kind: Joint['kind']): Promise<void> {
  if (kind === 'butt') butt ??= await import('./butt-kind.ts');
}

function fetched(): ButtKind {
  if (butt === null) throw new Error('a butt joint was to be built before its kind was fetched');
  return butt;
}

/** Joints are replaced, never changed, so a section can be kept as long as its joint is. */
const kept = new WeakMap<Joint, Section>();

/** The section of a joint, built once. Throws `JointError` as `build` does. */
export function sectionOf(joint: Joint): Section {
  const before = kept.get(joint);
  if (before !== undefined) return before;
  checkRanges(joint);
  const section = joint.kind === 'fillet' ? buildFillet(joint) : fetched().buildButt(joint);
  kept.set(joint, section);
  return section;
}

/** Why a joint cannot be built; null when it can. */
export function refusal(joint: Joint): Message | null {
  try {
    sectionOf(joint);
    return null;
  } catch (error) {
    if (error instanceof JointError) return error.reason;
    throw error;
  }
}

/** Everything measured on a section. */
export const measurementsOf = (section: Section): Measurements =>
  section.kind === 'fillet' ? measureFillet(section) : fetched().measureButt(section);
