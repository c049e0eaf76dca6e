import { sameValue } from './same-value.ts';

/** Undo and redo as two lists of values round the present one; the newest is last in each. */
export interface History<Value> {
  readonly past: readonly Value[];
  readonly present: Value;
  readonly future: readonly Value[];
}

/** Steps kept: more than a session of hand work, small enough to forget about. */
const DEPTH = 500;

export const startHistory = <Value>(present: Value): History<Value> => ({
  past: [],
  present,
  future: [],
});

/** The history after `next` was settled on; what had been undone is gone. */
export function record<Value>(history: History<Value>, next: Value): History<Value> {
  // Nothing changed, or all of it back again: no step that undo would seem to do nothing on.
  if (sameValue(next, history.present)) return history;
  return { past: [...history.past, history.present].slice(-DEPTH), present: next, future: [] };
}

/** One step back; the same history when there is none. */
export function undo<Value>(history: History<Value>): History<Value> {
  const present = history.past.at(-1);
  if (present === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    present,
    future: [...history.future, history.present],
  };
}

/** One step forward again; the same history when there is none. */
export function redo<Value>(history: History<Value>): History<Value> {
  const present = history.future.at(-1);
  if (present === undefined) return history;
  return {
    past: [...history.past, history.present],
    present,
    future: history.future.slice(0, -1),
  };
}
