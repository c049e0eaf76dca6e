import { nearPoint, reverseContour, TOLERANCE } from '../../geometry/index.ts';
import type { Contour, Point, Region } from '../../geometry/index.ts';
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
import type { SetUp } from './set-up.ts';
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

/** The welds of the joint from root to face: one, or two with an unfused strip between them. */
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
  const pointsAt = (at: Pair<WeldEnd>): Pair<Point> =>
    both((i) => place(set.plates[i].frame, at[i].toe));
  const face = both((i) => ends[i].face);
  const root = both((i) => ends[i].root);
  const top = faceBead(joint, set, ends);
  if (backing !== null) {
    return [weld(closure(weldOnBacking(backing, joint, pointsAt(root))), top, root, face)];
  }
  const bare = both((i) => unfusedHeights(ends[i]));
  const [strip1, strip2] = [ends[0].strip, ends[1].strip];
  if (strip1 !== null && strip2 !== null) {
    const below = [strip1[0], strip2[0]] as const;
    const above = [strip1[1], strip2[1]] as const;
    return [
      weld(rootBead(joint, set, ends), straight(set, pointsAt(below), bare, 1), root, below),
      weld(straight(set, pointsAt(above), bare, -1), top, above, face),
    ];
  }
  if (root[0].onEdge) return [weld(straight(set, pointsAt(root), bare, -1), top, root, face)];
  return [weld(rootBead(joint, set, ends), top, root, face)];
}

/** Heights between which a plate's edge is left unfused by incomplete penetration; the same twice for none. */
export function unfusedHeights({ root, strip }: PlateEnds): Pair<number> {
  if (strip !== null) return [strip[0].toe.y, strip[1].toe.y];
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
 * A straight closure between the ends of the unfused edges. Refused when a
 * corner of a bare edge would stand through it into the weld, which lies above
 * it (`bareSide` -1) or below it (1).
 */
function straight(
  { plates }: SetUp,
  ends: Pair<Point>,
  bare: Pair<Pair<number>>,
  bareSide: 1 | -1,
): Bound {
  // closed edges that end at one point
  if (nearPoint(...ends)) return closure([]);
  const corners = ([0, 1] as const).flatMap((i) => {
    const [from, to] = bare[i];
    const { edge, frame } = plates[i];
    const between = cornersOf(edge).filter(({ y }) => y >= from && y < to);
    return between.map((corner) => place(frame, corner));
  });
  if (within(ends, corners).some((at) => heightOver(ends, at) * bareSide < -TOLERANCE)) {
    refuse('incompletePenetration', null, 'joint_error_bare_edge_into_weld');
  }
  return closure(through(via(ends[0]), via(ends[1])));
}
