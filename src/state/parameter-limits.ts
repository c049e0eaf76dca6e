import { allowedRange, type Check } from '../limits/index.ts';

/**
 * Which checks bound a parameter directly: the measurement that reads it, and whether it reads the
 * parameter's value (1) or its negative (-1). A concave face is a negative convexity, for one.
 */
const readings: Readonly<Record<string, readonly (readonly [Check['measurement'], 1 | -1])[]>> = {
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
  ],
  rootFace2: [
    ['rootFace', 1],
    ['rootFace2', 1],
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

/** Least and most that the sheet accepts of a parameter as the joint stands; null where nothing bounds it. */
export type Allowed = readonly [least: number | null, most: number | null];

/** The allowed range of one parameter, from the checks that read it directly. */
export function allowedOf(field: string, checks: readonly Check[]): Allowed {
  let least: number | null = null;
  let most: number | null = null;
  for (const [measurement, sign] of readings[field] ?? []) {
    const range = allowedRange(checks, measurement);
    const [low, high] =
      sign === 1 ? [range.least, range.most] : [minus(range.most), minus(range.least)];
    if (low !== null) least = Math.max(least ?? low, low);
    if (high !== null) most = Math.min(most ?? high, high);
  }
  return [least, most];
}

const minus = (value: number | null): number | null => (value === null ? null : -value);
