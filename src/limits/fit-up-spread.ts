import { parametersOf, type ButtJoint } from '../joint/index.ts';
import { enteredToMm } from '../units/index.ts';
import { askedOf } from './asked.ts';
import { intendedOffset } from './intended-offset.ts';
import type { JobSheet, SheetLength, Toleranced } from './job-sheet.ts';

/** A dimension of the fit-up that the sheet asks for and lets vary. */
export type FitUpField = keyof JobSheet['groove'] | 'misalignment';

/** A dimension as drawn and at the two ends of its tolerance as fitted, mm or degrees. */
export interface Spread {
  readonly field: keyof JobSheet['groove'];
  readonly drawn: number;
  readonly least: number;
  readonly most: number;
}

/**
 * Every dimension of the preparation that the sheet asks for and that the
 * joint's edges have, in sheet order; never less than nothing.
 */
export function spreadsOf(joint: ButtJoint, { groove }: JobSheet): readonly Spread[] {
  const asked = [
    spread('bevelAngle', groove.bevelAngle, (angle: number) => angle),
    spread('grooveAngle', groove.grooveAngle, (angle: number) => angle),
    spread('rootOpening', groove.rootOpening, (length: SheetLength) => enteredToMm(length)),
    spread('rootFace', groove.rootFace, (length: SheetLength) => enteredToMm(length)),
  ].filter((one) => one !== null);
  // edges cut square have no bevel and no root face to vary
  return asked.filter(
    ({ field }) => field === 'rootOpening' || preparedOf(joint, ['bevelAngle1']).length > 0,
  );
}

function spread<T>(
  field: Spread['field'],
  dimension: Toleranced<T>,
  valueOf: (entered: T) => number,
): Spread | null {
  const entered = askedOf(dimension);
  // not required
  if (entered === null) return null;
  const drawn = valueOf(entered);
  return {
    field,
    drawn,
    least: Math.max(0, drawn - valueOf(dimension.minus)),
    most: drawn + valueOf(dimension.plus),
  };
}

/**
 * The joint as its documents draw it: every dimension that the sheet asks for
 * at its drawn value, the plates straight and lined up as the sheet intends,
 * and finished with the weld that the joint has.
 */
export function asDrawn(joint: ButtJoint, sheet: JobSheet): ButtJoint {
  const welded: ButtJoint = { ...joint, stage: 'welded', angularMisalignment: 0 };
  // a bevel that is asked for goes before the sum of both
  const groove = spreadsOf(joint, sheet).filter(
    ({ field }) => field !== 'grooveAngle' || askedOf(sheet.groove.bevelAngle) === null,
  );
  const cut = groove.reduce((one, { field, drawn }) => withGroove(one, field, drawn), welded);
  return withStep(cut, sheet.intendedAlignment, 0);
}

/**
 * The joint with one dimension of its groove changed, on the edges that its
 * preparation has: a plate cut square stays square. A groove angle is shared
 * by the plates as they share it now, half and half where both bevels are the
 * same; one prepared plate takes all of it.
 */
export function withGroove(joint: ButtJoint, field: Spread['field'], value: number): ButtJoint {
  switch (field) {
    case 'bevelAngle':
      return withEvery(joint, [...faceBevels, ...rootBevels], value);
    case 'grooveAngle':
      return withAngle(withAngle(joint, faceBevels, value), rootBevels, value);
    case 'rootOpening':
      return { ...joint, rootOpening: value };
    case 'rootFace':
      return withEvery(joint, ['rootFace1', 'rootFace2'], value);
  }
}

const faceBevels = ['bevelAngle1', 'bevelAngle2'] as const;
const rootBevels = ['rootBevelAngle1', 'rootBevelAngle2'] as const;
type Bevel = (typeof faceBevels | typeof rootBevels)[number];

function withAngle(joint: ButtJoint, bevels: readonly Bevel[], value: number): ButtJoint {
  const cut = preparedOf(joint, bevels);
  const sum = cut.reduce((total, field) => total + joint[field], 0);
  const shares = cut.map(
    // edges that have no bevel yet share alike
    (field) => [field, value * (sum === 0 ? 1 / cut.length : joint[field] / sum)] as const,
  );
  return { ...joint, ...Object.fromEntries(shares) };
}

function withEvery(
  joint: ButtJoint,
  fields: readonly (Bevel | 'rootFace1' | 'rootFace2')[],
  value: number,
): ButtJoint {
  const set = preparedOf(joint, fields).map((field) => [field, value] as const);
  return { ...joint, ...Object.fromEntries(set) };
}

/** Only the fields that this preparation has. */
function preparedOf<Field extends keyof ButtJoint>(
  joint: ButtJoint,
  fields: readonly Field[],
): readonly Field[] {
  const known = new Set<string>(parametersOf(joint).map(({ field }) => field));
  return fields.filter((field) => known.has(field));
}

/**
 * The joint with plate 2 moved until the step that the sheet does not intend is `step` mm, positive
 * towards the face side. Plates must be parallel.
 */
export const withStep = (
  joint: ButtJoint,
  alignment: JobSheet['intendedAlignment'],
  step: number,
): ButtJoint => ({ ...joint, offset: step + intendedOffset(joint, alignment) });
