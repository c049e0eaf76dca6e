import type { Check } from '../../limits/index.ts';

/** The line's measures along its length, px: everything inside is left of the plumb line. */
export interface LineSize {
  readonly width: number;
  /** where the plumb line hangs */
  readonly plumb: number;
}

export const wideLine: LineSize = { width: 112, plumb: 74.5 };
export const narrowLine: LineSize = { width: 78, plumb: 51.5 };

/** All of the limit to the left end, 45 % of it to the right; beyond that the mark is pinned. */
const OUTSIDE_SHARE = 0.45;
const ENDS = 7;

/** Where a margin (positive inside) stands on the line, px from its left end. */
export function limitPlace(margin: number, limit: number, size: LineSize): number {
  const left = ENDS;
  const right = size.width - ENDS + 1;
  // A limit of nothing has no scale: on the line, or pinned outside.
  if (limit === 0) return margin < 0 ? right : size.plumb;
  const share = margin / Math.abs(limit);
  const place =
    share >= 0
      ? size.plumb - share * (size.plumb - left)
      : size.plumb - (share * (right - size.plumb)) / OUTSIDE_SHARE;
  return Math.min(right, Math.max(left, place));
}

/** Where a check's mark and the two edges of its guard band stand on the line, px. */
export interface LimitMarks {
  readonly place: number;
  readonly guard: readonly [number, number] | null;
}

/** The marks of a check; null when it has no limit to be marked against. */
export function limitMarks(
  { limit, margin, guard }: Pick<Check, 'limit' | 'margin' | 'guard'>,
  size: LineSize,
): LimitMarks | null {
  if (limit === null || margin === null) return null;
  return {
    place: limitPlace(margin, limit, size),
    guard: guard > 0 ? [limitPlace(guard, limit, size), limitPlace(-guard, limit, size)] : null,
  };
}
