import { STEEL, type Measurements } from '../measure/index.ts';
import type { JobSheet } from './job-sheet.ts';
import { specifiedSize } from './sheet-size.ts';

/** What a fillet weld takes against what its drawing asks for. */
export interface OverWelding {
  /** section of the triangle that the specified legs span, mm² */
  readonly specifiedArea: number;
  /** weld metal outside the plates, mm² */
  readonly weldArea: number;
  /** the second over the first */
  readonly ratio: number;
  /** volume and mass of weld metal past what is specified, for each metre: cm³/m and kg/m; negative where it falls short */
  readonly extraVolume: number;
  readonly extraMass: number;
}

const radians = Math.PI / 180;

/** The triangle between the specified legs, half of z1 z2 sin ψ (geometry), mm². */
export function specifiedAreaOf(sheet: JobSheet): number {
  const { leg1, leg2, angle } = specifiedSize(sheet);
  return (leg1 * leg2 * Math.sin(angle * radians)) / 2;
}

/**
 * The cost of a fillet's size: area, volume and mass against the specified
 * triangle. Null for a section without a
 * finished fillet. An area of 1 mm² is a volume of 1 cm³ for each metre.
 */
export function overWelding(
  { section, values }: Measurements,
  sheet: JobSheet,
): OverWelding | null {
  const weldArea = values.weldArea?.value;
  if (section.kind !== 'fillet' || section.stage !== 'welded' || weldArea == null) return null;
  const specifiedArea = specifiedAreaOf(sheet);
  const extraVolume = weldArea - specifiedArea;
  return {
    specifiedArea,
    weldArea,
    ratio: weldArea / specifiedArea,
    extraVolume,
    extraMass: extraVolume * STEEL,
  };
}
