import type { LimitSet } from '../limits/index.ts';
import type { Shelf } from './shelf.ts';

type Fields = Readonly<Record<string, unknown>>;

const isRecord = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isText = (value: unknown): boolean => typeof value === 'string';
const isListOf = (value: unknown, is: (item: unknown) => boolean): boolean =>
  Array.isArray(value) && value.every(is);

/**
 * Whether a kept entry is a set as it is being written: wrong it may be, but it has all that a page
 * shows of a set and its rows.
 */
function isDraft(value: unknown): value is LimitSet {
  return (
    isRecord(value) &&
    ['id', 'name', 'about'].every((name) => isText(value[name])) &&
    isListOf(value['columns'], isText) &&
    isRecord(value['readings']) &&
    isRecord(value['symbols']) &&
    isRecord(value['lastPlace']) &&
    isListOf(value['criteria'], isRow) &&
    isListOf(value['checklist'], isRecord)
  );
}

/** The entries of what a shelf keeps; null where it is no list. */
export function listIn(text: string): readonly unknown[] | null {
  try {
    const kept: unknown = JSON.parse(text);
    return Array.isArray(kept) ? (kept as readonly unknown[]) : null;
  } catch {
    return null;
  }
}

/** The drafts in what a shelf keeps; what is none is passed over. */
export const draftsIn = (text: string | null): readonly LimitSet[] =>
  (listIn(text ?? '[]') ?? []).filter(isDraft);

const isRow = (row: unknown): boolean =>
  isRecord(row) &&
  ['id', 'name', 'document', 'edition', 'clause'].every((name) => isText(row[name])) &&
  isListOf(row['measurements'], isText) &&
  ['max', 'min', 'when', 'given'].every((name) => row[name] === undefined || isRecord(row[name]));

/** Copies are put aside under so many names before the shelf counts as full of them. */
const MOST_ASIDE = 20;

/** Puts a text aside under a name of its own beside `name`; whether the shelf took it. */
export function putAside(shelf: Shelf, name: string, text: string): boolean {
  for (let n = 1; n <= MOST_ASIDE; n++) {
    const aside = `${name}.unreadable${n === 1 ? '' : `-${n}`}`;
    const before = shelf.read(aside);
    if (before === text) return true;
    if (before === null) return shelf.write(aside, text);
  }
  return false;
}
