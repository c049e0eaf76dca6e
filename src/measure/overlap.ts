import type { Point } from '../geometry/index.ts';
import type { SurfaceLine } from '../joint/index.ts';
import type { ExposedWeld } from './exposed-weld.ts';
import type { Measurement } from './measurement.ts';
import { footOn, stationOn } from './surface-line.ts';
import { measuredLength, noWitness, span } from './witness.ts';

/**
 * Overlap at both toes: by how far unfused weld metal projects past the fused
 * toe, toe to lip along the surface line, mm; touching the plate or not
 * (ISO 6520-1, 506; how it is measured from memory, verify).
 */
export function overlaps(
  { toes, lips }: ExposedWeld,
  surfaces: readonly [SurfaceLine, SurfaceLine],
): Measurement[] {
  return [
    overlap('overlap1', toes[0], lips[0], surfaces[0]),
    overlap('overlap2', toes[1], lips[1], surfaces[1]),
  ];
}

function overlap(
  id: 'overlap1' | 'overlap2',
  toe: Point,
  lip: Point,
  surface: SurfaceLine,
): Measurement {
  const past = stationOn(surface, lip) - stationOn(surface, toe);
  // nothing overhangs
  if (past <= 0) return measuredLength(id, 0, noWitness);
  const foot = footOn(surface, toe);
  return measuredLength(id, past, span(foot, lip, [[toe, foot]]));
}
