import type { Point, Vector } from '../geometry/index.ts';
import { add, cross, dot, midpoint, scale } from '../geometry/index.ts';
import type { PlateSurfaces, Section, Side, SurfaceLine } from '../joint/index.ts';
import { rad, toDeg } from '../units/index.ts';
import type { Measurement, MeasurementId } from './measurement.ts';
import { distanceToSurface, footOn } from './surface-line.ts';
import { measuredAngle, measuredLength, noWitness, span } from './witness.ts';

/** Length of the two arms that show an angle between plates, mm. */
const ARM = 10;

/**
 * How plate 2 lies to plate 1 in a butt joint. faceStep, rootStep,
 * centrelineOffset: from plate 1's to plate 2's face surface, root surface and
 * mid-plane, along plate 1's normal, midway between the groove edges (between
 * the toes if those are unknown), mm, positive when plate 2 lies towards the
 * face side. angularMisalignment: between the face surfaces, degrees, positive
 * when plate 2 is turned up towards the face side (ISO 6520-1, 508). Derived.
 */
export function alignment(section: Section): Measurement[] {
  const { face, root, plateSurfaces } = section;
  const up = face.surfaces[0].normal;
  const measured = [angularMisalignment(face, up)];
  const onFace = middleOf(face);
  if (onFace !== null) measured.push(...step('faceStep', face.surfaces, onFace, up));
  const onRoot = root === null ? null : middleOf(root);
  if (root !== null && onRoot !== null) {
    measured.push(...step('rootStep', root.surfaces, onRoot, up));
  }
  if (onFace !== null && onRoot !== null) {
    const mids = [midPlane(plateSurfaces[0]), midPlane(plateSurfaces[1])] as const;
    measured.push(...step('centrelineOffset', mids, midpoint(onFace, onRoot), up));
  }
  return measured;
}

/** Midway between the groove edges of a side, or its toes; null when it has neither. */
function middleOf({ grooveEdges, toes }: Side): Point | null {
  const ends = grooveEdges ?? toes;
  return ends === null ? null : midpoint(...ends);
}

function midPlane({ face, opposite }: PlateSurfaces): SurfaceLine {
  const { along, normal } = face;
  return { origin: midpoint(face.origin, footOn(opposite, face.origin)), along, normal };
}

function step(
  id: MeasurementId,
  [first, second]: readonly [SurfaceLine, SurfaceLine],
  middle: Point,
  up: Vector,
): Measurement[] {
  const to1 = distanceToSurface(first, middle, up);
  const to2 = distanceToSurface(second, middle, up);
  // a plate at a right angle to the other has no level here
  if (to1 === null || to2 === null) return [];
  const on1 = add(middle, scale(up, to1));
  const on2 = add(middle, scale(up, to2));
  return [
    measuredLength(
      id,
      to2 - to1,
      span(on1, on2, [
        [first.origin, on1],
        [second.origin, on2],
      ]),
    ),
  ];
}

function angularMisalignment({ surfaces, grooveEdges }: Side, up: Vector): Measurement {
  const ahead = scale(surfaces[0].along, -1);
  const along2 = surfaces[1].along;
  const handed = cross(ahead, up) > 0 ? 1 : -1;
  const turn = cross(ahead, along2) * handed;
  const value = toDeg(rad(Math.atan2(turn, dot(ahead, along2))));
  // parallel: no angle to show
  if (value === 0) return measuredAngle('angularMisalignment', 0, noWitness);
  const vertex = grooveEdges?.[1] ?? surfaces[1].origin;
  const level = add(vertex, scale(ahead, ARM));
  const turned = add(vertex, scale(along2, ARM));
  const counterClockwise = turn * handed > 0;
  return measuredAngle('angularMisalignment', value, {
    kind: 'angle',
    vertex,
    from: counterClockwise ? level : turned,
    to: counterClockwise ? turned : level,
  });
}
