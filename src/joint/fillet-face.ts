import {
  crownTowards,
  distance,
  dot,
  extremeFromLine,
  pointAt,
  reverseContour,
  scale,
  subtract,
  tangentAt,
} from '../geometry/index.ts';
import type { Contour, Point, Segment } from '../geometry/index.ts';
import { bead, type BeadEnd } from './bead.ts';
import { profileFolds, type BeadShape } from './bead-profile.ts';
import type { FilletJoint, PlateNumber } from './joint.ts';
import { isNone } from './least-size.ts';
import { refuse } from './refuse.ts';
import type { SurfaceLine } from './section.ts';

/** A face leaves its plate at no flatter a slope (its sine), and comes no nearer to it farther on, mm. */
const LEAST_RISE = 0.01;
/** Past the nose of an overlap it stays at least this share of the overlap off the plate. */
const LEAST_ROLL_SHARE = 0.1;

/**
 * The face of a fillet from fused toe 1 to fused toe 2. Refused when it would
 * fold over, run into a plate or (hollow) pass behind the root: all that stays
 * between the two surface lines is in front of the root.
 */
export function filletFace(
  joint: FilletJoint,
  surfaces: readonly [SurfaceLine, SurfaceLine],
  toes: readonly [Point, Point],
): Contour {
  const shape: BeadShape = {
    rise: joint.convexity,
    shift: joint.crownShift,
    reverse: joint.reverseCurve,
    dip: 0,
  };
  const chord = distance(toes[0], toes[1]);
  if (profileFolds(chord, shape)) refuse('reverseCurve', null, 'joint_error_face_folds');
  const ends: readonly [BeadEnd, BeadEnd] = [
    { toe: toes[0], surface: surfaces[0], overlap: joint.overlap1, overlapField: 'overlap1' },
    { toe: toes[1], surface: surfaces[1], overlap: joint.overlap2, overlapField: 'overlap2' },
  ];
  const face = bead(ends, 'right', shape);
  if (!standsClear(face, surfaces[0], ends[0])) refuseFace(joint, 1, chord);
  if (!standsClear(reverseContour(face), surfaces[1], ends[1])) refuseFace(joint, 2, chord);
  return face;
}

/** Whether the face rises off this plate's surface at the toe and stays off it all the way. */
function standsClear(face: Contour, surface: SurfaceLine, end: BeadEnd): boolean {
  const { origin, normal } = surface;
  const down = scale(normal, -1);
  if (!isNone(end.overlap)) {
    // under-surface and nose stand off the plate by their own construction
    const clear = Math.min(LEAST_RISE, LEAST_ROLL_SHARE * end.overlap);
    return extremeFromLine(face.slice(2), origin, down).value < -clear;
  }
  const [atToe, ...rest] = face as readonly [Segment, ...Segment[]];
  if (dot(tangentAt(atToe, 0), normal) < LEAST_RISE) return false;
  // near the toe as a slope, farther on as a height of LEAST_RISE mm
  const clear = (p: Point): boolean =>
    dot(subtract(p, origin), normal) >= LEAST_RISE * Math.min(1, distance(p, end.toe));
  const lowest = crownTowards(atToe, down);
  if (lowest !== null && !clear(pointAt(atToe, lowest))) return false;
  return clear(atToe.b) && (rest.length === 0 || clear(extremeFromLine(rest, origin, down).point));
}

function refuseFace(joint: FilletJoint, plate: PlateNumber, chord: number): never {
  const { convexity, crownShift, reverseCurve, overlap1, overlap2 } = joint;
  const field = reverseCurve === 0 ? 'convexity' : 'reverseCurve';
  const plain = crownShift === 0 && reverseCurve === 0 && overlap1 === 0 && overlap2 === 0;
  const bound = plain ? plainBound(joint, plate, chord) : null;
  return convexity < 0 || reverseCurve !== 0
    ? refuse(field, bound, 'joint_error_face_behind_surface', { plate })
    : refuse(field, bound, 'joint_error_face_into_plate', { plate });
}

/**
 * The crown height at which a one-arc face leaves the plate at the least angle.
 * The arc turns 2 atan(2h/c) off the chord at each toe, and the chord leaves
 * surface i at β with sin β = opposite leg · sin ψ / c (law of sines). Derived.
 */
function plainBound(joint: FilletJoint, plate: PlateNumber, chord: number): number {
  const psi = (joint.dihedralAngle * Math.PI) / 180;
  const [own, other] = plate === 1 ? [joint.leg1, joint.leg2] : [joint.leg2, joint.leg1];
  const beta = Math.atan2(other * Math.sin(psi), own - other * Math.cos(psi));
  const least = Math.asin(LEAST_RISE);
  const turn = joint.convexity < 0 ? -(beta - least) : Math.PI - beta - least;
  return (chord / 2) * Math.tan(turn / 2);
}
