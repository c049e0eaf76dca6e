import type { Criterion, JobSheet } from '../limits/index.ts';
import type { MeasurementId } from '../measure/index.ts';
import type { LimitSet } from './limit-set.ts';
import { quantityOf, sideOf } from './quantity.ts';
import type { Question } from './question.ts';
import type { Misread } from './rejudge.ts';

/**
 * Ways to judge by a wrong rule.
 * otherDatum: height or depth taken from another line. legAsThroat: the leg asked for taken as a
 * throat; throatAsLeg: the other way round. otherLeg: the other leg put to the limit. legsSwapped:
 * unequal legs on the wrong plates. visibleLeg: leg taken to the metal's outermost point. chordThroat:
 * throat taken to the straight line between the toes, hollow face or not. crownCounted: the crown
 * taken for throat. gapOverlooked: the gap under a fillet left out. otherColumn: the document's other
 * unit column. otherThickness: the other plate's thickness. otherRow: another row of the set for the
 * same thing. otherAlignment: another pair of surfaces lined up. dipAsUnderfill: a dip below the crests
 * taken for a face below the plate. shortAsLong: a short imperfection judged as if it ran on.
 * penetrationCounted, penetrationOverlooked: penetration counted that isn't proven, or not counted that
 * is. lengthAssumedShort, lengthAssumedLong, doubtOverlooked, hiddenRootJudged: settled what the sheet
 * leaves open.
 */
export const misreadings = [
  'otherDatum',
  'legAsThroat',
  'throatAsLeg',
  'otherLeg',
  'legsSwapped',
  'visibleLeg',
  'chordThroat',
  'crownCounted',
  'gapOverlooked',
  'otherColumn',
  'otherThickness',
  'otherRow',
  'otherAlignment',
  'dipAsUnderfill',
  'shortAsLong',
  'penetrationCounted',
  'penetrationOverlooked',
  'lengthAssumedShort',
  'lengthAssumedLong',
  'doubtOverlooked',
  'hiddenRootJudged',
] as const;
export type Misreading = (typeof misreadings)[number];

type Rule = (question: Question, limits: LimitSet) => readonly Misread[];

const datums = ['higher', 'lower', 'toes'] as const;
const alignments = ['centrelines', 'faceFlush', 'rootFlush'] as const;
const throats: ReadonlySet<string> = new Set([
  'isoscelesThroat',
  'theoreticalThroat',
  'effectiveThroat',
  'sizeEqual',
]);

const rules: Readonly<Record<Misreading, Rule>> = {
  otherDatum: (question) => {
    const { measurement } = question.decisive;
    const other = (id: MeasurementId) => instead(question, id);
    if (measurement === 'underfill') return other('underfillHigh');
    const [quantity, datum] = measurement.split('.');
    if (quantity !== 'faceReinforcement' && quantity !== 'rootReinforcement') return [];
    return datums.filter((one) => one !== datum).flatMap((one) => other(`${quantity}.${one}`));
  },
  legAsThroat: ({ sheet, joint }) =>
    joint.kind === 'fillet' && sheet.size.as === 'leg'
      ? [{ sheet: { ...sheet, size: { ...sheet.size, as: 'throat', second: null } } }]
      : [],
  throatAsLeg: ({ sheet, joint }) =>
    joint.kind === 'fillet' && sheet.size.as === 'throat'
      ? [{ sheet: { ...sheet, size: { ...sheet.size, as: 'leg' } } }]
      : [],
  otherLeg: (question) => {
    const { measurement } = question.decisive;
    if (quantityOf(measurement) !== 'leg') return [];
    return instead(question, sideOf(measurement) === 1 ? 'leg2' : 'leg1');
  },
  legsSwapped: ({ sheet, joint }) => {
    const { size } = sheet;
    if (joint.kind !== 'fillet' || size.second === null || size.as === 'throat') return [];
    return [{ sheet: { ...sheet, size: { ...size, first: size.second, second: size.first } } }];
  },
  visibleLeg: (question) => {
    const { measurement } = question.decisive;
    if (quantityOf(measurement) !== 'leg') return [];
    return instead(question, sideOf(measurement) === 1 ? 'visibleLeg1' : 'visibleLeg2');
  },
  chordThroat: (question) => throatAs(question, 0),
  crownCounted: (question) => {
    const crown = valueOf(question, 'convexity') ?? 0;
    return crown > 0 ? throatAs(question, crown) : [];
  },
  gapOverlooked: (question) =>
    question.decisive.measurement !== 'rootGap' && (valueOf(question, 'rootGap') ?? 0) > 0
      ? [{ values: { rootGap: 0 } }]
      : [],
  otherColumn: ({ sheet }, { columns }) =>
    columns.filter((column) => column !== sheet.column).map((column) => onSheet(sheet, { column })),
  otherThickness: (question) => {
    const [t1, t2] = [valueOf(question, 't1'), valueOf(question, 't2')];
    if (t1 === null || t2 === null || t1 === t2) return [];
    const [tMin, tMax] = [Math.max(t1, t2), Math.min(t1, t2)];
    return [{ values: { t1: t2, t2: t1, tMin, tMax } }];
  },
  otherRow: ({ decisive }, limits) =>
    limits.criteria
      .filter((row) => isOtherRow(row, decisive.id) && isAbout(row, decisive))
      .map((row) => ({ limits: withRowAlone(limits, row, decisive) })),
  otherAlignment: ({ sheet, decisive }) =>
    decisive.measurement === 'misalignment'
      ? alignments
          .filter((one) => one !== sheet.intendedAlignment)
          .map((intendedAlignment) => onSheet(sheet, { intendedAlignment }))
      : [],
  dipAsUnderfill: (question) =>
    question.joint.kind === 'butt' && (valueOf(question, 'capDip') ?? 0) > 0
      ? [{ values: { underfill: valueOf(question, 'capDip') ?? 0 } }]
      : [],
  shortAsLong: ({ sheet }) =>
    sheet.extent === 'isolatedShort' ? [onSheet(sheet, { extent: 'typical' })] : [],
  penetrationCounted: ({ sheet, joint }) =>
    joint.kind === 'fillet' && !sheet.penetrationProven
      ? [onSheet(sheet, { penetrationProven: true })]
      : [],
  penetrationOverlooked: ({ sheet, joint }) =>
    joint.kind === 'fillet' && sheet.penetrationProven
      ? [onSheet(sheet, { penetrationProven: false })]
      : [],
  lengthAssumedShort: ({ sheet }) =>
    sheet.extent === 'unknown' ? [onSheet(sheet, { extent: 'isolatedShort' })] : [],
  lengthAssumedLong: ({ sheet }) =>
    sheet.extent === 'unknown' ? [onSheet(sheet, { extent: 'typical' })] : [],
  doubtOverlooked: ({ sheet }) =>
    sheet.guard.factor > 0 ? [onSheet(sheet, { guard: { ...sheet.guard, factor: 0 } })] : [],
  hiddenRootJudged: ({ sheet, joint }) =>
    joint.kind === 'butt' && !sheet.rootAccessible
      ? [onSheet(sheet, { rootAccessible: true })]
      : [],
};

/** What a misreading makes of a question: one thing or several read otherwise, none where it can't happen. */
export const misreadBy = (
  rule: Misreading,
  question: Question,
  limits: LimitSet,
): readonly Misread[] => rules[rule](question, limits);

const valueOf = ({ measurements }: Question, id: MeasurementId): number | null =>
  measurements.values[id]?.value ?? null;

const onSheet = (sheet: JobSheet, changed: Partial<JobSheet>): Misread => ({
  sheet: { ...sheet, ...changed },
});

/** Another measurement's value put to the decisive limit. */
function instead(question: Question, other: MeasurementId): readonly Misread[] {
  const value = valueOf(question, other);
  const own = question.decisive.measurement as MeasurementId;
  return value === null || value === question.decisive.measured
    ? []
    : [{ values: { [own]: value } }];
}

/** A throat or size taken by the chord, and so much more. */
function throatAs(question: Question, more: number): readonly Misread[] {
  const { measurement, sense } = question.decisive;
  const chord = valueOf(question, 'chordThroat');
  if (chord === null || sense === 'max' || !throats.has(measurement)) return [];
  const throat = chord + more;
  const size = throat / Math.cos((question.sheet.dihedralAngle * Math.PI) / 360);
  return [{ values: { [measurement]: measurement === 'sizeEqual' ? size : throat } }];
}

const isOtherRow = ({ id }: Criterion, checkId: string): boolean => !checkId.startsWith(`${id}:`);

function isAbout(row: Criterion, { measurement, sense }: Question['decisive']): boolean {
  const has = sense === 'max' ? row.max : row.min;
  return has !== undefined && row.measurements.includes(measurement);
}

/** The set with one row in place of those for the same thing, whatever the row's own conditions. */
function withRowAlone(limits: LimitSet, row: Criterion, decisive: Question['decisive']): LimitSet {
  const others = limits.criteria.filter((other) => !isAbout(other, decisive));
  const alone = without(row, ['when', 'given', 'forms', 'product', 'backing']);
  const trees = without(limits.trees[row.id] ?? {}, ['when']);
  return {
    ...limits,
    criteria: [...others, { ...alone, measurements: [decisive.measurement] }],
    trees: { ...limits.trees, [row.id]: trees },
  };
}

/** A record without some of its optional fields. */
function without<From extends object>(from: From, fields: readonly (keyof From)[]): From {
  const left = Object.entries(from).filter(([name]) => !fields.includes(name as keyof From));
  return Object.fromEntries(left) as From;
}
