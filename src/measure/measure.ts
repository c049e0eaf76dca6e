import type { Section } from '../joint/index.ts';
import { areas } from './area.ts';
import { buttMeasurements } from './butt.ts';
import { filletMeasurements } from './fillet.ts';
import type { Measurement, MeasurementId, Measurements } from './measurement.ts';
import { overlaps } from './overlap.ts';
import { thicknesses } from './thickness.ts';
import { toeAngles } from './toe-angle.ts';
import { undercuts } from './undercut.ts';
import { faceWidths } from './width.ts';

/** Everything that can be measured on a section, each value with the places it was taken between. */
export function measure(section: Section): Measurements {
  const values: Partial<Record<MeasurementId, Measurement>> = {};
  const found = [
    thicknesses(section),
    filletMeasurements(section),
    buttMeasurements(section),
    faceMeasurements(section),
    areas(section),
  ];
  for (const family of found) for (const one of family) values[one.id] = one;
  return { section, values };
}

/** What the face of any finished weld has. */
function faceMeasurements({ stage, kind, face }: Section): Measurement[] {
  // not yet welded
  if (stage === 'fitUp') return [];
  return [...faceWidths(face), ...toeAngles(face), ...undercuts(face, kind), ...overlaps(face)];
}
