import { flushSync } from 'svelte';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { readAside, putAside, dropAside } from '../../src/state/aside.ts';
import type { BenchSession } from '../../src/state/bench.svelte.ts';
import { isFirstVisit, keepBench, openBench } from '../../src/state/kept-bench.svelte.ts';
import type { Shelf } from '../../src/state/shelf.ts';

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

/** Works on a bench as the page does, and gives the address that the work went to, if it did. */
function workOn(bench: BenchSession, shelf: Shelf): string | null {
  let address: string | null = null;
  const stop = $effect.root(() => keepBench(bench, shelf, (hash) => (address = hash)));
  flushSync();
  bench.propose('leg1', 9);
  bench.commit();
  flushSync();
  stop();
  return address;
}

afterEach(() => {
  vi.doUnmock('../../src/state/read-document.ts');
  vi.resetModules();
});

describe('a kept bench that cannot be read', () => {
  it('is offered back with its text, and lies aside when the next work is kept in its place', async () => {
    const shelf = shelfWith({ [KEPT]: '{"version":1,"joint":"gone"}' });
    const bench = await openBench(shelf, '');
    expect(bench.unreadable?.text).toContain('gone');
    expect(workOn(bench, shelf)).toBeNull();
    expect(shelf.read(KEPT)).toContain('"leg1": 9');
    expect(readAside(shelf)).toEqual(['{"version":1,"joint":"gone"}']);
    // The work that followed does not take the offer away.
    expect(bench.unreadable).not.toBeNull();
  });

  it('is not overwritten aside by the next that cannot be read', async () => {
    const shelf = shelfWith({ [KEPT]: 'first', [ASIDE]: 'put aside before there was a list' });
    await openBench(shelf, '');
    shelf.write(KEPT, 'second');
    await openBench(shelf, '');
    await openBench(shelf, '');
    expect(readAside(shelf)).toEqual(['put aside before there was a list', 'first', 'second']);
  });

  it('stays where it is when the list is full or the shelf too: the work goes to the address', async () => {
    const full = JSON.stringify(Array.from({ length: 9 }, (_, index) => `text ${index}`));
    const shelf = shelfWith({ [KEPT]: 'one more', [ASIDE]: full });
    const bench = await openBench(shelf, '');
    expect(workOn(bench, shelf)).toMatch(/^#bench=/);
    expect(shelf.read(KEPT)).toBe('one more');
    expect(readAside(shelf)).toHaveLength(9);
    expect(bench.unreadable?.text).toBe('one more');
  });

  it('is neither put aside nor overwritten when it is only the reader that cannot be fetched', async () => {
    vi.doMock('../../src/state/read-document.ts', () => {
      throw new Error('offline');
    });
    const shelf = shelfWith({ [KEPT]: 'a good bench' });
    const bench = await openBench(shelf, '');
    expect(bench.notice?.key).toBe('bench_kept_not_fetched');
    expect(workOn(bench, shelf)).toMatch(/^#bench=/);
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
    expect(isFirstVisit(shelfWith(), '')).toBe(true);
    expect(isFirstVisit(shelfWith(), '#lessons')).toBe(true);
    expect(isFirstVisit(shelfWith(), '#bench=x')).toBe(false);
    expect(isFirstVisit(shelfWith({ [KEPT]: '' }), '')).toBe(false);
  });
});
