import type { Joint } from '../joint/index.ts';
import { allowedRange, stepFor, type Check, type JobSheet } from '../limits/index.ts';
import type { Measurements } from '../measure/index.ts';
import { numberAt } from './parameter.ts';

type Reader = readonly [
  measurement: Check['measurement'],
  sign: 1 | -1,
  own?: Check['measurement'],
];

/**
 * Which checks bound a parameter directly: the measurement that reads it, and whether it reads the
 * parameter's value (1) or its negative (-1). A concave face is a negative convexity, for one. What is
 * judged of one plate for both bounds the other too, by what is measured there.
 */
const readings: Readonly<Record<string, readonly Reader[]>> = {
  leg1: [['leg1', 1]],
  leg2: [['leg2', 1]],
  convexity: [
    ['convexity', 1],
    ['concavity', -1],
  ],
  rootGap: [['rootGap', 1]],
  undercut1Depth: [['undercut1', 1]],
  undercut2Depth: [['undercut2', 1]],
  rootUndercut1Depth: [['rootUndercut1', 1]],
  rootUndercut2Depth: [['rootUndercut2', 1]],
  overlap1: [['overlap1', 1]],
  overlap2: [['overlap2', 1]],
  bevelAngle1: [['bevelAngle1', 1]],
  bevelAngle2: [['bevelAngle2', 1]],
  rootBevelAngle1: [['rootBevelAngle1', 1]],
  rootBevelAngle2: [['rootBevelAngle2', 1]],
  rootOpening: [['rootOpening', 1]],
  rootFace1: [
    ['rootFace', 1],
    ['rootFace1', 1],
    ['rootFace2', 1, 'rootFace1'],
  ],
  rootFace2: [
    ['rootFace', 1],
    ['rootFace2', 1],
    ['rootFace1', 1, 'rootFace2'],
  ],
  offset: [
    ['misalignment', 1],
    ['misalignment', -1],
  ],
  angularMisalignment: [
    ['angularMisalignment', 1],
    ['angularMisalignment', -1],
  ],
  capHeight: [
    ['faceReinforcement.higher', 1],
    ['faceReinforcement.lower', 1],
    ['faceReinforcement.toes', 1],
    ['underfill', -1],
  ],
  rootHeight: [
    ['rootReinforcement.higher', 1],
    ['rootReinforcement.lower', 1],
    ['rootReinforcement.toes', 1],
    ['rootConcavity', -1],
  ],
  incompletePenetration: [['incompletePenetration', 1]],
};

/** Fields that a measurement follows one for one even while it differs from them: a gap past a square cut, a step of unequal plates. */
const follows: ReadonlySet<string> = new Set(['rootGap', 'offset']);

/** Nearer than this a measurement is what its parameter says, mm or degrees. */
const NEAR = 1e-6;

/** Least and most that the sheet accepts of a parameter as the joint stands; null where nothing bounds it. */
export type Allowed = readonly [least: number | null, most: number | null];

/** What the allowed range of a parameter is worked out from. */
export interface Judged {
  readonly joint: Joint;
  readonly measurements: Measurements;
  readonly sheet: JobSheet;
  readonly checks: readonly Check[];
}

/**
 * The allowed range of one parameter, from the checks that read it directly. A limit on what is
 * measured stands on the parameter's scale only while the two move alike.
 */
export function allowedOf(field: string, judged: Judged): Allowed {
  let least: number | null = null;
  let most: number | null = null;
  for (const [measurement, sign, own = measurement] of readings[field] ?? []) {
    const range = allowedRange(judged.checks, measurement);
    const shift = shiftOf(field, own, sign, judged);
    if (shift === null) continue;
    const [low, high] = sign === 1 ? [range.least, range.most] : [range.most, range.least];
    if (low !== null) least = Math.max(least ?? -Infinity, sign * (low - shift));
    if (high !== null) most = Math.min(most ?? Infinity, sign * (high - shift));
  }
  return [least, most];
}

/** How much more is measured than the parameter says; null where it can't be told or they part. */
function shiftOf(
  field: string,
  measurement: Check['measurement'],
  sign: 1 | -1,
  { joint, measurements, sheet }: Judged,
): number | null {
  const given = numberAt(joint, field);
  const found = signedReading(measurement, sign, measurements, sheet);
  if (given === null || found === null) return null;
  const apart = found - sign * given;
  // A flaw that isn't there measures nothing, however far from there the parameter is.
  if (Math.abs(apart) < NEAR || (sign * given < 0 && Math.abs(found) < NEAR)) return 0;
  // Without the last digits of the sum: a zone that stays is not drawn again.
  return follows.has(field) ? Math.round(apart / NEAR) * NEAR : null;
}

/** What is measured, the way that `sign` counts: what is judged by its size alone has two ways. */
function signedReading(
  measurement: Check['measurement'],
  sign: 1 | -1,
  { values }: Measurements,
  { intendedAlignment }: JobSheet,
): number | null {
  if (measurement === 'angleDeparture') return null;
  const isStep = measurement === 'misalignment';
  const value = values[isStep ? stepFor[intendedAlignment] : measurement]?.value ?? null;
  if (value === null) return null;
  return isStep || measurement === 'angularMisalignment' ? sign * value : value;
}
