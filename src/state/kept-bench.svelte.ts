import { isBenchHash, writeDocument } from './bench-document.ts';
import { BenchSession } from './bench.svelte.ts';
import type { ReadDocument } from './read-document.ts';
import type { Shelf } from './shelf.ts';
import { startingBench } from './start.ts';
import type { Tab } from './tab.ts';

const NAME = 'toeline.bench';

/** Whether nothing was kept and the address carries nothing: then the opening bench opens. */
export const isFirstVisit = (shelf: Shelf, tab: Tab, hash: string): boolean =>
  shelf.read(NAME) === null && tab.read() === null && !isBenchHash(hash);

/** Benches opened while another is kept that nobody has read or put aside: they are not kept in its place. */
const keptElsewhere = new WeakSet<BenchSession>();

/**
 * The bench to open with: the one kept before, or a new one; over it, each as a step that undo takes
 * back, the one that this tab was left with and the one that the address carries. What cannot be
 * read is said, put aside and changes nothing. A first visit needs no reader, so that is fetched only
 * when there is something to read.
 */
export async function openBench(shelf: Shelf, tab: Tab, hash: string): Promise<BenchSession> {
  const bench = await keptBench(shelf);
  const text = tab.read();
  // A reload brings back the tab's own work over what is kept, where another tab has kept since.
  if (text !== null && text !== shelf.read(NAME)) {
    const left = await read(text, 'readDocument');
    if (left.ok) bench.load(left.document);
  }
  await openLink(bench, tab, hash);
  return bench;
}

async function keptBench(shelf: Shelf): Promise<BenchSession> {
  const text = shelf.read(NAME);
  if (text === null) return new BenchSession(startingBench());
  const before = await read(text, 'readDocument');
  if (before.ok) return new BenchSession(before.document);
  const bench = new BenchSession(startingBench());
  if (before.why.key === NO_READER) {
    keptElsewhere.add(bench);
    bench.notice = { key: 'bench_kept_not_fetched' };
    return bench;
  }
  const aside = await import('./aside.ts').catch(() => null);
  if (aside?.putAside(shelf, text) !== true) keptElsewhere.add(bench);
  bench.unreadable = { text, why: before.why };
  return bench;
}

/**
 * Opens the bench that an address carries, if it carries one. An opened link is then what the tab
 * was left with, and leaves the address: it would come back over later work.
 */
export async function openLink(bench: BenchSession, tab: Tab, hash: string): Promise<void> {
  if (!isBenchHash(hash)) return;
  const linked = await read(hash, 'fromHash');
  if (linked.ok) {
    bench.load(linked.document);
    tab.write(writeDocument(bench.document));
  } else bench.notice = { key: 'bench_link_unreadable', values: { why: linked.why } };
}

/** Reads with a reader that is itself fetched; when it cannot be, that is the answer. */
async function read(text: string, how: 'readDocument' | 'fromHash'): Promise<ReadDocument> {
  try {
    return await (await import('./read-document.ts'))[how](text);
  } catch {
    return { ok: false, why: { key: NO_READER } };
  }
}

const NO_READER = 'bench_document_no_reader';

/**
 * Keeps every committed change on the shelf, and with the tab. Called while a component is set up.
 * When the shelf refuses, or holds a bench that must not be overwritten, the tab alone keeps the
 * work, which is said once. What another tab has kept meanwhile is put aside before it is replaced.
 * Gives what remembers the work again where the tab has come to another page.
 */
export function keepBench(bench: BenchSession, shelf: Shelf, tab: Tab): () => void {
  const elsewhere = keptElsewhere.has(bench);
  const by = Math.random();
  let said = false;
  let opened = false;
  let text = tab.read() ?? '';
  let mine = shelf.read(NAME);
  $effect(() => {
    const { document } = bench;
    // What the bench opened with has not been worked on: what was kept before stays.
    if (!opened) {
      opened = true;
      return;
    }
    text = writeDocument({ ...document, by });
    const isWithTab = tab.write(text);
    // That is said already.
    if (elsewhere) return;
    const settle = (isKept: boolean): void => {
      if (isKept) mine = text;
      else {
        if (!said) bench.notice ??= { key: isWithTab ? 'bench_storage_refused' : 'bench_not_kept' };
        said = true;
      }
    };
    if (shelf.read(NAME) === mine) settle(shelf.write(NAME, text));
    else
      import('./aside.ts').then(
        ({ keepBeside }) => settle(keepBeside(bench, shelf, mine, text, said)),
        () => settle(false),
      );
  });
  return () => {
    if (text) tab.write(text);
  };
}
