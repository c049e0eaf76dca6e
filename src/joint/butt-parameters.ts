import type { ButtJoint } from './joint.ts';
import { bevelsBothPlates, isTwoSided } from './prepared-sides.ts';
import { rows, type Choice, type Parameter } from './parameter.ts';

const bevelled1 = ({ preparation }: ButtJoint): boolean => preparation !== 'square';
const bothSidesOfPlate2 = ({ preparation }: ButtJoint): boolean => preparation === 'doubleV';
const hollow = ({ preparation }: ButtJoint): boolean =>
  preparation === 'singleU' || preparation === 'singleJ';
const backed = ({ backing }: ButtJoint): boolean => backing === 'strip';

/** Every numeric field of a butt joint, in sheet order. */
export const buttParameters: readonly Parameter<ButtJoint>[] = [
  ...rows<ButtJoint>(
    'joint',
    { field: 't1', unit: 'mm', min: 2, max: 40, step: 0.5, start: 12 },
    { field: 't2', unit: 'mm', min: 2, max: 40, step: 0.5, start: 12 },
    {
      field: 'bevelAngle1',
      unit: 'deg',
      min: 0,
      max: 60,
      step: 1,
      start: 30,
      appliesTo: bevelled1,
    },
    {
      field: 'bevelAngle2',
      unit: 'deg',
      min: 0,
      max: 60,
      step: 1,
      start: 30,
      appliesTo: bevelsBothPlates,
    },
    {
      field: 'rootBevelAngle1',
      unit: 'deg',
      min: 0,
      max: 60,
      step: 1,
      start: 30,
      appliesTo: isTwoSided,
    },
    {
      field: 'rootBevelAngle2',
      unit: 'deg',
      min: 0,
      max: 60,
      step: 1,
      start: 30,
      appliesTo: bothSidesOfPlate2,
    },
    {
      field: 'rootFace1',
      unit: 'mm',
      min: 0,
      max: 20,
      step: 0.1,
      start: 1.5,
      appliesTo: bevelled1,
    },
    {
      field: 'rootFace2',
      unit: 'mm',
      min: 0,
      max: 20,
      step: 0.1,
      start: 1.5,
      appliesTo: bevelsBothPlates,
    },
    {
      field: 'rootSideShare',
      unit: 'ratio',
      min: 0.1,
      max: 0.9,
      step: 0.05,
      start: 0.5,
      appliesTo: isTwoSided,
    },
    { field: 'rootRadius', unit: 'mm', min: 2, max: 12, step: 0.5, start: 4, appliesTo: hollow },
    {
      field: 'backingThickness',
      unit: 'mm',
      min: 3,
      max: 12,
      step: 0.5,
      start: 6,
      appliesTo: backed,
    },
    { field: 'backingWidth', unit: 'mm', min: 10, max: 60, step: 1, start: 30, appliesTo: backed },
  ),
  ...rows<ButtJoint>(
    'fitUp',
    { field: 'rootOpening', unit: 'mm', min: 0, max: 12, step: 0.1, start: 2 },
    { field: 'offset', unit: 'mm', min: -10, max: 10, step: 0.1, start: 0 },
    { field: 'angularMisalignment', unit: 'deg', min: -10, max: 10, step: 0.5, start: 0 },
  ),
  ...rows<ButtJoint>(
    'weld',
    { field: 'capHeight', unit: 'mm', min: -6, max: 8, step: 0.1, start: 1.5 },
    { field: 'crownShift', unit: 'ratio', min: -0.6, max: 0.6, step: 0.05, start: 0 },
    { field: 'capDip', unit: 'mm', min: 0, max: 4, step: 0.1, start: 0 },
    { field: 'capPast1', unit: 'mm', min: 0, max: 8, step: 0.1, start: 1.5 },
    { field: 'capPast2', unit: 'mm', min: 0, max: 8, step: 0.1, start: 1.5 },
    { field: 'rootHeight', unit: 'mm', min: -4, max: 6, step: 0.1, start: 1 },
    { field: 'rootPast1', unit: 'mm', min: 0, max: 6, step: 0.1, start: 1 },
    { field: 'rootPast2', unit: 'mm', min: 0, max: 6, step: 0.1, start: 1 },
    { field: 'fusionDepth', unit: 'mm', min: 0.3, max: 4, step: 0.1, start: 1 },
  ),
  ...rows<ButtJoint>(
    'discontinuities',
    { field: 'capDrop1', unit: 'mm', min: 0, max: 6, step: 0.1, start: 0 },
    { field: 'capDrop2', unit: 'mm', min: 0, max: 6, step: 0.1, start: 0 },
    { field: 'incompletePenetration', unit: 'mm', min: 0, max: 20, step: 0.1, start: 0 },
    { field: 'undercut1Depth', unit: 'mm', min: 0, max: 4, step: 0.05, start: 0 },
    { field: 'undercut1Width', unit: 'mm', min: 0.5, max: 8, step: 0.1, start: 2 },
    { field: 'undercut2Depth', unit: 'mm', min: 0, max: 4, step: 0.05, start: 0 },
    { field: 'undercut2Width', unit: 'mm', min: 0.5, max: 8, step: 0.1, start: 2 },
    { field: 'overlap1', unit: 'mm', min: 0, max: 6, step: 0.1, start: 0 },
    { field: 'overlap2', unit: 'mm', min: 0, max: 6, step: 0.1, start: 0 },
    { field: 'rootUndercut1Depth', unit: 'mm', min: 0, max: 4, step: 0.05, start: 0 },
    { field: 'rootUndercut1Width', unit: 'mm', min: 0.5, max: 8, step: 0.1, start: 2 },
    { field: 'rootUndercut2Depth', unit: 'mm', min: 0, max: 4, step: 0.05, start: 0 },
    { field: 'rootUndercut2Width', unit: 'mm', min: 0.5, max: 8, step: 0.1, start: 2 },
  ),
];

/** Every field of a butt joint that takes one of a few values. */
export const buttChoices: readonly Choice[] = [
  { field: 'version', values: [1] },
  { field: 'kind', values: ['butt'] },
  {
    field: 'preparation',
    values: ['square', 'singleV', 'doubleV', 'singleBevel', 'doubleBevel', 'singleU', 'singleJ'],
    start: 'singleV',
  },
  { field: 'product', values: ['plate', 'pipe'] },
  { field: 'stage', values: ['welded', 'fitUp'] },
  { field: 'backing', values: ['none', 'strip'] },
  { field: 'undercut1Shape', values: ['rounded', 'sharp'] },
  { field: 'undercut2Shape', values: ['rounded', 'sharp'] },
  { field: 'rootUndercut1Shape', values: ['rounded', 'sharp'] },
  { field: 'rootUndercut2Shape', values: ['rounded', 'sharp'] },
];
