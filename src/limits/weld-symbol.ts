import { isTwoSided } from '../joint/index.ts';
import type { ButtJoint, Joint, PlateNumber, Preparation } from '../joint/index.ts';
import { enteredToMm, mmToInch, roundHalfAway } from '../units/index.ts';
import { askedOf } from './asked.ts';
import type { JobSheet, SheetLength } from './job-sheet.ts';
import { twinSize } from './sheet-size.ts';

/** AWS A2.4: one reference line. ISO: ISO 2553 system A, a solid line and a dashed one. */
export type SymbolSystem = 'AWS' | 'ISO';

/** The mark on the reference line; `backRun` is a back or backing weld, `strip` a backing that stays. */
export type ElementKind = 'fillet' | 'square' | 'V' | 'bevel' | 'U' | 'J' | 'backRun' | 'strip';

export type SymbolContour = 'none' | 'flush' | 'convex' | 'concave';

/**
 * The number left of a fillet mark. `z` a leg, `a` a throat, compulsory in ISO
 * 2553; AWS A2.4 writes none and means the leg. `second` only for unequal legs,
 * the first on plate 1: neither system's mark says so, a drawing has to.
 */
export interface SymbolSize {
  readonly prefix: '' | 'z' | 'a';
  readonly first: SheetLength;
  readonly second: SheetLength | null;
}

/** One weld mark with what is written round it; null where nothing is written. */
export interface SymbolElement {
  readonly kind: ElementKind;
  /** fillet only */
  readonly size: SymbolSize | null;
  /** depth of preparation, left of a groove mark; none: as deep as the joint goes */
  readonly depth: SheetLength | null;
  /** included angle, degrees, beyond the open end of a groove mark */
  readonly grooveAngle: number | null;
  /** inside a groove mark; once only for a groove on both sides */
  readonly rootOpening: SheetLength | null;
  readonly contour: SymbolContour;
}

/** A welding symbol as plain data: what stands on each side of its reference line, and at its ends. */
export interface WeldSymbol {
  readonly system: SymbolSystem;
  readonly arrowSide: SymbolElement | null;
  readonly otherSide: SymbolElement | null;
  /** The one plate to be prepared, which a broken arrow points to; null when both or neither are. */
  readonly preparedPlate: PlateNumber | null;
  readonly allRound: boolean;
  /** welded on site */
  readonly field: boolean;
  /** WPS, process or whatever else the tail refers to; none: no tail */
  readonly tail: string;
}

/** What a symbol says that neither the joint nor the rest of the sheet does. */
export interface SymbolMarks {
  /** asked of each weld of the joint */
  readonly contour: SymbolContour;
  readonly allRound: boolean;
  readonly field: boolean;
  readonly tail: string;
  /** the side of the joint that the arrow touches: the face side, or the one away from it */
  readonly arrowSide: 'face' | 'root';
}

/** A symbol that says no more than the joint and the sheet. */
export const plainMarks: SymbolMarks = {
  contour: 'none',
  allRound: false,
  field: false,
  tail: '',
  arrowSide: 'face',
};

const grooveKinds: Readonly<Record<Preparation, ElementKind>> = {
  square: 'square',
  singleV: 'V',
  doubleV: 'V',
  singleBevel: 'bevel',
  doubleBevel: 'bevel',
  singleU: 'U',
  singleJ: 'J',
};

/** The mark of the weld on a joint's face side. */
export const faceKind = (joint: Joint): ElementKind =>
  joint.kind === 'fillet' ? 'fillet' : grooveKinds[joint.preparation];

/** A derived dimension on a drawing is given to so many decimals. */
const decimals = { mm: 1, in: 2 } as const;

/**
 * The welding symbol that asks for a joint by the sheet's figures. Kind, sides,
 * backing and depth of preparation come from the joint, sizes, angle and opening
 * from the sheet, the rest from `marks`. A sheet that gives a throat is written
 * in AWS as the leg that holds it, rounded up. AWS A2.4, ISO 2553 system A.
 */
export function symbolOf(
  joint: Joint,
  sheet: JobSheet,
  system: SymbolSystem,
  marks: SymbolMarks = plainMarks,
): WeldSymbol {
  const { contour, arrowSide, ...ends } = marks;
  const face =
    joint.kind === 'fillet'
      ? filletMark(sheet, system, contour)
      : faceGroove(joint, sheet, contour);
  const root = joint.kind === 'fillet' ? null : rootMark(joint, sheet, contour);
  const towardsFace = arrowSide === 'face';
  return {
    system,
    arrowSide: towardsFace ? face : root,
    otherSide: towardsFace ? root : face,
    preparedPlate: preparedPlate(joint),
    ...ends,
  };
}

const bare: Omit<SymbolElement, 'kind'> = {
  size: null,
  depth: null,
  grooveAngle: null,
  rootOpening: null,
  contour: 'none',
};

function filletMark(sheet: JobSheet, system: SymbolSystem, contour: SymbolContour): SymbolElement {
  return { ...bare, kind: 'fillet', size: writtenSize(sheet, system), contour };
}

function writtenSize({ size, dihedralAngle }: JobSheet, system: SymbolSystem): SymbolSize {
  const { first, second } = size;
  if (system === 'ISO') return { prefix: size.as === 'leg' ? 'z' : 'a', first, second };
  if (size.as === 'leg') return { prefix: '', first, second };
  return { prefix: '', first: legForThroat(first, dihedralAngle), second: null };
}

/** The leg that holds a throat, in the throat's own unit, up to the next place that a drawing is read to. */
function legForThroat(throat: SheetLength, angle: number): SheetLength {
  const leg = twinSize('throat', throat.value, angle);
  const perUnit = throat.unit === 'in64' ? 1 : 10 ** decimals[throat.unit];
  // what rounding alone put above a whole step is none
  return { unit: throat.unit, value: Math.ceil(leg * perUnit - 1e-9) / perUnit };
}

function faceGroove(joint: ButtJoint, sheet: JobSheet, contour: SymbolContour): SymbolElement {
  const kind = grooveKinds[joint.preparation];
  return {
    ...bare,
    kind,
    depth: isUneven(joint) ? preparedDepths(joint, sheet).face : null,
    grooveAngle: kind === 'square' ? null : writtenAngle(askedOf(sheet.groove.grooveAngle)),
    rootOpening: askedOf(sheet.groove.rootOpening),
    contour,
  };
}

/** What a butt joint has on its root side: the second groove, the backing, or nothing. */
function rootMark(joint: ButtJoint, sheet: JobSheet, contour: SymbolContour): SymbolElement | null {
  if (!isTwoSided(joint)) return joint.backing === 'strip' ? { ...bare, kind: 'strip' } : null;
  return {
    ...bare,
    kind: grooveKinds[joint.preparation],
    depth: isUneven(joint) ? preparedDepths(joint, sheet).root : null,
    grooveAngle: rootAngle(joint, sheet),
    contour,
  };
}

/** The sheet has no root side: where the joint's two angles are alike it asks the same of both. */
const rootAngle = (joint: ButtJoint, { groove }: JobSheet): number | null =>
  writtenAngle(rootFollowsFace(joint) ? askedOf(groove.grooveAngle) : anglesOf(joint).root);

/** An angle that makes no groove is not written. */
const writtenAngle = (angle: number | null): number | null =>
  angle === 0 || angle === 180 ? null : angle;

/** Whether both sides of a two-sided joint are prepared to one groove angle. */
export function rootFollowsFace(joint: ButtJoint): boolean {
  const { face, root } = anglesOf(joint);
  return isTwoSided(joint) && face === root;
}

function anglesOf(joint: ButtJoint): { readonly face: number; readonly root: number } {
  const plate2 = joint.preparation === 'doubleV' ? 1 : 0;
  return {
    face: joint.bevelAngle1 + plate2 * joint.bevelAngle2,
    root: joint.rootBevelAngle1 + plate2 * joint.rootBevelAngle2,
  };
}

/**
 * Depth of preparation of each side to a drawing's last place, in the sheet's
 * column: what the sheet's root face leaves of plate 1, shared out as the joint
 * is. null on a side without one.
 */
export function preparedDepths(
  joint: ButtJoint,
  { groove, column }: JobSheet,
): { readonly face: SheetLength | null; readonly root: SheetLength | null } {
  const rootFace = askedOf(groove.rootFace);
  const whole = joint.t1 - (rootFace === null ? joint.rootFace1 : enteredToMm(rootFace));
  // a square edge has no depth, a root face as high as the plate leaves none
  if (joint.preparation === 'square' || whole <= 0) return { face: null, root: null };
  const total = column === 'mm' ? whole : mmToInch(whole);
  const share = isTwoSided(joint) ? joint.rootSideShare : 0;
  const face = roundHalfAway(total * (1 - share), decimals[column]);
  const root = roundHalfAway(total - face, decimals[column]);
  const depth = (value: number): SheetLength | null => (value > 0 ? { unit: column, value } : null);
  return { face: depth(face), root: isTwoSided(joint) ? depth(root) : null };
}

/** Depths are written where the two sides differ: on one side alone, or as deep, they go without saying. */
export const isUneven = (joint: ButtJoint): boolean =>
  isTwoSided(joint) && joint.rootSideShare !== 0.5;

/** A single or double bevel and a J prepare plate 1 and leave plate 2 square. */
function preparedPlate(joint: Joint): PlateNumber | null {
  const kind = faceKind(joint);
  return kind === 'bevel' || kind === 'J' ? 1 : null;
}
