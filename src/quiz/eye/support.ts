import type { EyeScale } from '../question.ts';

/** How many calls a figure needs behind it to be shown. Bias and scatter by simulation; the rest our choice. */
export const fewest = {
  bias: 20,
  scatter: 60,
  /** sections to reject, for misses; good ones, for false alarms */
  share: 10,
  /** of each of the two, for d′ and c */
  detection: 10,
  agreement: 20,
  sureness: 20,
  /** calls at one sureness, for its point of the reliability curve */
  reliabilityPoint: 10,
} as const;

/**
 * A scatter as one may expect it before the first call, on each scale: 8 per cent of the limit, 5
 * degrees, 0.3 mm. Our choice, no source; all grids are laid out in it.
 */
export const usualScatter: Readonly<Record<EyeScale, number>> = { ratio: 0.08, deg: 5, mm: 0.3 };

/** Share of calls that are made blindly, as one may expect it. Our choice, no source. */
export const usualLapse = 0.02;

/** A bias that lies within this, in usual scatters, with its whole interval is fair: 5 % of the limit, 3.1°, 0.19 mm. Our choice, no source. */
export const fairWithin = 0.625;

/** Magnifications within this share of one another's middle are one; our choice. */
export const sameMagnification = 0.1;
