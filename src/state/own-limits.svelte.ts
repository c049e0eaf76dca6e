import type { LimitSet } from '../limits/index.ts';
import type { Message } from '../units/index.ts';
import { dropOwnSet, ownSets, putOwnSet, sourceOf } from './own-sets.svelte.ts';
import { checkLimits, readLimits, type LimitsProblem } from './read-limits.ts';
import { draftsIn, listIn, putAside } from './kept-drafts.ts';
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
 * by. Nothing that comes from outside takes the place of what is here. Several
 * tabs write on one shelf: each writes only the sets that it has changed itself.
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
  /** each set as this tab last saw it on the shelf: what stands there otherwise, another tab has written */
  readonly #seen = new Map<string, string>();
  /** sets that were changed here and don't stand on the shelf yet */
  readonly #changed = new Set<string>();
  /** sets that were taken out here, as they were, while they still stand on the shelf */
  readonly #removed = new Map<string, string>();
  /** the set that a person has the hand on: what another tab makes of it waits */
  #held: string | null = null;

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
    const drafts = draftsIn(text);
    const unread = listIn(text)?.length !== drafts.length;
    for (const draft of drafts) await this.#takeFromShelf(draft);
    if (!unread) return null;
    this.#untouchable = !putAside(this.#shelf, NAME, text);
    return {
      key: this.#untouchable ? 'bench_limits_kept_untouchable' : 'bench_limits_kept_unreadable',
    };
  }

  /** Takes in what another tab has written since: new sets, and what it has made of sets that weren't changed here. */
  async follow(): Promise<void> {
    const written = draftsIn(this.#shelf.read(NAME)).filter((draft) => this.#isNews(draft));
    await Promise.all(written.map((draft) => this.#takeFromShelf(draft)));
  }

  #isNews(draft: LimitSet): boolean {
    const { id } = draft;
    const text = JSON.stringify(draft);
    if (!this.#all.some((one) => one.draft.id === id)) return this.#removed.get(id) !== text;
    const seen = this.#seen.get(id);
    // one that came with a link and was never kept is this tab's own
    return seen !== undefined && seen !== text && !this.#changed.has(id) && id !== this.#held;
  }

  async #takeFromShelf(draft: LimitSet): Promise<void> {
    this.#seen.set(draft.id, JSON.stringify(draft));
    await this.#take(draft);
  }

  /** Says which set a person has the hand on, or that it was let go: then what has waited comes in. */
  hold(id: string | null): void {
    this.#held = id;
    if (id === null) void this.follow();
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
    this.#changed.add(draft.id);
    await Promise.all([this.#take(draft), this.#keep()]);
  }

  remove(id: string): void {
    const mine = this.#all.find(({ draft }) => draft.id === id);
    this.#removed.set(id, this.#seen.get(id) ?? JSON.stringify(mine?.draft));
    this.#seen.delete(id);
    this.#changed.delete(id);
    this.#all = this.#all.filter(({ draft }) => draft.id !== id);
    dropOwnSet(id);
    void this.#keep();
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

  /**
   * Writes what was changed here beside what stands on the shelf. Where another tab has changed the
   * same set, what it had written stays as a set of its own.
   */
  async #keep(): Promise<void> {
    if (this.#untouchable) {
      this.refused = true;
      return;
    }
    const text = this.#shelf.read(NAME);
    const kept = draftsIn(text).filter(
      (draft) => this.#removed.get(draft.id) !== JSON.stringify(draft),
    );
    const isKept = (id: string): boolean => kept.some((one) => one.id === id);
    const mine = this.#all
      .map(({ draft }) => draft)
      .filter(
        ({ id }) =>
          this.#changed.has(id) ||
          // came with a link and was never kept, or the whole shelf was emptied
          ((text === null || !this.#seen.has(id)) && !isKept(id)),
      );
    const copies: LimitSet[] = [];
    const beside = kept.map((one) => {
      const own = mine.find(({ id }) => id === one.id);
      const theirs = JSON.stringify(one);
      if (own && theirs !== this.#seen.get(one.id) && theirs !== JSON.stringify(own))
        copies.push({ ...one, id: this.#freshId(one.id, [...kept, ...copies]) });
      return own ?? one;
    });
    const next = [...beside, ...mine.filter(({ id }) => !isKept(id)), ...copies];
    this.refused = !this.#shelf.write(NAME, JSON.stringify(next));
    if (this.refused) return;
    for (const draft of mine) this.#seen.set(draft.id, JSON.stringify(draft));
    this.#changed.clear();
    this.#removed.clear();
    for (const { name } of copies) this.said = { key: 'own_limits_other_tab', values: { name } };
    await Promise.all(copies.map((draft) => this.#takeFromShelf(draft)));
  }

  /** An id that nothing here goes by, told from its like by a number. */
  #freshId(like: string, beside: readonly LimitSet[] = []): string {
    const stem = like.replace(/-own(-\d+)?$/u, '');
    const taken = new Set([...this.#all.map(({ draft }) => draft), ...beside].map(({ id }) => id));
    for (let n = 1; ; n++) {
      const id = n === 1 ? `${stem}-own` : `${stem}-own-${n}`;
      if (!taken.has(id)) return id;
    }
  }
}

/** A set as it stands in a file: readable, one key a line. */
export const writeLimits = (set: LimitSet): string => `${JSON.stringify(set, null, 2)}\n`;
