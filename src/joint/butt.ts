import { buttParameters } from './butt-parameters.ts';
import { fitUp } from './butt/fit-up.ts';
import { both } from './butt/pair.ts';
import { setUp } from './butt/set-up.ts';
import { welded } from './butt/welded.ts';
import type { ButtJoint } from './joint.ts';
import type { Section } from './section.ts';

/** Shorter lengths and smaller angles are nothing: too small to draw an outline round, mm or degrees. */
const NOTHING = 1e-6;

/** The exact section of a butt joint, plate or pipe wall, before or after welding. */
export function buildButt(given: ButtJoint): Section {
  const joint = withoutTraces(given);
  const set = setUp(joint);
  return {
    kind: 'butt',
    stage: joint.stage,
    form: joint.preparation,
    product: joint.product,
    plateSurfaces: both((i) => ({ face: set.plates[i].face, opposite: set.plates[i].root })),
    filletRoot: null,
    ...(joint.stage === 'fitUp' ? fitUp(joint, set) : welded(joint, set)),
  };
}

/** The joint with every trace of a length or angle taken as 0, so that no outline has a sliver. */
function withoutTraces(joint: ButtJoint): ButtJoint {
  let clean = joint;
  for (const { field } of buttParameters) {
    const value = joint[field];
    // most often none is
    if (value !== 0 && Math.abs(value) < NOTHING) clean = { ...clean, [field]: 0 };
  }
  return clean;
}
