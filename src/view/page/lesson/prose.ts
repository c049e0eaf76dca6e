import { measurementIds, type MeasurementId } from '../../../measure/index.ts';
import { length, text, type Reading } from '../../text.ts';
import { measurementName } from '../measurement-name.ts';

/** A figure that a lesson's text gives in millimetres: `8.0 mm`, `0.7 mm`. */
const METRIC = /(\d+(?:\.\d+)?) mm\b/g;
/** A measurement that a lesson's text names: `{actualThroat}`, or `{ActualThroat}` with a capital. */
const TERM = /\{([A-Za-z][A-Za-z0-9.]*)\}/g;

/**
 * Lesson text for a reader. A measurement is called by the reader's terms, as beside the figure. The
 * sums are worked in millimetres, so each length keeps its own figure and says after it what that is
 * in inches, where those were chosen.
 */
export function prose(written: string, reading: Reading): string {
  const named = written.replace(TERM, (as: string, name: string) => {
    const id = measurementIds.find((one) => one === small(name));
    return id === undefined ? as : called(id, id !== name, reading);
  });
  if (reading.units === 'mm') return named;
  return named.replace(
    METRIC,
    (figure, mm: string) => `${figure} (${length(Number(mm), reading, { unitMark: true })})`,
  );
}

const small = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);

function called(id: MeasurementId, capital: boolean, reading: Reading): string {
  const name = text(measurementName(id), reading);
  return capital ? name.charAt(0).toUpperCase() + name.slice(1) : name;
}
