import { expect, it } from 'vitest';
import { measurementCatalogue, measurementIds, unitOf } from '../../src/measure/index.ts';

it.each(measurementIds)('the unit of %s is the one that the catalogue gives', (id) => {
  expect(unitOf(id)).toBe(measurementCatalogue[id].unit);
});
