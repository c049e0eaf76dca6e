import type { Check } from '../limits/index.ts';
import { sameValue } from './same-value.ts';

/** The list as it was when the new one holds the very same entries: then nothing that reads it need run. */
export function steadyList<List extends readonly unknown[]>(before: List, now: List): List {
  return before.length === now.length && before.every((entry, place) => entry === now[place])
    ? before
    : now;
}

/** A plain value as it was when the new one says the same. */
export function steadyValue<Value>(before: Value | null, now: Value): Value {
  return before !== null && sameValue(before, now) ? before : now;
}

/**
 * The new checks, each that says the same as before being the one from before, so that its row
 * stays untouched. The opened one is always new: its working shows numbers that may have moved
 * without moving the limit.
 */
export function steadyChecks(
  before: readonly Check[],
  now: readonly Check[],
  opened: string | null,
): readonly Check[] {
  if (before.length !== now.length) return now;
  return steadyList(
    before,
    now.map((check, place) => {
      const earlier = before[place];
      const isSteady = earlier !== undefined && check.id !== opened && saysTheSame(earlier, check);
      return isSteady ? earlier : check;
    }),
  );
}

const saysTheSame = (a: Check, b: Check): boolean =>
  a.id === b.id &&
  a.measurement === b.measurement &&
  a.measured === b.measured &&
  a.limit === b.limit &&
  a.ordinary === b.ordinary &&
  a.margin === b.margin &&
  a.printed?.value === b.printed?.value &&
  a.printed?.unit === b.printed?.unit &&
  a.guard === b.guard &&
  a.call === b.call &&
  a.source.document === b.source.document &&
  a.source.clause === b.source.clause &&
  a.source.status === b.source.status;
