import type { Section } from '../joint/index.ts';
import { filletMeasurements } from './fillet.ts';
import { measureSection } from './measure-section.ts';
import type { Measurements } from './measurement.ts';

/** Everything that can be measured on the section of a fillet joint. */
export const measureFillet = (section: Section): Measurements =>
  measureSection(section, filletMeasurements);
