import type { Check } from './judging.ts';

/** What a measurement may be, mm or degrees; null where nothing is asked. */
export interface AllowedRange {
  readonly least: number | null;
  readonly most: number | null;
}

/** The room that all checks together leave one measurement: the greatest least and the least most. */
export function allowedRange(
  checks: readonly Check[],
  measurement: Check['measurement'],
): AllowedRange {
  let least: number | null = null;
  let most: number | null = null;
  for (const check of checks) {
    if (check.measurement !== measurement || check.limit === null) continue;
    if (check.sense === 'min') least = Math.max(least ?? check.limit, check.limit);
    else most = Math.min(most ?? check.limit, check.limit);
  }
  return { least, most };
}
