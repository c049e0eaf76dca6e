import { isSimpleOutline } from '../../geometry/index.ts';
import type { Contour } from '../../geometry/index.ts';
import type { ButtJoint } from '../joint.ts';
import { refuse } from '../refuse.ts';
import type { Section, Side } from '../section.ts';
import { assembleSide } from '../side.ts';
import { backingOf, stripRegion, topOfBacking } from './backing.ts';
import { closure } from './beads.ts';
import { depositsOf } from './deposit.ts';
import { grooveOf } from './groove.ts';
import { both, type Pair } from './pair.ts';
import { plateRegion } from './plate-region.ts';
import { rootWithoutBead } from './root-side.ts';
import { edgeBetween, type SetUp } from './set-up.ts';
import { bareBevel, walkFace, walkRoot, type PlateWalk } from './walks.ts';
import { weldEnds } from './weld-ends.ts';
import { beadMeetings, unfusedHeights, weldRegion, weldsOf, type Weld } from './welds.ts';

/** What each stage of a butt joint makes of the plates; the rest are labels. */
export type Shapes = Pick<
  Section,
  'plates' | 'welds' | 'deposits' | 'backing' | 'spatter' | 'face' | 'root' | 'groove'
>;

/** The joint after welding. */
export function welded(joint: ButtJoint, set: SetUp): Shapes {
  const backing = backingOf(joint, set);
  const ends = weldEnds(joint, set, backing?.seated ?? [false, false]);
  const welds = weldsOf(joint, set, ends, backing);
  const { bottom } = welds[0] as Weld;
  const { top } = welds[welds.length - 1] as Weld;
  const faceWalks = both((i) => walkFace(joint, set.plates[i], ends[i], top.contour));
  const openTo = both((i) => set.contact?.low[i] ?? Infinity);
  const rootWalks = both((i) => walkRoot(set.plates[i], ends[i], openTo[i]));
  const deposits = welds.flatMap((weld) => {
    const found = beadMeetings(weld, faceWalks, rootWalks);
    const under = backing === null ? weld.bottom : closure(topOfBacking(backing, set));
    return depositsOf(weld.walls, under, weld.top, found.bottom, found.top);
  });
  const regions = welds.map(weldRegion);
  // only a rolled-over toe can bring the face back onto itself
  if (joint.overlap1 + joint.overlap2 > 0 && !regions.every(isSimpleOutline)) {
    refuse(joint.overlap1 > 0 ? 'overlap1' : 'overlap2', 0, 'joint_error_overlap_meets_itself');
  }
  const unfused = both((i) => edgeBetween(set.plates[i], ...unfusedHeights(ends[i])));
  const bareBevels = both((i) => bareBevel(set.plates[i], ends[i]));
  const plates = both((i) => {
    const [first, second] = welds;
    const fused = [...(first?.fusion[i] ?? [])];
    const climb = second ? [...fused, ...unfused[i], ...second.fusion[i]] : fused;
    return plateRegion(set.plates[i].number, rootWalks[i].bare, climb, faceWalks[i].bare);
  });
  return {
    plates,
    welds: regions,
    deposits,
    backing: backing && stripRegion(backing, bottom.contour),
    spatter: [...faceWalks[0].spatter, ...faceWalks[1].spatter],
    face: beadSide(set, 'face', top.contour, faceWalks),
    root: bottom.isBead
      ? beadSide(set, 'root', bottom.contour, rootWalks)
      : rootWithoutBead(set, rootWalks, backing),
    groove: grooveOf(
      set,
      both((i) => [...unfused[i], ...bareBevels[i]]),
    ),
  };
}

function beadSide(
  { plates }: SetUp,
  side: 'face' | 'root',
  bead: Contour,
  walks: Pair<PlateWalk>,
): Side {
  const surfaces = both((i) => plates[i][side]);
  const grooveEdges = both((i) => surfaces[i].origin);
  return assembleSide({ surfaces, grooveEdges, bead, walks, between: [] });
}
