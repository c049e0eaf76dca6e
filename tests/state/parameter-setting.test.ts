import { describe, expect, it } from 'vitest';
import { BenchSession } from '../../src/state/bench.svelte.ts';
import { settingsOf } from '../../src/state/parameter-setting.ts';
import { startingBench } from '../../src/state/start.ts';

const settingsFor = (bench: BenchSession, before = settingsOf([], bench)) =>
  settingsOf(
    bench.parameters.filter(({ field }) => field === 'leg1' || field === 'leg2'),
    bench,
    before,
  );

describe('How a parameter stands', () => {
  it('is its value on its scale and what the sheet accepts of it', () => {
    const bench = new BenchSession(startingBench());
    bench.propose('leg1', 9);
    expect(settingsFor(bench)[0]).toMatchObject({
      range: { field: 'leg1' },
      value: 9,
      allowed: [7, null],
    });
  });

  it('is the very same while nothing of it moves, and so is the list', () => {
    const bench = new BenchSession(startingBench());
    const before = settingsFor(bench);
    expect(settingsFor(bench, before)).toBe(before);
    bench.propose('leg1', 9);
    const after = settingsFor(bench, before);
    expect(after[0]).not.toBe(before[0]);
    expect(after[0]?.allowed).toBe(before[0]?.allowed);
    expect(after[1]).toBe(before[1]);
  });

  it('is another once the sheet asks for another size', () => {
    const bench = new BenchSession(startingBench());
    const before = settingsFor(bench);
    bench.setSheet({ ...bench.sheet, limitSet: '' });
    expect(settingsFor(bench, before)[0]?.allowed).toEqual([null, null]);
  });
});
