import { near, nearPoint, reverseContour, TOLERANCE } from '../../geometry/index.ts';
import type { Contour, Region } from '../../geometry/index.ts';
import type { ButtJoint } from '../joint.ts';
import { refuse } from '../refuse.ts';
import { weldOnBacking, type Backing } from './backing.ts';
import { closure, faceBead, rootBead } from './beads.ts';
import { checkClear, checkThickness, type Neighbours } from './clearance.ts';
import { meetings, type BeadMeetings, type Bound, type Wall } from './deposit.ts';
import { fusionBoundary, type WeldEnd } from './fusion.ts';
import { heightOver, within } from './groove.ts';
import { outlineThrough, through, via } from './outline.ts';
import { both, type Pair } from './pair.ts';
import { cornersOf, place, placeContour } from './plate-frame.ts';
import { LEAST_GAP, type SetUp } from './set-up.ts';
import { wallsBetween } from './walls.ts';
import type { PlateWalk } from './walks.ts';
import type { PlateEnds } from './weld-ends.ts';

/** One weld of the section, between its bounds and the fusion boundaries. */
export interface Weld {
  readonly bottom: Bound;
  readonly top: Bound;
  /** on each plate, from lower end to upper */
  readonly fusion: Pair<Contour>;
  /** the plates as prepared between its ends */
  readonly walls: Pair<Wall>;
}

/** The welds of the joint from root to face: one, or two with an unfused middle between them. */
export function weldsOf(
  joint: ButtJoint,
  set: SetUp,
  ends: Pair<PlateEnds>,
  backing: Backing | null,
): readonly Weld[] {
  const weld = (bottom: Bound, top: Bound, lower: Pair<WeldEnd>, upper: Pair<WeldEnd>): Weld => {
    checkThickness(bottom, top);
    return {
      bottom,
      top,
      fusion: both((i) => {
        const { edge, frame } = set.plates[i];
        return placeContour(frame, fusionBoundary(edge, joint.fusionDepth, lower[i], upper[i]));
      }),
      walls: wallsBetween(set, lower, upper),
    };
  };
  const face = both((i) => ends[i].face);
  const root = both((i) => ends[i].root);
  const top = faceBead(joint, set, ends);
  if (backing !== null) {
    const from = both((i) => place(set.plates[i].frame, root[i].toe));
    return [weld(closure(weldOnBacking(backing, joint, from)), top, root, face)];
  }
  const [middle1, middle2] = [ends[0].unfusedMiddle, ends[1].unfusedMiddle];
  if (middle1 !== null && middle2 !== null) {
    const below = [middle1[0], middle2[0]] as const;
    const above = [middle1[1], middle2[1]] as const;
    return [
      weld(rootBead(joint, set, ends), straight(set, below), root, below),
      weld(straight(set, above), top, above, face),
    ];
  }
  if (root[0].onEdge) return [weld(straight(set, root), top, root, face)];
  return [weld(rootBead(joint, set, ends), top, root, face)];
}

/** Heights between which a plate's edge is left unfused by incomplete penetration; the same twice for none. */
export function unfusedHeights({ root, unfusedMiddle }: PlateEnds): Pair<number> {
  if (unfusedMiddle !== null) return [unfusedMiddle[0].toe.y, unfusedMiddle[1].toe.y];
  return [0, root.onEdge ? root.toe.y : 0];
}

/** Where the weld's beads meet the plates as prepared again; refused where a bead runs into a plate. */
export function beadMeetings(
  { bottom, top, fusion, walls }: Weld,
  faceWalks: Pair<PlateWalk>,
  rootWalks: Pair<PlateWalk>,
): { readonly bottom: BeadMeetings | null; readonly top: BeadMeetings | null } {
  const check = (bead: Bound, walks: Pair<PlateWalk>, side: 'face' | 'root'): BeadMeetings => {
    const found = meetings(bead, walls);
    const inward = (climb: Contour): Contour => (side === 'face' ? reverseContour(climb) : climb);
    const neighbours = both<Neighbours>((i) => ({
      outside: walks[i].outside,
      fusion: inward(fusion[i]),
      prepared: inward(walls[i].contour),
      meets: found[i].length > 0,
      turn: (side === 'face') === (i === 0) ? -1 : 1,
    }));
    checkClear(bead, neighbours);
    return found;
  };
  return {
    bottom: bottom.isBead ? check(bottom, rootWalks, 'root') : null,
    top: top.isBead ? check(top, faceWalks, 'face') : null,
  };
}

/** The weld metal, melted base metal included. */
export function weldRegion({ bottom, top, fusion }: Weld): Region {
  return outlineThrough(
    bottom.contour,
    fusion[1],
    reverseContour(top.contour),
    reverseContour(fusion[0]),
  );
}

/**
 * A straight closure between the ends of the unfused edges. Refused where it
 * would cut across an edge: a corner higher up than its edge's end lies over
 * it, a lower one under it. Along edges that touch it may run on them.
 */
function straight({ plates, contact }: SetUp, at: Pair<WeldEnd>): Bound {
  const ends = both((i) => place(plates[i].frame, at[i].toe));
  // closed edges that end at one point
  if (nearPoint(...ends)) return closure([]);
  const least = contact === null ? LEAST_GAP : -TOLERANCE;
  const clear = both((i) => {
    const { edge, frame } = plates[i];
    const { y: end } = at[i].toe;
    const corners = cornersOf(edge).filter(({ y }) => !near(y, end));
    return corners.every((corner) => {
      const beside = within(ends, [place(frame, corner)]);
      return beside.every((point) => heightOver(ends, point) * Math.sign(corner.y - end) > least);
    });
  });
  if (!clear[0] || !clear[1]) {
    refuse('incompletePenetration', null, 'joint_error_unfused_end_across_edge');
  }
  return closure(through(via(ends[0]), via(ends[1])));
}
