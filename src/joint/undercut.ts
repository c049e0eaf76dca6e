import { add, arc, distance, line, scale, subtract } from '../geometry/index.ts';
import type { Contour, Point } from '../geometry/index.ts';
import type { PlateNumber, UndercutShape } from './joint.ts';
import { isNone } from './least-size.ts';
import { inMm, refuse } from './refuse.ts';

/** A groove melted into the plate beside a toe, and the fields of the joint it comes from. */
export interface Undercut {
  readonly depth: number;
  readonly width: number;
  readonly shape: UndercutShape;
  readonly depthField: string;
  readonly widthField: string;
}

/** Which hand the air is on when walking away from the weld along a surface. */
export type AirSide = 'left' | 'right';

/** An undercut may go at most this share of the way through its plate. */
const DEEPEST_SHARE = 0.8;
/** Undamaged surface left between an undercut and the edge of its surface, mm. */
const LEAST_LAND = 0.1;

/** Names of the fields that hold one toe's undercut. */
interface UndercutFields<Size extends string, Shape extends string> {
  readonly depth: Size;
  readonly width: Size;
  readonly shape: Shape;
}

// written out: putting names together for every joint costs more than what is then done with them
const FACE_FIELDS = {
  1: { depth: 'undercut1Depth', width: 'undercut1Width', shape: 'undercut1Shape' },
  2: { depth: 'undercut2Depth', width: 'undercut2Width', shape: 'undercut2Shape' },
} as const;

/** The undercut of the face toe on this plate, as the joint gives it. */
export function faceUndercut(
  joint: Readonly<
    Record<`undercut${PlateNumber}${'Depth' | 'Width'}`, number> &
      Record<`undercut${PlateNumber}Shape`, UndercutShape>
  >,
  plate: PlateNumber,
): Undercut {
  return undercutIn(joint, FACE_FIELDS[plate]);
}

/** The undercut that a joint gives in these fields. */
export function undercutIn<Size extends string, Shape extends string>(
  joint: Readonly<Record<Size, number> & Record<Shape, UndercutShape>>,
  { depth, width, shape }: UndercutFields<Size, Shape>,
): Undercut {
  return {
    depth: joint[depth],
    width: joint[width],
    shape: joint[shape],
    depthField: depth,
    widthField: width,
  };
}

/**
 * The groove from `toe` along the surface towards `end`, walking away from the
 * weld; empty when there is none. Rounded: one arc of sagitta `depth` over
 * `width`, at most a half circle. Sharp: a V of two equal lines.
 */
export function undercutGroove(toe: Point, end: Point, air: AirSide, undercut: Undercut): Contour {
  const { depth, width, shape } = undercut;
  // no groove
  if (isNone(depth)) return [];
  const along = scale(subtract(end, toe), 1 / distance(toe, end));
  const far = add(toe, scale(along, width));
  const into = air === 'left' ? 1 : -1;
  if (shape === 'rounded') return [arc(toe, far, (into * 2 * depth) / width)];
  const down = { x: into * along.y * depth, y: -into * along.x * depth };
  const bottom = add(add(toe, scale(along, width / 2)), down);
  return [line(toe, bottom), line(bottom, far)];
}

/**
 * Refuses an undercut that its plate cannot hold. `thickness` is how much metal
 * lies under the surface; `room` is how far the surface runs on past the toe;
 * `edgeLean` is how far the plate's next surface leans back under this one, as
 * mm along the surface per mm of depth (0 for a square or obtuse edge).
 */
export function checkUndercut(
  undercut: Undercut,
  thickness: number,
  room: number,
  edgeLean: number,
): void {
  const { depth, width, shape, depthField, widthField } = undercut;
  // no groove
  if (isNone(depth)) return;
  if (shape === 'rounded' && depth > width / 2) {
    refuse(depthField, width / 2, 'joint_error_undercut_deeper_than_half_width', {
      depth: inMm(depth),
      width: inMm(width),
    });
  }
  const deepest = DEEPEST_SHARE * thickness;
  if (depth > deepest) {
    refuse(depthField, deepest, 'joint_error_undercut_through_plate', {
      depth: inMm(depth),
      thickness: inMm(thickness),
    });
  }
  const widest = room - LEAST_LAND - depth * edgeLean;
  if (width > widest) {
    refuse(widthField, widest > 0 ? widest : null, 'joint_error_undercut_off_surface', {
      width: inMm(width),
      room: inMm(Math.max(0, room)),
    });
  }
}
