/**
 * The one public face of the floors: joint in, section, measurements and checks out. Pure, no
 * page, runs in plain Node.
 */
export type { Joint, Section } from './joint/index.ts';
export { JointError } from './joint/index.ts';
export type { Measurement, Measurements, MeasurementId } from './measure/index.ts';
export type { Check, JobSheet } from './limits/index.ts';
export type { Message } from './units/index.ts';
