import type { CatalogueRow, ParameterField } from './entry.ts';
import { derivedHere, fromMemory, grooveShape, iso5817 } from './entry.ts';

const eitherWeld = {
  unit: 'mm',
  kinds: ['fillet', 'butt'],
  stages: ['welded'],
} as const;

const undercut = {
  ...eitherWeld,
  source: `${iso5817('1.7')}; how it is measured ${fromMemory}`,
  status: 'memory',
  worse: 'more',
  judged: true,
  iso6520: '5011/5012',
} as const;

const width = {
  ...eitherWeld,
  source: derivedHere,
  status: 'derived',
  worse: 'neither',
  judged: false,
} as const;

const overlap = {
  ...eitherWeld,
  source: `${iso5817('1.13')}; how it is measured ${fromMemory}`,
  status: 'memory',
  worse: 'more',
  judged: true,
  iso6520: '506',
} as const;

const toeAngle = {
  ...eitherWeld,
  unit: 'deg',
  source: `${iso5817('1.12')}; how it is measured ${fromMemory}`,
  status: 'memory',
  worse: 'less',
  iso6520: '505',
} as const;

const eitherToe: readonly ParameterField[] = [
  'leg1',
  'leg2',
  'dihedralAngle',
  'convexity',
  'reverseCurve',
  'crownShift',
  'capHeight',
  'capPast1',
  'capPast2',
  'offset',
];
const toes: readonly ParameterField[] = [
  'leg1',
  'leg2',
  'dihedralAngle',
  'capPast1',
  'capPast2',
  ...grooveShape,
];
const metal: readonly ParameterField[] = [
  ...toes,
  'convexity',
  'rootGap',
  'rootBevelAngle1',
  'rootBevelAngle2',
  'offset',
  'capHeight',
  'rootHeight',
];

/** What every finished weld has: widths, toes, area. */
export const weldRows: readonly CatalogueRow[] = [
  { ...width, id: 'chordLength', drivenBy: toes },
  {
    ...width,
    id: 'faceWidth',
    source: `AWS A3.0 and ISO 17659 terms, ${fromMemory}`,
    status: 'memory',
    drivenBy: [...toes, 'overlap1', 'overlap2', 'convexity'],
  },
  { ...undercut, id: 'undercut1', drivenBy: ['undercut1Depth'] },
  { ...undercut, id: 'undercut2', drivenBy: ['undercut2Depth'] },
  { ...width, id: 'undercutWidth1', drivenBy: ['undercut1Width'] },
  { ...width, id: 'undercutWidth2', drivenBy: ['undercut2Width'] },
  { ...overlap, id: 'overlap1', drivenBy: ['overlap1', 'convexity', 'capHeight'] },
  { ...overlap, id: 'overlap2', drivenBy: ['overlap2', 'convexity', 'capHeight'] },
  { ...toeAngle, id: 'toeAngle1', judged: false, drivenBy: [...eitherToe, 'overlap1'] },
  { ...toeAngle, id: 'toeAngle2', judged: false, drivenBy: [...eitherToe, 'overlap2'] },
  {
    ...toeAngle,
    id: 'toeAngle',
    judged: true,
    drivenBy: [...eitherToe, 'overlap1', 'overlap2'],
  },
  { ...width, id: 'weldArea', unit: 'mm2', drivenBy: metal },
  { ...width, id: 'mass', unit: 'kg/m', stages: ['fitUp', 'welded'], drivenBy: metal },
];
