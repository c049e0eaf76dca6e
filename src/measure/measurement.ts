import type { Contour, Point } from '../geometry/index.ts';
import type { Section } from '../joint/index.ts';
import type { Message } from '../units/index.ts';

/** What a measurement was taken between; the view draws it and works nothing out. */
export type Witness =
  /** A distance between two points; `extensions` are the lines that carry an end to the dimension line. */
  | {
      readonly kind: 'distance';
      readonly from: Point;
      readonly to: Point;
      readonly extensions: readonly (readonly [Point, Point])[];
      /** construction lines that explain the distance (chord, triangle, surface line carried on) */
      readonly construction: readonly (readonly [Point, Point])[];
    }
  /** An angle at `vertex` from `from` to `to`, counter-clockwise. */
  | { readonly kind: 'angle'; readonly vertex: Point; readonly from: Point; readonly to: Point }
  /** A triangle with its apex at the root. */
  | {
      readonly kind: 'triangle';
      readonly apex: Point;
      readonly corner1: Point;
      readonly corner2: Point;
    }
  | { readonly kind: 'area'; readonly regions: readonly Contour[] }
  | { readonly kind: 'none' };

/** Unit of `value`. */
export type MeasurementUnit = 'mm' | 'deg' | 'mm2' | 'kg/m';

export interface Measurement {
  readonly id: MeasurementId;
  /** null: cannot be measured on this section; `note` says why. */
  readonly value: number | null;
  readonly unit: MeasurementUnit;
  readonly witness: Witness;
  /** `refer`: the value stands but cannot be settled on the section. */
  readonly note?: Message & { readonly refer?: boolean };
}

/** Only what makes sense for this joint and stage is present. Carries its section. */
export interface Measurements {
  readonly section: Section;
  readonly values: Readonly<Partial<Record<MeasurementId, Measurement>>>;
}

/** Every id of the vocabulary; a dotted tail picks one of several readings of the same quantity. */
export const measurementIds = [
  // the joint
  't1',
  't2',
  'tMin',
  'tMax',
  'dihedralAngle',
  'rootGap',
  'bevelAngle1',
  'bevelAngle2',
  'grooveAngle',
  'rootBevelAngle1',
  'rootBevelAngle2',
  'rootGrooveAngle',
  'rootOpening',
  'rootFace',
  'rootFace1',
  'rootFace2',
  'rootRadius',
  'grooveWidth',
  'faceStep',
  'rootStep',
  'centrelineOffset',
  'angularMisalignment',
  'grooveArea',
  // fillet
  'leg1',
  'leg2',
  'contactLeg2',
  'perpendicularLeg1',
  'perpendicularLeg2',
  'visibleLeg1',
  'visibleLeg2',
  'legDifference',
  'sizeEqual',
  'sizePair.1',
  'sizePair.2',
  'theoreticalThroat',
  'chordThroat',
  'isoscelesThroat',
  'actualThroat',
  'effectiveThroat',
  'deepThroat',
  'rootPenetration',
  'throatPenetration',
  'convexity',
  'concavity',
  'edgeRemaining',
  // either
  'chordLength',
  'faceWidth',
  'rootWidth',
  'undercut1',
  'undercut2',
  'undercutWidth1',
  'undercutWidth2',
  'rootUndercut1',
  'rootUndercut2',
  'overlap1',
  'overlap2',
  'toeAngle1',
  'toeAngle2',
  'toeAngle',
  'weldArea',
  'mass',
  // butt
  'faceReinforcement.toPlate1',
  'faceReinforcement.toPlate2',
  'faceReinforcement.higher',
  'faceReinforcement.lower',
  'faceReinforcement.toes',
  'rootReinforcement.toPlate1',
  'rootReinforcement.toPlate2',
  'rootReinforcement.higher',
  'rootReinforcement.lower',
  'rootReinforcement.toes',
  'underfill',
  'underfillHigh',
  'capDip',
  'rootConcavity',
  'incompletePenetration',
  'jointThickness',
  'capPastGroove1',
  'capPastGroove2',
] as const;

export type MeasurementId = (typeof measurementIds)[number];
