import type { Contour, Point, Vector } from '../geometry/index.ts';
import {
  add,
  contourEnd,
  contourStart,
  cross,
  dot,
  normalise,
  scale,
  subtract,
} from '../geometry/index.ts';
import type { Groove, Side, SurfaceLine } from '../joint/index.ts';
import { rad, toDeg } from '../units/index.ts';
import type { Measurement, MeasurementId, Witness } from './measurement.ts';
import { measuredAngle, noWitness } from './witness.ts';

/** Length of the two arms that show a bevel angle, mm. */
const ARM = 5;

interface Bevel {
  /** Unit, up the prepared edge towards this side's surface. */
  readonly direction: Vector;
  /** Its end away from the surface. */
  readonly foot: Point;
  /** To the normal of the surface, degrees, positive when the groove opens. */
  readonly angle: number;
}

const faceIds = ['bevelAngle1', 'bevelAngle2', 'grooveAngle'] as const;
const rootIds = ['rootBevelAngle1', 'rootBevelAngle2', 'rootGrooveAngle'] as const;

/**
 * Angle of each bevelled edge to the normal of its own plate's surface, and
 * their sum, the groove angle, degrees; of both sides of a two-sided joint. A
 * square edge has no bevel angle and adds nothing (AWS A3.0 and ISO 9692-1
 * terms, from memory, verify).
 */
export function bevels(groove: Groove, face: Side, root: Side | null): Measurement[] {
  const onFace = bevelsOf(faceIds, groove.faceBevels, face);
  if (root === null) return onFace;
  return [...onFace, ...bevelsOf(rootIds, groove.rootBevels, root)];
}

function bevelsOf(
  [id1, id2, idSum]: readonly [MeasurementId, MeasurementId, MeasurementId],
  contours: Groove['faceBevels'],
  { surfaces, grooveEdges }: Side,
): Measurement[] {
  const first = bevelOf(contours[0], surfaces[0]);
  const second = bevelOf(contours[1], surfaces[1]);
  const measured: Measurement[] = [];
  if (first !== null)
    measured.push(measuredAngle(id1, first.angle, fromNormal(first, surfaces[0])));
  if (second !== null) {
    measured.push(measuredAngle(id2, second.angle, fromNormal(second, surfaces[1])));
  }
  // both square on this side: no groove angle
  if (measured.length === 0) return measured;
  const sum = (first?.angle ?? 0) + (second?.angle ?? 0);
  const edge1 = first ?? square(surfaces[0], grooveEdges?.[0]);
  const edge2 = second ?? square(surfaces[1], grooveEdges?.[1]);
  return [...measured, measuredAngle(idSum, sum, between(edge1, edge2))];
}

function bevelOf(contour: Contour | null, { along, normal }: SurfaceLine): Bevel | null {
  // square on this side
  if (contour === null) return null;
  const [start, end] = [contourStart(contour), contourEnd(contour)];
  const rising = dot(subtract(end, start), normal) > 0;
  const [foot, top] = rising ? [start, end] : [end, start];
  const direction = normalise(subtract(top, foot));
  const angle = toDeg(rad(Math.atan2(dot(direction, along), dot(direction, normal))));
  return { direction, foot, angle };
}

const square = (
  { normal, origin }: SurfaceLine,
  edge: Point | undefined,
): Omit<Bevel, 'angle'> => ({
  direction: normal,
  foot: edge ?? origin,
});

function fromNormal({ direction, foot }: Bevel, { normal }: SurfaceLine): Witness {
  return angleBetween(foot, normal, direction);
}

/** Angle between the two prepared edges, shown where their straight lines cross. */
function between(edge1: Omit<Bevel, 'angle'>, edge2: Omit<Bevel, 'angle'>): Witness {
  const turn = cross(edge1.direction, edge2.direction);
  // parallel edges never cross
  if (turn === 0) return noWitness;
  const along = cross(subtract(edge2.foot, edge1.foot), edge2.direction) / turn;
  const vertex = add(edge1.foot, scale(edge1.direction, along));
  return angleBetween(vertex, edge1.direction, edge2.direction);
}

function angleBetween(vertex: Point, a: Vector, b: Vector): Witness {
  const onA = add(vertex, scale(a, ARM));
  const onB = add(vertex, scale(b, ARM));
  return cross(a, b) > 0
    ? { kind: 'angle', vertex, from: onA, to: onB }
    : { kind: 'angle', vertex, from: onB, to: onA };
}
