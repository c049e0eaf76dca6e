import type { ParameterRange } from '../joint/index.ts';
import { inch64ToMm, inchToMm } from '../units/index.ts';
import type { Preferences } from './preferences.ts';

/** Steps of one key press or stepper, in mm or degrees. */
interface Steps {
  readonly model: number;
  readonly fine: number;
}

/** The model step in the reader's unit: a tenth of a millimetre, a hundredth or a 64th of an inch. */
export function stepsOf(
  range: Pick<ParameterRange, 'step' | 'unit'>,
  reading: Pick<Preferences, 'units' | 'inches'>,
): Steps {
  if (range.unit !== 'mm' || reading.units === 'mm') {
    return { model: range.step, fine: range.step / 10 };
  }
  if (reading.inches === 'fraction') return { model: inch64ToMm(1), fine: inch64ToMm(1) };
  return range.step < 0.1
    ? { model: inchToMm(0.001), fine: inchToMm(0.001) }
    : { model: inchToMm(0.01), fine: inchToMm(0.001) };
}

/**
 * The value `count` steps on from `value`. From between two marks of the scale the first step goes
 * to the next mark, so that a value left by a drag comes back onto round numbers.
 */
export function stepped(value: number, count: number, step: number): number {
  const marks = value / step;
  const nearest = Math.round(marks);
  const onMark = Math.abs(marks - nearest) < 1e-6;
  const from = onMark ? nearest : count > 0 ? Math.floor(marks) : Math.ceil(marks);
  return tidy((from + count) * step);
}

/** The mark of the scale nearest to a value that a pointer asked for. */
export const snapped = (value: number, step: number): number =>
  tidy(Math.round(value / step) * step);

/** 0.1 × 3 as 0.3: typed and stepped values have to be the same number. */
const tidy = (value: number): number => Number(value.toPrecision(12));
