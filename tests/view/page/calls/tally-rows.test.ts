import { beforeAll, describe, expect, it } from 'vitest';
import { tallyOf, type Answer, type CallRecord } from '../../../../src/quiz/index.ts';
import { reliabilityPlot } from '../../../../src/view/page/calls/progress/reliability-plot.ts';
import { tallyRows } from '../../../../src/view/page/calls/progress/tally-rows.ts';
import { fetchRest, text } from '../../../../src/view/text.ts';
import type { MessageValue } from '../../../../src/units/index.ts';
import { callWith } from '../../../quiz/any-call.ts';

beforeAll(fetchRest);

const wording = {
  say: (key: string, values: Readonly<Record<string, MessageValue>> = {}): string =>
    text({ key, values }, { units: 'mm', inches: 'decimal', terms: 'US' }),
};
const many = (
  count: number,
  truth: CallRecord['truth'],
  call: Answer['call'],
): readonly CallRecord[] =>
  Array.from({ length: count }, () =>
    callWith({ truth, fault: null, answer: { call, fault: null, sure: 100 } }),
  );
const rowOf = (calls: readonly CallRecord[], key: string) =>
  tallyRows(tallyOf(calls), wording).find((row) => row.key === key);

describe('the figures of all calls', () => {
  it('say beside the statistics what they come to', () => {
    const sharp = [...many(100, 'reject', 'reject'), ...many(100, 'accept', 'accept')];
    expect(rowOf(sharp, 'calls_eye_dprime')?.verdict).toBe('tells good from bad well');
    expect(rowOf(sharp, 'calls_eye_agreement')?.verdict).toBe('agrees closely');
    expect(rowOf(sharp, 'calls_eye_brier')?.verdict).toMatch(/^better than/u);
    const lenient = [...many(50, 'reject', 'accept'), ...many(50, 'accept', 'accept')];
    const more = [...lenient, ...many(50, 'reject', 'reject')];
    expect(rowOf(more, 'calls_eye_criterion')?.verdict).toBe('leans to accept');
  });

  it('leave a verdict out where the calls do not bear one', () => {
    const few = [
      ...many(6, 'reject', 'reject'),
      ...many(4, 'reject', 'accept'),
      ...many(8, 'accept', 'accept'),
      ...many(2, 'accept', 'reject'),
    ];
    expect(rowOf(few, 'calls_eye_dprime')).toMatchObject({ verdict: '' });
    expect(rowOf(few, 'calls_eye_dprime')?.value).not.toBeNull();
    expect(rowOf(few.slice(1), 'calls_eye_dprime')).toMatchObject({ value: null, verdict: '' });
  });

  it('count what was referred, rightly and not', () => {
    const calls = [
      ...many(3, 'refer', 'refer'),
      ...many(1, 'refer', 'accept'),
      ...many(2, 'reject', 'refer'),
      ...many(4, 'accept', 'accept'),
    ];
    expect(rowOf(calls, 'calls_eye_open')?.value).toBe('3 of 4');
    expect(rowOf(calls, 'calls_eye_decidable')?.value).toBe('2 of 6');
    expect(rowOf(many(4, 'accept', 'accept'), 'calls_eye_open')).toBeUndefined();
  });
});

describe('the reliability curve', () => {
  const point = (stated: number, value: number, low: number, high: number) => ({
    stated,
    calls: 16,
    right: Math.round(16 * value),
    share: { value, low, high },
  });

  it('stands on the line of the even where as many were right as was said', () => {
    const size = { width: 100, height: 50 };
    const plot = reliabilityPlot([point(0.5, 0.5, 0.3, 0.7), point(1, 0.8, 0.6, 0.9)], size);
    // Said 50 % to 100 % over 100 px, right 0 to 100 % over 50 px, up.
    expect(plot.even).toBe('M0,25L100,0');
    expect(plot.curve).toBe('M0,25L100,10');
    expect(plot.marks[1]).toMatchObject({ x: 100, low: 20, radius: 4 });
    expect(plot.marks[1]?.high).toBeCloseTo(5, 12);
  });

  it('reaches as far down as what was said', () => {
    const plot = reliabilityPlot([point(0, 0.1, 0, 0.3)], { width: 100, height: 50 });
    expect(plot.marks[0]?.x).toBe(0);
    expect(plot.columns.map(({ share }) => share)).toEqual([0, 0.5, 1]);
  });
});
