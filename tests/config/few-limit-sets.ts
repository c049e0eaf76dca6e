/**
 * Stands for the built-in sets under mutation: those that the tests of the floor name exercise all of
 * the code, and reading all of the tables anew for each of thousands of mutants would take hours.
 */
import api1104 from '../../src/limits/sets/api-1104.compiled.json' with { type: 'json' };
import awsD11Static from '../../src/limits/sets/aws-d11-static.compiled.json' with { type: 'json' };
import b311 from '../../src/limits/sets/b311.compiled.json' with { type: 'json' };
import b313Normal from '../../src/limits/sets/b313-normal.compiled.json' with { type: 'json' };
import b313Severe from '../../src/limits/sets/b313-severe.compiled.json' with { type: 'json' };
import iso5817B from '../../src/limits/sets/iso5817-b.compiled.json' with { type: 'json' };
import lockGateHouse from '../../src/limits/sets/lock-gate-house.compiled.json' with { type: 'json' };
import mil2035a from '../../src/limits/sets/mil-2035a-1.compiled.json' with { type: 'json' };
import milStd2219a from '../../src/limits/sets/mil-std-2219a.compiled.json' with { type: 'json' };
import type { CompiledLimitSet } from '../../src/limits/index.ts';
import { openingLimitSet } from '../../src/limits/opening-set.ts';

const read: unknown = [
  iso5817B,
  awsD11Static,
  b313Normal,
  b313Severe,
  b311,
  api1104,
  mil2035a,
  milStd2219a,
  lockGateHouse,
];

export const limitSets: readonly CompiledLimitSet[] = [
  openingLimitSet,
  ...(read as readonly CompiledLimitSet[]),
];
