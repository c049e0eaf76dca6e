import { arcThroughSagitta, distance, line, near, reverseContour } from '../../geometry/index.ts';
import type { Contour, Point, Region } from '../../geometry/index.ts';
import type { ButtJoint } from '../joint.ts';
import { inMm, refuse } from '../refuse.ts';
import { LEAST_LENGTH } from './edge-preparation.ts';
import { outlineThrough, through, via } from './outline.ts';
import { both, type Pair } from './pair.ts';
import type { SetPlate, SetUp } from './set-up.ts';

/** A strip lies at least this far past the weld that it carries, mm. */
const LEAST_LAP = 0.5;

/**
 * A backing strip: a rectangle parallel to plate 1, centred under the root
 * opening, its top at the lowest point that either root surface has above it.
 * A plate that lies higher leaves a gap over the strip.
 */
export interface Backing {
  readonly top: number;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  /** lies flat on the strip, plate 1 and plate 2 */
  readonly seated: Pair<boolean>;
  /** where the weld, or the opening at fit-up, stands on the strip: under each root groove edge */
  readonly feet: Pair<Point>;
}

/** The strip as the joint gives it; null when it has none. */
export function backingOf(joint: ButtJoint, set: SetUp): Backing | null {
  if (joint.backing === 'none') return null;
  if (set.twoSided) refuse('backing', null, 'joint_error_backing_two_sided');
  if (joint.stage === 'welded' && joint.incompletePenetration > 0) {
    refuse('incompletePenetration', 0, 'joint_error_backing_unfused_root');
  }
  const half = joint.backingWidth / 2;
  const [edge1, edge2] = [set.plates[0].root.origin, set.plates[1].root.origin];
  const end2 = rootSurfaceAt(set.plates[1], half);
  const top = Math.min(edge1.y, edge2.y, end2);
  const melted = joint.stage === 'welded' ? joint.fusionDepth : 0;
  const reach = Math.max(Math.abs(edge1.x), Math.abs(edge2.x)) + melted + LEAST_LAP;
  if (half < reach) {
    refuse('backingWidth', 2 * reach, 'joint_error_backing_too_narrow', { least: inMm(2 * reach) });
  }
  const seated = [
    near(edge1.y, top),
    near(edge2.y, top) && joint.angularMisalignment === 0,
  ] as const;
  // edges that touch over a gap: there is no way down to the strip
  if (!seated[0] && !seated[1] && Math.abs(edge1.x - edge2.x) < LEAST_LENGTH) {
    refuse('rootOpening', null, 'joint_error_no_opening_to_backing');
  }
  return {
    top,
    left: -half,
    right: half,
    bottom: top - joint.backingThickness,
    seated,
    feet: [
      { x: edge1.x, y: top },
      { x: edge2.x, y: top },
    ],
  };
}

/**
 * The underside of a weld on a strip, from its root end on plate 1 to that on
 * plate 2: melted a little way into the strip, and standing free across a gap.
 */
export function weldOnBacking(backing: Backing, joint: ButtJoint, ends: Pair<Point>): Contour {
  const [from, to] = both((i) => (backing.seated[i] ? ends[i] : backing.feet[i]));
  const width = distance(from, to);
  const depth = Math.min(joint.fusionDepth / 2, joint.backingThickness / 3, width / 4);
  const bed = [arcThroughSagitta(from, to, -depth)];
  return through(via(ends[0]), bed, via(ends[1]));
}

/** The same line at fit-up, and the limit of what counts as weld metal outside the plates: the strip not melted. */
export function topOfBacking({ feet }: Backing, set: SetUp): Contour {
  const [one, two] = set.plates;
  return through(via(one.root.origin), via(feet[0]), via(feet[1]), via(two.root.origin));
}

/** The strip as it is now: the rectangle less what has melted into the weld's underside. */
export function stripRegion(backing: Backing, underside: Contour): Region {
  const { top, left, right, bottom } = backing;
  const bed = underside.filter(({ a, b }) => near(a.y, top) && near(b.y, top));
  return outlineThrough(
    [line({ x: left, y: bottom }, { x: right, y: bottom })],
    via({ x: right, y: top }),
    reverseContour(bed),
    via({ x: left, y: top }),
  );
}

/**
 * The strip's exposed outline on the root side, from where it leaves plate 1's
 * root surface to where it meets plate 2's: round the strip, and into a gap
 * over it as far as the weld (or the root opening).
 */
export function roundBacking(backing: Backing, set: SetUp): Contour {
  const { top, left, right, bottom, feet } = backing;
  const [one, two] = set.plates;
  const rests = restsOn(backing, set);
  return through(
    ...(rests[0] ? [] : [via(one.root.origin), via(feet[0])]),
    via({ x: left, y: top }),
    via({ x: left, y: bottom }),
    via({ x: right, y: bottom }),
    via({ x: right, y: top }),
    ...(rests[1] ? [] : [via(feet[1]), via(two.root.origin)]),
  );
}

/**
 * Whether the strip's outer corner touches each plate, so that nothing is seen
 * between them. A plate turned down rests on that corner alone, over a closed gap.
 */
export function restsOn({ seated, right, top }: Backing, { plates }: SetUp): Pair<boolean> {
  return [seated[0], near(rootSurfaceAt(plates[1], right), top)];
}

/** Height in the section of plate 2's root surface line at an x. */
function rootSurfaceAt({ root }: SetPlate, x: number): number {
  return root.origin.y + ((x - root.origin.x) * root.along.y) / root.along.x;
}
