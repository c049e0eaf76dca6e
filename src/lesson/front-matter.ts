import { LessonError } from './lesson.ts';

/** The `key: value` lines between two `---` lines at the top of a lesson, and the text after them. */
export function splitFrontMatter(
  file: string,
  source: string,
): { readonly keys: ReadonlyMap<string, string>; readonly body: string } {
  const match = /^---\r?\n([\s\S]*?)\r?\n---\r?\n/.exec(source);
  if (!match) throw new LessonError(file, 'front matter', 'must stand first, between --- lines');
  return { keys: readKeys(file, match[1] ?? ''), body: source.slice(match[0].length) };
}

/** `key: value`, one a line; blank lines are passed over, a repeated key is refused. */
export function readKeys(file: string, text: string): ReadonlyMap<string, string> {
  const keys = new Map<string, string>();
  for (const line of text.split(/\r?\n/)) {
    if (line.trim() === '') continue;
    const colon = line.indexOf(':');
    if (colon < 1) throw new LessonError(file, line.trim(), 'is not a "key: value" line');
    const key = line.slice(0, colon).trim();
    if (keys.has(key)) throw new LessonError(file, key, 'stands twice');
    keys.set(key, line.slice(colon + 1).trim());
  }
  return keys;
}

/** The value of a key that must be there and not be empty. */
export function required(file: string, keys: ReadonlyMap<string, string>, key: string): string {
  const value = keys.get(key);
  if (value === undefined || value === '') throw new LessonError(file, key, 'is missing');
  return value;
}

/** A comma-separated list, every entry one of `allowed`. */
export function listOf<T extends string>(
  file: string,
  keys: ReadonlyMap<string, string>,
  key: string,
  allowed: readonly T[],
): readonly T[] {
  const text = keys.get(key) ?? '';
  if (text === '') return [];
  return text.split(',').map((part) => {
    const found = allowed.find((entry) => entry === part.trim());
    if (found === undefined) {
      throw new LessonError(file, key, `"${part.trim()}" is none of ${allowed.join(', ')}`);
    }
    return found;
  });
}

/** Refuses keys that nothing reads: most often a misspelt one. */
export function refuseUnknown(
  file: string,
  keys: ReadonlyMap<string, string>,
  known: readonly string[],
): void {
  for (const key of keys.keys()) {
    if (!known.includes(key)) throw new LessonError(file, key, 'is not a known key');
  }
}
