import type { MeasurementId, MeasurementUnit } from '../measure/index.ts';
import { unitOf } from '../measure/index.ts';
import type { Subject } from './subject.ts';

/** What the job sheet puts into formulas. Lengths in mm, angles in degrees. */
export interface SheetValues {
  readonly sheetLeg1: number;
  readonly sheetLeg2: number;
  /** height of the largest isosceles triangle in the specified legs: ISO `a` as specified */
  readonly sheetThroat: number;
  readonly sheetAngle: number;
  /** The preparation as drawn, or as the WPS has it where nothing is drawn; NaN where neither says. */
  readonly sheetRootOpening: number;
  readonly sheetRootFace: number;
  readonly sheetGrooveAngle: number;
  readonly sheetBevelAngle: number;
}

/** Where a symbol of a formula is read from. */
export type SymbolSource =
  | { readonly from: 'measurement'; readonly id: MeasurementId; readonly unit: MeasurementUnit }
  | { readonly from: 'sheet'; readonly field: keyof SheetValues; readonly unit: 'mm' | 'deg' };

export const sheetSymbols: readonly string[] = [
  'sheetLeg1',
  'sheetLeg2',
  'sheetThroat',
  'sheetAngle',
  'sheetRootOpening',
  'sheetRootFace',
  'sheetGrooveAngle',
  'sheetBevelAngle',
] satisfies readonly (keyof SheetValues)[];

/** The plate that an imperfection lies in: named by the 1 or 2 that its measurement ends in. */
export const thicknessHere = 'tHere';
/** The leg that the sheet asks for on that plate. */
export const sheetLegHere = 'sheetLegHere';

const isSheetSymbol = (name: string): name is keyof SheetValues => sheetSymbols.includes(name);

/** The unit that a requirement put to `subject` is in. */
export function unitOfSubject(subject: Subject): MeasurementUnit {
  if (subject === 'misalignment') return 'mm';
  return subject === 'angleDeparture' ? 'deg' : unitOf(subject);
}

/**
 * Where a symbol of a compiled formula is read from in a requirement put to `subject`: the set's and
 * the row's own symbols first, then the sheet's values; what is left is a measurement, for compiling
 * refused everything else (`sourceOf`). Null when `tHere` or `sheetLegHere` has no plate to mean.
 */
export function compiledSource(
  symbol: string,
  subject: Subject,
  declared: Readonly<Record<string, string>>,
): SymbolSource | null {
  const name = standsFor(symbol, declared);
  if (isSheetSymbol(name)) {
    return { from: 'sheet', field: name, unit: name.endsWith('Angle') ? 'deg' : 'mm' };
  }
  if (name === thicknessHere || name === sheetLegHere) {
    const plate = /[12]$/u.exec(subject)?.[0];
    if (plate === undefined) return null;
    const side = plate === '1' ? 1 : 2;
    return name === thicknessHere
      ? { from: 'measurement', id: `t${side}`, unit: 'mm' }
      : { from: 'sheet', field: `sheetLeg${side}`, unit: 'mm' };
  }
  const id = name as MeasurementId;
  return { from: 'measurement', id, unit: unitOf(id) };
}

/** What a symbol stands for: what the set or the row says, or itself. */
export const standsFor = (symbol: string, declared: Readonly<Record<string, string>>): string =>
  Object.hasOwn(declared, symbol) ? (declared[symbol] ?? symbol) : symbol;
