import type { ButtJoint } from '../joint.ts';
import { inMm, refuse } from '../refuse.ts';
import { checkUndercut, faceUndercut, undercutIn, type Undercut } from '../undercut.ts';
import { LEAST_LENGTH, setbackAt } from './edge-preparation.ts';
import { highReach, lowReach, type WeldEnd } from './fusion.ts';
import { both, type Pair } from './pair.ts';
import { heightOn, place } from './plate-frame.ts';
import type { SetPlate, SetUp } from './set-up.ts';

/** Plate drawn beyond the outermost toe, mm; the view draws a break line there. */
export const PLATE_BEYOND = 60;
/** Metal that an undercut leaves between itself and the fusion boundary, mm. */
const UNDER_UNDERCUT = 0.05;
/** Depth of a rounded undercut over its width, at most: its side then leans by a degree. */
const STEEPEST = 0.49;

/** The ends of the weld on one plate, and the undercuts beside them. */
export interface PlateEnds {
  readonly root: WeldEnd;
  readonly face: WeldEnd;
  /** what a two-sided joint leaves unfused in the middle: top of the root weld, bottom of the face weld */
  readonly unfusedMiddle: Pair<WeldEnd> | null;
  readonly faceUndercut: Undercut;
  readonly rootUndercut: Undercut;
}

/** The ends of the weld on both plates. */
export function weldEnds(joint: ButtJoint, set: SetUp, seated: Pair<boolean>): Pair<PlateEnds> {
  const middles = unfusedMiddles(joint, set);
  return both((i) => {
    const plate = set.plates[i];
    const onFace = faceUndercut(joint, plate.number);
    const onRoot = undercutIn(joint, ROOT_FIELDS[plate.number]);
    const ends: PlateEnds = {
      face: faceEnd(joint, plate, onFace),
      root: rootEnd(joint, set, plate, seated[i], onRoot),
      unfusedMiddle: middles && [onEdge(plate, middles[i][0]), onEdge(plate, middles[i][1])],
      faceUndercut: onFace,
      rootUndercut: onRoot,
    };
    checkOpen(plate, ends.face, set.contact?.high[i] ?? -Infinity);
    checkRoom(plate, ends);
    return ends;
  });
}

const ROOT_FIELDS = {
  1: { depth: 'rootUndercut1Depth', width: 'rootUndercut1Width', shape: 'rootUndercut1Shape' },
  2: { depth: 'rootUndercut2Depth', width: 'rootUndercut2Width', shape: 'rootUndercut2Shape' },
} as const;

function faceEnd(joint: ButtJoint, plate: SetPlate, undercut: Undercut): WeldEnd {
  const { number, edge } = plate;
  const [past, drop, overlap] =
    number === 1
      ? [joint.capPast1, joint.capDrop1, joint.overlap1]
      : [joint.capPast2, joint.capDrop2, joint.overlap2];
  const shield = shieldFor(undercut, edge.thickness);
  // a toe is rolled over or gouged beside, not both
  if (shield > 0 && overlap > 0) {
    refuse(`overlap${number}`, 0, 'joint_error_overlap_with_undercut', { plate: number });
  }
  if (drop === 0) {
    const toe = { x: setbackAt(edge, edge.thickness) + past, y: edge.thickness };
    return { toe, onEdge: false, shield, full: false };
  }
  // a face can't both stop short of the groove edge and run past it
  if (past > 0) refuse(`capDrop${number}`, 0, 'joint_error_drop_and_past');
  // metal rolls over onto a surface, which a toe inside the groove doesn't have
  if (overlap > 0) {
    refuse(`overlap${number}`, 0, 'joint_error_overlap_inside_groove');
  }
  return onEdge(plate, edge.thickness - drop, shield);
}

function rootEnd(
  joint: ButtJoint,
  set: SetUp,
  plate: SetPlate,
  seated: boolean,
  undercut: Undercut,
): WeldEnd {
  const { number, edge } = plate;
  if (joint.backing === 'strip') {
    // the root surface beside the weld is covered, or hidden in a gap over the strip
    if (undercut.depth > 0) refuse(undercut.depthField, 0, 'joint_error_undercut_behind_backing');
    const setback = setbackAt(edge, 0) + (seated ? joint.fusionDepth : 0);
    return { toe: { x: setback, y: 0 }, onEdge: false, shield: 0, full: seated };
  }
  const shield = shieldFor(undercut, edge.thickness);
  const unfused = joint.incompletePenetration;
  if (unfused > 0 && !set.twoSided) {
    // an undercut reaching past the unfused edge would leave more than that unfused
    if (shield > unfused) {
      const bound = Math.max(0, unfused - UNDER_UNDERCUT);
      refuse(undercut.depthField, bound, 'joint_error_undercut_beside_unfused_root', {
        unfused: inMm(unfused),
      });
    }
    return onEdge(plate, unfused, shield);
  }
  const toe = { x: setbackAt(edge, 0) + (number === 1 ? joint.rootPast1 : joint.rootPast2), y: 0 };
  return { toe, onEdge: false, shield, full: false };
}

/** Depth to which the fusion boundary keeps to the weld's side of an undercut that its plate can hold. */
function shieldFor(undercut: Undercut, thickness: number): number {
  const { depth, width, shape, depthField } = undercut;
  checkUndercut(undercut, thickness, PLATE_BEYOND, 0);
  // a side that goes straight down would leave a blade of plate without thickness against the weld
  const deepest = STEEPEST * width;
  if (shape === 'rounded' && depth > deepest) {
    refuse(depthField, deepest, 'joint_error_undercut_side_upright', { deepest: inMm(deepest) });
  }
  return depth > 0 ? depth + UNDER_UNDERCUT : 0;
}

function onEdge({ edge }: SetPlate, height: number, shield = 0): WeldEnd {
  return { toe: { x: setbackAt(edge, height), y: height }, onEdge: true, shield, full: false };
}

/**
 * Heights between which a two-sided joint is left unfused on each plate: centred
 * on the root face, and on a square plate 2 level with plate 1's; null for none.
 */
function unfusedMiddles(joint: ButtJoint, { plates, twoSided }: SetUp): Pair<Pair<number>> | null {
  const height = joint.incompletePenetration;
  if (!twoSided || height === 0) return null;
  const noseMiddle = ({ edge }: SetPlate): number =>
    edge.rootFace === null
      ? (edge.rootBevel?.b.y ?? 0)
      : (edge.rootFace.a.y + edge.rootFace.b.y) / 2;
  const middle1 = noseMiddle(plates[0]);
  const middle2 =
    plates[1].edge.rootBevel === null
      ? heightOn(plates[1].frame, place(plates[0].frame, { x: 0, y: middle1 }))
      : noseMiddle(plates[1]);
  const around = (middle: number): Pair<number> => [middle - height / 2, middle + height / 2];
  return [around(middle1), around(middle2)];
}

/** A face inside the groove must lie above where the edges touch, and so must an undercut beside it. */
function checkOpen({ number, edge }: SetPlate, face: WeldEnd, touchingTo: number): void {
  if (!face.onEdge || highReach(face, edge.thickness).free > touchingTo + LEAST_LENGTH) return;
  const room = edge.thickness - touchingTo - 2 * LEAST_LENGTH;
  const dropTooDeep = edge.thickness - face.toe.y > room;
  refuse(
    dropTooDeep ? `capDrop${number}` : `undercut${number}Depth`,
    dropTooDeep && room > 0 ? room : null,
    'joint_error_drop_to_touching_edges',
  );
}

/** Each weld must be left some height to fuse to, on either plate, and no undercut may open into the groove. */
function checkRoom({ number, edge }: SetPlate, { root, face, unfusedMiddle }: PlateEnds): void {
  const low = lowReach(root).free;
  const high = highReach(face, edge.thickness).free;
  const spans =
    unfusedMiddle === null
      ? [high - low]
      : [unfusedMiddle[0].toe.y - low, high - unfusedMiddle[1].toe.y];
  if (spans.some((span) => span < LEAST_LENGTH)) {
    const flaws = [
      { field: 'incompletePenetration', there: unfusedMiddle !== null || root.onEdge },
      { field: `rootUndercut${number}Depth`, there: root.shield > 0 },
      { field: `capDrop${number}`, there: face.onEdge },
    ];
    const field = flaws.find(({ there }) => there)?.field ?? `undercut${number}Depth`;
    refuse(field, null, 'joint_error_nothing_left_to_fuse');
  }
  // under an undercut the boundary, or the bare edge, must not lie farther back than the undercut begins
  const brim = (end: WeldEnd, height: number): number =>
    end.onEdge ? setbackAt(edge, height) : end.toe.x;
  if (face.shield > 0 && setbackAt(edge, high) > brim(face, edge.thickness)) {
    refuse(`undercut${number}Depth`, null, 'joint_error_undercut_into_groove');
  }
  if (root.shield > 0 && setbackAt(edge, low) > brim(root, 0)) {
    refuse(`rootUndercut${number}Depth`, null, 'joint_error_undercut_into_groove');
  }
}
