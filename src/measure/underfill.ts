import type { Contour, Point, Vector } from '../geometry/index.ts';
import { dot, normalise, perpendicularLeft, scale, subtract } from '../geometry/index.ts';
import type { Side, SurfaceLine } from '../joint/index.ts';
import type { ExposedWeld } from './exposed-weld.ts';
import type { Measurement, MeasurementId } from './measurement.ts';
import type { HalfPlane, Height } from './clip.ts';
import { highestWithin } from './clip.ts';
import type { PointPair } from './witness.ts';
import { measuredLength, noWitness, span } from './witness.ts';

/**
 * underfill: greatest depth of the face below the straight line between the
 * groove edges, within the groove, normal to that line, mm (ISO 6520-1, 511;
 * the datum is a reading decided here). underfillHigh: the same below whichever
 * plate's surface line stands higher; shown, never judged.
 */
export function underfill({ bead }: ExposedWeld, face: Side): Measurement[] {
  return [belowDatum('underfill', bead, face), belowHigher(bead, face)];
}

/** The same on the root side, below its own datum: root concavity (ISO 6520-1, 515). */
export function rootConcavity({ bead }: ExposedWeld, root: Side): Measurement {
  return belowDatum('rootConcavity', bead, root);
}

/** Where no root bead shows the root is unfused, not hollow. */
export const noRootConcavity: Measurement = measuredLength('rootConcavity', 0, noWitness);

function belowDatum(
  id: MeasurementId,
  bead: Contour,
  { grooveEdges, surfaces }: Side,
): Measurement {
  // nothing shows where the groove was
  if (grooveEdges === null) return edgesUnknown(id);
  const [edge1, edge2] = grooveEdges;
  const square = normalise(perpendicularLeft(subtract(edge2, edge1)));
  const into = scale(square, dot(square, surfaces[0].normal) > 0 ? -1 : 1);
  const deepest = highestWithin(bead, betweenEdges(grooveEdges, surfaces), edge1, into);
  return depthOf(id, deepest, into, () => grooveEdges);
}

function belowHigher(bead: Contour, { grooveEdges, surfaces }: Side): Measurement {
  const id = 'underfillHigh';
  // nothing shows where the groove was
  if (grooveEdges === null) return edgesUnknown(id);
  const within = betweenEdges(grooveEdges, surfaces);
  const [below1, below2] = surfaces.map(({ origin, normal }) =>
    highestWithin(bead, within, origin, scale(normal, -1)),
  ) as [Height | null, Height | null];
  const first = below2 === null || (below1 !== null && below1.value >= below2.value);
  const [deepest, i] = first ? [below1, 0 as const] : [below2, 1 as const];
  const into = scale(surfaces[i].normal, -1);
  return depthOf(id, deepest, into, (foot) => [grooveEdges[i], foot]);
}

/** What lies between the two groove edges, bounded along each plate's own normal. */
function betweenEdges(
  edges: readonly [Point, Point],
  surfaces: readonly [SurfaceLine, SurfaceLine],
): readonly HalfPlane[] {
  return [
    { through: edges[0], inward: scale(surfaces[0].along, -1) },
    { through: edges[1], inward: scale(surfaces[1].along, -1) },
  ];
}

function depthOf(
  id: MeasurementId,
  deepest: Height | null,
  into: Vector,
  datumTo: (foot: Point) => PointPair,
): Measurement {
  // nowhere below the datum
  if (deepest === null) return measuredLength(id, 0, noWitness);
  const foot = subtract(deepest.point, scale(into, deepest.value));
  return measuredLength(id, deepest.value, span(foot, deepest.point, [], [datumTo(foot)]));
}

const edgesUnknown = (id: MeasurementId): Measurement =>
  measuredLength(id, null, noWitness, { key: 'measure_note_groove_edge_unknown' });
