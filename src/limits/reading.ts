import type { Measurement, MeasurementId, Measurements } from '../measure/index.ts';
import type { Message } from '../units/index.ts';
import type { Reading } from './assess.ts';
import { same } from './document-tolerance.ts';
import type { JobSheet } from './job-sheet.ts';
import type { Subject } from './subject.ts';

/** Which step between the plates is unintended, by what the drawing lines up: what misalignment is read from. */
export const stepFor: Readonly<Record<JobSheet['intendedAlignment'], MeasurementId>> = {
  centrelines: 'centrelineOffset',
  faceFlush: 'faceStep',
  rootFlush: 'rootStep',
};

/**
 * A subject as it is judged, mm or degrees; null when it makes no sense for
 * this joint and stage. Steps and angular misalignment are judged by size,
 * whichever way they go; misalignment is the step that the sheet does not
 * intend; the angle's departure is from the sheet's dihedral angle.
 */
export function readingOf(
  subject: Subject,
  measurements: Measurements,
  sheet: JobSheet,
): Reading | null {
  const { values } = measurements;
  if (subject === 'misalignment') return sized(values[stepFor[sheet.intendedAlignment]], 0);
  if (subject === 'angleDeparture') return sized(values.dihedralAngle, sheet.dihedralAngle);
  if (subject === 'angularMisalignment') return sized(values.angularMisalignment, 0);
  const measurement = values[subject];
  return measurement === undefined ? null : reading(measurement, measurement.value);
}

/**
 * Whose figure a limit is put to where one stands for both plates: of unequal
 * root faces a least is kept by the lesser only, a most by the greater.
 */
export function judgedAt(
  subject: Subject,
  sense: 'max' | 'min',
  { values }: Measurements,
): Subject {
  if (subject !== 'rootFace') return subject;
  const [first, second] = [values.rootFace1?.value ?? null, values.rootFace2?.value ?? null];
  // one plate is cut square, or both are alike
  if (first === null || second === null || same(first, second)) return subject;
  return first < second === (sense === 'min') ? 'rootFace1' : 'rootFace2';
}

/** The reading at that place, with the remark whose it is. */
export function readingAt(
  subject: Subject,
  sense: 'max' | 'min',
  measurements: Measurements,
  sheet: JobSheet,
): Reading | null {
  const at = judgedAt(subject, sense, measurements);
  const found = readingOf(at, measurements, sheet);
  if (found === null || at === subject) return found;
  const whose: Message = {
    key: sense === 'min' ? 'limits_reason_lesser_root_face' : 'limits_reason_greater_root_face',
    values: { side: Number(at.at(-1)) },
  };
  return { ...found, remarks: [...found.remarks, whose] };
}

/** The throat as the sheet lets it count: with the penetration behind the root where that is proven. */
export function throatReading(measurements: Measurements, sheet: JobSheet): Reading | null {
  return withPenetration(readingOf('isoscelesThroat', measurements, sheet), measurements, sheet);
}

/**
 * A throat with what penetration adds to it, where the sheet says that it is proven (ISO 2553 usage:
 * s is the throat a of the triangle plus the penetration; from memory, verify). Never more than the
 * deep throat measured, which on unequal legs runs to a chord that is further off than the triangle.
 */
export function withPenetration(
  plain: Reading | null,
  { values }: Measurements,
  { penetrationProven }: JobSheet,
): Reading | null {
  const depth = values.throatPenetration?.value ?? null;
  if (!penetrationProven || plain?.value == null || depth === null) return plain;
  const value = Math.min(plain.value + depth, values.deepThroat?.value ?? Infinity);
  const remark: Message =
    value > plain.value
      ? {
          key: 'limits_reason_penetration_counts',
          values: { depth: { value: value - plain.value, unit: 'mm' } },
        }
      : { key: 'limits_reason_no_penetration' };
  return { ...plain, value, remarks: [...plain.remarks, remark] };
}

function sized(measurement: Measurement | undefined, from: number): Reading | null {
  if (measurement === undefined) return null;
  const { value } = measurement;
  return reading(measurement, value === null ? null : Math.abs(value - from));
}

function reading({ note }: Measurement, value: number | null): Reading {
  const remarks: readonly Message[] = note === undefined ? [] : [note];
  if (value !== null) return { value, remarks, refer: note?.refer === true };
  return { value, remarks: [{ key: 'limits_reason_not_measured' }, ...remarks], refer: false };
}

/** What lies on the root side of a finished butt weld, out of sight where nobody can get there. */
const onRootSide: ReadonlySet<Subject> = new Set<Subject>([
  'rootReinforcement.toPlate1',
  'rootReinforcement.toPlate2',
  'rootReinforcement.higher',
  'rootReinforcement.lower',
  'rootReinforcement.toes',
  'rootUndercut1',
  'rootUndercut2',
  'rootConcavity',
  'rootWidth',
  'incompletePenetration',
  'jointThickness',
]);

/** A reading of the root side is referred when the sheet says that no eye gets there. */
export function asSeen(
  found: Reading,
  subject: Subject,
  { section }: Measurements,
  { rootAccessible }: JobSheet,
): Reading {
  if (rootAccessible || section.stage !== 'welded' || !onRootSide.has(subject)) return found;
  const remarks = [{ key: 'limits_reason_root_hidden' }, ...found.remarks];
  return { value: found.value, remarks, refer: true };
}
