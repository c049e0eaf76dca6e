import type { Joint } from '../joint/index.ts';
import type { ConstructionName } from '../lesson/index.ts';
import type { JobSheet, LimitSet } from '../limits/index.ts';

/** The whole bench as one plain JSON document: permalink, file, lesson start and test speak it. */
export interface BenchDocument {
  readonly version: 1;
  readonly joint: Joint;
  readonly sheet: JobSheet;
  /** the outline held to compare with */
  readonly held: Joint | null;
  readonly construction: readonly ConstructionName[];
  /** the limit set that the sheet names, when it is a person's own: a link is whole in itself */
  readonly limits?: LimitSet;
}

/** Shown on a bench that says nothing else. */
export const startingConstruction: readonly ConstructionName[] = [
  'legs',
  'triangle',
  'throats',
  'chord',
  'band',
  'fusion',
];

/** The document as it stands in a file: readable, one key a line. What is kept says which tab it is `by`. */
export const writeDocument = (document: BenchDocument & { readonly by?: number }): string =>
  `${JSON.stringify(document, null, 2)}\n`;

/** What the tail of an address that carries a bench begins with. */
export const HASH = '#bench=';

/** The document as the tail of an address: JSON in base64url, no padding. */
export function toHash(document: BenchDocument): string {
  const bytes = new TextEncoder().encode(JSON.stringify(document));
  const binary = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return HASH + btoa(binary).replace(/\+/g, '-').replace(/\//g, '_').replace(/=+$/, '');
}

/** Whether the tail of an address claims to carry a bench. */
export const isBenchHash = (hash: string): boolean => hash.startsWith(HASH);
