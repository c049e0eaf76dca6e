import type { Contour, Point } from '../geometry/index.ts';
import { contourEnd, contourStart, distance, scale } from '../geometry/index.ts';
import type { PlateNumber, Side, SurfaceLine } from '../joint/index.ts';
import type { Measurement, MeasurementId } from './measurement.ts';
import { highestWithin } from './clip.ts';
import { footOn, stationOn } from './surface-line.ts';
import { measuredLength, noWitness, span } from './witness.ts';

interface UndercutIds {
  readonly depth: MeasurementId;
  readonly width: MeasurementId | null;
}

const faceIds: readonly [UndercutIds, UndercutIds] = [
  { depth: 'undercut1', width: 'undercutWidth1' },
  { depth: 'undercut2', width: 'undercutWidth2' },
];
const rootIds: readonly [UndercutIds, UndercutIds] = [
  { depth: 'rootUndercut1', width: null },
  { depth: 'rootUndercut2', width: null },
];

/**
 * Undercut at both toes of the face: greatest depth of the groove below its own
 * plate's surface line, normal to it, and its width along the line, mm
 * (ISO 6520-1, 5011 and 5012; from memory, verify). In a butt joint only what
 * lies outside the groove edge is base metal lost; a fillet has no such edge.
 */
export function undercuts(side: Side, kind: 'fillet' | 'butt'): Measurement[] {
  return [...undercutAt(side, kind, 1, faceIds[0]), ...undercutAt(side, kind, 2, faceIds[1])];
}

/** The same at both toes of the root: shrinkage groove (ISO 6520-1, 5013; from memory, verify). */
export function rootUndercuts(side: Side): Measurement[] {
  return [...undercutAt(side, 'butt', 1, rootIds[0]), ...undercutAt(side, 'butt', 2, rootIds[1])];
}

function undercutAt(
  side: Side,
  kind: 'fillet' | 'butt',
  plate: PlateNumber,
  ids: UndercutIds,
): Measurement[] {
  const surface = side.surfaces[plate - 1] as SurfaceLine;
  const groove = side.undercuts[plate - 1] as Contour;
  const edge = side.grooveEdges === null ? null : (side.grooveEdges[plate - 1] as Point);
  // sound base metal
  if (groove.length === 0) return none(ids);
  // nothing shows where base metal began
  if (kind === 'butt' && edge === null) {
    const note = { key: 'measure_note_groove_edge_unknown' };
    const depth = measuredLength(ids.depth, null, noWitness, note);
    if (ids.width === null) return [depth];
    return [depth, measuredLength(ids.width, null, noWitness, note)];
  }
  return outsideEdge(surface, groove, edge, ids);
}

/** Depth and width of what lies outside the groove edge; all of it when there is none. */
function outsideEdge(
  surface: SurfaceLine,
  groove: Contour,
  edge: Point | null,
  ids: UndercutIds,
): Measurement[] {
  const { origin, along, normal } = surface;
  const from = edge === null ? -Infinity : stationOn(surface, edge);
  const within = edge === null ? [] : [{ through: edge, inward: along }];
  const deepest = highestWithin(groove, within, origin, scale(normal, -1));
  // all of it lies inside the edge
  if (deepest === null) return none(ids);
  const start = contourStart(groove);
  const near = edge !== null && stationOn(surface, start) < from ? edge : footOn(surface, start);
  const far = footOn(surface, contourEnd(groove));
  const foot = footOn(surface, deepest.point);
  const depth = measuredLength(ids.depth, deepest.value, span(foot, deepest.point, [[near, foot]]));
  if (ids.width === null) return [depth];
  return [depth, measuredLength(ids.width, distance(near, far), span(near, far))];
}

function none(ids: UndercutIds): Measurement[] {
  const depth = measuredLength(ids.depth, 0, noWitness);
  return ids.width === null ? [depth] : [depth, measuredLength(ids.width, 0, noWitness)];
}
