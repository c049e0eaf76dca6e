import { describe, expect, it } from 'vitest';
import { BenchSession } from '../../src/state/bench.svelte.ts';
import { startingBench } from '../../src/state/start.ts';
import { steadyChecks, steadyList, steadyValue } from '../../src/state/steady.ts';

const of = (bench: BenchSession, measurement: string) =>
  bench.checks.find((check) => check.measurement === measurement);

describe('what stays the same', () => {
  it('is the list itself while its entries are the very same', () => {
    const [a, b] = [{}, {}];
    const before = [a, b];
    expect(steadyList(before, [a, b])).toBe(before);
    expect(steadyList(before, [a, {}])).not.toBe(before);
    expect(steadyList(before, [a])).toEqual([a]);
  });

  it('is a plain value while it says the same, however deep', () => {
    const before = { key: 'a', values: { leg: { value: 8, unit: 'mm' } } };
    expect(steadyValue(before, structuredClone(before))).toBe(before);
    const other = { key: 'a', values: { leg: { value: 9, unit: 'mm' } } };
    expect(steadyValue(before, other)).toBe(other);
    expect(steadyValue(null, other)).toBe(other);
  });

  it('is what the section is called, until its legs are others', () => {
    const bench = new BenchSession(startingBench());
    const { title } = bench;
    bench.propose('convexity', 2);
    expect(bench.title).toBe(title);
    bench.propose('leg1', 9);
    expect(bench.title).not.toEqual(title);
  });

  it('is a check whose numbers did not move, and no other', () => {
    const bench = new BenchSession(startingBench());
    const [leg1, leg2] = [of(bench, 'leg1'), of(bench, 'leg2')];
    bench.propose('leg1', 9);
    expect(of(bench, 'leg2')).toBe(leg2);
    expect(of(bench, 'leg1')).not.toBe(leg1);
    expect(of(bench, 'leg1')?.measured).toBeCloseTo(9, 9);
  });

  it('is no check whose margin moved because the sheet now rounds first', () => {
    const bench = new BenchSession(startingBench());
    bench.propose('leg1', 7.04);
    expect(of(bench, 'leg1')?.margin).toBeCloseTo(0.04, 9);
    bench.setSheet({ ...bench.sheet, rounding: 'lastPlace' });
    // 7.04 is 7.0 at the limit's last place: nothing over.
    expect(of(bench, 'leg1')?.margin).toBeCloseTo(0, 9);
  });

  it('is no check whose margin or printed limit moved while its limit stood', () => {
    const bench = new BenchSession(startingBench());
    const [check] = bench.checks;
    if (check === undefined) throw new Error('nothing judged');
    const again = (change: object): unknown =>
      steadyChecks([check], [{ ...check, ...change }], null)[0];
    expect(again({})).toBe(check);
    expect(again({ margin: 0 })).not.toBe(check);
    // two unequal root faces come to be one: the same figure, of the other plate
    expect(again({ measurement: 'leg2' })).not.toBe(check);
    expect(again({ printed: { value: 5 / 16, unit: 'in' } })).not.toBe(check);
  });

  it('is nothing that another sheet said, though it say the same', () => {
    const bench = new BenchSession(startingBench());
    const before = of(bench, 'leg2');
    bench.setSheet({ ...bench.sheet, extent: 'typical' });
    expect(of(bench, 'leg2')).not.toBe(before);
  });

  it('is never the opened check: its working may move while its limit does not', () => {
    // Undercut at toe 1: min(0.1 × 12 mm, 0.5 mm), and 0.5 mm still governs at 13 mm.
    const bench = new BenchSession(startingBench());
    bench.opened = of(bench, 'undercut1')?.id ?? null;
    expect(of(bench, 'undercut1')?.working?.substituted).toContain('12');
    bench.propose('t1', 13);
    expect(of(bench, 'undercut1')?.working?.substituted).toContain('13');
  });

  it('is fresh when it is opened after the numbers moved', () => {
    const bench = new BenchSession(startingBench());
    const id = of(bench, 'undercut1')?.id ?? null;
    bench.propose('t1', 13);
    bench.opened = id;
    expect(of(bench, 'undercut1')?.working?.substituted).toContain('13');
  });
});
