import type { Side } from '../joint/index.ts';
import type { Measurement } from './measurement.ts';
import { stationOn } from './surface-line.ts';
import { measuredLength, span } from './witness.ts';

/** How far each face toe lies past its groove edge along the surface line, mm, negative inside the groove. Derived. */
export function capPastGroove({ toes, grooveEdges, surfaces }: Side): Measurement[] {
  // nothing shows where the groove was, or no weld metal does
  if (toes === null || grooveEdges === null) return [];
  const past1 = stationOn(surfaces[0], toes[0]) - stationOn(surfaces[0], grooveEdges[0]);
  const past2 = stationOn(surfaces[1], toes[1]) - stationOn(surfaces[1], grooveEdges[1]);
  return [
    measuredLength('capPastGroove1', past1, span(grooveEdges[0], toes[0])),
    measuredLength('capPastGroove2', past2, span(grooveEdges[1], toes[1])),
  ];
}
