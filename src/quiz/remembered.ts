import type { LimitSet } from './limit-set.ts';

/** What is remembered of a set at most: the skills of a sheet or two that a person goes back and forth between. */
const MOST = 64;

/**
 * A place to remember what takes long to work out of a set and something else that `key` tells apart.
 * What has not been asked for the longest goes first.
 */
export function remembered<Value>(): (limits: LimitSet, key: string, work: () => Value) => Value {
  const kept = new WeakMap<LimitSet, Map<string, Value>>();
  return (limits, key, work) => {
    const known = kept.get(limits) ?? new Map<string, Value>();
    kept.set(limits, known);
    const found = known.has(key) ? (known.get(key) as Value) : work();
    known.delete(key);
    known.set(key, found);
    const [oldest] = known.keys();
    if (known.size > MOST && oldest !== undefined) known.delete(oldest);
    return found;
  };
}
