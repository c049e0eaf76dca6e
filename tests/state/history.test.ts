import { describe, expect, it } from 'vitest';
import { record, redo, startHistory, undo } from '../../src/state/history.ts';

describe('history', () => {
  it('goes back and forward over the values that were settled on', () => {
    const history = record(record(startHistory('a'), 'b'), 'c');
    const back = undo(undo(history));
    expect(back.present).toBe('a');
    expect(redo(back).present).toBe('b');
    expect(redo(redo(back)).present).toBe('c');
  });

  it('stays where it is at either end', () => {
    const history = startHistory('a');
    expect(undo(history)).toBe(history);
    expect(redo(history)).toBe(history);
  });

  it('forgets what was undone once something new is settled on', () => {
    const history = record(undo(record(startHistory('a'), 'b')), 'c');
    expect(history.future).toEqual([]);
    expect(undo(history).present).toBe('a');
  });

  it('records no step when nothing changed', () => {
    const history = startHistory('a');
    expect(record(history, 'a')).toBe(history);
  });

  it('records no step when what was moved was put back: an undo would seem to do nothing', () => {
    const history = startHistory({ joint: { leg1: 8, spatter: [] } });
    const back = record(history, { joint: { leg1: 8, spatter: [] } });
    expect(back).toBe(history);
    expect(record(history, { joint: { leg1: 9, spatter: [] } }).past).toHaveLength(1);
  });

  it('keeps the newest 500 steps', () => {
    let history = startHistory(0);
    for (let step = 1; step <= 600; step += 1) history = record(history, step);
    expect(history.past).toHaveLength(500);
    expect(history.past[0]).toBe(100);
  });
});
