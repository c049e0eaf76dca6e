import { expect } from 'vitest';
import type { Measurement, MeasurementId } from '../../src/measure/index.ts';
import { measure, measurementIds } from '../../src/measure/index.ts';
import type { Section } from '../../src/joint/index.ts';

const known: ReadonlySet<string> = new Set(measurementIds);

/** The measurement of this name; a test that asks for one that is absent fails. */
export function read(section: Section, id: MeasurementId): Measurement {
  const { values } = measure(section);
  const unknown = Object.keys(values).filter((key) => !known.has(key));
  if (unknown.length > 0) throw new Error(`no such measurement: ${unknown.join()}`);
  const found = values[id];
  if (found === undefined) throw new Error(`${id} was not measured`);
  return found;
}

export function valueOf(section: Section, id: MeasurementId): number {
  const { value } = read(section, id);
  if (value === null) throw new Error(`${id} has no value`);
  return value;
}

/** The two ends a distance was taken between. */
export function endsOf(
  section: Section,
  id: MeasurementId,
): readonly [number, number, number, number] {
  const { witness } = read(section, id);
  if (witness.kind !== 'distance') throw new Error(`${id} was not taken as a distance`);
  return [witness.from.x, witness.from.y, witness.to.x, witness.to.y];
}

/** A number that may differ by rounding, inside a larger value that is compared as a whole. */
export const about = (value: number): number => expect.closeTo(value, 12) as number;
