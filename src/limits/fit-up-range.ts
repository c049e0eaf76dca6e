import { build, JointError, parametersOf, type ButtJoint } from '../joint/index.ts';
import { measure } from '../measure/index.ts';
import { enteredToMm } from '../units/index.ts';
import type { JobSheet } from './job-sheet.ts';

/** What one dimension of the fit-up, at one end of its tolerance, does to the welded joint. */
export interface FitUpEnd {
  readonly field: keyof JobSheet['groove'];
  readonly end: 'least' | 'most';
  /** mm or degrees */
  readonly value: number;
  /** weld metal that the groove takes, mm², and how many times as much as at the dimensions as drawn; null where no such joint can be built */
  readonly area: number | null;
  readonly ratio: number | null;
}

/** A dimension at its value and at the two ends of its tolerance, mm or degrees. */
interface Spread {
  readonly field: FitUpEnd['field'];
  readonly drawn: number;
  readonly least: number;
  readonly most: number;
}

/**
 * What the fit-up tolerances mean for the weld: the groove as drawn, then each
 * dimension in turn at the least and the most that the fit-up may have, the
 * others as drawn. Areas are measured on the built groove.
 */
export function fitUpRange(joint: ButtJoint, sheet: JobSheet): readonly FitUpEnd[] {
  const spreads = spreadsOf(sheet);
  const drawn = spreads.reduce(
    (one, { field, drawn: value }) => withField(one, field, value),
    joint,
  );
  const base = grooveArea(drawn);
  return spreads.flatMap((spread) =>
    (['least', 'most'] as const).map((end): FitUpEnd => {
      const area = grooveArea(withField(drawn, spread.field, spread[end]));
      const ratio = area === null || base === null || base === 0 ? null : area / base;
      return { field: spread.field, end, value: spread[end], area, ratio };
    }),
  );
}

function spreadsOf({ groove }: JobSheet): readonly Spread[] {
  const spreads: Spread[] = [];
  const { bevelAngle, rootOpening, rootFace } = groove;
  const angle = bevelAngle.drawn ?? bevelAngle.nominal;
  if (angle !== null) {
    const [least, most] = [angle - bevelAngle.minus, angle + bevelAngle.plus];
    spreads.push({ field: 'bevelAngle', drawn: angle, least: Math.max(0, least), most });
  }
  for (const [field, { nominal, drawn: asDrawn, minus, plus }] of [
    ['rootOpening', rootOpening],
    ['rootFace', rootFace],
  ] as const) {
    const entered = asDrawn ?? nominal;
    if (entered === null) continue;
    const drawn = enteredToMm(entered);
    const least = Math.max(0, drawn - enteredToMm(minus));
    spreads.push({ field, drawn, least, most: drawn + enteredToMm(plus) });
  }
  return spreads;
}

function withField(joint: ButtJoint, field: FitUpEnd['field'], value: number): ButtJoint {
  switch (field) {
    case 'bevelAngle':
    // the groove angle follows from the bevels
    case 'grooveAngle':
      return withEvery(
        joint,
        ['bevelAngle1', 'bevelAngle2', 'rootBevelAngle1', 'rootBevelAngle2'],
        value,
      );
    case 'rootOpening':
      return { ...joint, rootOpening: value };
    case 'rootFace':
      return withEvery(joint, ['rootFace1', 'rootFace2'], value);
  }
}

/** Only the edges that this preparation has: a plate cut square stays square. */
function withEvery(
  joint: ButtJoint,
  fields: readonly (keyof ButtJoint)[],
  value: number,
): ButtJoint {
  const known = new Set(parametersOf(joint).map(({ field }) => field));
  const set = fields.filter((field) => known.has(field)).map((field) => [field, value] as const);
  return { ...joint, ...Object.fromEntries(set) };
}

function grooveArea(joint: ButtJoint): number | null {
  try {
    return measure(build({ ...joint, stage: 'fitUp' })).values.grooveArea?.value ?? null;
  } catch (error) {
    // a fit-up that can't be set up has no groove to fill
    if (error instanceof JointError) return null;
    throw error;
  }
}
