import type { Joint } from './joint.ts';

/** A numeric parameter of a joint: its group on the bench, bounds and step. Data, one row each. */
export interface ParameterRange {
  /** field of the joint */
  readonly field: string;
  readonly group: 'joint' | 'fitUp' | 'weld' | 'discontinuities';
  readonly unit: 'mm' | 'deg' | 'ratio';
  readonly min: number;
  readonly max: number;
  /** the model step: arrow key or stepper */
  readonly step: number;
}

/** A row of a kind's parameter table: the range, where it starts, and the joints it means something for. */
export interface Parameter<J extends Joint> extends ParameterRange {
  readonly field: NumberField<J>;
  /** value in a plain joint of this kind */
  readonly start: number;
  /** absent: every joint of the kind */
  readonly appliesTo?: (joint: J) => boolean;
}

/** A field that takes one of a few values. */
export interface Choice {
  readonly field: string;
  readonly values: readonly (string | number)[];
  /** the value in a plain joint, where it isn't the first */
  readonly start?: string;
}

/** The fields of a joint that hold a number (its version is no quantity). */
type NumberField<J extends Joint> = Exclude<
  { [F in keyof J]: J[F] extends number ? F : never }[keyof J] & string,
  'version'
>;

/** A group's rows, so that its name is said once. */
export function rows<J extends Joint>(
  group: ParameterRange['group'],
  ...list: readonly Omit<Parameter<J>, 'group'>[]
): readonly Parameter<J>[] {
  return list.map((row) => ({ ...row, group }));
}
