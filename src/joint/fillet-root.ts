import { add, arcThroughSagitta, distance, line, point, scale } from '../geometry/index.ts';
import type { Contour, Point, Segment } from '../geometry/index.ts';
import type { FilletSetUp } from './fillet-set-up.ts';
import type { FilletJoint } from './joint.ts';
import { isNone, sameSpot } from './least-size.ts';
import { inMm, refuse } from './refuse.ts';

/** N on each plate: where the weld metal ends along the faying surfaces. The same point when they touch there. */
export interface WeldRoots {
  readonly onPlate1: Point;
  readonly onPlate2: Point;
}

const O = point(0, 0);
/** Fusion goes at most this share of the metal under a surface deep. */
const DEEPEST_SHARE = 0.6;
/** Fusion leaves its own chord at no more than this angle, radians. */
const STEEPEST = Math.PI / 3;
/** Beside an undercut, which may set off square to the surface, fusion may not lean as far; radians. */
const LEAST_CORNER = (2 * Math.PI) / 180;
const SQUARE = Math.PI / 2;

/** The weld roots; a root penetration that the joint cannot take is refused. */
export function weldRoots(joint: FilletJoint, setUp: FilletSetUp): WeldRoots {
  const q = joint.rootPenetration;
  // fused to the theoretical root and no farther
  if (isNone(q)) return { onPlate1: O, onPlate2: setUp.corner };

  if (q > setUp.deepestPenetration) {
    refuse('rootPenetration', setUp.deepestPenetration, 'joint_error_penetration_through_root', {
      penetration: inMm(q),
      room: inMm(setUp.deepestPenetration),
    });
  }
  const contactLeg = Math.min(joint.leg1, joint.leg2 - setUp.cornerAlong);
  if (q > contactLeg) {
    refuse('rootPenetration', contactLeg, 'joint_error_penetration_over_leg', {
      penetration: inMm(q),
      leg: inMm(contactLeg),
    });
  }
  const onPlate1 = point(-q, 0);
  const onPlate2 = add(setUp.corner, scale(setUp.faying, q));
  // touching faying surfaces have one root between them
  return { onPlate1, onPlate2: sameSpot(onPlate1, onPlate2) ? onPlate1 : onPlate2 };
}

/** Straight from root to root across a gap; empty when they are one point. */
export function acrossGap(from: Point, to: Point): Contour {
  return sameSpot(from, to) ? [] : [line(from, to)];
}

/**
 * The fusion boundary in each plate: [root to toe 1 in plate 1, toe 2 to root in
 * plate 2], one arc each. Its sagitta is the joint's `fusionDepth`, less where
 * the plate is thin or its corner narrow: drawn to be seen, never measured.
 */
export function fusionBoundary(
  joint: FilletJoint,
  setUp: FilletSetUp,
  roots: WeldRoots,
  toes: readonly [Point, Point],
): readonly [Segment, Segment] {
  const { cornerAlong, cornerAngle, endAngle, depth } = setUp;
  const sunk = joint.rootPenetration * Math.sin(cornerAngle);
  // the boundary's own chord already leans this much into plate 2 at its toe
  const contact = joint.leg2 - cornerAlong;
  const lean = Math.atan2(sunk, contact - joint.rootPenetration * Math.cos(cornerAngle));
  const steepest2 = Math.min(
    STEEPEST,
    cornerAngle - LEAST_CORNER,
    Math.min(SQUARE, endAngle[1]) - LEAST_CORNER - lean,
  );
  const sagitta = (from: Point, to: Point, steepest: number, room: number): number =>
    Math.min(
      joint.fusionDepth,
      (distance(from, to) / 2) * Math.tan(steepest / 2),
      DEEPEST_SHARE * room,
    );
  const [toe1, toe2] = toes;
  const { onPlate1, onPlate2 } = roots;
  // both lie to the right of the walk round the weld
  return [
    arcThroughSagitta(onPlate1, toe1, -sagitta(onPlate1, toe1, STEEPEST, depth[0])),
    arcThroughSagitta(toe2, onPlate2, -sagitta(toe2, onPlate2, steepest2, depth[1] - sunk)),
  ];
}
