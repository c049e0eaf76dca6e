import { circumstanceNames, circumstances } from '../limits/index.ts';
import type { Circumstance, JobSheet, Service } from '../limits/index.ts';

/**
 * The sheet with what it leaves open said, so that every call on it is accept or reject: short
 * imperfections stand alone, an instrument's doubt and rounding play no part (an eye has neither),
 * and a circumstance that nobody gave is the first that there is.
 */
export function settledSheet(sheet: JobSheet): JobSheet {
  return {
    ...sheet,
    extent: sheet.extent === 'unknown' ? 'isolatedShort' : sheet.extent,
    rounding: 'absolute',
    guard: { ...sheet.guard, factor: 0 },
    service: servedBy(sheet.service),
  };
}

/** The sheet as it stands, but for circumstances that nobody gave: what else is open stays open. */
export const openSheet = (sheet: JobSheet): JobSheet => ({
  ...sheet,
  rounding: 'absolute',
  service: servedBy(sheet.service),
});

function servedBy(service: Service): Service {
  const first = (name: Circumstance) =>
    service[name] === 'unknown' ? circumstances[name][0] : service[name];
  return Object.fromEntries(circumstanceNames.map((name) => [name, first(name)])) as Service;
}
