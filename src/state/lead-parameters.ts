import type { Joint, ParameterRange } from '../joint/index.ts';

/** What stands first on the bench, most telling first; the first four that the joint has are shown. */
const leads: Readonly<Record<Joint['kind'], Readonly<Record<Joint['stage'], readonly string[]>>>> =
  {
    fillet: {
      welded: ['leg1', 'convexity', 'rootGap', 'undercut2Depth', 'leg2'],
      fitUp: ['dihedralAngle', 'rootGap', 't1', 't2'],
    },
    butt: {
      welded: ['capHeight', 'rootHeight', 'offset', 'undercut2Depth', 'capPast1'],
      fitUp: ['bevelAngle1', 'rootOpening', 'rootFace1', 'offset', 't1'],
    },
  };

/** The four parameters that stand first for this joint. */
export function leadParameters(
  joint: Joint,
  parameters: readonly ParameterRange[],
): readonly ParameterRange[] {
  return leads[joint.kind][joint.stage]
    .map((field) => parameters.find((parameter) => parameter.field === field))
    .filter((parameter) => parameter !== undefined)
    .slice(0, 4);
}
