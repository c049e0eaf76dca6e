import { buttChoices, buttParameters } from './butt-parameters.ts';
import { filletChoices, filletParameters } from './fillet-parameters.ts';
import type { ButtJoint, FilletJoint, Joint } from './joint.ts';
import type { Choice, Parameter, ParameterRange } from './parameter.ts';

/** Bounds of a bump of spatter, and how many one joint may carry. */
export const spatterBounds = {
  place: { min: 0, max: 50, unit: 'mm' },
  height: { min: 0.1, max: 4, unit: 'mm' },
  most: 20,
} as const;

/** Every numeric parameter of a kind, in sheet order, whether or not it means something for a form. */
export function parametersFor(
  kind: Joint['kind'],
): readonly (ParameterRange & { readonly start: number })[] {
  return kind === 'fillet' ? filletParameters : buttParameters;
}

/** Every choice of a kind, the version and kind included as choices of one. */
export function choicesOfKind(kind: Joint['kind']): readonly Choice[] {
  return kind === 'fillet' ? filletChoices : buttChoices;
}

/** The numeric parameters that mean something for this joint (arrangement, preparation, stage), in sheet order. */
export function parametersOf(joint: Joint): readonly ParameterRange[] {
  return joint.kind === 'fillet'
    ? filletParameters.filter(meaningfulFor<FilletJoint>(joint))
    : buttParameters.filter(meaningfulFor<ButtJoint>(joint));
}

function meaningfulFor<J extends Joint>(joint: J): (parameter: Parameter<J>) => boolean {
  return ({ group, appliesTo }) =>
    (joint.stage === 'welded' || group === 'joint' || group === 'fitUp') &&
    (appliesTo === undefined || appliesTo(joint));
}
