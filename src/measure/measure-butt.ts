import type { Section } from '../joint/index.ts';
import { buttMeasurements } from './butt.ts';
import { measureSection } from './measure-section.ts';
import type { Measurements } from './measurement.ts';

/** Everything that can be measured on the section of a butt joint. */
export const measureButt = (section: Section): Measurements =>
  measureSection(section, buttMeasurements);
