import { JointError, parseJoint, type Joint } from '../joint/index.ts';
import { constructionNames, type ConstructionName } from '../lesson/index.ts';
import { LimitsError, parseJobSheet, type JobSheet } from '../limits/index.ts';
import type { Message } from '../units/index.ts';
import { HASH, startingConstruction, type BenchDocument } from './bench-document.ts';
import { fetchKind, sectionOf } from './built.ts';
import { ANY_OTHER, fetchLimitSet, limitSetOf } from './limit-sets.ts';
import { putOwnSet, sourceOf } from './own-sets.svelte.ts';

export type ReadDocument =
  | { readonly ok: true; readonly document: BenchDocument }
  | { readonly ok: false; readonly why: Message };

/** A bench is about 2 kB, a limit set of one's own some tens more; what is longer than this is something else. */
export const LONGEST = 400_000;

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

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

async function documentFrom(value: unknown): Promise<ReadDocument> {
  if (!isRecord(value) || !Object.hasOwn(value, 'version') || !Object.hasOwn(value, 'joint')) {
    return { ok: false, why: { key: 'bench_document_no_bench' } };
  }
  const record = value;
  const { version } = record;
  if (version !== 1) {
    const isNewer = typeof version === 'number' && version > 1;
    return {
      ok: false,
      why: { key: isNewer ? 'bench_document_newer' : 'bench_document_no_bench' },
    };
  }
  try {
    const joint = parseJoint(record['joint']);
    await refuseImpossible(joint);
    const held = await within('bench_document_bad_held', async () => {
      const outline = record['held'] == null ? null : parseJoint(record['held']);
      if (outline !== null) await refuseImpossible(outline);
      return outline;
    });
    const sheet = await withOwnLimits(parseJobSheet(record['sheet']), record['limits']);
    await fetchLimitSet(sheet.limitSet);
    const shown = construction(record['construction']);
    return { ok: true, document: { version: 1, joint, sheet, held, construction: shown } };
  } catch (error) {
    return { ok: false, why: reasonOf(error) };
  }
}

/** What parses may still be no joint that can exist. */
async function refuseImpossible(joint: Joint): Promise<void> {
  await fetchKind(joint.kind);
  sectionOf(joint);
}

/** Reads a part of the document; what is wrong in it is told as of that part. */
async function within<Part>(key: string, read: () => Promise<Part>): Promise<Part> {
  try {
    return await read();
  } catch (error) {
    throw new LimitsError('', { key, values: { why: reasonOf(error) } });
  }
}

/**
 * The sheet with the limit set that came along put in, under another id when a different set goes
 * by that one here: what a person wrote is never replaced by what a link brings.
 */
async function withOwnLimits(sheet: JobSheet, value: unknown): Promise<JobSheet> {
  if (value === undefined) return sheet;
  const { checkLimits } = await import('./read-limits.ts');
  const read = await within('bench_document_bad_limits', async () => {
    const checked = await checkLimits(value);
    if (checked.ok) return checked;
    const { path, reason } = checked.problems[0] ?? {
      path: '',
      reason: { key: 'limits_data_no_record' },
    };
    // where the whole of it is none there is no field to name
    throw new LimitsError(path === 'set' ? '' : path, reason);
  });
  if (read.set.id !== sheet.limitSet) {
    throw new LimitsError('limits.id', { key: 'bench_document_other_limits' });
  }
  await fetchLimitSet(ANY_OTHER);
  const source = JSON.stringify(sourceOf(read.compiled));
  for (let n = 1; ; n++) {
    const id = n === 1 ? read.set.id : `${read.set.id}-${n}`;
    const here = limitSetOf(id);
    const same = { ...read.compiled, id };
    if (here !== undefined && JSON.stringify({ ...sourceOf(here), id: read.set.id }) !== source) {
      continue;
    }
    if (here === undefined) putOwnSet(same);
    return { ...sheet, limitSet: id };
  }
}

function construction(value: unknown): readonly ConstructionName[] {
  const named: readonly unknown[] = Array.isArray(value) ? value : startingConstruction;
  return constructionNames.filter((name) => named.includes(name));
}

function reasonOf(error: unknown): Message {
  if (!(error instanceof JointError || error instanceof LimitsError)) throw error;
  const { field, reason } = error;
  return field === '' ? reason : { key: 'bench_document_bad_field', values: { field, reason } };
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
