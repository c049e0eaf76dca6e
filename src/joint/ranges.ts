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

/** The numeric parameters that mean something for this joint (arrangement, preparation, stage), in sheet order. */
export declare function parametersOf(joint: Joint): readonly ParameterRange[];
