import type { Estimate } from './estimate.ts';
import { verdictOf } from './eye-of.ts';

/** An interval; what a verdict is given on. */
type Interval = Pick<Estimate, 'low' | 'high'>;

// Every threshold here is our own choice, no source. A verdict is given only where the whole interval
// lies on its side of the threshold; otherwise the calls don't bear one yet.

/** d′ up to which telling good from bad is no better than a coin for any use: 60 of 100 right at best. */
const COIN = 0.5;
/** d′ from which good and bad are told apart well: 84 of 100 right at best. */
const WELL = 2;
/** d′ from which they are told apart fairly: 69 of 100 right at best. */
const FAIRLY = 1;

/** What a d′ comes to in plain words. */
export type Telling = 'coin' | 'weak' | 'fair' | 'well';

/** The verdict on a d′; null where its interval bears none. */
export function tellingOf({ low, high }: Interval): Telling | null {
  if (low >= WELL) return 'well';
  if (low >= FAIRLY) return 'fair';
  if (high <= COIN) return 'coin';
  return high <= FAIRLY ? 'weak' : null;
}

/** c within which an eye leans to neither side. */
const EVEN = 0.3;

/** Which way an eye leans: c above 0 accepts too readily, below 0 rejects too readily. */
export type Leaning = 'accept' | 'reject' | 'neither';

/** The verdict on a c; null where its interval bears none. */
export function leaningOf(criterion: Estimate): Leaning | null {
  const verdict = verdictOf(criterion, EVEN);
  if (verdict === null) return null;
  return verdict === 'fair' ? 'neither' : verdict === 'lenient' ? 'accept' : 'reject';
}

/** kappa from which calls agree with the truth closely, and in part. */
const CLOSE = 0.75;
const PARTLY = 0.4;

/** How far calls agree with the truth past what chance gives. */
export type Agreeing = 'chance' | 'poor' | 'partly' | 'close';

/** The verdict on a kappa; null where its interval bears none. */
export function agreeingOf({ low, high }: Interval): Agreeing | null {
  if (low >= CLOSE) return 'close';
  if (low >= PARTLY) return 'partly';
  if (high <= 0) return 'chance';
  return high <= PARTLY ? 'poor' : null;
}

/** The Brier score of one who says "a guess" of every call: what any other has to better. */
const ALWAYS_HALF = 0.25;
/** What adding up may be off by. */
const ROUNDING = 1e-9;

/** Whether what is said of being sure is worth more than saying "a guess" every time. */
export type SureWorth = 'better' | 'worse';

/** The verdict on a Brier score; null where its interval bears none. */
export function sureWorthOf({ low, high }: Interval): SureWorth | null {
  if (high < ALWAYS_HALF - ROUNDING) return 'better';
  return low > ALWAYS_HALF + ROUNDING ? 'worse' : null;
}
