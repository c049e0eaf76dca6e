import {
  compileLimits,
  judge,
  parseLimitSet,
  type Check,
  type CompiledLimitSet,
  type JobSheet,
  type LimitSet,
} from '../../src/limits/index.ts';
import type { Measurements } from '../../src/measure/index.ts';
import { sheetWith } from './hand-made.ts';

/** A row of a set of one's own, with what a test wants of it. */
export const row = (id: string, measurement: string, limit: object): object => ({
  id,
  name: 'limits_name_underfill',
  measurements: [measurement],
  document: 'd',
  edition: 'e',
  clause: 'c',
  status: 'invented',
  confidence: 'high',
  ...limit,
});

/** A set of one's own with these rows and nothing else said. */
export const ownSet = (...criteria: readonly object[]): LimitSet => ({
  version: 1,
  id: 'own',
  name: 'n',
  about: 'a',
  columns: ['mm', 'in'],
  readings: { reinforcementDatum: 'higher', note: 'n' },
  symbols: {},
  lastPlace: { mm: 0.1, in: 0.01, deg: 1 },
  criteria: criteria as LimitSet['criteria'],
  checklist: [],
});

/** The same compiled; throws what is wrong with it. */
export async function compiledSet(...criteria: readonly object[]): Promise<CompiledLimitSet> {
  const result = await compileLimits(parseLimitSet(ownSet(...criteria)));
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.limits;
}

/** The checks that such rows make, compiled as a person's own set is; the sheet's own left out. */
export async function checksOf(
  criteria: readonly object[],
  of: Measurements,
  sheet: JobSheet = sheetWith(),
): Promise<readonly Check[]> {
  const checks = judge(of, sheet, await compiledSet(...criteria));
  return checks.filter(({ source }) => source.status !== 'sheet');
}
