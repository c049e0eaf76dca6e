import { add, arc, distance, line, polyline, scale, subtract } from '../geometry/index.ts';
import type { Contour, Point } from '../geometry/index.ts';
import type { FilletSetUp } from './fillet-set-up.ts';
import type { FilletJoint, PlateNumber } from './joint.ts';
import { isNone, sameSpot } from './least-size.ts';
import { lipPoint } from './side.ts';
import { walkSurface, type SurfaceWalk } from './surface-walk.ts';
import { checkUndercut, faceUndercut } from './undercut.ts';

/** A plate's outline from a point of its carrying surface to where it is cut off, without flaws. */
export function surfaceAhead(setUp: FilletSetUp, plate: PlateNumber, from: Point): Contour {
  const [corner, ...rest] = setUp.ahead[plate - 1] as readonly [Point, ...Point[]];
  // a toe at the very edge: the carrying surface is used up
  return sameSpot(from, corner) ? polyline([from, ...rest]) : polyline([from, corner, ...rest]);
}

/**
 * Plate 2's outline past toe 2 of a lap joint: what is left of its end face,
 * the melted edge (rounded off the corner, as far along the top as along the
 * end face), and the top.
 */
export function meltedEdge(joint: FilletJoint, setUp: FilletSetUp, toe2: Point): Contour {
  const plain = surfaceAhead(setUp, 2, toe2);
  const left = setUp.surfaceEnd[1] - joint.leg2;
  const melted = joint.edgeMelt * left;
  const whole = isNone(left - melted);
  const [endFace, top] = plain;
  // nothing melted, or the toe is already at the edge
  if (isNone(melted) || !endFace || !top) return plain;
  const up = setUp.surfaces[1].along;
  const onEnd = whole ? toe2 : subtract(endFace.b, scale(up, melted));
  const onTop = add(endFace.b, { x: -melted, y: 0 });
  const rounded = arc(onEnd, onTop, Math.tan((Math.PI - setUp.endAngle[1]) / 4));
  return [...(whole ? [] : [line(toe2, onEnd)]), rounded, line(onTop, top.b)];
}

/**
 * The outline past a toe with its undercut and spatter. `face` is walked from
 * this toe, so that no bump is put under metal that overhangs.
 */
export function filletSurface(
  joint: FilletJoint,
  setUp: FilletSetUp,
  plate: PlateNumber,
  path: Contour,
  face: Contour,
): SurfaceWalk {
  const i = plate === 1 ? 0 : 1;
  const surface = setUp.surfaces[i];
  const end = setUp.surfaceEnd[i];
  const undercut = faceUndercut(joint, plate);
  const toe = scale(surface.along, joint[`leg${plate}`]);
  const first = path[0];
  const onSurface = first?.bulge === 0 && end > joint[`leg${plate}`];
  const room = end === Infinity ? Infinity : onSurface ? distance(first.b, toe) : 0;
  const lean = Math.max(0, cotangent(setUp.endAngle[i]));
  checkUndercut(undercut, metalUnder(joint, setUp, plate), room, lean);
  return walkSurface(path, plate === 1 ? 'left' : 'right', {
    undercut,
    spatter: joint.spatter.filter((bump) => bump.plate === plate),
    covered: distance(lipPoint(face, toe, surface), toe),
  });
}

/** Metal under a toe, normal to its surface: the plate, or down to the side of its acute corner at the root. */
function metalUnder(joint: FilletJoint, setUp: FilletSetUp, plate: PlateNumber): number {
  const lean = cotangent(setUp.cornerAngle);
  if (plate === 1 || lean <= 0) return setUp.depth[plate === 1 ? 0 : 1];
  return Math.min(setUp.depth[1], (joint.leg2 - setUp.cornerAlong) / lean);
}

/** How far a plate's other side leans under this one at a corner of this angle, mm per mm of depth. */
function cotangent(angle: number): number {
  return Math.cos(angle) / Math.sin(angle);
}
