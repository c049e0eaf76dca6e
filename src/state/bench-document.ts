import { parseJoint, type Joint } from '../joint/index.ts';
import { constructionNames, type ConstructionName } from '../lesson/index.ts';
import { parseJobSheet, type JobSheet } from '../limits/index.ts';
import type { Message } from '../units/index.ts';

/** The whole bench as one plain JSON document: permalink, file, lesson start and test speak it. */
export interface BenchDocument {
  readonly version: 1;
  readonly joint: Joint;
  readonly sheet: JobSheet;
  /** the outline held to compare with */
  readonly held: Joint | null;
  readonly construction: readonly ConstructionName[];
}

export type ReadDocument =
  | { readonly ok: true; readonly document: BenchDocument }
  | { readonly ok: false; readonly why: Message };

/** A bench is about 2 kB; what is longer than this is something else. */
export const LONGEST = 40_000;

/** The document in a text (a file, the shelf, a decoded link), or why there is none. */
export function readDocument(text: string): ReadDocument {
  if (text.length > LONGEST) return { ok: false, why: { key: 'bench_document_too_long' } };
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return { ok: false, why: { key: 'bench_document_no_json' } };
  }
  return documentFrom(value);
}

function documentFrom(value: unknown): ReadDocument {
  if (typeof value !== 'object' || value === null || !('version' in value)) {
    return { ok: false, why: { key: 'bench_document_no_bench' } };
  }
  if (value.version !== 1) return { ok: false, why: { key: 'bench_document_newer' } };
  const record = value as Readonly<Record<string, unknown>>;
  try {
    return {
      ok: true,
      document: {
        version: 1,
        joint: parseJoint(record['joint']),
        sheet: parseJobSheet(record['sheet']),
        held: record['held'] == null ? null : parseJoint(record['held']),
        construction: construction(record['construction']),
      },
    };
  } catch (error) {
    return { ok: false, why: reasonOf(error) };
  }
}

function construction(value: unknown): readonly ConstructionName[] {
  const named: readonly unknown[] = Array.isArray(value) ? value : startingConstruction;
  return constructionNames.filter((name) => named.includes(name));
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

function reasonOf(error: unknown): Message {
  if (typeof error === 'object' && error !== null && 'reason' in error) {
    return {
      key: 'bench_document_bad_field',
      values: {
        field: 'field' in error ? String(error.field) : '',
        reason: error.reason as Message,
      },
    };
  }
  throw error;
}

/** The document as it stands in a file: readable, one key a line. */
export const writeDocument = (document: BenchDocument): string =>
  `${JSON.stringify(document, null, 2)}\n`;

const HASH = '#bench=';

/** The document as the tail of an address: JSON in base64url, no padding. */
export function toHash(document: BenchDocument): string {
  const bytes = new TextEncoder().encode(JSON.stringify(document));
  const binary = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return HASH + btoa(binary).replace(/\+/g, '-').replace(/\//g, '_').replace(/=+$/, '');
}

/** Whether the tail of an address claims to carry a bench. */
export const isBenchHash = (hash: string): boolean => hash.startsWith(HASH);

/** The document in the tail of an address, or why there is none. */
export function fromHash(hash: string): ReadDocument {
  const packed = hash.slice(HASH.length);
  if (packed.length > LONGEST) return { ok: false, why: { key: 'bench_document_too_long' } };
  try {
    const binary = atob(packed.replace(/-/g, '+').replace(/_/g, '/'));
    const bytes = Uint8Array.from(binary, (letter) => letter.charCodeAt(0));
    return readDocument(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return { ok: false, why: { key: 'bench_document_mangled' } };
  }
}
