import { build, JointError, type ButtJoint } from '../joint/index.ts';
import { measure, STEEL, type MeasurementId, type Measurements } from '../measure/index.ts';
import { enteredToMm, type Message } from '../units/index.ts';
import { asDrawn, spreadsOf, withGroove, withStep, type FitUpField } from './fit-up-spread.ts';
import type { JobSheet } from './job-sheet.ts';
import { judge } from './judge.ts';
import type { Call, Check } from './judging.ts';
import type { CompiledLimitSet } from './limit-set.ts';

/** What one dimension of the fit-up, at one end of its tolerance, does to the finished weld. */
export interface FitUpEnd {
  readonly field: FitUpField;
  readonly end: 'least' | 'most';
  /** mm or degrees */
  readonly value: number;
  /** the finished weld there; null where no such joint can be built */
  readonly weld: FitUpWeld | null;
  /** why no such joint can be built */
  readonly refused: Message | null;
}

/** A finished weld at one end of a tolerance, against the same weld in the joint as drawn. */
export interface FitUpWeld {
  /** weld metal outside the plates as prepared, mm², which is its volume in cm³ for each metre */
  readonly area: number;
  /** how many times as much as in the joint as drawn; null where that can't be built */
  readonly ratio: number | null;
  /** steel, kg/m */
  readonly mass: number;
  /** requirements whose call is another than as drawn, those that now fail first */
  readonly turned: readonly TurnedCheck[];
  /** what else moved by more than the sheet counts as nothing, mm, the farthest first */
  readonly moved: readonly MovedMeasurement[];
}

/** A requirement with its call in the joint as drawn and at the end of the tolerance. */
export interface TurnedCheck {
  readonly from: Call;
  readonly check: Check;
}

export interface MovedMeasurement {
  readonly id: MeasurementId;
  readonly from: number;
  readonly to: number;
}

/** A weld with its measurements and what is asked of it. */
interface Finished {
  readonly measurements: Measurements;
  readonly checks: readonly Check[];
}

/**
 * What the fit-up tolerances mean for the finished weld: each dimension in
 * turn at the least and the most that the fit-up may have, then the greatest
 * misalignment that the limit set allows, all else as drawn. The weld is the
 * joint's own, carried by the groove edges (cap so far past them, so high
 * over its chord, and so on); built, measured and judged anew at each end.
 * Nothing but geometry changes: whether a root fuses is not foretold.
 */
export function fitUpRange(
  joint: ButtJoint,
  sheet: JobSheet,
  limits: CompiledLimitSet | undefined,
): readonly FitUpEnd[] {
  const drawn = asDrawn(joint, sheet);
  const base = finish(drawn, sheet, limits);
  const asked = base instanceof JointError ? null : base;
  const at = (end: Pick<FitUpEnd, 'field' | 'end' | 'value'>, changed: ButtJoint): FitUpEnd => {
    const found = finish(changed, sheet, limits);
    return found instanceof JointError
      ? { ...end, weld: null, refused: found.reason }
      : { ...end, weld: against(asked, found, end.field, sheet, limits), refused: null };
  };
  const ends = spreadsOf(joint, sheet).flatMap(({ field, ...spread }) =>
    (['least', 'most'] as const).map((end) =>
      at({ field, end, value: spread[end] }, withGroove(drawn, field, spread[end])),
    ),
  );
  const value = asked === null ? null : misalignmentAllowed(asked.checks);
  if (value === null) return ends;
  // the way that the plates already lie
  const way = joint.offset < 0 ? -1 : 1;
  const stepped = withStep(drawn, sheet.intendedAlignment, way * value);
  return [...ends, at({ field: 'misalignment', end: 'most', value }, stepped)];
}

function finish(
  joint: ButtJoint,
  sheet: JobSheet,
  limits: CompiledLimitSet | undefined,
): Finished | JointError {
  try {
    const measurements = measure(build(joint));
    return {
      measurements,
      checks: limits === undefined ? [] : judge(measurements, sheet, limits),
    };
  } catch (error) {
    if (error instanceof JointError) return error;
    throw error;
  }
}

/** The least of the limits on misalignment, mm; null where nothing, or nothing at all, is allowed. */
function misalignmentAllowed(checks: readonly Check[]): number | null {
  const limits = checks
    .filter(({ measurement, sense }) => measurement === 'misalignment' && sense === 'max')
    .map(({ limit }) => limit ?? Infinity);
  const least = Math.min(...limits, Infinity);
  return least > 0 && Number.isFinite(least) ? least : null;
}

function against(
  drawn: Finished | null,
  found: Finished,
  field: FitUpField,
  sheet: JobSheet,
  limits: CompiledLimitSet | undefined,
): FitUpWeld {
  const area = valueOf(found, 'weldArea') ?? 0;
  const before = drawn === null ? null : valueOf(drawn, 'weldArea');
  const turned = drawn === null ? [] : turnedChecks(drawn.checks, found.checks);
  const told = new Set<string>(turned.map(({ check }) => check.measurement));
  const datum = limits?.readings.reinforcementDatum ?? 'higher';
  const nothing = enteredToMm(sheet.leastImperfection);
  const moved = watched(datum, field).flatMap((id): MovedMeasurement[] => {
    const from = drawn === null ? null : valueOf(drawn, id);
    const to = valueOf(found, id);
    if (from === null || to === null || told.has(id)) return [];
    return Math.abs(to - from) > nothing ? [{ id, from, to }] : [];
  });
  return {
    area,
    ratio: before === null || before === 0 ? null : area / before,
    mass: area * STEEL,
    turned,
    moved: moved.toSorted((a, b) => Math.abs(b.to - b.from) - Math.abs(a.to - a.from)),
  };
}

const valueOf = ({ measurements }: Finished, id: MeasurementId): number | null =>
  measurements.values[id]?.value ?? null;

/** What an inspector reads on a finished butt weld, by the datum of the set; not the fit-up itself. */
const watched = (
  datum: CompiledLimitSet['readings']['reinforcementDatum'],
  field: FitUpField,
): readonly MeasurementId[] => [
  `faceReinforcement.${datum}`,
  `rootReinforcement.${datum}`,
  'underfill',
  'rootConcavity',
  'incompletePenetration',
  'jointThickness',
  // plates that slide past one another change a width by the slope alone
  ...(field === 'misalignment' ? [] : (['faceWidth', 'rootWidth'] as const)),
];

/** Requirements of both welds, called otherwise; what fails now first, in the set's order. */
function turnedChecks(before: readonly Check[], after: readonly Check[]): readonly TurnedCheck[] {
  const calls = new Map(before.map(({ id, call }) => [id, call]));
  const turned = after.flatMap((check): TurnedCheck[] => {
    const from = calls.get(check.id);
    return from === undefined || from === check.call ? [] : [{ from, check }];
  });
  return [
    ...turned.filter(({ check }) => check.call === 'reject'),
    ...turned.filter(({ check }) => check.call !== 'reject'),
  ];
}
