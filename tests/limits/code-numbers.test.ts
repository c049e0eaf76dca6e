import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const root = new URL('../../src/', import.meta.url);

/** Nothing, one and a pair, and the index of either: no limit of a weld is taken from these alone. */
const everywhere = ['0', '1', '2'];

const halfTurn = { '90': 'a right angle', '180': 'half a turn, degrees to radians' };
/** What each file may write besides, each with what it is; none is a limit of a weld. */
const allowed: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'limits/compile/parse-formula.ts': {
    '20': 'letters shown of a formula that is too long',
    '200': 'longest formula',
  },
  'limits/compile/reach.ts': { ...halfTurn, '200': 'longest length looked at' },
  'limits/compile/to-tree.ts': { '6': 'largest power', '60': 'letters shown of a piece' },
  'limits/document-tolerance.ts': { '1e-9': 'the one tolerance' },
  'limits/evaluate.ts': halfTurn,
  'limits/last-place.ts': { '10': 'base of decimals', '1e-9': 'noise of a half in binary' },
  'limits/least-triangle.ts': halfTurn,
  'limits/limit-set-terms.ts': { '1e-6': 'least last place', '1e3': 'most last place' },
  'limits/normal.ts': {
    '3': 'first odd factor of a series',
    '4': 'from when on the tail’s series',
    '200': 'most terms',
  },
  'limits/other-document.ts': { '4': 'letters of a number worth comparing' },
  'limits/over-welding.ts': halfTurn,
  'limits/parse-job-sheet.ts': {
    ...halfTurn,
    '4': 'longest length, in',
    '10': 'most guard factor',
    '100': 'longest length, mm',
    '256': 'longest length, 64ths',
  },
  'limits/parse-weld-symbol.ts': halfTurn,
  'limits/read-value.ts': { '200': 'longest text' },
  'limits/sheet-size.ts': halfTurn,
  'limits/substitute.ts': Object.fromEntries(
    ['3', '4', '5', '6', '7', '8', '9'].map((figure) => [figure, 'how strongly an operator binds']),
  ),
  'limits/weld-symbol.ts': {
    ...halfTurn,
    '0.5': 'a half',
    '10': 'base of decimals',
    '1e-9': 'the one tolerance',
  },
  'limits/weld-symbol-misread.ts': { ...halfTurn, '100': 'per cent' },
  'limits/weld-symbol-sheet.ts': {
    '0.5': 'a half',
    '0.06': 'from when on a symbol and a joint say the same',
  },
  'quiz/distance.ts': { '1e-9': 'no length' },
  'quiz/possible-questions.ts': {
    '0.8': 'a place in the step of difficulty, towards its end',
    '0.4': 'a place in the step of difficulty, half way',
  },
  'quiz/remembered.ts': { '64': 'most results kept' },
  'quiz/wrong-rules.ts': { '360': 'half of an angle, degrees to radians' },
  'view/page/sum-text.ts': { '64': 'divisions of an inch', '1e-6': 'noise of a division' },
  'view/page/check-reading.ts': {
    '6': 'most decimals',
    '1e-9': 'the one tolerance',
  },
  'view/page/presented-hand.svelte.ts': {
    '6': 'choices that find room in a row',
    '10': 'steps of one key with Shift',
  },
  'view/page/conformance-text.ts': { '100': 'per cent' },
  'view/page/parameter-text.ts': { '0.1': 'a step as shown' },
  'view/page/save-file.ts': { '10_000': 'ms to keep a file’s address' },
  'view/page/sheet/percent.ts': { '100': 'per cent' },
};

/**
 * What decides or tells a call. Left out: what quiz draws with, reckons an eye with, keeps and asks
 * by (chances, series, days, bounds on a record), and what the page plots or measures a screen with.
 */
const isLooked = (name: string): boolean =>
  name.endsWith('.ts') &&
  (name.startsWith('limits/') ||
    (/^quiz\/[a-z-]+\.ts$/u.test(name) && !/^quiz\/(?:random|skills)\.ts$/u.test(name)) ||
    (name.startsWith('view/page/') && !/^view\/page\/(?:calls\/|calibration-length)/u.test(name)));

/** Numbers of a program's text that stand in no comment, string or pattern. */
function numbersIn(text: string): readonly string[] {
  const code = text
    .replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gmu, '')
    .replace(/'[^'\n]*'|`[^`]*`|\/\[[^\]\n]*\]\/|\/[^/\n]+\/[a-z]+/gu, '');
  return [...code.matchAll(/(?<![\w.])\d[\d._e-]*/gu)].map(([figure]) => figure);
}

/** What a file writes and may not. */
const oddIn = (name: string, text: string): readonly string[] =>
  numbersIn(text).filter(
    (figure) => !everywhere.includes(figure) && !Object.hasOwn(allowed[name] ?? {}, figure),
  );

const files = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .map((name) => name.replaceAll('\\', '/'))
  .filter(isLooked);
const read = (name: string): string => readFileSync(new URL(name, root), 'utf8');

// mutation testing writes its own numbers into the text that this reads
describe.skipIf('__stryker__' in globalThis)('the figures of a document', () => {
  it('stand in data only: no number in TypeScript that its file has no reason for', () => {
    for (const floor of ['limits/', 'quiz/', 'view/'])
      expect(files.filter((name) => name.startsWith(floor)).length).toBeGreaterThan(5);
    for (const name of files) expect([name, oddIn(name, read(name))]).toEqual([name, []]);
  });

  it('would be found where one was smuggled in: 3 mm of misalignment, 1/32 in of undercut', () => {
    const smuggled = 'const most = Math.min(0.1 * t, 3); // and no more\n';
    expect(oddIn('limits/judge.ts', smuggled)).toEqual(['0.1', '3']);
    expect(oddIn('limits/least-triangle.ts', smuggled)).toEqual(['0.1', '3']);
    expect(oddIn('quiz/grade.ts', 'return depth <= 1 / 32;')).toEqual(['32']);
    expect(oddIn('view/page/row-name.ts', "const limit = '3 mm'; if (h > 0.8) return;")).toEqual([
      '0.8',
    ]);
  });

  it('leave no number allowed that its file no longer writes', () => {
    for (const [name, reasons] of Object.entries(allowed)) {
      const written = numbersIn(read(name));
      // a shared pair of reasons may be used by half
      const idle = Object.keys(reasons).filter(
        (figure) => !written.includes(figure) && !Object.hasOwn(halfTurn, figure),
      );
      expect([name, idle]).toEqual([name, []]);
    }
  });
});
