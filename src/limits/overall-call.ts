import type { Call, Check } from './judging.ts';

/** The call on the joint, the check that decides it, and the checks that don't accept. */
export interface Overall {
  readonly call: Call;
  /** Of the checks that make this call, the one furthest out for its limit. */
  readonly decides: Check | null;
  readonly rejected: readonly Check[];
  readonly referred: readonly Check[];
  readonly notAssessed: readonly Check[];
}

/** Any reject: reject; else any refer or not assessed: refer; nothing judged at all: not assessed; else accept. */
export function overallCall(checks: readonly Check[]): Overall {
  const of = (call: Call): readonly Check[] => checks.filter((check) => check.call === call);
  const rejected = of('reject');
  const referred = of('refer');
  const notAssessed = of('notAssessed');
  const open = [...referred, ...notAssessed];
  const found = { rejected, referred, notAssessed };
  if (rejected.length > 0) return { call: 'reject', decides: furthestOut(rejected), ...found };
  if (open.length > 0) return { call: 'refer', decides: furthestOut(open), ...found };
  return { call: checks.length === 0 ? 'notAssessed' : 'accept', decides: null, ...found };
}

/** How far out for its size: exceedance as a share of the limit; of equals the first on the sheet. */
function furthestOut(checks: readonly Check[]): Check | null {
  return checks.reduce<Check | null>(
    (worst, check) => (worst === null || share(check) > share(worst) ? check : worst),
    null,
  );
}

function share({ margin, limit }: Check): number {
  if (margin === null || limit === null) return Number.NEGATIVE_INFINITY;
  // where nothing is permitted, anything is too much
  return limit === 0 && margin < 0 ? Number.POSITIVE_INFINITY : -margin / Math.abs(limit);
}
