import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultJoint } from '../../src/joint/index.ts';
import { toHash, writeDocument, type BenchDocument } from '../../src/state/bench-document.ts';
import { fromHash, LONGEST, readDocument } from '../../src/state/read-document.ts';
import { startingBench } from '../../src/state/start.ts';
import type { Message } from '../../src/units/index.ts';
import { runs } from '../runs.ts';

const whole: BenchDocument = {
  ...startingBench(),
  held: defaultJoint('butt'),
  sheet: { ...startingBench().sheet, job: 'Schütz ½ – gate', weld: '日本' },
};
const refusal = async (text: string): Promise<Message | null> => {
  const read = await readDocument(text);
  return read.ok ? null : read.why;
};
/** The reason alone, without the field that it is about. */
const why = async (text: string): Promise<string> => {
  const told = await refusal(text);
  const reason = told?.values?.['reason'];
  return typeof reason === 'object' && 'key' in reason ? reason.key : (told?.key ?? 'read');
};

describe('the bench as a document', () => {
  it('comes back from a file and from an address as it was, any letters included', async () => {
    expect(await readDocument(writeDocument(whole))).toEqual({ ok: true, document: whole });
    expect(await fromHash(toHash(whole))).toEqual({ ok: true, document: whole });
  });

  it('stands in an address in letters that need no escaping', () => {
    expect(toHash(whole)).toMatch(/^#bench=[\w-]+$/);
  });

  it('is refused by name for each thing that can be wrong with it', async () => {
    const changed = (change: object): string => JSON.stringify({ ...whole, ...change });
    expect(await why('not json')).toBe('bench_document_no_json');
    expect(await why('null')).toBe('bench_document_no_bench');
    expect(await why('{"a":1}')).toBe('bench_document_no_bench');
    expect(await why(changed({ version: 2 }))).toBe('bench_document_newer');
    expect(await why(changed({ version: 0 }))).toBe('bench_document_no_bench');
    expect(await why(changed({ version: '1' }))).toBe('bench_document_no_bench');
    expect(await why(' '.repeat(LONGEST + 1))).toBe('bench_document_too_long');
    expect(await why(changed({ joint: null }))).toBe('joint_error_not_an_object');
    expect(await why(changed({ joint: { ...whole.joint, leg1: 1e9 } }))).toBe(
      'joint_error_out_of_range',
    );
    expect(await why(changed({ held: { kind: 'fillet' } }))).toBe('bench_document_bad_held');
    expect(await why(changed({ sheet: {} }))).toMatch(/^limits_/);
  });

  it('names the field that is wrong', async () => {
    const sheet = { ...whole.sheet, guard: { ...whole.sheet.guard, factor: 'two' } };
    expect(await refusal(JSON.stringify({ ...whole, sheet }))).toMatchObject({
      key: 'bench_document_bad_field',
      values: { field: 'guard.factor' },
    });
  });

  it('says that it is the held outline in which something is wrong', async () => {
    for (const held of [7, { ...whole.joint, leg1: 'long' }])
      expect(await readDocument(JSON.stringify({ ...whole, held }))).toMatchObject({
        ok: false,
        why: { key: 'bench_document_bad_held' },
      });
  });

  it('is refused with limits that are not those its sheet names', async () => {
    const source = readFileSync('src/limits/sets/lock-gate-house.json', 'utf8');
    const limits = { ...(JSON.parse(source) as object), id: 'gate' };
    expect(await why(JSON.stringify({ ...whole, limits }))).toBe('bench_document_other_limits');
  });

  it('is refused when its joint parses but cannot exist', async () => {
    const joint = { ...defaultJoint('fillet'), convexity: -9.9 };
    expect(await why(JSON.stringify({ ...whole, joint }))).toMatch(/^joint_error_/);
  });

  it('shows only construction that there is', async () => {
    const read = await readDocument(
      JSON.stringify({ ...whole, construction: ['legs', 'gadgets', 7] }),
    );
    expect(read.ok && read.document.construction).toEqual(['legs']);
  });

  it('never throws and never lets a wrong joint through, whatever the text', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.oneof(
          fc.string(),
          fc.json(),
          fc.json().map((text) => `{"version":1,"joint":${text}}`),
        ),
        async (text) => {
          expect((await readDocument(text)).ok).toBe(false);
          expect((await fromHash(`#bench=${text}`)).ok).toBe(false);
        },
      ),
      { numRuns: runs(1000) },
    );
  });

  it('is told as mangled wherever one letter of an address is lost', async () => {
    const hash = toHash(whole);
    for (let cut = 10; cut < hash.length; cut += 97) {
      const read = await fromHash(hash.slice(0, cut) + hash.slice(cut + 1));
      if (!read.ok) continue;
      // A lost letter may leave a bench that still reads; then it has to be one that can be built.
      expect(read.document.version).toBe(1);
    }
    expect((await fromHash(hash.slice(0, -40))).ok).toBe(false);
  });
});
