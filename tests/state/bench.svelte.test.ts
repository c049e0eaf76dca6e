import { flushSync } from 'svelte';
import { beforeAll, describe, expect, it } from 'vitest';
import { defaultJoint, type FilletJoint } from '../../src/joint/index.ts';
import { BenchSession } from '../../src/state/bench.svelte.ts';
import { fetchKind } from '../../src/state/built.ts';
import { startingBench } from '../../src/state/start.ts';

const leg1 = (bench: BenchSession): number => (bench.joint as FilletJoint).leg1;
const measuredLeg1 = (bench: BenchSession): number | null | undefined =>
  bench.measurements.values.leg1?.value;

beforeAll(() => fetchKind('butt'));

describe('a bench session', () => {
  it('derives section, measurements, checks and call from the joint and the sheet', () => {
    const bench = new BenchSession(startingBench());
    // The opening fillet has legs of 8 and an undercut of 0.6 where 0.5 is the most.
    expect(measuredLeg1(bench)).toBeCloseTo(8, 9);
    expect(bench.overall.call).toBe('reject');
    expect(bench.overall.decides?.measurement).toBe('undercut2');
  });

  it('shows a live change at once and makes it one step when it is committed', () => {
    const bench = new BenchSession(startingBench());
    for (const asked of [8.4, 8.8, 9.2]) bench.propose('leg1', asked);
    expect(measuredLeg1(bench)).toBeCloseTo(9.2, 9);
    expect(bench.canUndo).toBe(false);
    bench.commit();
    bench.undo();
    expect(leg1(bench)).toBe(8);
    expect(bench.canUndo).toBe(false);
    bench.redo();
    expect(leg1(bench)).toBe(9.2);
  });

  it('leaves nothing to undo when a leg is dragged from 8 to 9 and back to 8', () => {
    const bench = new BenchSession(startingBench());
    bench.propose('leg1', 9);
    bench.propose('leg1', 8);
    bench.commit();
    expect(bench.canUndo).toBe(false);
  });

  it('gives up a live change and leaves no step', () => {
    const bench = new BenchSession(startingBench());
    bench.propose('leg1', 12);
    bench.cancel();
    expect(leg1(bench)).toBe(8);
    bench.commit();
    expect(bench.canUndo).toBe(false);
  });

  it('names the stop of the parameter that was stopped, and forgets it on the next good value', () => {
    const bench = new BenchSession(startingBench());
    bench.propose('leg1', 99);
    expect(bench.stop).toMatchObject({ field: 'leg1', at: 30 });
    bench.propose('leg1', 9);
    expect(bench.stop).toBeNull();
  });

  it('refuses a choice that cannot be built, says why, and changes nothing', () => {
    const bench = new BenchSession(startingBench());
    const before = bench.joint;
    bench.choose({ ...defaultJoint('fillet'), convexity: -9.9 });
    expect(bench.joint).toBe(before);
    expect(bench.notice?.key).toBe('bench_choice_refused');
    expect(bench.canUndo).toBe(false);
  });

  it('takes the first that can be built of several answers to a choice, and says so', () => {
    const bench = new BenchSession(startingBench());
    const plain = defaultJoint('fillet', 'lap');
    bench.choose({ ...plain, convexity: -9.9 }, plain);
    expect(bench.joint).toBe(plain);
    expect(bench.notice?.key).toBe('bench_choice_afresh');
  });

  it('goes back to the start by reset, and back again by undo', () => {
    const bench = new BenchSession(startingBench());
    bench.propose('leg1', 12);
    bench.commit();
    bench.reset();
    expect(leg1(bench)).toBe(8);
    bench.undo();
    expect(leg1(bench)).toBe(12);
  });

  it('opens another bench as a step that undo takes back', () => {
    const bench = new BenchSession(startingBench());
    const other = { ...startingBench(), joint: defaultJoint('butt') };
    bench.load(other);
    expect(bench.section.kind).toBe('butt');
    bench.undo();
    expect(bench.section.kind).toBe('fillet');
  });

  it('holds the present outline while the joint moves on, and lets it go again', () => {
    const bench = new BenchSession(startingBench());
    bench.hold();
    bench.propose('convexity', -1);
    bench.commit();
    expect((bench.held as FilletJoint).convexity).toBe(1);
    bench.hold();
    expect(bench.held).toBeNull();
  });

  it('brings back by undo the held outline that an opened bench put its own in place of', () => {
    const bench = new BenchSession(startingBench());
    bench.hold();
    const mine = bench.held;
    bench.load({ ...startingBench(), joint: defaultJoint('butt'), held: defaultJoint('butt') });
    expect(bench.held?.kind).toBe('butt');
    bench.undo();
    expect(bench.held).toBe(mine);
  });

  it('holds an outline under a drag without settling on the drag', () => {
    const bench = new BenchSession(startingBench());
    bench.propose('leg1', 9);
    bench.hold();
    expect((bench.held as FilletJoint).leg1).toBe(9);
    bench.cancel();
    expect(leg1(bench)).toBe(8);
    expect((bench.held as FilletJoint).leg1).toBe(9);
    bench.undo();
    expect(bench.held).toBeNull();
  });

  it('keeps what is held over a reset', () => {
    const bench = new BenchSession(startingBench());
    bench.hold();
    bench.propose('leg1', 9);
    bench.commit();
    bench.reset();
    expect(bench.held).not.toBeNull();
  });

  it('lights what the check pointed at is put to', () => {
    const bench = new BenchSession(startingBench());
    bench.lit = bench.checks.find((check) => check.measurement === 'undercut2')?.id ?? '';
    expect(bench.litSubject).toBe('undercut2');
    bench.lit = null;
    expect(bench.litSubject).toBeNull();
  });

  it('lights a measurement that no check judges', () => {
    const bench = new BenchSession(startingBench());
    expect(bench.checks.map((check) => check.measurement)).not.toContain('weldArea');
    bench.pointed = 'weldArea';
    expect(bench.litSubject).toBe('weldArea');
    // A row of the checks that is pointed at has the last word.
    bench.lit = bench.checks.find((check) => check.measurement === 'leg1')?.id ?? '';
    expect(bench.litSubject).toBe('leg1');
  });

  it('keeps the parameter in hand after the focus has gone', () => {
    const bench = new BenchSession(startingBench());
    bench.focus('convexity');
    bench.focus(null);
    expect(bench.focused).toBeNull();
    expect(bench.inHand).toBe('convexity');
  });

  it('judges by nothing when the sheet names a set that there is none of', () => {
    const bench = new BenchSession(startingBench());
    bench.setSheet({ ...bench.sheet, limitSet: 'gone' });
    expect(bench.checks).toEqual([]);
    expect(bench.overall.call).toBe('notAssessed');
  });

  it('tells what depends on it only of what has changed', () => {
    const bench = new BenchSession(startingBench());
    let built = 0;
    const stop = $effect.root(() => {
      $effect(() => {
        if (bench.section.stage === 'welded') built += 1;
      });
    });
    flushSync();
    bench.setSheet({ ...bench.sheet, job: 'Another' });
    flushSync();
    // A word on the sheet is no change of the section.
    expect(built).toBe(1);
    bench.propose('leg1', 9);
    flushSync();
    expect(built).toBe(2);
    stop();
  });
});
