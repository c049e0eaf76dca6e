import type { Check } from '../limits/index.ts';

/** Whether two checks are of one quantity by name; of unequal plates each is put to one plate. */
export const isNamesake = (one: Check, other: Check): boolean =>
  other.name.key === one.name.key && other.name.values?.['side'] === one.name.values?.['side'];
