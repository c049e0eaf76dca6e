import { build, JointError } from '../../joint/index.ts';
import type { Joint } from '../../joint/index.ts';
import { judge } from '../../limits/index.ts';
import type { Check, JobSheet } from '../../limits/index.ts';
import { measure } from '../../measure/index.ts';
import type { Measurements } from '../../measure/index.ts';
import type { LimitSet } from '../limit-set.ts';

/** A joint with what was measured on it and what the sheet says to that. */
export interface Evaluated {
  readonly joint: Joint;
  readonly measurements: Measurements;
  readonly checks: readonly Check[];
}

/** Builds, measures and judges a joint; null where it can't exist. */
export function evaluate(joint: Joint, sheet: JobSheet, limits: LimitSet): Evaluated | null {
  try {
    const measurements = measure(build(joint));
    return { joint, measurements, checks: judge(measurements, sheet, limits) };
  } catch (error) {
    if (error instanceof JointError) return null;
    throw error;
  }
}
