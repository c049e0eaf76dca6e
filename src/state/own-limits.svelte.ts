import type { LimitSet } from '../limits/index.ts';
import type { Message } from '../units/index.ts';
import { dropOwnSet, ownSets, putOwnSet, sourceOf } from './own-sets.svelte.ts';
import { checkLimits, readLimits, type LimitsProblem } from './read-limits.ts';
import { isDraft, putAside } from './kept-drafts.ts';
import type { Shelf } from './shelf.ts';

const NAME = 'toeline.limits';

/** A set of one's own as it is being written: kept even while something in it is wrong. */
export interface OwnLimits {
  readonly draft: LimitSet;
  /** what is wrong with it just now; the last right state goes on judging meanwhile */
  readonly problems: readonly LimitsProblem[];
}

/**
 * The limit sets that a person wrote or brought in. Drafts are kept on the
 * shelf at every change, right or wrong; what is right is compiled and judged
 * by. Nothing that comes from outside takes the place of what is here.
 */
export class OwnLimitsSession {
  readonly #shelf: Shelf;
  #all = $state.raw<readonly OwnLimits[]>([]);
  /** whether the shelf refused the last change */
  refused = $state.raw(false);
  /** what was said when the kept sets were taken down */
  said = $state.raw<Message | null>(null);
  /** what the shelf held can't be read and could not be put aside: nothing is written over it */
  #untouchable = false;
  /** sets that were taken out here, which another tab may still have written */
  readonly #removed = new Set<string>();

  constructor(shelf: Shelf) {
    this.#shelf = shelf;
  }

  get all(): readonly OwnLimits[] {
    return this.#all;
  }

  /**
   * Takes down what is kept, and what a link or a file of a bench brought with it. A shelf that
   * can't be read is put aside and said.
   */
  async open(): Promise<Message | null> {
    const said = await this.#takeDown();
    await this.adopt();
    return said;
  }

  /** Takes in what can be judged by and isn't here yet: sets that a link or a bench's file brought. */
  async adopt(): Promise<void> {
    const here = new Set(this.#all.map(({ draft }) => draft.id));
    for (const set of ownSets()) if (!here.has(set.id)) await this.#take(sourceOf(set));
  }

  async #takeDown(): Promise<Message | null> {
    const text = this.#shelf.read(NAME);
    if (text === null) return null;
    const kept = readKept(text);
    const unread = kept === null || kept.some((entry) => !isDraft(entry));
    for (const draft of kept ?? []) if (isDraft(draft)) await this.#take(draft);
    if (!unread) return null;
    this.#untouchable = !putAside(this.#shelf, NAME, text);
    return {
      key: this.#untouchable ? 'bench_limits_kept_untouchable' : 'bench_limits_kept_unreadable',
    };
  }

  /** Takes in what another tab has written since: whole sets that aren't here yet. */
  async follow(): Promise<void> {
    const here = new Set(this.#all.map(({ draft }) => draft.id));
    for (const draft of readKept(this.#shelf.read(NAME) ?? '[]') ?? [])
      if (isDraft(draft) && !here.has(draft.id) && !this.#removed.has(draft.id))
        await this.#take(draft);
  }

  /** A new set with the rows of one there is, to be made one's own; its words are given by the caller. */
  async start(source: LimitSet, words: Pick<LimitSet, 'name' | 'about'>): Promise<string> {
    await this.follow();
    const id = this.#freshId(source.id);
    await this.change({ ...source, ...words, id });
    return id;
  }

  /** The set as it stands after a change: checked, kept, and judged by once it is right. */
  async change(draft: LimitSet): Promise<void> {
    this.#removed.delete(draft.id);
    const taken = this.#take(draft);
    this.#keep();
    await taken;
  }

  remove(id: string): void {
    this.#removed.add(id);
    this.#all = this.#all.filter(({ draft }) => draft.id !== id);
    dropOwnSet(id);
    this.#keep();
  }

  /** Brings a file in, whole or not at all; a set whose id is taken here comes in under another. */
  async bringIn(
    text: string,
  ): Promise<{ readonly id: string } | { readonly problems: readonly LimitsProblem[] }> {
    const read = await readLimits(text);
    if (!read.ok) return { problems: read.problems };
    await this.follow();
    const id = this.#freshId(read.set.id);
    await this.change({ ...read.set, id });
    return { id };
  }

  /** The draft is taken as it is, then checked; a later change may have overtaken it by then. */
  async #take(draft: LimitSet): Promise<void> {
    const before = this.#all.find((one) => one.draft.id === draft.id);
    this.#put({ draft, problems: before?.problems ?? [] });
    const checked = await checkLimits(draft);
    if (!this.#all.some((one) => one.draft === draft)) return;
    if (checked.ok) putOwnSet(checked.compiled);
    this.#put({ draft, problems: checked.ok ? [] : checked.problems });
  }

  #put(own: OwnLimits): void {
    const at = this.#all.findIndex((one) => one.draft.id === own.draft.id);
    this.#all = at < 0 ? [...this.#all, own] : this.#all.with(at, own);
  }

  #keep(): void {
    if (this.#untouchable) {
      this.refused = true;
      return;
    }
    const here = new Set(this.#all.map(({ draft }) => draft.id));
    // what another tab has written and this one hasn't taken in yet stays
    const others = (readKept(this.#shelf.read(NAME) ?? '[]') ?? []).filter(
      (entry) => isDraft(entry) && !here.has(entry.id) && !this.#removed.has(entry.id),
    );
    const text = JSON.stringify([...this.#all.map(({ draft }) => draft), ...others]);
    this.refused = !this.#shelf.write(NAME, text);
  }

  /** An id that nothing here goes by, told from its like by a number. */
  #freshId(like: string): string {
    const stem = like.replace(/-own(-\d+)?$/u, '');
    const taken = new Set(this.#all.map(({ draft }) => draft.id));
    for (let n = 1; ; n++) {
      const id = n === 1 ? `${stem}-own` : `${stem}-own-${n}`;
      if (!taken.has(id)) return id;
    }
  }
}

/** The entries of what a shelf keeps; null where it is no list. */
function readKept(text: string): readonly unknown[] | null {
  try {
    const kept: unknown = JSON.parse(text);
    return Array.isArray(kept) ? (kept as readonly unknown[]) : null;
  } catch {
    return null;
  }
}

/** A set as it stands in a file: readable, one key a line. */
export const writeLimits = (set: LimitSet): string => `${JSON.stringify(set, null, 2)}\n`;
