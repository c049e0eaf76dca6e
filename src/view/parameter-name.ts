import type { Message } from '../units/index.ts';

/** What a parameter is called: `undercut1Depth` is the message `bench_parameter_undercut1_depth`. */
export function parameterName(field: string): Message {
  const known = named.get(field);
  if (known !== undefined) return known;
  const words = field.replace(/^spatter\.\d+\./, 'spatter_').replace(/([A-Z])/g, '_$1');
  const name = { key: `bench_parameter_${words.toLowerCase()}` };
  named.set(field, name);
  return name;
}

/** Names asked for before: there are as many as fields, and they are asked for at every move. */
const named = new Map<string, Message>();
