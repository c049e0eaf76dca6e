import type { Criterion, Subject } from '../../../limits/index.ts';
import type { Message } from '../../../units/index.ts';
import { measurementName } from '../measurement-name.ts';

/** The message key that names what a row is put to. */
export function subjectName(subject: Subject): string {
  if (subject === 'misalignment') return 'limits_name_misalignment';
  if (subject === 'angleDeparture') return 'limits_name_angle_departure';
  return measurementName(subject).key;
}

/** A row's name: of a built-in set a message that may name its toe or leg, of an own one plain text. */
export const rowName = (row: Criterion): Message => ({
  key: row.name,
  values: { side: row.measurements.map((one) => /[12]$/u.exec(one)?.[0] ?? '').join('/') },
});
