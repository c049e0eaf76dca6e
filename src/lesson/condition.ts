import { atLeast, atMost } from '../geometry/index.ts';
import type { MeasurementId, Measurements } from '../measure/index.ts';

/**
 * One thing that must be true of a measured section. `min` and `max` are mm or
 * degrees; `below` and `equals` compare with another measurement of the same
 * section, `by` being how far apart (below) or how close (equals) in mm or degrees.
 */
export type Condition =
  | { readonly measurement: MeasurementId; readonly min?: number; readonly max?: number }
  | { readonly measurement: MeasurementId; readonly below: MeasurementId; readonly by: number }
  | { readonly measurement: MeasurementId; readonly equals: MeasurementId; readonly by: number };

/**
 * Is the condition true of this section, the tolerance given in its favour? An unmeasured quantity
 * never satisfies one.
 */
export function holds(condition: Condition, measurements: Measurements): boolean {
  const value = reading(measurements, condition.measurement);
  if (value === null) return false;
  if ('below' in condition) {
    const other = reading(measurements, condition.below);
    return other !== null && atMost(value, other - condition.by);
  }
  if ('equals' in condition) {
    const other = reading(measurements, condition.equals);
    return other !== null && atMost(Math.abs(value - other), condition.by);
  }
  return atLeast(value, condition.min ?? -Infinity) && atMost(value, condition.max ?? Infinity);
}

/** The conditions not yet met, in order; none left means done. */
export function unmet(
  conditions: readonly Condition[],
  measurements: Measurements,
): readonly Condition[] {
  return conditions.filter((condition) => !holds(condition, measurements));
}

function reading(measurements: Measurements, id: MeasurementId): number | null {
  return measurements.values[id]?.value ?? null;
}
