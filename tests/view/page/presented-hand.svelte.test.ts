import { describe, expect, it } from 'vitest';
import { BenchSession } from '../../../src/state/bench.svelte.ts';
import { PreferenceSession } from '../../../src/state/preferences.svelte.ts';
import { startingBench } from '../../../src/state/start.ts';
import { PresentedHand } from '../../../src/view/page/presented-hand.svelte.ts';
import { Wording } from '../../../src/view/wording.svelte.ts';

const nowhere = { read: () => null, write: () => true };

function onTheWall(): {
  bench: BenchSession;
  hand: PresentedHand;
  down: (key: string, how?: KeyboardEventInit, scrolls?: boolean) => boolean;
  up: (key: string) => void;
} {
  const bench = new BenchSession(startingBench());
  const hand = new PresentedHand(bench, new Wording(new PreferenceSession(nowhere)));
  return {
    bench,
    hand,
    down: (key, how = {}, scrolls = false) =>
      hand.press(new KeyboardEvent('keydown', { key, ...how }), scrolls),
    up: (key) => hand.release(new KeyboardEvent('keyup', { key })),
  };
}

const leg = (bench: BenchSession): number => bench.measurements.values.leg1?.value ?? Number.NaN;

describe('what is driven on the wall', () => {
  it('is the first leg, a tenth of a millimetre a key, ten of them with Shift, a tenth of one with Alt', () => {
    const { bench, hand, down } = onTheWall();
    expect(hand.range?.field).toBe('leg1');
    expect(down('ArrowRight')).toBe(true);
    expect(leg(bench)).toBeCloseTo(8.1, 9);
    down('ArrowLeft', { shiftKey: true });
    expect(leg(bench)).toBeCloseTo(7.1, 9);
    down('ArrowLeft', { altKey: true });
    expect(leg(bench)).toBeCloseTo(7.09, 9);
  });

  it('is settled on once the key is let go: held down, it is one step for undo', () => {
    const { bench, down, up } = onTheWall();
    for (let i = 0; i < 5; i++) down('ArrowRight');
    expect(bench.moving).toBe(true);
    up('ArrowRight');
    expect(bench.moving).toBe(false);
    bench.undo();
    expect(leg(bench)).toBe(8);
  });

  it('is chosen by up and down, round and round, but for a list that scrolls by them', () => {
    const { hand, down } = onTheWall();
    down('ArrowDown');
    expect(hand.range?.field).toBe('convexity');
    down('ArrowUp');
    down('ArrowUp');
    expect(hand.range?.field).toBe('undercut2Depth');
    expect(down('ArrowUp', {}, true)).toBe(false);
    expect(hand.range?.field).toBe('undercut2Depth');
  });

  it('is settled on too where another is chosen with the key still down', () => {
    const { bench, down } = onTheWall();
    down('ArrowRight');
    down('ArrowDown');
    down('ArrowRight');
    bench.commit();
    bench.undo();
    expect([leg(bench), bench.measurements.values.convexity?.value]).toEqual([
      8.1,
      expect.closeTo(1, 9),
    ]);
  });

  it('may be a flaw that is there', () => {
    const { bench, hand } = onTheWall();
    expect(hand.ranges.map(({ field }) => field)).not.toContain('overlap1');
    bench.propose('overlap1', 1);
    expect(hand.ranges.map(({ field }) => field)).toContain('overlap1');
  });

  it('starts with what was held on the bench, also where that stands not among the first', () => {
    const bench = new BenchSession(startingBench());
    bench.focus('leg2');
    const hand = new PresentedHand(bench, new Wording(new PreferenceSession(nowhere)));
    expect(hand.range?.field).toBe('leg2');
    expect(hand.ranges.map(({ field }) => field)).toEqual([
      'leg1',
      'convexity',
      'rootGap',
      'undercut2Depth',
      'leg2',
    ]);
    // before welding there is no leg to hold
    bench.setStage('fitUp');
    expect(hand.range?.field).toBe('dihedralAngle');
  });

  it('leaves keys with Ctrl to the page, and keeps the calls back at C', () => {
    const { bench, hand, down } = onTheWall();
    expect(down('ArrowRight', { ctrlKey: true })).toBe(false);
    expect(down('c', { ctrlKey: true })).toBe(false);
    expect(leg(bench)).toBe(8);
    expect(down('C')).toBe(true);
    expect(hand.keptBack).toBe(true);
    // held down it must not flash them
    for (let i = 0; i < 3; i++) down('c', { repeat: true });
    expect(hand.keptBack).toBe(true);
    // the next showing begins as the last one was left
    expect(onTheWall().hand.keptBack).toBe(true);
    down('c');
    expect(hand.keptBack).toBe(false);
    expect(down('h')).toBe(false);
  });
});
