import { flushSync } from 'svelte';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { readAside, putAside, dropAside } from '../../src/state/aside.ts';
import type { BenchSession } from '../../src/state/bench.svelte.ts';
import { isFirstVisit, keepBench, openBench } from '../../src/state/kept-bench.svelte.ts';
import { toHash, writeDocument } from '../../src/state/bench-document.ts';
import { numberAt } from '../../src/state/parameter.ts';
import type { Shelf } from '../../src/state/shelf.ts';
import { startingBench } from '../../src/state/start.ts';
import type { Tab } from '../../src/state/tab.ts';

const KEPT = 'toeline.bench';
const ASIDE = 'toeline.bench.unreadable';

function shelfWith(texts: Readonly<Record<string, string>> = {}): Shelf & {
  readonly texts: Map<string, string>;
} {
  const kept = new Map(Object.entries(texts));
  return {
    texts: kept,
    read: (name) => kept.get(name) ?? null,
    write: (name, text) => {
      kept.set(name, text);
      return true;
    },
  };
}

/** A tab that remembers in a variable. */
function tabWith(text: string | null = null, takes = true): Tab & { text: string | null } {
  const tab = {
    text,
    read: () => tab.text,
    write: (next: string) => {
      if (takes) tab.text = next;
      return takes;
    },
  };
  return tab;
}
const newTab = tabWith();

/** Works on a bench as the page does, and says whether the shelf holds the work. */
function workOn(bench: BenchSession, shelf: Shelf, tab: Tab = tabWith()): 'shelf' | 'tab' | 'none' {
  const stop = $effect.root(() => keepBench(bench, shelf, tab));
  flushSync();
  bench.propose('leg1', 9);
  bench.commit();
  flushSync();
  stop();
  if (shelf.read(KEPT)?.includes('"leg1": 9') === true) return 'shelf';
  return tab.read()?.includes('"leg1": 9') === true ? 'tab' : 'none';
}

afterEach(() => {
  vi.doUnmock('../../src/state/read-document.ts');
  vi.resetModules();
});

describe('a kept bench that cannot be read', () => {
  it('is offered back with its text, and lies aside when the next work is kept in its place', async () => {
    const shelf = shelfWith({ [KEPT]: '{"version":1,"joint":"gone"}' });
    const bench = await openBench(shelf, newTab, '');
    expect(bench.unreadable?.text).toContain('gone');
    expect(workOn(bench, shelf)).toBe('shelf');
    expect(shelf.read(KEPT)).toContain('"leg1": 9');
    expect(readAside(shelf)).toEqual(['{"version":1,"joint":"gone"}']);
    // The work that followed does not take the offer away.
    expect(bench.unreadable).not.toBeNull();
  });

  it('is not overwritten aside by the next that cannot be read', async () => {
    const shelf = shelfWith({ [KEPT]: 'first', [ASIDE]: 'put aside before there was a list' });
    await openBench(shelf, newTab, '');
    shelf.write(KEPT, 'second');
    await openBench(shelf, newTab, '');
    await openBench(shelf, newTab, '');
    expect(readAside(shelf)).toEqual(['put aside before there was a list', 'first', 'second']);
  });

  it('stays where it is when the list is full or the shelf too: the work goes with the tab', async () => {
    const full = JSON.stringify(Array.from({ length: 9 }, (_, index) => `text ${index}`));
    const shelf = shelfWith({ [KEPT]: 'one more', [ASIDE]: full });
    const bench = await openBench(shelf, newTab, '');
    expect(workOn(bench, shelf)).toBe('tab');
    expect(shelf.read(KEPT)).toBe('one more');
    expect(readAside(shelf)).toHaveLength(9);
    expect(bench.unreadable?.text).toBe('one more');
  });

  it('is neither put aside nor overwritten when it is only the reader that cannot be fetched', async () => {
    vi.doMock('../../src/state/read-document.ts', () => {
      throw new Error('offline');
    });
    const shelf = shelfWith({ [KEPT]: 'a good bench' });
    const bench = await openBench(shelf, newTab, '');
    expect(bench.notice?.key).toBe('bench_kept_not_fetched');
    expect(workOn(bench, shelf)).toBe('tab');
    expect(shelf.read(KEPT)).toBe('a good bench');
    expect(readAside(shelf)).toEqual([]);
  });
});

describe('what was put aside', () => {
  it('is listed once, and goes when it is dropped', () => {
    const shelf = shelfWith();
    for (const text of ['a', 'b', 'a']) expect(putAside(shelf, text)).toBe(true);
    expect(readAside(shelf)).toEqual(['a', 'b']);
    dropAside(shelf, 'a');
    expect(readAside(shelf)).toEqual(['b']);
  });

  it('is said not to lie there when the shelf refuses', () => {
    const refusing: Shelf = { read: () => null, write: () => false };
    expect(putAside(refusing, 'a')).toBe(false);
  });
});

describe('a first visit', () => {
  it('is one with nothing kept and nothing in the address', () => {
    expect(isFirstVisit(shelfWith(), newTab, '')).toBe(true);
    expect(isFirstVisit(shelfWith(), newTab, '#lessons')).toBe(true);
    expect(isFirstVisit(shelfWith(), newTab, '#bench=x')).toBe(false);
    expect(isFirstVisit(shelfWith({ [KEPT]: '' }), newTab, '')).toBe(false);
  });
});

describe('a tab', () => {
  const withLeg = (leg1: number): string => {
    const start = startingBench();
    return writeDocument({ ...start, joint: { ...start.joint, leg1 } as typeof start.joint });
  };
  const legOf = (bench: BenchSession): number | null => numberAt(bench.joint, 'leg1');

  it('opens with its own work at a reload, whatever another tab has kept since', async () => {
    const shelf = shelfWith({ [KEPT]: withLeg(11) });
    const reloaded = await openBench(shelf, tabWith(withLeg(12)), '');
    expect(legOf(reloaded)).toBe(12);
    // and what was kept is one undo away
    reloaded.undo();
    expect(legOf(reloaded)).toBe(11);
    expect(legOf(await openBench(shelf, newTab, ''))).toBe(11);
    // what can't be read is no reason to leave out what is kept
    expect(legOf(await openBench(shelf, tabWith('{'), ''))).toBe(11);
  });

  it('keeps the work where the shelf refuses, and says what a new visit does not bring back', async () => {
    const refusing: Shelf = { read: () => null, write: () => false };
    const bench = await openBench(refusing, newTab, '');
    const tab = tabWith();
    expect(workOn(bench, refusing, tab)).toBe('tab');
    expect(bench.notice?.key).toBe('bench_storage_refused');
    const again = await openBench(refusing, tab, '');
    expect(legOf(again)).toBe(9);
  });

  it('that takes nothing either is said, for then only a file helps', async () => {
    const refusing: Shelf = { read: () => null, write: () => false };
    const bench = await openBench(refusing, newTab, '');
    expect(workOn(bench, refusing, tabWith(null, false))).toBe('none');
    expect(bench.notice?.key).toBe('bench_not_kept');
  });

  it('remembers its work again where it has come to another page', async () => {
    const bench = await openBench(shelfWith(), newTab, '');
    const tab = tabWith();
    let remember = (): void => undefined;
    const stop = $effect.root(() => {
      remember = keepBench(bench, shelfWith(), tab);
    });
    flushSync();
    remember();
    expect(tab.text).toBeNull();
    bench.propose('leg1', 9);
    bench.commit();
    flushSync();
    // another page of the history has a memory of its own
    tab.text = withLeg(5);
    remember();
    expect(tab.text).toContain('"leg1": 9');
    stop();
  });

  it('holds what a link brought, so that a reload doesn’t bring the link over later work', async () => {
    const tab = tabWith();
    const start = startingBench();
    const linked = { ...start, joint: { ...start.joint, leg1: 13 } as typeof start.joint };
    expect(legOf(await openBench(shelfWith(), tab, toHash(linked)))).toBe(13);
    expect(tab.text).toContain('"leg1": 13');
  });

  it('puts aside what another tab has kept before its own work takes that place, and says so', async () => {
    const shelf = shelfWith({ [KEPT]: withLeg(8) });
    const bench = await openBench(shelf, newTab, '');
    const stop = $effect.root(() => keepBench(bench, shelf, tabWith()));
    flushSync();
    shelf.write(KEPT, withLeg(15));
    bench.propose('leg1', 9);
    bench.commit();
    flushSync();
    await vi.waitFor(() => expect(bench.notice?.key).toBe('bench_other_tab'));
    expect(readAside(shelf)).toEqual([withLeg(15)]);
    expect(shelf.read(KEPT)).toContain('"leg1": 9');
    stop();
  });

  /** Two tabs that opened the same bench, and work on it: each by its number. */
  async function twoTabs(shelf: Shelf) {
    const tabs = [tabWith(), tabWith()] as const;
    const benches = [
      await openBench(shelf, newTab, ''),
      await openBench(shelf, newTab, ''),
    ] as const;
    const stops = benches.map((bench, at) =>
      $effect.root(() => keepBench(bench, shelf, tabs[at] ?? newTab)),
    );
    flushSync();
    const work = async (at: 0 | 1, leg1: number): Promise<void> => {
      benches[at].propose('leg1', leg1);
      benches[at].commit();
      flushSync();
      await vi.waitFor(() =>
        expect(shelf.read(KEPT) === tabs[at].text || benches[at].notice !== null).toBe(true),
      );
    };
    const stop = (): void => {
      for (const one of stops) one();
    };
    return { tabs, benches, work, stop };
  }
  const legIn = (text: string | null): unknown =>
    (JSON.parse(text ?? '') as { readonly joint: { readonly leg1: number } }).joint.leg1;

  it('in turn with another leaves the newest of each aside, however often they take turns', async () => {
    const shelf = shelfWith({ [KEPT]: withLeg(8), [ASIDE]: JSON.stringify(['mangled']) });
    const { work, stop } = await twoTabs(shelf);
    for (let turn = 0; turn < 12; turn++) {
      await work(0, 5 + turn / 10);
      await work(1, 7 + turn / 10);
    }
    expect(legIn(shelf.read(KEPT))).toBe(8.1);
    const [mangled, ...aside] = readAside(shelf);
    expect(mangled).toBe('mangled');
    // the last of the other tab, and the last that this tab had kept before that
    expect(aside.map(legIn)).toEqual([8, 6.1]);
    stop();
  });

  it('leaves what another has kept where it is when that can’t be put aside, and says so', async () => {
    const full = JSON.stringify(Array.from({ length: 9 }, (_, index) => `text ${index}`));
    const shelf = shelfWith({ [KEPT]: withLeg(8), [ASIDE]: full });
    const { tabs, benches, work, stop } = await twoTabs(shelf);
    await work(0, 5);
    expect(benches[0].notice).toBeNull();
    await work(1, 7);
    expect(benches[1].notice?.key).toBe('bench_other_tab_stays');
    expect(legIn(shelf.read(KEPT))).toBe(5);
    expect(legIn(tabs[1].text)).toBe(7);
    // once there is room it is kept again
    dropAside(shelf, 'text 0');
    benches[1].notice = null;
    await work(1, 6);
    await vi.waitFor(() => expect(legIn(shelf.read(KEPT))).toBe(6));
    expect(readAside(shelf).slice(8).map(legIn)).toEqual([5]);
    stop();
  });

  it('leaves what another has kept where it is when what puts it aside can’t be fetched', async () => {
    const shelf = shelfWith({ [KEPT]: withLeg(8) });
    const { benches, work, stop } = await twoTabs(shelf);
    await work(0, 5);
    vi.doMock('../../src/state/aside.ts', () => {
      throw new Error('offline');
    });
    await work(1, 7);
    expect(benches[1].notice?.key).toBe('bench_storage_refused');
    expect(legIn(shelf.read(KEPT))).toBe(5);
    vi.doUnmock('../../src/state/aside.ts');
    stop();
  });
});
