import type { Message, MessageValue } from '../units/index.ts';
import type { ParameterRange } from './parameter.ts';

/** What is wrong with one field of a value that ought to be a joint. */
export interface JointFault {
  /** path of the field, such as `spatter.0.height`; empty for the whole value */
  readonly field: string;
  readonly bound: number | null;
  readonly reason: Message;
}

/** Bounds of a number and its unit. */
export type Bounds = Pick<ParameterRange, 'min' | 'max' | 'unit'>;

/** What is wrong with a number that should lie within bounds; NaN and Infinity are no numbers here. */
export function rangeFaults(
  value: unknown,
  field: string,
  { min, max, unit }: Bounds,
): readonly JointFault[] {
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    return [fault(field, 'joint_error_not_a_number')];
  }
  if (value >= min && value <= max) return [];
  return [
    fault(
      field,
      'joint_error_out_of_range',
      { least: { value: min, unit }, most: { value: max, unit } },
      value < min ? min : max,
    ),
  ];
}

/** A fault of one field. */
export function fault(
  field: string,
  key: `joint_error_${string}`,
  values?: Readonly<Record<string, MessageValue>>,
  bound: number | null = null,
): JointFault {
  // the field is shown as it was written: a hostile file gets no long say
  const named = field.length > 40 ? `${field.slice(0, 40)}…` : field;
  return { field: named, bound, reason: values === undefined ? { key } : { key, values } };
}
