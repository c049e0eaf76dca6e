import {
  agreeingOf,
  leaningOf,
  sureWorthOf,
  tellingOf,
  type Counted,
  type Tally,
} from '../../../../quiz/index.ts';
import type { Wording } from '../../../wording.svelte.ts';

/** A figure of all calls as it is told: null where there are too few calls for it. */
export interface TallyRow {
  readonly key: string;
  readonly value: string | null;
  /** the calls behind it */
  readonly from: string;
  /** what it comes to in plain words; empty where its interval bears none */
  readonly verdict: string;
}

type Told = Pick<Wording, 'say'>;

/** A share as a whole percentage. */
export const percentOf = (share: number, wording: Told): string =>
  wording.say('calls_eye_percent', { amount: Math.round(100 * share) });

/** A figure with two decimals and a true minus. */
export const plainFigure = (value: number): string => value.toFixed(2).replace('-', '−');

/** A figure with the ends of its interval. */
export const rangedFigure = (
  { value, low, high }: Omit<Counted, 'calls'>,
  write: (value: number) => string,
  wording: Told,
): string =>
  wording.say('calls_eye_figure', { value: write(value), low: write(low), high: write(high) });

/** What all calls add up to, line by line. */
export function tallyRows(tally: Tally, wording: Told): readonly TallyRow[] {
  const { dPrime, criterion, agreement, sureness, named } = tally;
  const brier = sureness && { ...sureness.brierRange, calls: sureness.calls };
  const percent = (share: number): string => percentOf(share, wording);
  const count = (key: string, right: number, calls: number): TallyRow => ({
    key,
    value: wording.say('calls_eye_right_of', { right, calls }),
    from: '',
    verdict: '',
  });
  const figure = (
    key: string,
    counted: Counted | null,
    write: (value: number) => string,
    verdict: string | null = null,
  ): TallyRow => ({
    key,
    value: counted && rangedFigure(counted, write, wording),
    from: counted === null ? '' : wording.say('calls_eye_from', { calls: counted.calls }),
    verdict: verdict === null ? '' : wording.say(verdict),
  });
  return [
    count('calls_eye_right', tally.right, tally.calls),
    figure('calls_eye_misses', tally.misses, percent),
    figure('calls_eye_false_alarms', tally.falseAlarms, percent),
    figure('calls_eye_dprime', dPrime, plainFigure, keyed('telling', dPrime && tellingOf(dPrime))),
    figure(
      'calls_eye_criterion',
      criterion,
      plainFigure,
      keyed('leaning', criterion && leaningOf(criterion)),
    ),
    figure(
      'calls_eye_agreement',
      agreement,
      plainFigure,
      keyed('agreeing', agreement && agreeingOf(agreement)),
    ),
    ...referredRows(tally, count),
    figure('calls_eye_brier', brier, plainFigure, keyed('sure', brier && sureWorthOf(brier))),
    ...(named.calls === 0 ? [] : [count('calls_eye_named', named.right, named.calls)]),
  ];
}

const keyed = (about: string, verdict: string | null): string | null =>
  verdict && `calls_eye_${about}_${verdict}`;

/** What is left open has figures of its own: it is neither missed nor a false alarm. */
function referredRows(
  { referred: { calls, decidable, open }, calls: all }: Tally,
  count: (key: string, right: number, calls: number) => TallyRow,
): readonly TallyRow[] {
  return [
    ...(open === 0 ? [] : [count('calls_eye_open', calls - decidable, open)]),
    ...(decidable === 0 ? [] : [count('calls_eye_decidable', decidable, all - open)]),
  ];
}
