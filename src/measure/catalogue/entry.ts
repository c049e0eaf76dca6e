import type { ButtJoint, FilletJoint, Stage } from '../../joint/index.ts';
import type { MeasurementId, MeasurementUnit } from '../measurement.ts';

/** A field of a joint that a person sets, as against what it is a joint of. */
export type ParameterField = Exclude<
  keyof FilletJoint | keyof ButtJoint,
  'version' | 'kind' | 'stage' | 'spatter'
>;

/** What is known about one measurement apart from its value; words are message keys. */
export interface CatalogueEntry {
  readonly id: MeasurementId;
  /** US practice term. */
  readonly us: string;
  /** ISO term. */
  readonly iso: string;
  readonly definition: string;
  /** Where the definition comes from. */
  readonly source: string;
  /** seen: read in a public text. memory: from memory, verify. derived: geometry, or a reading decided here. */
  readonly status: 'seen' | 'memory' | 'derived';
  readonly unit: MeasurementUnit;
  /** Which way is worse; neither where a nominal with a tolerance is usual, or nothing is judged. */
  readonly worse: 'more' | 'less' | 'neither';
  /** May come out less than nothing: it says by its sign which way it goes. */
  readonly signed?: true;
  /** May stand in a requirement; false: shown, or an input to one. */
  readonly judged: boolean;
  /** Fields of the joint that a person moves to change it; others may shift it in passing. */
  readonly drivenBy: readonly ParameterField[];
  readonly kinds: readonly ('fillet' | 'butt')[];
  readonly stages: readonly Stage[];
  /** Number of the imperfection in ISO 6520-1. */
  readonly iso6520?: string;
}

/** One row of the catalogue without its message keys, which follow from the id. */
export type CatalogueRow = Omit<CatalogueEntry, 'us' | 'iso' | 'definition'>;

/** An id as it stands in a message key: a dotted tail takes an underscore. */
const keyOf = (id: MeasurementId): string => `measure_${id.replace('.', '_')}`;

export const withKeys = (row: CatalogueRow): CatalogueEntry => {
  const key = keyOf(row.id);
  return { ...row, us: `${key}_us`, iso: `${key}_iso`, definition: `${key}_definition` };
};

export const armyManual = 'US Army TC 9-237, 6-8';
export const glossary = 'public welding glossary';
export const fromMemory = 'from memory, verify';
export const derivedHere = 'derived';
export const iso5817 = (row: string): string => `ISO 5817 Table 1, row ${row}, public extract`;

/** Fields that set how wide and how deep a groove is. */
export const grooveShape: readonly ParameterField[] = [
  'rootOpening',
  'bevelAngle1',
  'bevelAngle2',
  'rootFace1',
  'rootFace2',
  'rootRadius',
  'rootSideShare',
  't1',
  't2',
];
