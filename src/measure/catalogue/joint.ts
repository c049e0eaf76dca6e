import type { CatalogueRow } from './entry.ts';
import { derivedHere, fromMemory, grooveShape, iso5817 } from './entry.ts';

const everyStage = ['fitUp', 'welded'] as const;
const eitherKind = ['fillet', 'butt'] as const;

const thickness = { unit: 'mm', worse: 'neither', judged: false, status: 'memory' } as const;
const plateData = {
  ...thickness,
  source: fromMemory,
  kinds: eitherKind,
  stages: everyStage,
} as const;

const grooveData = {
  source: `AWS A3.0 and ISO 9692-1 terms, ${fromMemory}`,
  status: 'memory',
  worse: 'neither',
  kinds: ['butt'],
  stages: everyStage,
} as const;

const step = {
  source: derivedHere,
  status: 'derived',
  unit: 'mm',
  worse: 'more',
  signed: true,
  judged: false,
  kinds: ['butt'],
  stages: everyStage,
} as const;

/** Plates and preparation: what is there before any weld metal. */
export const jointRows: readonly CatalogueRow[] = [
  { ...plateData, id: 't1', drivenBy: ['t1'] },
  { ...plateData, id: 't2', drivenBy: ['t2'] },
  { ...plateData, id: 'tMin', drivenBy: ['t1', 't2'] },
  { ...plateData, id: 'tMax', drivenBy: ['t1', 't2'] },
  {
    id: 'dihedralAngle',
    source: derivedHere,
    status: 'derived',
    unit: 'deg',
    worse: 'neither',
    judged: false,
    drivenBy: ['dihedralAngle'],
    kinds: ['fillet'],
    stages: everyStage,
  },
  {
    id: 'rootGap',
    source: iso5817('617'),
    status: 'seen',
    unit: 'mm',
    worse: 'more',
    judged: true,
    drivenBy: ['rootGap', 'endCut', 't2', 'dihedralAngle', 'cornerOverlap'],
    kinds: ['fillet'],
    stages: everyStage,
    iso6520: '617',
  },
  {
    ...grooveData,
    id: 'bevelAngle1',
    unit: 'deg',
    judged: true,
    drivenBy: ['bevelAngle1'],
  },
  {
    ...grooveData,
    id: 'bevelAngle2',
    unit: 'deg',
    judged: true,
    drivenBy: ['bevelAngle2'],
  },
  {
    ...grooveData,
    id: 'grooveAngle',
    unit: 'deg',
    judged: true,
    drivenBy: ['bevelAngle1', 'bevelAngle2'],
  },
  {
    ...grooveData,
    id: 'rootBevelAngle1',
    unit: 'deg',
    judged: true,
    drivenBy: ['rootBevelAngle1'],
  },
  {
    ...grooveData,
    id: 'rootBevelAngle2',
    unit: 'deg',
    judged: true,
    drivenBy: ['rootBevelAngle2'],
  },
  {
    ...grooveData,
    id: 'rootGrooveAngle',
    unit: 'deg',
    judged: true,
    drivenBy: ['rootBevelAngle1', 'rootBevelAngle2'],
  },
  {
    ...grooveData,
    id: 'rootOpening',
    unit: 'mm',
    judged: true,
    drivenBy: ['rootOpening'],
  },
  {
    ...grooveData,
    id: 'rootFace',
    unit: 'mm',
    judged: true,
    drivenBy: ['rootFace1', 'rootFace2'],
  },
  { ...grooveData, id: 'rootFace1', unit: 'mm', judged: false, drivenBy: ['rootFace1'] },
  { ...grooveData, id: 'rootFace2', unit: 'mm', judged: false, drivenBy: ['rootFace2'] },
  { ...grooveData, id: 'rootRadius', unit: 'mm', judged: false, drivenBy: ['rootRadius'] },
  {
    ...grooveData,
    id: 'grooveWidth',
    source: derivedHere,
    status: 'derived',
    unit: 'mm',
    judged: false,
    drivenBy: [...grooveShape, 'offset', 'angularMisalignment'],
  },
  { ...step, id: 'faceStep', drivenBy: ['offset', 't1', 't2', 'angularMisalignment'] },
  { ...step, id: 'rootStep', drivenBy: ['offset', 't1', 't2', 'angularMisalignment'] },
  { ...step, id: 'centrelineOffset', drivenBy: ['offset', 'angularMisalignment'] },
  {
    id: 'angularMisalignment',
    source: `ISO 6520-1 term, ${fromMemory}`,
    status: 'memory',
    unit: 'deg',
    worse: 'more',
    signed: true,
    judged: true,
    drivenBy: ['angularMisalignment'],
    kinds: ['butt'],
    stages: everyStage,
    iso6520: '508',
  },
  {
    id: 'grooveArea',
    source: derivedHere,
    status: 'derived',
    unit: 'mm2',
    worse: 'neither',
    judged: false,
    drivenBy: [
      ...grooveShape,
      'rootBevelAngle1',
      'rootBevelAngle2',
      'offset',
      'angularMisalignment',
    ],
    kinds: ['butt'],
    stages: everyStage,
  },
];
