import type { Side } from '../joint/index.ts';
import type { Measurement } from './measurement.ts';
import { stationOn } from './surface-line.ts';
import { measuredLength, noWitness, span } from './witness.ts';

/**
 * Overlap at both toes: by how far unfused weld metal projects past the fused
 * toe, toe to lip along the surface line, mm; touching the plate or not
 * (ISO 6520-1, 506; how it is measured from memory, verify).
 */
export function overlaps({ toes, lips, surfaces }: Side): Measurement[] {
  // not yet welded
  if (toes === null) return [];
  const [lip1, lip2] = lips ?? toes;
  const first = stationOn(surfaces[0], lip1) - stationOn(surfaces[0], toes[0]);
  const second = stationOn(surfaces[1], lip2) - stationOn(surfaces[1], toes[1]);
  return [
    measuredLength('overlap1', first, first === 0 ? noWitness : span(toes[0], lip1)),
    measuredLength('overlap2', second, second === 0 ? noWitness : span(toes[1], lip2)),
  ];
}
