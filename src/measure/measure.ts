import type { Section } from '../joint/index.ts';
import { measureButt } from './measure-butt.ts';
import { measureFillet } from './measure-fillet.ts';
import type { Measurements } from './measurement.ts';

/** Everything that can be measured on a section, each value with the places it was taken between. */
export const measure = (section: Section): Measurements =>
  section.kind === 'fillet' ? measureFillet(section) : measureButt(section);
