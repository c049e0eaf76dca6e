import { isBenchHash, toHash, writeDocument } from './bench-document.ts';
import { BenchSession } from './bench.svelte.ts';
import type { ReadDocument } from './read-document.ts';
import type { Shelf } from './shelf.ts';
import { startingBench } from './start.ts';

const NAME = 'toeline.bench';
/** Where a kept bench that cannot be read is put aside, so that nothing is thrown away. */
const ASIDE = 'toeline.bench.unreadable';

/** Whether nothing was kept and the address carries nothing: then the opening bench opens. */
export const isFirstVisit = (shelf: Shelf, hash: string): boolean =>
  shelf.read(NAME) === null && !isBenchHash(hash);

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
  shelf.write(ASIDE, text);
  const bench = new BenchSession(startingBench());
  bench.notice = { key: 'bench_kept_unreadable', values: { why: before.why } };
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
    return { ok: false, why: { key: 'bench_document_no_reader' } };
  }
}

/** Where the work goes when the shelf refuses it: the address, which a reload brings back. */
export type Fallback = (hash: string) => void;

/**
 * Keeps every committed change on the shelf. Called while a component is set up. When the shelf
 * refuses, says so once and puts the work into the address instead.
 */
export function keepBench(bench: BenchSession, shelf: Shelf, fallback: Fallback): void {
  let said = false;
  let opened = false;
  $effect(() => {
    const { document } = bench;
    // What the bench opened with has not been worked on: what was kept before stays.
    if (!opened) {
      opened = true;
      return;
    }
    if (shelf.write(NAME, writeDocument(document))) return;
    fallback(toHash(document));
    if (!said) bench.notice ??= { key: 'bench_storage_refused' };
    said = true;
  });
}
