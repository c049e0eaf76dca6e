import type { Message, MessageValue } from '../units/index.ts';
import { JointError } from './joint-error.ts';

/** A length in a message, mm. */
export const inMm = (value: number): MessageValue => ({ value, unit: 'mm' });

/**
 * Refuses the joint for the sake of `field`. `bound` is the nearest value of
 * that field known to be allowed, null when none can be named.
 */
export function refuse(
  field: string,
  bound: number | null,
  key: `joint_error_${string}`,
  values?: NonNullable<Message['values']>,
): never {
  throw new JointError(field, bound, values === undefined ? { key } : { key, values });
}
