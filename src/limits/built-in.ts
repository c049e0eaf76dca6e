import api1104 from './sets/api-1104.compiled.json' with { type: 'json' };
import austin723s from './sets/austin-723s.compiled.json' with { type: 'json' };
import awsD11Cyclic from './sets/aws-d11-cyclic.compiled.json' with { type: 'json' };
import awsD11Static from './sets/aws-d11-static.compiled.json' with { type: 'json' };
import b311 from './sets/b311.compiled.json' with { type: 'json' };
import b313CategoryD from './sets/b313-category-d.compiled.json' with { type: 'json' };
import b313Normal from './sets/b313-normal.compiled.json' with { type: 'json' };
import b313Severe from './sets/b313-severe.compiled.json' with { type: 'json' };
import cfr46Part56 from './sets/cfr46-5670.compiled.json' with { type: 'json' };
import iso5817B from './sets/iso5817-b.compiled.json' with { type: 'json' };
import iso5817D from './sets/iso5817-d.compiled.json' with { type: 'json' };
import lanl from './sets/lanl.compiled.json' with { type: 'json' };
import lockGateHouse from './sets/lock-gate-house.compiled.json' with { type: 'json' };
import mil2035aClass1 from './sets/mil-2035a-1.compiled.json' with { type: 'json' };
import mil2035aClass23 from './sets/mil-2035a-23.compiled.json' with { type: 'json' };
import milM53008 from './sets/mil-m-53008.compiled.json' with { type: 'json' };
import milStd2219a from './sets/mil-std-2219a.compiled.json' with { type: 'json' };
import milW47091a from './sets/mil-w-47091a.compiled.json' with { type: 'json' };
import pw35 from './sets/pw-35.compiled.json' with { type: 'json' };
import ufgs15216n from './sets/ufgs-15216n.compiled.json' with { type: 'json' };
import viii1 from './sets/viii-1.compiled.json' with { type: 'json' };
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
  compiled(b313Normal),
  compiled(b313Severe),
  compiled(b313CategoryD),
  compiled(b311),
  compiled(cfr46Part56),
  compiled(viii1),
  compiled(pw35),
  compiled(api1104),
  compiled(mil2035aClass1),
  compiled(mil2035aClass23),
  compiled(milStd2219a),
  compiled(milM53008),
  compiled(milW47091a),
  compiled(lanl),
  compiled(ufgs15216n),
  compiled(austin723s),
  compiled(lockGateHouse),
];
