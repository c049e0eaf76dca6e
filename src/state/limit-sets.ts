import { openingLimitSet, type CompiledLimitSet } from '../limits/index.ts';
import { ownSetOf } from './own-sets.svelte.ts';

/** Every set that comes with the program, once a sheet has asked for one that the page did not open with. */
let all: readonly CompiledLimitSet[] | null = null;

/** Stands for whatever set the page did not open with. */
export const ANY_OTHER = '';

/** Whether the page opens with this set, its words included. */
export const isOpeningSet = (id: string): boolean => id === openingLimitSet.id;

/** Fetches the set that a sheet names; to be waited for before that sheet is judged by. */
export async function fetchLimitSet(id: string): Promise<void> {
  if (!isOpeningSet(id)) all ??= (await import('./all-limit-sets.ts')).limitSets;
}

/** The sets that came with the program and are here by now. */
export const limitSetsHere = (): readonly CompiledLimitSet[] => all ?? [openingLimitSet];

/** The set of that name, a person's own included; undefined when there is none. */
export const limitSetOf = (id: string): CompiledLimitSet | undefined =>
  isOpeningSet(id) ? openingLimitSet : (all?.find((set) => set.id === id) ?? ownSetOf(id));
