import { JointError, parseJoint } from '../joint/index.ts';
import { constructionNames, type ConstructionName } from '../lesson/index.ts';
import { LimitsError, parseJobSheet } from '../limits/index.ts';
import type { Message } from '../units/index.ts';
import { HASH, startingConstruction, type BenchDocument } from './bench-document.ts';
import { fetchKind, sectionOf } from './built.ts';
import { fetchLimitSet } from './limit-sets.ts';

export type ReadDocument =
  | { readonly ok: true; readonly document: BenchDocument }
  | { readonly ok: false; readonly why: Message };

/** A bench is about 2 kB; what is longer than this is something else. */
export const LONGEST = 40_000;

/** The document in a text (a file, the shelf, a decoded link), or why there is none. */
export async function readDocument(text: string): Promise<ReadDocument> {
  if (text.length > LONGEST) return { ok: false, why: { key: 'bench_document_too_long' } };
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return { ok: false, why: { key: 'bench_document_no_json' } };
  }
  return documentFrom(value);
}

async function documentFrom(value: unknown): Promise<ReadDocument> {
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, 'version')) {
    return { ok: false, why: { key: 'bench_document_no_bench' } };
  }
  const record = value as Readonly<Record<string, unknown>>;
  if (record['version'] !== 1) return { ok: false, why: { key: 'bench_document_newer' } };
  try {
    const joint = parseJoint(record['joint']);
    const held = record['held'] == null ? null : parseJoint(record['held']);
    // What parses may still be no joint that can exist.
    for (const one of held === null ? [joint] : [joint, held]) {
      await fetchKind(one.kind);
      sectionOf(one);
    }
    const sheet = parseJobSheet(record['sheet']);
    await fetchLimitSet(sheet.limitSet);
    const shown = construction(record['construction']);
    return { ok: true, document: { version: 1, joint, sheet, held, construction: shown } };
  } catch (error) {
    return { ok: false, why: reasonOf(error) };
  }
}

function construction(value: unknown): readonly ConstructionName[] {
  const named: readonly unknown[] = Array.isArray(value) ? value : startingConstruction;
  return constructionNames.filter((name) => named.includes(name));
}

function reasonOf(error: unknown): Message {
  if (error instanceof JointError || error instanceof LimitsError) return error.reason;
  throw error;
}

/** The document in the tail of an address, or why there is none. */
export async function fromHash(hash: string): Promise<ReadDocument> {
  const packed = hash.slice(HASH.length);
  if (packed.length > LONGEST) return { ok: false, why: { key: 'bench_document_too_long' } };
  let text: string;
  try {
    const binary = atob(packed.replace(/-/g, '+').replace(/_/g, '/'));
    const bytes = Uint8Array.from(binary, (letter) => letter.charCodeAt(0));
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return { ok: false, why: { key: 'bench_document_mangled' } };
  }
  return readDocument(text);
}
