import type { Message } from '../units/index.ts';
import { isBenchHash, fromHash, readDocument, toHash, writeDocument } from './bench-document.ts';
import type { BenchDocument } from './bench-document.ts';
import { BenchSession } from './bench.svelte.ts';
import type { Shelf } from './shelf.ts';

const NAME = 'toeline.bench';
/** Where a kept bench that cannot be read is put aside, so that nothing is thrown away. */
const ASIDE = 'toeline.bench.unreadable';

/**
 * The bench to open with: the one kept before, or the start; over it, as a step that undo takes
 * back, the one that the address carries. What cannot be read is said and changes nothing.
 */
export function openBench(shelf: Shelf, hash: string, start: BenchDocument): BenchSession {
  const kept = shelf.read(NAME);
  const before = kept === null ? null : readDocument(kept);
  const bench = new BenchSession(before?.ok === true ? before.document : start);
  if (before?.ok === false && kept !== null) {
    shelf.write(ASIDE, kept);
    bench.notice = { key: 'bench_kept_unreadable', values: { why: before.why } };
  }
  openLink(bench, hash);
  return bench;
}

/** Opens the bench that an address carries; whether there was one to open. */
export function openLink(bench: BenchSession, hash: string): boolean {
  if (!isBenchHash(hash)) return false;
  const linked = fromHash(hash);
  if (linked.ok) bench.load(linked.document);
  else bench.notice = { key: 'bench_link_unreadable', values: { why: linked.why } };
  return linked.ok;
}

/** Where the work goes when the shelf refuses it: the address, which a reload brings back. */
export type Fallback = (hash: string) => void;

/**
 * Keeps every committed change on the shelf. Called while a component is set up. When the shelf
 * refuses, says so once and puts the work into the address instead.
 */
export function keepBench(bench: BenchSession, shelf: Shelf, fallback: Fallback): void {
  let said = false;
  $effect(() => {
    const { document } = bench;
    if (shelf.write(NAME, writeDocument(document))) return;
    fallback(toHash(document));
    if (!said) bench.notice = refused;
    said = true;
  });
}

const refused: Message = { key: 'bench_storage_refused' };
