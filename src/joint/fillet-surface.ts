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
  const surface = setUp.surfaces[(plate - 1) as 0 | 1];
  const end = setUp.surfaceEnd[(plate - 1) as 0 | 1];
  const undercut = faceUndercut(joint, plate);
  const start = face[0]?.a ?? surface.origin;
  const first = path[0];
  const onSurface = first?.bulge === 0 && end > joint[`leg${plate}`];
  const room = end === Infinity ? Infinity : onSurface ? distance(first.b, start) : 0;
  const endAngle = setUp.endAngle[(plate - 1) as 0 | 1];
  const edgeLean = endAngle < Math.PI / 2 ? 1 / Math.tan(endAngle) : 0;
  checkUndercut(undercut, setUp.depth[(plate - 1) as 0 | 1], room, edgeLean);
  const lip = lipPoint(face, start, surface);
  return walkSurface(path, plate === 1 ? 'left' : 'right', {
    undercut,
    spatter: joint.spatter.filter((bump) => bump.plate === plate),
    covered: distance(lip, start),
  });
}
