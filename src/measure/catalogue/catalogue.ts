import type { MeasurementId } from '../measurement.ts';
import { measurementIds } from '../measurement.ts';
import { buttRows } from './butt.ts';
import type { CatalogueEntry } from './entry.ts';
import { withKeys } from './entry.ts';
import { filletRows } from './fillet.ts';
import { jointRows } from './joint.ts';
import { weldRows } from './weld.ts';

const entries = [...jointRows, ...filletRows, ...weldRows, ...buttRows].map(withKeys);

/** Everything known about each measurement but its value, in the order of `measurementIds`. */
export const measurementCatalogue = Object.freeze(
  Object.fromEntries(measurementIds.map((id) => [id, entries.find((entry) => entry.id === id)])),
) as Readonly<Record<MeasurementId, CatalogueEntry>>;
