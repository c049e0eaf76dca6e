import { readDocument, type BenchDocument } from './bench-document.ts';
import first from './ready-sections/01-equal-flat-fillet.json?raw';

/** What a new bench opens with: the first ready section. */
export function startingBench(): BenchDocument {
  const read = readDocument(first);
  if (!read.ok) throw new Error(`the first ready section cannot be read: ${read.why.key}`);
  return read.document;
}
