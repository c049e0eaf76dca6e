import type { CatalogueRow, ParameterField } from './entry.ts';
import { armyManual, derivedHere, fromMemory, glossary, iso5817 } from './entry.ts';

const filletWeld = {
  unit: 'mm',
  kinds: ['fillet'],
  stages: ['welded'],
} as const;

const leg = {
  ...filletWeld,
  source: `${armyManual}b`,
  status: 'seen',
  worse: 'less',
} as const;

const derivedLeg = {
  ...filletWeld,
  source: derivedHere,
  status: 'derived',
  worse: 'less',
  judged: false,
} as const;

const throat = { ...filletWeld, worse: 'less', judged: true } as const;

const triangle: readonly ParameterField[] = [
  'leg1',
  'leg2',
  'dihedralAngle',
  'convexity',
  'crownShift',
  'reverseCurve',
];
const pair: readonly ParameterField[] = [
  'leg1',
  'leg2',
  'dihedralAngle',
  'convexity',
  'reverseCurve',
];
const chord: readonly ParameterField[] = ['leg1', 'leg2', 'dihedralAngle'];
const face: readonly ParameterField[] = ['convexity', 'reverseCurve'];

/** Legs, sizes and throats of a fillet weld. */
export const filletRows: readonly CatalogueRow[] = [
  { ...leg, id: 'leg1', judged: true, drivenBy: ['leg1'] },
  { ...leg, id: 'leg2', judged: true, drivenBy: ['leg2'] },
  {
    ...derivedLeg,
    id: 'contactLeg2',
    judged: true,
    drivenBy: ['leg2', 'rootGap', 'endCut', 'dihedralAngle'],
  },
  { ...derivedLeg, id: 'perpendicularLeg1', drivenBy: ['leg1', 'dihedralAngle'] },
  { ...derivedLeg, id: 'perpendicularLeg2', drivenBy: ['leg2', 'dihedralAngle'] },
  { ...derivedLeg, id: 'visibleLeg1', drivenBy: ['leg1', 'overlap1', 'convexity'] },
  { ...derivedLeg, id: 'visibleLeg2', drivenBy: ['leg2', 'overlap2', 'convexity'] },
  {
    ...filletWeld,
    id: 'legDifference',
    source: iso5817('512'),
    status: 'seen',
    worse: 'more',
    judged: true,
    drivenBy: ['leg1', 'leg2'],
    iso6520: '512',
  },
  {
    ...filletWeld,
    id: 'sizeEqual',
    source: `${armyManual}d(1)`,
    status: 'seen',
    worse: 'less',
    judged: true,
    drivenBy: triangle,
  },
  {
    ...filletWeld,
    id: 'sizePair.1',
    source: `${armyManual}d(2), and a reading decided here`,
    status: 'derived',
    worse: 'less',
    judged: true,
    drivenBy: pair,
  },
  {
    ...filletWeld,
    id: 'sizePair.2',
    source: `${armyManual}d(2), and a reading decided here`,
    status: 'derived',
    worse: 'less',
    judged: true,
    drivenBy: pair,
  },
  {
    ...throat,
    id: 'theoreticalThroat',
    source: `${glossary}, theoretical throat`,
    status: 'seen',
    drivenBy: pair,
  },
  {
    ...throat,
    id: 'chordThroat',
    source: derivedHere,
    status: 'derived',
    judged: false,
    drivenBy: chord,
  },
  {
    ...throat,
    id: 'isoscelesThroat',
    source: `ISO 2553 and ISO 5817 usage, ${fromMemory}`,
    status: 'memory',
    drivenBy: triangle,
  },
  {
    ...throat,
    id: 'actualThroat',
    source: `${glossary}, actual throat`,
    status: 'seen',
    drivenBy: [...triangle, 'rootGap', 'rootPenetration'],
  },
  {
    ...throat,
    id: 'effectiveThroat',
    source: `${glossary}, effective throat, and a reading decided here`,
    status: 'derived',
    drivenBy: [...triangle, 'rootGap'],
  },
  {
    ...throat,
    id: 'deepThroat',
    source: `ISO 2553 usage, ${fromMemory}`,
    status: 'memory',
    drivenBy: [...triangle, 'rootPenetration'],
  },
  {
    ...filletWeld,
    id: 'rootPenetration',
    source: derivedHere,
    status: 'derived',
    worse: 'less',
    judged: true,
    drivenBy: ['rootPenetration'],
  },
  {
    ...filletWeld,
    id: 'throatPenetration',
    source: derivedHere,
    status: 'derived',
    worse: 'less',
    judged: false,
    drivenBy: ['rootPenetration', 'dihedralAngle'],
  },
  {
    ...filletWeld,
    id: 'convexity',
    source: `AWS A3.0, public extract, and ${iso5817('503')}`,
    status: 'seen',
    worse: 'more',
    judged: true,
    drivenBy: face,
    iso6520: '503',
  },
  {
    ...filletWeld,
    id: 'concavity',
    source: `AWS A3.0, public extract`,
    status: 'seen',
    worse: 'more',
    judged: true,
    drivenBy: face,
  },
  {
    ...filletWeld,
    id: 'edgeRemaining',
    source: derivedHere,
    status: 'derived',
    worse: 'less',
    judged: true,
    drivenBy: ['edgeMelt', 'leg2', 't2', 'rootGap', 'dihedralAngle', 'undercut2Width'],
  },
];
