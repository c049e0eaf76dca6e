import type { MeasurementId } from '../measure/index.ts';
import { measurementIds } from '../measure/index.ts';

/** What `judge` works out from a measurement and the sheet, judged beside the measurements themselves. */
export const workedOut = ['misalignment', 'angleDeparture'] as const;

/** What a requirement may be put to: a measurement, or what `judge` works out from one and the sheet. */
export type Subject = MeasurementId | (typeof workedOut)[number];

export const subjects: readonly Subject[] = [...measurementIds, ...workedOut];

/** Whether a subject is read off the section as it stands. */
export const isMeasured = (subject: Subject): subject is MeasurementId =>
  !(workedOut as readonly Subject[]).includes(subject);
