import { enteredToMm, mmToInch, sixtyFourths } from '../units/index.ts';
import type { SheetLength } from './job-sheet.ts';
import { placeOf } from './last-place.ts';

/** A sheet length in its own unit: mm, or inches whether entered as a decimal or in 64ths. */
export interface OwnLength {
  readonly value: number;
  readonly unit: 'mm' | 'in';
  /** The last place that it is printed to: of a decimal its last digit, of a fraction 1/64 in. */
  readonly lastPlace: number;
}

export function ownLength(entered: SheetLength): OwnLength {
  if (entered.unit === 'in64') {
    return { value: entered.value / sixtyFourths, unit: 'in', lastPlace: 1 / sixtyFourths };
  }
  const { value, unit } = entered;
  return { value, unit, lastPlace: placeOf(value, unit) };
}

/** A length in mm, in the unit that another one was entered in. */
export const inUnit = (lengthMm: number, unit: 'mm' | 'in'): number =>
  unit === 'mm' ? lengthMm : mmToInch(lengthMm);

/** A sheet length in the unit that another one was entered in; exact when it is its own. */
export function valueIn(entered: SheetLength, unit: 'mm' | 'in'): number {
  const own = ownLength(entered);
  return own.unit === unit ? own.value : inUnit(enteredToMm(entered), unit);
}
