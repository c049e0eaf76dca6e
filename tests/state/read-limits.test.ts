import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { LONGEST_LIMITS, readLimits } from '../../src/state/read-limits.ts';

const source = readFileSync('src/limits/sets/lock-gate-house.json', 'utf8');
const lineOf = (text: string, piece: string): number =>
  text.slice(0, text.indexOf(piece)).split('\n').length;
async function problems(text: string): Promise<readonly string[]> {
  const read = await readLimits(text);
  return read.ok
    ? ['taken']
    : read.problems.map(({ line, path, reason }) => `${String(line)} ${path} ${reason.key}`);
}

describe('a limit set from a file', () => {
  it('is taken whole and can be judged by', async () => {
    const read = await readLimits(source);
    expect(read.ok && read.set.id).toBe('lock-gate-house');
    expect(read.ok && Object.keys(read.compiled.trees).length).toBe(
      read.ok ? read.set.criteria.length : -1,
    );
  });

  it('is refused with the line where it stops being JSON', async () => {
    const broken = source.replace('"columns": [', '"columns": [[');
    const [problem] = await problems(broken);
    expect(problem).toMatch(/^\d+ {2}bench_limits_file_no_json$/);
    expect(await problems('')).toEqual(['1  bench_limits_file_no_json']);
    expect(await problems('{"a": 1,}')).toEqual(['1  bench_limits_file_no_json']);
    expect(await problems('{\n\n // remark\n}')).toEqual(['3  bench_limits_file_no_json']);
  });

  it('is refused with the line of the field that is wrong', async () => {
    const odd = source.replace('"clause": "2.2"', '"clause": 2.2');
    expect(await problems(odd)).toEqual([
      `${lineOf(odd, '2.2,')} criteria[1].clause limits_data_no_text`,
    ]);
    const extra = source.replace('"lastPlace"', '"lastPlaces": {},\n  "lastPlace"');
    expect(await problems(extra)).toEqual([
      `${lineOf(extra, '{},\n')} lastPlaces limits_data_unknown_field`,
    ]);
  });

  it('is refused with the line of what it should say and does not, or the nearest round it', async () => {
    const without = source.replace('"status": "invented",', '');
    expect(await problems(without)).toEqual([
      `${lineOf(without, '{\n      "id"')} criteria[0].status limits_data_no_choice`,
    ]);
  });

  it('is refused with every formula that can’t be taken, each on its line', async () => {
    const two = source
      .replace('min(0.07 tMin, 1.7 mm)', 'min(0.07 tMinn, 1.7 mm)')
      .replace('"3.5 deg"', '"3.5 mm / 0"');
    expect(await problems(two)).toEqual([
      `${lineOf(two, '"3.5 mm / 0"')} criteria[0].max.any limits_formula_division_by_zero`,
      `${lineOf(two, 'tMinn')} criteria[6].max.mm limits_formula_mistyped_symbol`,
    ]);
  });

  it('is refused when it is longer than any table', async () => {
    expect(await problems(' '.repeat(LONGEST_LIMITS + 1))).toEqual([
      'null  bench_limits_file_too_long',
    ]);
  });
});
