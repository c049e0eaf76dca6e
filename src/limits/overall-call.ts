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
  const call =
    rejected.length > 0
      ? 'reject'
      : open.length > 0
        ? 'refer'
        : checks.length === 0
          ? 'notAssessed'
          : 'accept';
  const decides = furthestOut(rejected.length > 0 ? rejected : open);
  return { call, decides, rejected, referred, notAssessed };
}

/** How far out for its size: exceedance as a share of the limit; of equals the first on the sheet. */
function furthestOut(checks: readonly Check[]): Check | null {
  return checks.reduce<Check | null>(
    (worst, check) => (worst === null || share(check) > share(worst) ? check : worst),
    null,
  );
}

function share({ margin, limit, sense }: Check): number {
  if (margin === null || limit === null) return Number.NEGATIVE_INFINITY;
  if (limit !== 0) return -margin / Math.abs(limit);
  // where nothing is permitted, anything is too much
  if (margin < 0) return Number.POSITIVE_INFINITY;
  if (margin > 0) return Number.NEGATIVE_INFINITY;
  // nothing found lies inside every most by the whole of it, and so inside a most of nothing
  return sense === 'max' ? -1 : 0;
}
