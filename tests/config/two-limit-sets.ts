/**
 * Stands for the built-in sets under mutation: two sets exercise all of the code, and reading all
 * of the tables anew for each of thousands of mutants would take hours.
 */
import lockGateHouse from '../../src/limits/sets/lock-gate-house.compiled.json' with { type: 'json' };
import type { CompiledLimitSet } from '../../src/limits/index.ts';
import { openingLimitSet } from '../../src/limits/opening-set.ts';

export const limitSets: readonly CompiledLimitSet[] = [
  openingLimitSet,
  lockGateHouse as unknown as CompiledLimitSet,
];
