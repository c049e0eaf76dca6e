import { isBenchHash, toHash, writeDocument } from './bench-document.ts';
import { BenchSession } from './bench.svelte.ts';
import type { ReadDocument } from './read-document.ts';
import type { Shelf } from './shelf.ts';
import { startingBench } from './start.ts';

const NAME = 'toeline.bench';

/** Whether nothing was kept and the address carries nothing: then the opening bench opens. */
export const isFirstVisit = (shelf: Shelf, hash: string): boolean =>
  shelf.read(NAME) === null && !isBenchHash(hash);

/** Benches opened while another is kept that nobody has read or put aside: they are not kept in its place. */
const keptElsewhere = new WeakSet<BenchSession>();

/**
 * The bench to open with: the one kept before, or a new one; over it, as a step that undo takes
 * back, the one that the address carries. What cannot be read is said, put aside and changes
 * nothing. A first visit needs no reader, so that is fetched only when there is something to read.
 */
export async function openBench(shelf: Shelf, hash: string): Promise<BenchSession> {
  const bench = await keptBench(shelf);
  await openLink(bench, hash);
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

/** Opens the bench that an address carries, if it carries one. */
export async function openLink(bench: BenchSession, hash: string): Promise<void> {
  if (!isBenchHash(hash)) return;
  const linked = await read(hash, 'fromHash');
  if (linked.ok) bench.load(linked.document);
  else bench.notice = { key: 'bench_link_unreadable', values: { why: linked.why } };
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

/** Where the work goes when the shelf refuses it: the address, which a reload brings back. */
export type Fallback = (hash: string) => void;

/**
 * Keeps every committed change on the shelf. Called while a component is set up. When the shelf
 * refuses, says so once and puts the work into the address instead; so it does when the shelf holds
 * a bench that must not be overwritten.
 */
export function keepBench(bench: BenchSession, shelf: Shelf, fallback: Fallback): void {
  const elsewhere = keptElsewhere.has(bench);
  let said = elsewhere;
  let opened = false;
  $effect(() => {
    const { document } = bench;
    // What the bench opened with has not been worked on: what was kept before stays.
    if (!opened) {
      opened = true;
      return;
    }
    if (!elsewhere && shelf.write(NAME, writeDocument(document))) return;
    fallback(toHash(document));
    if (!said) bench.notice ??= { key: 'bench_storage_refused' };
    said = true;
  });
}
