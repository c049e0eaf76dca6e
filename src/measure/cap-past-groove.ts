import type { Point } from '../geometry/index.ts';
import type { Side, SurfaceLine } from '../joint/index.ts';
import type { ExposedWeld } from './exposed-weld.ts';
import type { Measurement } from './measurement.ts';
import { footOn, stationOn } from './surface-line.ts';
import { measuredLength, span } from './witness.ts';

/**
 * How far each face toe lies past its groove edge along the surface line, mm,
 * negative inside the groove. Derived.
 */
export function capPastGroove(
  { toes }: ExposedWeld,
  { grooveEdges, surfaces }: Side,
): Measurement[] {
  // nothing shows where the groove was
  if (grooveEdges === null) return [];
  return [
    past('capPastGroove1', toes[0], grooveEdges[0], surfaces[0]),
    past('capPastGroove2', toes[1], grooveEdges[1], surfaces[1]),
  ];
}

function past(
  id: 'capPastGroove1' | 'capPastGroove2',
  toe: Point,
  edge: Point,
  surface: SurfaceLine,
): Measurement {
  const foot = footOn(surface, toe);
  const value = stationOn(surface, toe) - stationOn(surface, edge);
  return measuredLength(id, value, span(edge, foot, [[toe, foot]]));
}
