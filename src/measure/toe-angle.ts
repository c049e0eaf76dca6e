import type { Contour, Point, Segment, Vector } from '../geometry/index.ts';
import { add, cross, dot, reverseContour, scale, tangentAt, TOLERANCE } from '../geometry/index.ts';
import type { SurfaceLine } from '../joint/index.ts';
import { toDeg, rad } from '../units/index.ts';
import type { ExposedWeld } from './exposed-weld.ts';
import type { Measurement, Witness } from './measurement.ts';
import { measuredAngle } from './witness.ts';

/** Length of the two arms that show a toe angle, mm. */
const ARM = 1;

interface ToeAngle {
  readonly value: number;
  readonly witness: Witness;
}

/**
 * Angle at each toe through the air between the surface line and the tangent
 * of the face, degrees: 180 is flush, under 90 overhangs, over 180 dips below
 * the surface; `toeAngle` is the smaller (ISO 6520-1, 505; from memory, verify).
 */
export function toeAngles(
  { bead, toes }: ExposedWeld,
  surfaces: readonly [SurfaceLine, SurfaceLine],
): Measurement[] {
  const [first, second] = [
    angleAt(toes[0], surfaces[0], leaving(bead)),
    angleAt(toes[1], surfaces[1], leaving(reverseContour(bead))),
  ];
  const smaller = first.value <= second.value ? first : second;
  return [
    measuredAngle('toeAngle1', first.value, first.witness),
    measuredAngle('toeAngle2', second.value, second.witness),
    measuredAngle('toeAngle', smaller.value, smaller.witness),
  ];
}

function angleAt(toe: Point, { along, normal }: SurfaceLine, tangent: Vector): ToeAngle {
  const turn = toDeg(rad(Math.atan2(dot(tangent, normal), dot(tangent, along))));
  // counted on through the air: a face that dips below the surface opens beyond 180;
  // metal that lies flat on the plate leaves no air, whatever rounding says
  const value = turn < -TOLERANCE ? turn + 360 : Math.max(0, turn);
  const onSurface = add(toe, scale(along, ARM));
  const onFace = add(toe, scale(tangent, ARM));
  const airOnLeft = cross(along, normal) > 0;
  return {
    value,
    witness: {
      kind: 'angle',
      vertex: toe,
      from: airOnLeft ? onSurface : onFace,
      to: airOnLeft ? onFace : onSurface,
    },
  };
}

/** Direction in which a contour leaves its start. */
function leaving(contour: Contour): Vector {
  return tangentAt(contour[0] as Segment, 0);
}
