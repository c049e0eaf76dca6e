import {
  dot,
  intersectContours,
  isSimpleOutline,
  line,
  point,
  polyline,
  reverseContour,
  reverseSegment,
  scale,
  tangentAt,
} from '../geometry/index.ts';
import type { Contour, Point, Region, Segment } from '../geometry/index.ts';
import { filletFace } from './fillet-face.ts';
import { acrossGap, fusionBoundary, weldRoots, type WeldRoots } from './fillet-root.ts';
import { setUpFillet, type FilletSetUp } from './fillet-set-up.ts';
import { filletSurface, meltedEdge, surfaceAhead } from './fillet-surface.ts';
import type { FilletJoint } from './joint.ts';
import { isNone, sameSpot } from './least-size.ts';
import { inMm, refuse } from './refuse.ts';
import type { Section } from './section.ts';
import { assembleSide } from './side.ts';
import type { SurfaceWalk } from './surface-walk.ts';

const O = point(0, 0);
/** Leg 2 reaches at least this far past the corner of plate 2, mm. */
const LEAST_CONTACT = 0.5;

/** The exact section of a fillet joint: tee, lap or outside corner. */
export function buildFillet(joint: FilletJoint): Section {
  const setUp = setUpFillet(joint);
  checkLegs(joint, setUp);
  return joint.stage === 'fitUp' ? fitUp(joint, setUp) : welded(joint, setUp);
}

function welded(joint: FilletJoint, setUp: FilletSetUp): Section {
  const { surfaces } = setUp;
  const toes = [
    scale(surfaces[0].along, joint.leg1),
    scale(surfaces[1].along, joint.leg2),
  ] as const;
  const roots = weldRoots(joint, setUp);
  const face = filletFace(joint, surfaces, toes);
  const [fusion1, fusion2] = fusionBoundary(joint, setUp, roots, toes);
  const weld = [fusion1, ...face, fusion2, ...acrossGap(roots.onPlate2, roots.onPlate1)];
  // only a rolled-over toe can bring the face back onto itself
  if (joint.overlap1 + joint.overlap2 > 0 && !isSimpleOutline(weld)) {
    refuse(joint.overlap1 > 0 ? 'overlap1' : 'overlap2', 0, 'joint_error_overlap_meets_itself');
  }

  const lap = joint.arrangement === 'lap';
  const path2 = lap ? meltedEdge(joint, setUp, toes[1]) : surfaceAhead(setUp, 2, toes[1]);
  const walk1 = filletSurface(joint, setUp, 1, surfaceAhead(setUp, 1, toes[0]), face);
  const walk2 = filletSurface(joint, setUp, 2, path2, reverseContour(face));
  const spatter = [...walk1.spatter, ...walk2.spatter];
  const touches = (bump: Region, other: Contour): boolean =>
    intersectContours(bump, other).length > 0;
  if (
    spatter.some((bump) => touches(bump, face)) ||
    walk1.spatter.some((bump) => walk2.spatter.some((other) => touches(bump, other)))
  ) {
    refuse('spatter', null, 'joint_error_spatter_in_weld');
  }

  return sectionOf(joint, setUp, {
    plates: [
      plate1(setUp, reverseContour(walk1.bare), [reverseSegment(fusion1)], roots.onPlate1),
      plate2(setUp, walk2.bare, roots.onPlate2, [reverseSegment(fusion2)]),
    ],
    welds: [weld],
    deposits: deposits(setUp, roots, face, toes),
    spatter,
    face: assembleSide({
      surfaces,
      grooveEdges: null,
      bead: face,
      walks: [walk1, walk2],
      between: [],
    }),
    filletRoot: {
      weldRoots: sameSpot(roots.onPlate1, roots.onPlate2)
        ? [roots.onPlate1]
        : [roots.onPlate2, roots.onPlate1],
      plate2Corner: setUp.corner,
      edge: lap ? straightEdge(walk2, setUp) : null,
    },
  });
}

function fitUp(joint: FilletJoint, setUp: FilletSetUp): Section {
  const { corner, surfaces } = setUp;
  const path1 = surfaceAhead(setUp, 1, O);
  const path2 = surfaceAhead(setUp, 2, corner);
  return sectionOf(joint, setUp, {
    plates: [plate1(setUp, reverseContour(path1), [], O), plate2(setUp, path2, corner, [])],
    welds: [],
    deposits: [],
    spatter: [],
    face: assembleSide({
      surfaces,
      grooveEdges: null,
      bead: null,
      walks: [
        { beyond: path1, undercut: [] },
        { beyond: path2, undercut: [] },
      ],
      between: acrossGap(O, corner),
    }),
    filletRoot: {
      weldRoots: sameSpot(O, corner) ? [O] : [corner, O],
      plate2Corner: corner,
      edge: joint.arrangement === 'lap' ? path2.slice(0, 1) : null,
    },
  });
}

type Shape = Pick<Section, 'plates' | 'welds' | 'deposits' | 'spatter' | 'face' | 'filletRoot'>;

// Property by property: an object spread into another is many times slower, and this is built at every move.
function sectionOf({ stage, arrangement }: FilletJoint, setUp: FilletSetUp, shape: Shape): Section {
  return {
    kind: 'fillet',
    stage,
    form: arrangement,
    product: 'plate',
    plates: shape.plates,
    plateSurfaces: setUp.plateSurfaces,
    welds: shape.welds,
    deposits: shape.deposits,
    backing: null,
    spatter: shape.spatter,
    face: shape.face,
    root: null,
    groove: null,
    filletRoot: shape.filletRoot,
  };
}

function checkLegs(joint: FilletJoint, setUp: FilletSetUp): void {
  const { surfaceEnd, cornerAlong } = setUp;
  for (const plate of [1, 2] as const) {
    const end = surfaceEnd[plate === 1 ? 0 : 1];
    const leg = joint[`leg${plate}`];
    if (leg > end) {
      refuse(`leg${plate}`, end > 0 ? end : null, 'joint_error_leg_past_surface', {
        leg: inMm(leg),
        surface: inMm(Math.max(0, end)),
      });
    }
  }
  if (joint.leg2 < cornerAlong + LEAST_CONTACT) {
    refuse('leg2', cornerAlong + LEAST_CONTACT, 'joint_error_leg_within_gap', {
      leg: inMm(joint.leg2),
      gap: inMm(cornerAlong),
    });
  }
  for (const plate of [1, 2] as const) {
    if (!isNone(joint[`overlap${plate}`]) && !isNone(joint[`undercut${plate}Depth`])) {
      refuse(`overlap${plate}`, 0, 'joint_error_overlap_with_undercut', { plate });
    }
  }
}

/** Plate 1 counter-clockwise: its surface towards the toe, the fusion boundary, and round its back. */
function plate1(
  { behind, ahead }: FilletSetUp,
  surface: Contour,
  fusion: readonly Segment[],
  root: Point,
): Region {
  const far = ahead[0][ahead[0].length - 1] as Point;
  const back = behind[0];
  const rest = sameSpot(root, back[0] as Point) ? back.slice(1) : back;
  return [...surface, ...fusion, ...polyline([root, ...rest, far])];
}

/** Plate 2 counter-clockwise: its surface away from the toe, round its back, and the fusion boundary. */
function plate2(
  { behind, ahead }: FilletSetUp,
  surface: Contour,
  root: Point,
  fusion: readonly Segment[],
): Region {
  const far = ahead[1][ahead[1].length - 1] as Point;
  return [...surface, ...polyline([far, ...behind[1], root]), ...fusion];
}

/**
 * Weld metal outside the plates as prepared. With metal in the gap that too;
 * an empty gap ends it on the straight line from plate 2's corner to O.
 */
function deposits(
  { corner, cornerAlong }: FilletSetUp,
  roots: WeldRoots,
  face: Contour,
  [toe1, toe2]: readonly [Point, Point],
): readonly Region[] {
  const outside = [line(O, toe1), ...face, line(toe2, corner)];
  const { onPlate1, onPlate2 } = roots;
  const gapFilled = !sameSpot(onPlate2, corner) && !sameSpot(onPlate1, onPlate2);
  if (cornerAlong > 0) {
    return [
      [...outside, ...(gapFilled ? polyline([corner, onPlate2, onPlate1, O]) : [line(corner, O)])],
    ];
  }
  // a square end that touches plate 1 only at its corner: metal behind the root meets the rest in a point
  return gapFilled ? [outside, polyline([O, onPlate2, onPlate1], true)] : [outside];
}

/** What is left of a lap's end face: the first piece past toe 2 and its undercut, unless the melted edge or the top begins there. */
function straightEdge({ bare, undercut }: SurfaceWalk, { surfaces }: FilletSetUp): Contour {
  const first = bare[undercut.length];
  // the end face runs square to plate 2's carrying normal, the top does not
  const onEndFace = first?.bulge === 0 && isNone(dot(tangentAt(first, 0), surfaces[1].normal));
  return first && onEndFace ? [first] : [];
}
