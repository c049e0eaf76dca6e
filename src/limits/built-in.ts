import lockGateHouse from './sets/lock-gate-house.compiled.json' with { type: 'json' };
import type { CompiledLimitSet } from './limit-set.ts';
import { openingLimitSet } from './opening-set.ts';

/** The sets that come with the program, compiled. A test compiles their sources again and compares. */
export const limitSets: readonly CompiledLimitSet[] = [
  openingLimitSet,
  lockGateHouse as unknown as CompiledLimitSet,
];
