import type { CatalogueRow, ParameterField } from './entry.ts';
import { derivedHere, fromMemory, iso5817 } from './entry.ts';

const buttWeld = {
  unit: 'mm',
  kinds: ['butt'],
  stages: ['welded'],
} as const;

const plates: readonly ParameterField[] = ['offset', 't1', 't2', 'angularMisalignment'];
const cap: readonly ParameterField[] = ['capHeight', 'crownShift', 'capDip', ...plates];
const root: readonly ParameterField[] = ['rootHeight', ...plates];
const groove: readonly ParameterField[] = [
  'capHeight',
  'crownShift',
  'capDrop1',
  'capDrop2',
  'capDip',
  'capPast1',
  'capPast2',
];

const faceHeight = {
  ...buttWeld,
  source: `height above each surface, ${iso5817('1.9')}; which surface, ASME B31.3 Table 341.3.2 note (8), public extract`,
  status: 'seen',
  worse: 'more',
  drivenBy: cap,
  iso6520: '502',
} as const;

const rootHeight = {
  ...buttWeld,
  source: `${iso5817('1.11')}; how it is measured ${fromMemory}`,
  status: 'memory',
  worse: 'more',
  drivenBy: root,
  iso6520: '504',
} as const;

const shown = {
  ...buttWeld,
  source: derivedHere,
  status: 'derived',
  worse: 'more',
  judged: false,
} as const;

const shrinkageGroove = {
  ...buttWeld,
  source: `ISO 6520-1 term, ${fromMemory}`,
  status: 'memory',
  worse: 'more',
  judged: true,
  iso6520: '5013',
} as const;

/** Cap and root of a butt weld. */
export const buttRows: readonly CatalogueRow[] = [
  { ...faceHeight, id: 'faceReinforcement.toPlate1', judged: false },
  { ...faceHeight, id: 'faceReinforcement.toPlate2', judged: false },
  { ...faceHeight, id: 'faceReinforcement.higher', judged: true },
  { ...faceHeight, id: 'faceReinforcement.lower', judged: true },
  {
    ...faceHeight,
    id: 'faceReinforcement.toes',
    source: derivedHere,
    status: 'derived',
    judged: true,
    drivenBy: ['capHeight'],
  },
  { ...rootHeight, id: 'rootReinforcement.toPlate1', judged: false },
  { ...rootHeight, id: 'rootReinforcement.toPlate2', judged: false },
  { ...rootHeight, id: 'rootReinforcement.higher', judged: true },
  { ...rootHeight, id: 'rootReinforcement.lower', judged: true },
  {
    ...rootHeight,
    id: 'rootReinforcement.toes',
    source: derivedHere,
    status: 'derived',
    judged: true,
    drivenBy: ['rootHeight'],
  },
  {
    ...buttWeld,
    id: 'rootWidth',
    source: `${iso5817('1.11')}; how it is measured ${fromMemory}`,
    status: 'memory',
    worse: 'neither',
    judged: false,
    drivenBy: ['rootPast1', 'rootPast2', 'rootOpening', 'rootBevelAngle1', 'rootBevelAngle2'],
  },
  {
    ...buttWeld,
    id: 'underfill',
    source: `${iso5817('1.14')}; the datum is a reading decided here`,
    status: 'memory',
    worse: 'more',
    judged: true,
    drivenBy: groove,
    iso6520: '511',
  },
  { ...shown, id: 'underfillHigh', drivenBy: [...groove, ...plates] },
  { ...shown, id: 'capDip', drivenBy: ['capDip', 'capHeight'] },
  {
    ...buttWeld,
    id: 'rootConcavity',
    source: `${iso5817('1.17')}; the datum is a reading decided here`,
    status: 'memory',
    worse: 'more',
    judged: true,
    drivenBy: ['rootHeight', 'rootPast1', 'rootPast2'],
    iso6520: '515',
  },
  {
    ...buttWeld,
    id: 'incompletePenetration',
    source: `${iso5817('1.6')}; how it is measured ${fromMemory}`,
    status: 'memory',
    worse: 'more',
    judged: true,
    drivenBy: ['incompletePenetration'],
    iso6520: '402/4021',
  },
  {
    ...shown,
    id: 'jointThickness',
    worse: 'less',
    judged: true,
    drivenBy: ['t1', 't2', 'capHeight', 'rootHeight', 'offset', 'incompletePenetration'],
  },
  {
    ...shown,
    id: 'capPastGroove1',
    signed: true,
    judged: true,
    drivenBy: ['capPast1', 'capDrop1'],
  },
  {
    ...shown,
    id: 'capPastGroove2',
    signed: true,
    judged: true,
    drivenBy: ['capPast2', 'capDrop2'],
  },
  { ...shrinkageGroove, id: 'rootUndercut1', drivenBy: ['rootUndercut1Depth'] },
  { ...shrinkageGroove, id: 'rootUndercut2', drivenBy: ['rootUndercut2Depth'] },
];
