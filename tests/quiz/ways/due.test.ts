import { createEmptyCard, forgetting_curve, fsrs, Rating } from 'ts-fsrs';
import { describe, expect, it } from 'vitest';
import { dueSkills, type CallRecord } from '../../../src/quiz/index.ts';
import { scheduler } from '../../../src/quiz/ways/due.ts';
import { callWith } from '../any-call.ts';

const day = 24 * 60 * 60 * 1000;
const start = Date.parse('2026-01-01T00:00:00Z');

/** Ten calls of one run, so many of them right. */
function go(
  run: string,
  days: number,
  right: number,
  changes: Partial<CallRecord> = {},
): CallRecord[] {
  return Array.from({ length: 10 }, (_, index) =>
    callWith({
      id: `${run} ${index}`,
      run,
      at: new Date(start + days * day + index * 1000).toISOString(),
      answer: { call: index < right ? 'reject' : 'accept', fault: null, sure: 70 },
      ...changes,
    }),
  );
}
const againIn = (calls: readonly CallRecord[], days: number): number => {
  const [due] = dueSkills(calls, new Date(start + days * day));
  return (Date.parse(due?.again ?? '') - start) / day;
};

describe('the library that schedules', () => {
  // ts-fsrs 5.4.2 (FSRS-6, default weights), run for this project: stability in days, interval
  it('gives Good, Good, Again, Good, Good, each on its day, the intervals 3, 14, 2, 5, 13', () => {
    let card = createEmptyCard(new Date(start));
    const stability: number[] = [];
    const intervals: number[] = [];
    for (const rating of [
      Rating.Good,
      Rating.Good,
      Rating.Again,
      Rating.Good,
      Rating.Good,
    ] as const) {
      card = scheduler.next(card, card.due, rating).card;
      stability.push(card.stability);
      intervals.push(card.scheduled_days);
    }
    expect(intervals).toEqual([3, 14, 2, 5, 13]);
    [2.3065, 13.82690327, 1.72636178, 5.12376438, 12.60302867].forEach((wanted, index) =>
      expect(stability[index]).toBeCloseTo(wanted, 7),
    );
  });

  // closed form (1 + f t / S)^-0.1542 with f = 0.9^(-1 / 0.1542) - 1: after S days 90 per cent
  it('forgets by its curve: all at once known, 90 per cent after the stability', () => {
    const { w } = fsrs().parameters;
    const known = [0, 10, 20].map((days) => forgetting_curve(w, days, 10));
    [1, 0.9, 0.84588465].forEach((wanted, index) => expect(known[index]).toBeCloseTo(wanted, 7));
  });
});

describe('when a skill comes again', () => {
  it('is sooner after a go that went wrong than after one that went well', () => {
    expect(againIn(go('one', 0, 5), 1)).toBeLessThan(againIn(go('one', 0, 9), 1));
  });

  // ts-fsrs 5.4.2, default weights, no steps of minutes: Good first time 3 days, Again 1 day
  it('is in days, never minutes: three after a first go that went well, one after a bad one', () => {
    expect(againIn(go('one', 0, 9), 1)).toBeCloseTo(3, 2);
    expect(againIn(go('one', 0, 5), 1)).toBeCloseTo(1, 2);
  });

  it('is later with every go that goes well on its day', () => {
    const first = go('one', 0, 9);
    const after1 = againIn(first, 0);
    const second = [...first, ...go('two', Math.ceil(after1), 9)];
    const after2 = againIn(second, 0);
    expect(after2 - Math.ceil(after1)).toBeGreaterThan(after1);
  });

  it('is later still after a quick and sure one, and sooner after a slow one', () => {
    const before = [...go('one', 0, 9), ...go('two', 3, 9)];
    const plain = againIn([...before, ...go('three', 12, 10)], 12);
    const sure = { answer: { call: 'reject', fault: null, sure: 95 } } as const;
    expect(againIn([...before, ...go('three', 12, 10, sure)], 12)).toBeGreaterThan(plain);
    expect(againIn([...before, ...go('three', 12, 10, { took: 20_000 })], 12)).toBeLessThan(plain);
  });

  it('is told for each skill by itself, the earliest first', () => {
    const other = go('b', 0, 3, { skill: 'fillet.welded.convexity.max' });
    const calls = [...go('a', 0, 9), ...other];
    const list = dueSkills(calls, new Date(start + 400 * day));
    expect(list.map(({ skill }) => skill)).toEqual([
      'fillet.welded.convexity.max',
      'fillet.welded.undercut.max',
    ]);
    expect(list.every(({ isDue }) => isDue)).toBe(true);
    expect(dueSkills(calls, new Date(start)).some(({ isDue }) => isDue)).toBe(false);
  });

  it('is due from the very moment on', () => {
    const calls = go('one', 0, 9);
    const [due] = dueSkills(calls, new Date(start));
    const at = Date.parse(due?.again ?? '');
    const isDue = (time: number) => dueSkills(calls, new Date(time))[0]?.isDue;
    expect([isDue(at - 1), isDue(at), isDue(at + 1)]).toEqual([false, true, true]);
  });

  it('counts from the last call of the last go, in whatever order the goes were kept', () => {
    const [first, second] = [go('one', 0, 9), go('two', 3, 9)];
    expect(againIn([...second, ...first], 3)).toBe(againIn([...first, ...second], 3));
    const last = againIn(go('one', 0, 9), 0) - 9 / 24 / 60 / 60;
    // three days on from the tenth call, nine seconds after the first
    expect(last).toBeCloseTo(3, 6);
  });

  it('goes by seven right of ten, nineteen of twenty and nine tenths sure, each itself enough', () => {
    const one = (right: number) => againIn(go('one', 0, right), 1);
    expect([one(6), one(7), one(8)].map((days) => Math.round(days))).toEqual([1, 3, 3]);
    const after = (right: number, sure: number) => {
      const twenty = [0, 1].flatMap((half) =>
        go('three', 12, Math.min(10, Math.max(0, right - 10 * half)), {}).map((call, index) => ({
          ...call,
          id: `three ${String(half)} ${String(index)}`,
          answer: { ...call.answer, sure },
        })),
      );
      return againIn([...go('one', 0, 9), ...go('two', 3, 9), ...twenty], 12);
    };
    const plain = after(19, 89);
    expect(after(19, 90)).toBeGreaterThan(plain);
    expect(after(18, 90)).toBe(plain);
    expect(after(18, 100)).toBe(plain);
    expect(after(20, 90)).toBe(after(19, 90));
  });

  it('takes sureness as its mean over a go', () => {
    const before = [...go('one', 0, 9), ...go('two', 3, 9)];
    const mixed = (low: number) =>
      go('three', 12, 10).map((call, index) => ({
        ...call,
        answer: { ...call.answer, sure: index % 2 === 0 ? 100 : low },
      }));
    const [ninety, less] = [80, 78].map((low) => againIn([...before, ...mixed(low)], 12));
    expect(ninety).toBeGreaterThan(less ?? Number.NaN);
  });

  it('is later for a quick one only, and sooner from twice the usual time on', () => {
    const before = [...go('one', 0, 9), ...go('two', 3, 9)];
    const sure = { answer: { call: 'reject', fault: null, sure: 95 } } as const;
    // the usual time is the middle of the three goes: 4200 ms
    const timed = (took: number) =>
      againIn([...before, ...go('three', 12, 10, { ...sure, took })], 12);
    expect(timed(4200)).toBeGreaterThan(timed(4201));
    expect(timed(8400)).toBe(timed(4201));
    expect(timed(8401)).toBeLessThan(timed(8400));
  });

  it('is nothing without a call', () => {
    expect(dueSkills([], new Date(start))).toEqual([]);
  });
});
