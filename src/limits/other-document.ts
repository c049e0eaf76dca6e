import type { CompiledLimitSet } from './limit-set.ts';

/**
 * The document that a job sheet's code line names where that is another one than the limits it is
 * judged by come from, as the other set writes it; null where they agree or the line names none that
 * is known here. Goes by a document's number alone (D1.1, B31.3, 5817, 2035A), however it is written.
 */
export function otherDocument(
  code: string,
  chosen: CompiledLimitSet,
  all: readonly CompiledLimitSet[],
): string | null {
  const typed = plain(code);
  const isNamed = (document: string): boolean =>
    numbersOf(document).some((number) => typed.includes(number));
  if (documentsOf(chosen).some(isNamed)) return null;
  return all.flatMap(documentsOf).find(isNamed) ?? null;
}

const documentsOf = ({ criteria }: CompiledLimitSet): readonly string[] => [
  ...new Set(criteria.map(({ document }) => document)),
];

/** Lower case without what is set between letters and digits in one hand or another. */
const plain = (text: string): string => text.toLowerCase().replace(/[^a-z0-9.]/gu, '');

/** The words of a document's name that have digits in them, four signs or more with their letters. */
const numbersOf = (document: string): readonly string[] =>
  document
    .replace(/\(.*?\)/gu, '')
    .split(/[\s/,]+/u)
    .map(plain)
    .filter((word) => /\d/u.test(word) && word.length >= 4);
