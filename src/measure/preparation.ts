import type { Contour, Segment } from '../geometry/index.ts';
import {
  add,
  centre,
  contourEnd,
  contourStart,
  distance,
  dot,
  extremeInDirection,
  isLine,
  pointAt,
  radius,
  scale,
  subtract,
} from '../geometry/index.ts';
import type { Groove, Side, SurfaceLine } from '../joint/index.ts';
import type { Measurement, Witness } from './measurement.ts';
import { measuredLength, noWitness, span } from './witness.ts';

/**
 * The prepared edges of a butt joint, mm (AWS A3.0 and ISO 9692-1 terms, from
 * memory, verify). rootOpening: least gap between them along plate 1's surface
 * direction. rootFace: unbevelled height of each bevelled one, along its
 * plate's normal, and the lesser of the two. rootRadius: of the curve of a U or J. grooveWidth:
 * straight between the groove edges on the face side.
 */
export function preparation(groove: Groove, face: Side): Measurement[] {
  return [
    ...rootOpening(groove, face.surfaces[0]),
    ...rootFaces(groove, face.surfaces),
    ...rootRadius(groove),
    ...grooveWidth(face),
  ];
}

function rootOpening({ preparedEdges }: Groove, { along }: SurfaceLine): Measurement[] {
  const [edge1, edge2] = preparedEdges;
  // no edge to measure from
  if (edge1.length === 0 || edge2.length === 0) return [];
  const across = scale(along, -1);
  const near = extremeInDirection(edge1, across);
  const far = extremeInDirection(edge2, along);
  const opening = -far.value - near.value;
  const end = add(near.point, scale(across, opening));
  return [measuredLength('rootOpening', opening, span(near.point, end, [[far.point, end]]))];
}

function rootFaces(groove: Groove, surfaces: Side['surfaces']): Measurement[] {
  const found: Measurement[] = [];
  let lesser: readonly [number, Witness] | null = null;
  for (const i of [0, 1] as const) {
    // a square edge: nothing is left unbevelled because nothing is bevelled
    if (groove.faceBevels[i] === null && groove.rootBevels[i] === null) continue;
    const one = rootFace(groove.rootFaces[i], surfaces[i]);
    found.push(measuredLength(i === 0 ? 'rootFace1' : 'rootFace2', ...one));
    if (lesser === null || one[0] < lesser[0]) lesser = one;
  }
  if (lesser !== null) found.push(measuredLength('rootFace', ...lesser));
  return found;
}

function rootFace(contour: Contour, { normal }: SurfaceLine): readonly [number, Witness] {
  // a feather edge
  if (contour.length === 0) return [0, noWitness];
  const [low, high] = [contourStart(contour), contourEnd(contour)];
  return [Math.abs(dot(subtract(high, low), normal)), span(low, high)];
}

function rootRadius({ preparedEdges }: Groove): Measurement[] {
  let smallest: Segment | null = null;
  for (const edge of preparedEdges) {
    for (const piece of edge) {
      if (isLine(piece)) continue;
      if (smallest === null || radius(piece) < radius(smallest)) smallest = piece;
    }
  }
  const middle = smallest === null ? null : centre(smallest);
  // straight edges
  if (smallest === null || middle === null) return [];
  const witness = span(middle, pointAt(smallest, 0.5));
  return [measuredLength('rootRadius', radius(smallest), witness)];
}

function grooveWidth({ grooveEdges }: Side): Measurement[] {
  // where the edges were isn't known
  if (grooveEdges === null) return [];
  return [measuredLength('grooveWidth', distance(...grooveEdges), span(...grooveEdges))];
}
