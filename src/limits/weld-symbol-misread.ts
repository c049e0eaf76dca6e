import { specifiedAreaOf } from './over-welding.ts';
import { buildButt, JointError } from '../joint/index.ts';
import type { ButtJoint, Joint } from '../joint/index.ts';
import { measure, STEEL } from '../measure/index.ts';
import type { Message, MessageValue } from '../units/index.ts';
import { enteredToMm, roundHalfAway } from '../units/index.ts';
import { askedOf } from './asked.ts';
import { asking, bevelAsking } from './asking.ts';
import type { JobSheet } from './job-sheet.ts';
import { specifiedSize } from './sheet-size.ts';
import { marksOf, sheetFromSymbol } from './weld-symbol-sheet.ts';
import {
  faceKind,
  isUneven,
  preparedDepths,
  rootFollowsFace,
  symbolOf,
  type WeldSymbol,
} from './weld-symbol.ts';

/**
 * Ways to read a symbol wrong. throatForLeg: a throat made as if it were a leg.
 * legForThroat: a leg made as if it were a throat. legsSwapped: unequal legs on
 * the wrong plates. angleForEach: an included angle cut on each plate.
 * wrongSide: arrow side and other side taken for one another.
 */
export const mistakes = [
  'throatForLeg',
  'legForThroat',
  'legsSwapped',
  'angleForEach',
  'wrongSide',
] as const;
export type Mistake = (typeof mistakes)[number];

/** A symbol read wrong: the symbol that would ask for what is then made, its sheet, and the price. */
export interface Misreading {
  readonly how: Mistake;
  readonly symbol: WeldSymbol;
  readonly sheet: JobSheet;
  /** what was asked, what is made instead, and what that costs, in numbers */
  readonly cost: Message;
}

/**
 * What a mistake makes of a symbol; null where the symbol gives no chance of it.
 * Areas are of the specified weld: the triangle of its legs, or the groove as
 * fitted up without misalignment. A LimitsError for a symbol that isn't of this joint.
 */
export function misread(
  symbol: WeldSymbol,
  how: Mistake,
  sheet: JobSheet,
  joint: Joint,
): Misreading | null {
  const asked = sheetFromSymbol(symbol, sheet, joint);
  if (how === 'wrongSide') return onWrongSide(symbol, asked, joint);
  const made = how === 'angleForEach' ? angleOnEach(asked, joint) : otherSize(symbol, how, asked);
  if (made === null) return null;
  const cost =
    joint.kind === 'fillet' ? filletCost(how, asked, made) : angleCost(asked, made, joint);
  if (cost === null) return null;
  return {
    how,
    symbol: symbolOf(joint, made, symbol.system, marksOf(symbol, joint)),
    sheet: made,
    cost,
  };
}

function otherSize(symbol: WeldSymbol, how: Mistake, asked: JobSheet): JobSheet | null {
  const size = symbol.arrowSide?.size ?? symbol.otherSide?.size ?? null;
  // a groove has no size to mistake
  if (size === null) return null;
  const { prefix, first, second } = size;
  switch (how) {
    case 'throatForLeg':
      return prefix === 'a' ? { ...asked, size: { as: 'leg', first, second: null } } : null;
    case 'legForThroat':
      return prefix !== 'a' && second === null
        ? { ...asked, size: { as: 'throat', first, second: null } }
        : null;
    default:
      return second !== null && enteredToMm(second) !== enteredToMm(first)
        ? { ...asked, size: { as: 'leg', first: second, second: first } }
        : null;
  }
}

function angleOnEach(asked: JobSheet, joint: Joint): JobSheet | null {
  const { grooveAngle, bevelAngle } = asked.groove;
  const angle = askedOf(grooveAngle);
  const kind = faceKind(joint);
  // only where both plates share the angle, and twice of it still leaves a groove
  if ((kind !== 'V' && kind !== 'U') || angle === null || angle >= 90) return null;
  return {
    ...asked,
    groove: {
      ...asked.groove,
      grooveAngle: asking(grooveAngle, 2 * angle),
      bevelAngle: bevelAsking(bevelAngle, grooveAngle, angle),
    },
  };
}

const mm = (value: number): MessageValue => ({ value, unit: 'mm' });
const deg = (value: number): MessageValue => ({ value, unit: 'deg' });

/** Weld metal asked for and made: areas, steel per metre, and the one over the other. */
const metal = (asked: number, made: number): Record<string, MessageValue> => ({
  asked_area: { value: asked, unit: 'mm2' },
  made_area: { value: made, unit: 'mm2' },
  asked_mass: { value: asked * STEEL, unit: 'kg/m' },
  made_mass: { value: made * STEEL, unit: 'kg/m' },
  times: { value: made / asked, unit: 'ratio' },
});

function filletCost(how: Mistake, asked: JobSheet, made: JobSheet): Message {
  const [right, wrong] = [specifiedSize(asked), specifiedSize(made)];
  const change = roundHalfAway(100 * Math.abs(1 - wrong.throat / right.throat), 0);
  if (how === 'legsSwapped') {
    return {
      key: 'symbol_cost_legs_swapped',
      values: {
        leg1: mm(right.leg1),
        leg2: mm(right.leg2),
        short_plate: right.leg1 > right.leg2 ? 1 : 2,
        short: mm(Math.abs(right.leg1 - right.leg2)),
        throat: mm(right.throat),
        area: { value: specifiedAreaOf(asked), unit: 'mm2' },
        mass: { value: specifiedAreaOf(asked) * STEEL, unit: 'kg/m' },
      },
    };
  }
  return {
    key: how === 'throatForLeg' ? 'symbol_cost_throat_for_leg' : 'symbol_cost_leg_for_throat',
    values: {
      asked_leg: mm(right.leg1),
      asked_throat: mm(right.throat),
      made_leg: mm(wrong.leg1),
      made_throat: mm(wrong.throat),
      percent: change,
      ...metal(specifiedAreaOf(asked), specifiedAreaOf(made)),
    },
  };
}

/** Void of the groove that a sheet asks for between the joint's plates, set without misalignment, mm². */
function grooveArea(joint: ButtJoint, { groove }: JobSheet): number | null {
  const angle = askedOf(groove.grooveAngle);
  const plates = faceKind(joint) === 'V' || faceKind(joint) === 'U' ? 2 : 1;
  const opening = askedOf(groove.rootOpening);
  const rootFace = askedOf(groove.rootFace);
  const faces = rootFace === null ? null : enteredToMm(rootFace);
  const asAsked: ButtJoint = {
    ...joint,
    stage: 'fitUp',
    offset: 0,
    angularMisalignment: 0,
    bevelAngle1: angle === null ? joint.bevelAngle1 : angle / plates,
    bevelAngle2: angle === null ? joint.bevelAngle2 : angle / plates,
    ...(angle !== null && rootFollowsFace(joint)
      ? { rootBevelAngle1: angle / plates, rootBevelAngle2: angle / plates }
      : {}),
    rootOpening: opening === null ? joint.rootOpening : enteredToMm(opening),
    rootFace1: faces ?? joint.rootFace1,
    rootFace2: faces ?? joint.rootFace2,
  };
  try {
    return measure(buildButt(asAsked)).values.grooveArea?.value ?? null;
  } catch (error) {
    // the sheet asks for a groove that these plates can't have: its area is nobody's
    if (error instanceof JointError) return null;
    throw error;
  }
}

function angleCost(asked: JobSheet, made: JobSheet, joint: ButtJoint): Message | null {
  const angle = askedOf(asked.groove.grooveAngle);
  const [right, wrong] = [grooveArea(joint, asked), grooveArea(joint, made)];
  if (angle === null || right === null || wrong === null || right === 0) return null;
  return {
    key: 'symbol_cost_angle_for_each',
    values: {
      angle: deg(angle),
      half: deg(angle / 2),
      both: deg(2 * angle),
      ...metal(right, wrong),
    },
  };
}

/** The two sides change places; nothing to mistake where both ask for the same. */
function onWrongSide(symbol: WeldSymbol, asked: JobSheet, joint: Joint): Misreading | null {
  const read: WeldSymbol = { ...symbol, arrowSide: symbol.otherSide, otherSide: symbol.arrowSide };
  const cost =
    joint.kind === 'fillet' ? wrongSideOfFillet(asked) : wrongSideOfGroove(symbol, asked, joint);
  return cost === null ? null : { how: 'wrongSide', symbol: read, sheet: asked, cost };
}

function wrongSideOfFillet(asked: JobSheet): Message {
  const { leg1, throat } = specifiedSize(asked);
  const area = specifiedAreaOf(asked);
  return {
    key: 'symbol_cost_wrong_side_fillet',
    values: { leg: mm(leg1), throat: mm(throat), ...metal(area, 2 * area) },
  };
}

function wrongSideOfGroove(symbol: WeldSymbol, asked: JobSheet, joint: ButtJoint): Message | null {
  const { arrowSide, otherSide } = symbol;
  const area = grooveArea(joint, asked);
  if (area === null) return null;
  const whole: Record<string, MessageValue> = {
    area: { value: area, unit: 'mm2' },
    mass: { value: area * STEEL, unit: 'kg/m' },
  };
  if (arrowSide !== null && arrowSide.kind === otherSide?.kind) {
    const touchesFace = marksOf(symbol, joint).arrowSide === 'face';
    const depths = preparedDepths(joint, asked);
    const [here, there] = touchesFace ? [depths.face, depths.root] : [depths.root, depths.face];
    if (here !== null && there !== null && isUneven(joint)) {
      const values = { asked: mm(enteredToMm(here)), made: mm(enteredToMm(there)), ...whole };
      return { key: 'symbol_cost_wrong_side_depths', values };
    }
    const [one, other] = [arrowSide.grooveAngle, otherSide.grooveAngle];
    if (one === null || other === null || one === other) return null;
    const values = { asked: deg(one), made: deg(other), ...whole };
    return { key: 'symbol_cost_wrong_side_angles', values };
  }
  const backed = arrowSide !== null && otherSide !== null;
  return {
    key: backed ? 'symbol_cost_wrong_side_backed' : 'symbol_cost_wrong_side_groove',
    values: whole,
  };
}
