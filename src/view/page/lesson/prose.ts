import { length, type Reading } from '../../text.ts';

/** A figure that a lesson's text gives in millimetres: `8.0 mm`, `0.7 mm`. */
const METRIC = /(\d+(?:\.\d+)?) mm\b/g;

/**
 * Lesson text for a reader: its sums are worked in millimetres, so each length keeps its own figure
 * and says after it what that is in inches, where those were chosen.
 */
export function prose(text: string, reading: Reading): string {
  if (reading.units === 'mm') return text;
  return text.replace(
    METRIC,
    (figure, mm: string) => `${figure} (${length(Number(mm), reading, { unitMark: true })})`,
  );
}
