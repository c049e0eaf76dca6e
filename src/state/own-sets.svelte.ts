import type { CompiledLimitSet, LimitSet } from '../limits/index.ts';

/** A person's own limit sets as they can be judged by; what is judged by one follows when it changes. */
let compiled = $state.raw<readonly CompiledLimitSet[]>([]);

export const ownSets = (): readonly CompiledLimitSet[] => compiled;

export const ownSetOf = (id: string): CompiledLimitSet | undefined =>
  compiled.find((set) => set.id === id);

/** Takes a set in, in place of an earlier one of the same id. */
export function putOwnSet(set: CompiledLimitSet): void {
  const at = compiled.findIndex(({ id }) => id === set.id);
  compiled = at < 0 ? [...compiled, set] : compiled.with(at, set);
}

export function dropOwnSet(id: string): void {
  compiled = compiled.filter((set) => set.id !== id);
}

/** The source of a compiled set: what a file or a link carries. */
export function sourceOf(set: CompiledLimitSet): LimitSet {
  const fields = Object.entries(set).filter(([name]) => name !== 'trees');
  return Object.fromEntries(fields) as unknown as LimitSet;
}
