import { inchToMm } from '../../units/index.ts';

/** Sides of a bank card, mm (ISO/IEC 7810, ID-1: 85.60 by 53.98), the longer first. */
const CARD = [85.6, 53.98] as const;
/** Lengths on a ruler, mm and inches, longest first. */
const RULER = [50, 40, 30, 20] as const;
const INCHES = [2, 1.5, 1] as const;
/** Room left for a screen that turns out finer than it was thought to be. */
const SPARE = 1.2;

/** The longest known length, mm, that `room` mm of screen show with some to spare; the shortest if none. */
export function calibrationLength(by: 'ruler' | 'card', room: number, inches: boolean): number {
  const lengths: readonly number[] =
    by === 'card' ? CARD : inches ? INCHES.map((inch) => inchToMm(inch)) : RULER;
  return lengths.find((mm) => mm * SPARE <= room) ?? lengths.at(-1) ?? 0;
}
