import type { BenchSession } from './bench.svelte.ts';
import type { Shelf } from './shelf.ts';

const KEPT = 'toeline.bench';
const NAME = `${KEPT}.unreadable`;
/** So many are put aside; what would be one more stays where it was kept. */
const MOST = 9;

/** The texts of benches that could not be read or that other tabs had kept, oldest first: put aside so that nothing is thrown away. */
export function readAside(shelf: Shelf): readonly string[] {
  const text = shelf.read(NAME);
  if (text === null) return [];
  try {
    const value: unknown = JSON.parse(text);
    if (Array.isArray(value) && value.every((entry) => typeof entry === 'string')) return value;
  } catch {
    // One bare text: put aside before there was a list.
  }
  return [text];
}

/** Whether the text lies aside now: not when the list is full, or the shelf refuses. */
export function putAside(shelf: Shelf, text: string, before = readAside(shelf)): boolean {
  if (before.includes(text)) return true;
  return before.length < MOST && shelf.write(NAME, JSON.stringify([...before, text]));
}

/**
 * Keeps a bench where another tab has kept one of its own, once that lies aside: in the place of
 * what the same tab had kept before, for tabs that are worked on in turn would fill the list. Where
 * it can't be put aside it stays where it is. Whether the bench is kept; the person is told.
 */
export function keepBeside(
  bench: BenchSession,
  shelf: Shelf,
  mine: string | null,
  text: string,
  said: boolean,
): boolean {
  const there = shelf.read(KEPT);
  if (there === null || there === mine) return shelf.write(KEPT, text);
  const by = writerOf(there);
  const others = readAside(shelf).filter((other) => by === null || writerOf(other) !== by);
  const isAside = putAside(shelf, there, others);
  const isKept = isAside && shelf.write(KEPT, text);
  if (isKept) bench.notice ??= { key: 'bench_other_tab' };
  else if (!isAside && !said) bench.notice ??= { key: 'bench_other_tab_stays' };
  return isKept;
}

/** What tells the tab that kept a bench from others; null where nothing does. */
function writerOf(text: string): unknown {
  try {
    const kept: unknown = JSON.parse(text);
    return typeof kept === 'object' && kept !== null && 'by' in kept ? kept.by : null;
  } catch {
    return null;
  }
}

/** Takes one text from the list, when the person has it elsewhere or wants it no more. */
export function dropAside(shelf: Shelf, text: string): void {
  const left = readAside(shelf).filter((other) => other !== text);
  shelf.write(NAME, JSON.stringify(left));
}
