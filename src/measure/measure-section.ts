import type { Section } from '../joint/index.ts';
import { areas } from './area.ts';
import { exposedWeld } from './exposed-weld.ts';
import type { Measurement, MeasurementId, Measurements } from './measurement.ts';
import { overlaps } from './overlap.ts';
import { thicknesses } from './thickness.ts';
import { toeAngles } from './toe-angle.ts';
import { undercuts } from './undercut.ts';
import { faceWidths } from './width.ts';

/** What every section has, with what only its kind has. */
export function measureSection(
  section: Section,
  ofKind: (section: Section) => readonly Measurement[],
): Measurements {
  const values: Partial<Record<MeasurementId, Measurement>> = {};
  const found = [thicknesses(section), ofKind(section), faceMeasurements(section), areas(section)];
  for (const family of found) for (const one of family) values[one.id] = one;
  return { section, values };
}

/** What the face of any finished weld has. */
function faceMeasurements({ kind, face }: Section): Measurement[] {
  const weld = exposedWeld(face);
  // not yet welded
  if (weld === null) return [];
  return [
    ...faceWidths(weld),
    ...toeAngles(weld, face.surfaces),
    ...undercuts(face, kind),
    ...overlaps(weld, face.surfaces),
  ];
}
