import type { Measurement, MeasurementId, Measurements } from '../../src/measure/index.ts';
import type { Section } from '../../src/joint/index.ts';
import type { CompiledLimitSet, JobSheet } from '../../src/limits/index.ts';
import { defaultJobSheet, limitSets } from '../../src/limits/index.ts';

type Values = Readonly<Partial<Record<MeasurementId, number | null>>>;
type Heading = Readonly<
  Partial<Pick<Section, 'kind' | 'stage' | 'form' | 'product' | 'groove' | 'backing'>>
>;

const flat = { origin: { x: 0, y: 0 }, along: { x: 1, y: 0 }, normal: { x: 0, y: 1 } };

/** Measurements as if taken from a section: what `judge` sees of it, and the values. */
export function measured(
  heading: Heading,
  values: Values,
  notes: Readonly<Partial<Record<MeasurementId, Measurement['note']>>> = {},
): Measurements {
  const entries = Object.entries(values).map(([id, value]) => {
    const note = notes[id as MeasurementId];
    const plain = { id, value, unit: 'mm', witness: { kind: 'none' } };
    return [id, note === undefined ? plain : { ...plain, note }];
  });
  return {
    section: {
      kind: 'fillet',
      stage: 'welded',
      form: 'tee',
      product: 'plate',
      groove: null,
      backing: null,
      filletRoot: null,
      // values without a shape: surfaces that never meet, so that no triangle is looked for in it
      face: { surfaces: [flat, flat] },
      ...heading,
    },
    values: Object.fromEntries(entries) as Measurements['values'],
  } as unknown as Measurements;
}

/** A flat 8 mm tee fillet between 12 mm plates: throat 8 / √2, face 8 √2. */
export const flatFillet: Values = {
  t1: 12,
  t2: 12,
  tMin: 12,
  tMax: 12,
  dihedralAngle: 90,
  rootGap: 0,
  leg1: 8,
  leg2: 8,
  contactLeg2: 8,
  legDifference: 0,
  isoscelesThroat: 8 / Math.SQRT2,
  effectiveThroat: 8 / Math.SQRT2,
  deepThroat: 8 / Math.SQRT2,
  convexity: 0,
  concavity: 0,
  faceWidth: 8 * Math.SQRT2,
  toeAngle: 135,
  undercut1: 0,
  undercut2: 0,
  overlap1: 0,
  overlap2: 0,
};

/** A sound single-V weld between 12 mm plates, cap 15 mm wide, root bead 5 mm wide. */
export const soundButt: Values = {
  t1: 12,
  t2: 12,
  tMin: 12,
  tMax: 12,
  centrelineOffset: 0,
  faceStep: 0,
  rootStep: 0,
  angularMisalignment: 0,
  'faceReinforcement.higher': 1.2,
  'rootReinforcement.higher': 0.8,
  faceWidth: 15,
  rootWidth: 5,
  underfill: 0,
  rootConcavity: 0,
  incompletePenetration: 0,
  jointThickness: 12,
  capPastGroove1: 1.5,
  capPastGroove2: 1.5,
  toeAngle: 150,
  undercut1: 0,
  undercut2: 0,
  rootUndercut1: 0,
  rootUndercut2: 0,
  overlap1: 0,
  overlap2: 0,
};

export const butt = { kind: 'butt', form: 'singleV' } as const;

/** A built-in set by its id. */
export function limitSet(id: string): CompiledLimitSet {
  const set = limitSets.find((one) => one.id === id);
  if (set === undefined) throw new Error(`no limit set ${id}`);
  return set;
}
export const iso = limitSet('iso5817-c');
export const house = limitSet('lock-gate-house');

/** The default sheet with some of its fields changed. */
export const sheetWith = (changes: Partial<JobSheet> = {}): JobSheet => ({
  ...defaultJobSheet(),
  ...changes,
});

const inTolerance = { minus: { unit: 'mm', value: 1 }, plus: { unit: 'mm', value: 1 } } as const;

/** A groove of 60° with an opening of 2 mm and root faces of 1.5 mm, 1 mm more or less. */
export const grooveSheet = (): JobSheet =>
  sheetWith({
    groove: {
      bevelAngle: { nominal: 30, minus: 5, plus: 5 },
      grooveAngle: { nominal: 60, minus: 5, plus: 5 },
      rootOpening: { nominal: mm(2), ...inTolerance },
      rootFace: { nominal: mm(1.5), ...inTolerance },
    },
  });

export const mm = (value: number) => ({ unit: 'mm', value }) as const;
export const inch = (value: number) => ({ unit: 'in', value }) as const;
export const in64 = (value: number) => ({ unit: 'in64', value }) as const;
