import { isRight, type CallRecord } from '../call-record.ts';
import { nameIn, namesFault } from '../quantity.ts';
import type { Answer } from '../question.ts';
import type { Fault } from '../skill.ts';
import { agreementOf } from './agreement.ts';
import { detectionOf, type DetectionCounts } from './detection.ts';
import type { Estimate } from './estimate.ts';
import { wilson } from './proportion.ts';
import { reliabilityCurve, surenessOf, type Sureness, type SurePoint } from './sureness.ts';
import { fewest } from './support.ts';

/** A figure, its interval, and the calls that it was made of. */
export interface Counted extends Estimate {
  readonly calls: number;
}

/** A fault that was taken for another, and how often. */
export interface Confusion {
  readonly fault: Fault;
  readonly takenFor: Fault;
  readonly calls: number;
}

/** What was referred, of what the sheet leaves open and of what it settles. */
export interface Referred {
  /** calls that referred, rightly or not */
  readonly calls: number;
  /** of those, the ones on a section that the sheet settles: they could be decided */
  readonly decidable: number;
  /** calls on sections that the sheet leaves open */
  readonly open: number;
}

/** What calls add up to; null where there are too few (`fewest`). */
export interface Tally {
  readonly calls: number;
  readonly right: number;
  /** of the sections to reject, the share accepted, 0 to 1, Wilson limits */
  readonly misses: Counted | null;
  /** of the good sections, the share rejected, 0 to 1, Wilson limits */
  readonly falseAlarms: Counted | null;
  readonly referred: Referred;
  /** log-linear correction */
  readonly dPrime: Counted | null;
  /** c: above 0 reluctant to reject; log-linear correction */
  readonly criterion: Counted | null;
  readonly sureness: Sureness | null;
  readonly reliability: readonly SurePoint[];
  /** Cohen's kappa of the calls with the truth */
  readonly agreement: Counted | null;
  /** of the faults that were to be named, how many were, and what the others were taken for */
  readonly named: { readonly calls: number; readonly right: number };
  readonly confusions: readonly Confusion[];
}

/** Adds up calls, slips among them. */
export function tallyOf(calls: readonly CallRecord[]): Tally {
  const counts = countsOf(calls);
  const { bad, good } = counts;
  const missed = calls.filter((call) => call.truth === 'reject' && call.answer.call === 'accept');
  const toTell = Math.min(bad, good) >= fewest.detection ? detectionOf(counts) : null;
  const levels = sureLevels(calls);
  const faults = calls.filter(isNaming);
  const confused = faults.filter((call) => !isNamed(call));
  return {
    calls: calls.length,
    right: calls.filter(isRight).length,
    misses: shareOf(missed.length, calls.filter((call) => call.truth === 'reject').length),
    falseAlarms: shareOf(
      calls.filter((call) => call.truth === 'accept' && call.answer.call === 'reject').length,
      calls.filter((call) => call.truth === 'accept').length,
    ),
    referred: referredOf(calls),
    dPrime: toTell && { ...toTell.dPrime, calls: bad + good },
    criterion: toTell && { ...toTell.criterion, calls: bad + good },
    sureness: calls.length >= fewest.sureness ? surenessOf(levels) : null,
    reliability: reliabilityCurve(levels, fewest.reliabilityPoint),
    agreement: agreementWithTruth(calls),
    named: { calls: faults.length, right: faults.length - confused.length },
    confusions: confusionsIn(confused),
  };
}

/**
 * How far rare faults shift a person's criterion: c where faults are rare less c where they are
 * common. Above 0: more reluctant to reject. Null where either has too few calls of each kind.
 */
export function shiftOf(
  common: readonly CallRecord[],
  rare: readonly CallRecord[],
  leastBad: number = fewest.detection,
): Counted | null {
  const [before, after] = [countsOf(common), countsOf(rare)];
  const short = [before, after].some(({ bad, good }) => bad < leastBad || good < fewest.detection);
  if (short) return null;
  const [from, to] = [detectionOf(before).criterion, detectionOf(after).criterion];
  const error = Math.hypot(from.high - from.value, to.high - to.value);
  const value = to.value - from.value;
  return {
    value,
    low: value - error,
    high: value + error,
    calls: before.bad + before.good + after.bad + after.good,
  };
}

/** Counts what was referred; without it a run that refers everything looks as if nothing went wrong. */
function referredOf(calls: readonly CallRecord[]): Referred {
  const referred = calls.filter(({ answer }) => answer.call === 'refer');
  return {
    calls: referred.length,
    decidable: referred.filter(({ truth }) => truth !== 'refer').length,
    open: calls.filter(({ truth }) => truth === 'refer').length,
  };
}

/** Calls that say reject or accept of what is the one or the other, counted by which they are. */
function countsOf(calls: readonly CallRecord[]): DetectionCounts {
  const settled = calls.filter(({ truth, answer }) => truth !== 'refer' && answer.call !== 'refer');
  const bad = settled.filter(({ truth }) => truth === 'reject');
  const rejected = settled.filter(({ answer }) => answer.call === 'reject');
  const hits = bad.filter(isRight).length;
  return {
    hits,
    bad: bad.length,
    falseAlarms: rejected.length - hits,
    good: settled.length - bad.length,
  };
}

const shareOf = (found: number, of: number): Counted | null =>
  of < fewest.share ? null : { ...wilson(found, of), calls: of };

function sureLevels(calls: readonly CallRecord[]) {
  const stated = [...new Set(calls.map(({ answer }) => answer.sure))].sort((a, b) => a - b);
  return stated.map((sure) => {
    const at = calls.filter(({ answer }) => answer.sure === sure);
    return { stated: sure / 100, calls: at.length, right: at.filter(isRight).length };
  });
}

function agreementWithTruth(calls: readonly CallRecord[]): Counted | null {
  if (calls.length < fewest.agreement) return null;
  const answers = ['accept', 'reject', 'refer'] as const;
  const table = answers.map((truth) =>
    answers.map(
      (answer) => calls.filter((one) => one.truth === truth && one.answer.call === answer).length,
    ),
  );
  const agreement = agreementOf(table);
  return agreement && { ...agreement.kappa, calls: calls.length };
}

type NamingCall = CallRecord & {
  readonly fault: Fault;
  readonly answer: { readonly fault: NonNullable<Answer['fault']> };
};

const isNaming = (call: CallRecord): call is NamingCall =>
  call.fault !== null && call.answer.fault !== null;

const isNamed = ({ fault, answer }: NamingCall): boolean => namesFault(fault, answer.fault);

function confusionsIn(calls: readonly NamingCall[]): readonly Confusion[] {
  const counts = new Map<string, Confusion>();
  for (const { fault, answer } of calls) {
    const takenFor = nameIn(answer.fault);
    // who names nothing takes it for nothing
    if (takenFor === null) continue;
    const key = `${fault} ${takenFor}`;
    const before = counts.get(key)?.calls ?? 0;
    counts.set(key, { fault, takenFor, calls: before + 1 });
  }
  return [...counts.values()].sort((a, b) => b.calls - a.calls);
}
