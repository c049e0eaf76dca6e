import type { Subject } from '../../../limits/index.ts';
import { measurementName } from '../measurement-name.ts';

/** The message key that names what a row is put to. */
export function subjectName(subject: Subject): string {
  if (subject === 'misalignment') return 'limits_name_misalignment';
  if (subject === 'angleDeparture') return 'limits_name_angle_departure';
  return measurementName(subject).key;
}
