import type { Shelf } from './shelf.ts';

const NAME = 'toeline.bench.unreadable';
/** So many are put aside; what would be one more stays where it was kept. */
const MOST = 9;

/** The texts of benches that could not be read, oldest first: put aside so that nothing is thrown away. */
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
export function putAside(shelf: Shelf, text: string): boolean {
  const before = readAside(shelf);
  if (before.includes(text)) return true;
  return before.length < MOST && shelf.write(NAME, JSON.stringify([...before, text]));
}

/** Takes one text from the list, when the person has it elsewhere or wants it no more. */
export function dropAside(shelf: Shelf, text: string): void {
  const left = readAside(shelf).filter((other) => other !== text);
  shelf.write(NAME, JSON.stringify(left));
}
