import type { FilletJoint } from './joint.ts';
import { rows, type Choice, type Parameter } from './parameter.ts';

const lap = (joint: FilletJoint): boolean => joint.arrangement === 'lap';
const corner = (joint: FilletJoint): boolean => joint.arrangement === 'corner';

/** Every numeric field of a fillet joint, in sheet order. */
export const filletParameters: readonly Parameter<FilletJoint>[] = [
  ...rows<FilletJoint>(
    'joint',
    { field: 't1', unit: 'mm', min: 3, max: 40, step: 0.5, start: 12 },
    { field: 't2', unit: 'mm', min: 3, max: 40, step: 0.5, start: 12 },
    { field: 'dihedralAngle', unit: 'deg', min: 60, max: 135, step: 1, start: 90 },
    { field: 'cornerOverlap', unit: 'mm', min: 0, max: 40, step: 0.5, start: 2, appliesTo: corner },
  ),
  ...rows<FilletJoint>('fitUp', {
    field: 'rootGap',
    unit: 'mm',
    min: 0,
    max: 6,
    step: 0.1,
    start: 0,
  }),
  ...rows<FilletJoint>(
    'weld',
    { field: 'leg1', unit: 'mm', min: 2, max: 30, step: 0.1, start: 8 },
    { field: 'leg2', unit: 'mm', min: 2, max: 30, step: 0.1, start: 8 },
    { field: 'convexity', unit: 'mm', min: -10, max: 12, step: 0.1, start: 0 },
    { field: 'crownShift', unit: 'ratio', min: -0.6, max: 0.6, step: 0.05, start: 0 },
    { field: 'reverseCurve', unit: 'mm', min: -4, max: 4, step: 0.1, start: 0 },
    { field: 'rootPenetration', unit: 'mm', min: 0, max: 5, step: 0.1, start: 0 },
    { field: 'edgeMelt', unit: 'ratio', min: 0, max: 1, step: 0.05, start: 0, appliesTo: lap },
    { field: 'fusionDepth', unit: 'mm', min: 0.3, max: 4, step: 0.1, start: 1 },
  ),
  ...rows<FilletJoint>(
    'discontinuities',
    { field: 'undercut1Depth', unit: 'mm', min: 0, max: 4, step: 0.05, start: 0 },
    { field: 'undercut1Width', unit: 'mm', min: 0.5, max: 8, step: 0.1, start: 2 },
    { field: 'undercut2Depth', unit: 'mm', min: 0, max: 4, step: 0.05, start: 0 },
    { field: 'undercut2Width', unit: 'mm', min: 0.5, max: 8, step: 0.1, start: 2 },
    { field: 'overlap1', unit: 'mm', min: 0, max: 6, step: 0.1, start: 0 },
    { field: 'overlap2', unit: 'mm', min: 0, max: 6, step: 0.1, start: 0 },
  ),
];

/** Every field of a fillet joint that takes one of a few values. */
export const filletChoices: readonly Choice[] = [
  { field: 'version', values: [1] },
  { field: 'kind', values: ['fillet'] },
  { field: 'arrangement', values: ['tee', 'lap', 'corner'] },
  { field: 'endCut', values: ['fitted', 'square'] },
  { field: 'stage', values: ['welded', 'fitUp'] },
  { field: 'undercut1Shape', values: ['rounded', 'sharp'] },
  { field: 'undercut2Shape', values: ['rounded', 'sharp'] },
];
