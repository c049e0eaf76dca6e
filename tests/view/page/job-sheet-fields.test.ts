import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { JobSheet, SheetLength } from '../../../src/limits/index.ts';
import { writeDocument } from '../../../src/state/bench-document.ts';
import { BenchSession } from '../../../src/state/bench.svelte.ts';
import { changeSheet, sheetRefusal } from '../../../src/state/change-sheet.ts';
import { readDocument } from '../../../src/state/read-document.ts';
import { startingBench } from '../../../src/state/start.ts';
import {
  readSheetAngle,
  readSheetLength,
  type SheetEntry,
} from '../../../src/view/page/read-sheet-entry.ts';
import { runs } from '../../runs.ts';

const problemOf = (entry: SheetEntry<unknown>): string | null =>
  'problem' in entry ? entry.problem.key : null;

const withSize = (sheet: JobSheet, first: SheetLength): JobSheet => ({
  ...sheet,
  size: { ...sheet.size, first },
});
function withBevel(sheet: JobSheet, nominal: number | null): JobSheet {
  return {
    ...sheet,
    groove: { ...sheet.groove, bevelAngle: { ...sheet.groove.bevelAngle, nominal } },
  };
}

describe('a field of the job sheet', () => {
  const { sheet } = startingBench();
  const size = (typed: string, column: 'mm' | 'in' = 'mm'): SheetEntry<SheetLength | null> =>
    readSheetLength(typed, column, {
      optional: false,
      refuse: (first) => sheetRefusal(withSize(sheet, first)),
    });

  it('refuses what a reload could not read again: it used to cost the whole bench', () => {
    expect(problemOf(size('0'))).toBe('limits_data_no_size');
    expect(problemOf(size('-7'))).toBe('bench_sheet_negative');
    expect(problemOf(size('150'))).toBe('bench_sheet_too_long');
    const bevel = readSheetAngle('200', {
      optional: true,
      refuse: (nominal) => sheetRefusal(withBevel(sheet, nominal)),
    });
    expect(problemOf(bevel)).toBe('limits_data_out_of_range');
    expect(size('7.5')).toEqual({ value: { unit: 'mm', value: 7.5 } });
  });

  it('tells the most in millimetres, whatever the length was typed in', () => {
    const most = (typed: string, column: 'mm' | 'in'): unknown => {
      const entry = size(typed, column);
      return 'problem' in entry ? entry.problem.values?.['most'] : null;
    };
    expect(most('150', 'mm')).toEqual({ value: 100, unit: 'mm' });
    // 4 in and 256 64ths of an inch: 101.6 mm.
    expect(most('5', 'in')).toEqual({ value: 101.6, unit: 'mm' });
    expect(most('4 1/64', 'in')).toEqual({ value: 101.6, unit: 'mm' });
  });
});

describe('the job sheet of a bench', () => {
  it('is as it was when a change of it is refused, and the reason is told', () => {
    const bench = new BenchSession(startingBench());
    const before = bench.sheet;
    changeSheet(bench, withSize(bench.sheet, { unit: 'mm', value: 0 }));
    expect(bench.sheet).toBe(before);
    expect(bench.canUndo).toBe(false);
    expect(bench.notice?.key).toBe('bench_sheet_refused');
  });

  it('is changed in no other way: what goes round the check could be lost at the next reload', () => {
    const sources = (folder: string): readonly string[] =>
      readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
        const path = `${folder}/${entry.name}`;
        if (entry.isDirectory()) return sources(path);
        return /\.(ts|svelte)$/.test(entry.name) ? [path] : [];
      });
    const callers = sources('src').filter((path) =>
      readFileSync(path, 'utf8').includes('.setSheet('),
    );
    expect(callers).toEqual(['src/state/change-sheet.ts']);
  });

  it('comes back whole from a file, whatever its fields were given', async () => {
    const number = fc.oneof(
      fc.double({ min: -1e4, max: 1e4, noNaN: true }).map(String),
      fc.integer({ min: -5, max: 500 }).map(String),
      fc
        .tuple(fc.nat(300), fc.constantFrom(2, 3, 8, 16, 64))
        .map(([part, whole]) => `${part}/${whole}`),
      fc.constantFrom('', '0', '-0', '½', '7,25', '1e3', '999999999'),
    );
    const typed = fc.oneof(
      { weight: 4, arbitrary: fc.tuple(number, fc.constantFrom('', ' mm', ' in', '"', '°')) },
      { weight: 1, arbitrary: fc.tuple(fc.string(), fc.constant('')) },
    );
    const texts = fc.array(
      typed.map((parts) => parts.join('')),
      { minLength: 8, maxLength: 8 },
    );
    const words = fc.string({ maxLength: 60, unit: 'grapheme' });
    await fc.assert(
      fc.asyncProperty(texts, fc.constantFrom('mm', 'in'), words, async (all, column, job) => {
        const bench = new BenchSession(startingBench());
        changeSheet(bench, { ...bench.sheet, column, job });
        for (const [place, text] of all.entries()) type(bench, place, text);
        const read = await readDocument(writeDocument(bench.document));
        expect(read).toEqual({ ok: true, document: bench.document });
      }),
      { numRuns: runs(3000) },
    );
  });
});

/** Types a text into one field of the sheet, as the panel does. */
function type(bench: BenchSession, place: number, text: string): void {
  const { sheet } = bench;
  const put = <Value>(entry: SheetEntry<Value>, made: (value: Value) => JobSheet): void => {
    if ('value' in entry) changeSheet(bench, made(entry.value));
  };
  const part = (['nominal', 'minus', 'plus'] as const)[place % 3] ?? 'nominal';
  const optional = part === 'nominal';
  if (place < 2) {
    const made = (length: SheetLength | null): JobSheet => ({
      ...sheet,
      size:
        place === 0
          ? { ...sheet.size, first: length ?? sheet.size.first }
          : { ...sheet.size, second: length },
    });
    const refuse = (length: SheetLength): ReturnType<typeof sheetRefusal> =>
      sheetRefusal(made(length));
    put(readSheetLength(text, sheet.column, { optional: place === 1, refuse }), made);
  } else if (place < 5) {
    const made = (angle: number | null): JobSheet => ({
      ...sheet,
      groove: { ...sheet.groove, bevelAngle: { ...sheet.groove.bevelAngle, [part]: angle } },
    });
    put(readSheetAngle(text, { optional, refuse: (angle) => sheetRefusal(made(angle)) }), made);
  } else {
    const made = (length: SheetLength | null): JobSheet => ({
      ...sheet,
      groove: { ...sheet.groove, rootOpening: { ...sheet.groove.rootOpening, [part]: length } },
    });
    const refuse = (length: SheetLength): ReturnType<typeof sheetRefusal> =>
      sheetRefusal(made(length));
    put(readSheetLength(text, sheet.column, { optional, refuse }), made);
  }
}
