import awsD11Cyclic from './sets/aws-d11-cyclic.compiled.json' with { type: 'json' };
import awsD11Static from './sets/aws-d11-static.compiled.json' with { type: 'json' };
import iso5817B from './sets/iso5817-b.compiled.json' with { type: 'json' };
import iso5817D from './sets/iso5817-d.compiled.json' with { type: 'json' };
import lockGateHouse from './sets/lock-gate-house.compiled.json' with { type: 'json' };
import type { CompiledLimitSet } from './limit-set.ts';
import { openingLimitSet } from './opening-set.ts';

/** What TypeScript makes of a compiled set's JSON is wider than what it is; a test holds that it is one. */
const compiled = (set: unknown): CompiledLimitSet => set as CompiledLimitSet;

/** The sets that come with the program, compiled. A test compiles their sources again and compares. */
export const limitSets: readonly CompiledLimitSet[] = [
  compiled(iso5817B),
  openingLimitSet,
  compiled(iso5817D),
  compiled(awsD11Static),
  compiled(awsD11Cyclic),
  compiled(lockGateHouse),
];
