import fc from 'fast-check';
import {
  parametersOf,
  build,
  defaultJoint,
  JointError,
  type Joint,
  type Section,
} from '../../../src/joint/index.ts';
import type { Call, Check } from '../../../src/limits/index.ts';
import { measure, measurementIds, type MeasurementId } from '../../../src/measure/index.ts';
import { buttGrips } from '../../../src/view/scene/butt-grips.ts';
import { filletGrips } from '../../../src/view/scene/grips.ts';
import { handlesOf as handlesWith, type HandleGroup } from '../../../src/view/scene/handles.ts';
import {
  type AllowedBand,
  type DrawnBand,
  drawnBand,
  filletBand,
} from '../../../src/view/scene/allowed-band.ts';
import { buttBand } from '../../../src/view/scene/butt-band.ts';
import { buttDimensions } from '../../../src/view/scene/butt-dimensions.ts';
import { filletDimensions } from '../../../src/view/scene/fillet-dimensions.ts';
import { sceneWords, barLengths } from '../../../src/view/scene/scene-words.ts';
import type { SceneInput } from '../../../src/view/scene/scene.ts';
import { type Manner, type Sheet, sheetOf } from '../../../src/view/scene/sheet.ts';
import { TRUE_SCALE, type View } from '../../../src/view/scene/view-transform.ts';
import { anyJoint } from '../../joint/any-joint.ts';

export const METRIC = { units: 'mm', inches: 'decimal', terms: 'US' } as const;

/** Phone, laptop and wall: the sizes that the drawing is looked at. */
export const SIZES: readonly (readonly [number, number, Manner])[] = [
  [360, 330, 'phone'],
  [748, 620, 'bench'],
  [1400, 900, 'bench'],
];

const everything = {
  legs: true,
  triangle: true,
  throats: true,
  chord: true,
  band: true,
  surfaces: false,
  fusion: true,
  toeAngles: false,
} as const;

/** A scene as the bench asks for it, with what a test changes. */
export function sceneOf(
  section: Section,
  changes: Partial<SceneInput> = {},
  [width, height, manner] = SIZES[1] as (typeof SIZES)[number],
): SceneInput {
  return {
    section,
    measurements: measure(section),
    checks: [],
    misalignedStep: 'centrelineOffset',
    sheet: sheetOf(width, height, manner),
    show: everything,
    band: null,
    lit: null,
    held: null,
    kept: [],
    words: sceneWords(METRIC),
    bars: barLengths(METRIC),
    bandDrawing: section.kind === 'fillet' ? filletBand : buttBand,
    dimensioning: section.kind === 'fillet' ? filletDimensions : buttDimensions,
    trueToSize: false,
    trueScale: TRUE_SCALE,
    before: null,
    hold: false,
    moving: false,
    ...changes,
  };
}

/** A plain tee with 8 mm legs on 12 mm plates, with what a test changes. */
export function tee(changes: Readonly<Record<string, unknown>> = {}): Section {
  return build({ ...defaultJoint('fillet', 'tee'), ...changes });
}

export function butt(changes: Readonly<Record<string, unknown>> = {}): Section {
  return build({ ...defaultJoint('butt', 'singleV'), ...changes });
}

/** A check with a given call, for what the drawing makes of it. */
export function check(
  measurement: Check['measurement'],
  call: Call,
  limit: number | null = 1,
  sense: 'min' | 'max' = 'max',
): Check {
  return {
    id: `test ${measurement}`,
    measurement,
    name: { key: 'test' },
    sense,
    unit: 'mm',
    limit,
    printed: null,
    measured: null,
    margin: null,
    guard: 0,
    uncertainty: 0,
    conformance: null,
    call,
    reasons: [],
    working: null,
    source: { document: 'test', edition: '', clause: '', status: 'invented' },
  };
}

/** Paper that no line runs off. */
const ENDLESS: Sheet = {
  ...sheetOf(900, 600, 'bench'),
  left: -1e6,
  right: 1e6,
  top: -1e6,
  bottom: 1e6,
};

/** The band of either kind of joint as the page draws it, on paper without an end. */
export const bandOn = (section: Section, band: AllowedBand, view: View): DrawnBand =>
  drawnBand(section, band, view, ENDLESS, section.kind === 'fillet' ? filletBand : buttBand);

/** Any section that can be built, over the whole of every range. */
export const anySection: fc.Arbitrary<Section> = fc
  .constantFrom('fillet' as const, 'butt' as const)
  .chain((kind) => anyJoint(kind, { plain: 3, any: 1 }))
  .map(built)
  .filter((section) => section !== null);

function built(joint: Joint): Section | null {
  try {
    return build(joint);
  } catch (error) {
    if (error instanceof JointError) return null;
    throw error;
  }
}

/** Some measurements out of limit or to be referred, and perhaps one pointed at. */
export const anyCalls = fc.record({
  calls: fc.array(
    fc.tuple(
      fc.constantFrom<MeasurementId>(...measurementIds),
      fc.constantFrom<Call>('reject', 'refer', 'accept'),
    ),
    { maxLength: 5 },
  ),
  lit: fc.option(fc.constantFrom<MeasurementId>(...measurementIds)),
});

/** The handles of a joint with everything fetched that takes hold of one. */
export const handlesOf = (
  joint: Joint,
  section: Section,
  group: HandleGroup,
): ReturnType<typeof handlesWith> =>
  handlesWith(
    joint,
    section,
    parametersOf(joint),
    group,
    joint.kind === 'fillet' ? filletGrips : buttGrips,
  );
