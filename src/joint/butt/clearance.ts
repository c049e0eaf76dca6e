import {
  contourStart,
  cross,
  dot,
  extremeFromLine,
  intersectContours,
  nearPoint,
  reverseContour,
  tangentAt,
  TOLERANCE,
} from '../../geometry/index.ts';
import type { Contour, Point, Segment, Vector } from '../../geometry/index.ts';
import { refuse } from '../refuse.ts';
import type { Bound } from './deposit.ts';

/** Least angle between a bead and what lies on either side of it at its toe, radians. */
const LEAST_ANGLE = 1e-4;

/** What a bead must stay clear of at one of its toes; both run away from the toe. */
export interface Neighbours {
  /** the bare plate outside the weld, undercut left out */
  readonly outside: Contour;
  /** the fusion boundary, into the joint */
  readonly fusion: Contour;
  /** the plate as prepared, into the joint */
  readonly prepared: Contour;
  /** the bead meets the plate as prepared again */
  readonly meets: boolean;
  /** turning from the bare plate through the air to the bead: counter-clockwise 1, clockwise -1 */
  readonly turn: 1 | -1;
}

/**
 * Refuses a bead that runs into the plates: that leaves a toe below the fusion
 * boundary or under the plate's surface, or meets either farther on.
 */
export function checkClear(bead: Bound, neighbours: readonly [Neighbours, Neighbours]): void {
  const { field } = bead;
  const backwards = reverseContour(bead.contour);
  neighbours.forEach(({ outside, fusion, prepared, meets, turn }, i) => {
    const contour = i === 0 ? bead.contour : backwards;
    const toe = contourStart(contour);
    const outward = leaving(outside);
    const toBead = turnFrom(outward, leaving(contour), turn);
    const toFusion = turnFrom(outward, leaving(fusion), turn);
    // a bead that keeps off the plate as prepared keeps off what lies under its surface too
    const eaten = meets || toBead > turnFrom(outward, leaving(prepared), turn) - LEAST_ANGLE;
    // only a face that leans out over its toe can come down on the plate beside it
    const leansOut = extremeFromLine(contour, toe, outward).value > TOLERANCE;
    // a direction in the metal counts as under the surface when that is nearer than the boundary
    const under = toBead < LEAST_ANGLE || 2 * Math.PI - toBead < toBead - toFusion;
    if (under || (leansOut && meetsBeyond(contour, outside, toe))) {
      refuse(field, null, 'joint_error_bead_onto_plate');
    }
    if (toBead > toFusion - LEAST_ANGLE || (eaten && meetsBeyond(contour, fusion, toe))) {
      refuse(field, null, 'joint_error_bead_below_fusion');
    }
  });
}

/** Refuses a weld whose upper and lower bound meet: nothing of it would be left there. */
export function checkThickness(bottom: Bound, top: Bound): void {
  if (intersectContours(bottom.contour, top.contour).length === 0) return;
  refuse(top.isBead ? top.field : bottom.field, null, 'joint_error_bead_through_weld');
}

function meetsBeyond(bead: Contour, other: Contour, toe: Point): boolean {
  return intersectContours(bead, other).some(({ point }) => !nearPoint(point, toe));
}

function leaving(contour: Contour): Vector {
  return tangentAt(contour[0] as Segment, 0);
}

/** Angle from one direction to another, counted one way round, in [0, 2π). */
function turnFrom(from: Vector, to: Vector, turn: 1 | -1): number {
  const angle = Math.atan2(turn * cross(from, to), dot(from, to));
  return angle < 0 ? angle + 2 * Math.PI : angle;
}
