import type { Contour, Point } from '../geometry/index.ts';
import type { Message } from '../units/index.ts';
import type { Measurement, MeasurementId, MeasurementUnit, Witness } from './measurement.ts';

export type PointPair = readonly [Point, Point];
export type Note = Message & { readonly refer?: boolean };

export const noWitness: Witness = { kind: 'none' };

/** A distance taken straight from one point to another. */
export function span(
  from: Point,
  to: Point,
  extensions: readonly PointPair[] = [],
  construction: readonly PointPair[] = [],
): Witness {
  return { kind: 'distance', from, to, extensions, construction };
}

function areaOf(regions: readonly Contour[]): Witness {
  return { kind: 'area', regions };
}

function measurement(
  id: MeasurementId,
  value: number | null,
  unit: MeasurementUnit,
  witness: Witness,
  note: Note | null,
): Measurement {
  return note === null ? { id, value, unit, witness } : { id, value, unit, witness, note };
}

/** A measured length, mm. */
export function measuredLength(
  id: MeasurementId,
  value: number | null,
  witness: Witness,
  note: Note | null = null,
): Measurement {
  return measurement(id, value, 'mm', witness, note);
}

/** A measured angle, degrees. */
export function measuredAngle(
  id: MeasurementId,
  value: number | null,
  witness: Witness,
  note: Note | null = null,
): Measurement {
  return measurement(id, value, 'deg', witness, note);
}

/** A measured area, mm². */
export function measuredArea(
  id: MeasurementId,
  value: number,
  regions: readonly Contour[],
): Measurement {
  return measurement(id, value, 'mm2', areaOf(regions), null);
}

/** A mass per length, kg/m. */
export function measuredMass(
  id: MeasurementId,
  value: number,
  regions: readonly Contour[],
): Measurement {
  return measurement(id, value, 'kg/m', areaOf(regions), null);
}
