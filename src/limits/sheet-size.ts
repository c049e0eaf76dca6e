import { enteredToMm } from '../units/index.ts';
import type { JobSheet } from './job-sheet.ts';

/** Legs and throat that a job sheet specifies for a fillet, mm; angle in degrees. */
export interface SpecifiedSize {
  readonly leg1: number;
  readonly leg2: number;
  /** distance from the root to the straight line between the specified toes */
  readonly throat: number;
  /** height of the largest isosceles triangle in the specified legs: ISO `a` as specified */
  readonly isoscelesThroat: number;
  readonly equal: boolean;
  readonly angle: number;
}

const radians = Math.PI / 180;

/**
 * The other way to give the size of an equal-leg fillet: its throat
 * a = z cos(ψ/2) when a leg is given, its leg z when a throat is. Same unit in
 * and out; ψ the dihedral angle in degrees. Geometry of the isosceles triangle.
 */
export function twinSize(as: 'leg' | 'throat', size: number, angle: number): number {
  const ratio = Math.cos((angle / 2) * radians);
  return as === 'leg' ? size * ratio : size / ratio;
}

/** Distance from the corner of a triangle to the side opposite, the corner's two sides and angle (degrees) given. */
function triangleThroat(leg1: number, leg2: number, angle: number): number {
  const opposite = Math.sqrt(leg1 ** 2 + leg2 ** 2 - 2 * leg1 * leg2 * Math.cos(angle * radians));
  // both legs nothing: no triangle, no throat
  return opposite === 0 ? 0 : (leg1 * leg2 * Math.sin(angle * radians)) / opposite;
}

/** The fillet size that a sheet specifies, whichever way it gives it. */
export function specifiedSize(sheet: JobSheet): SpecifiedSize {
  const { size, dihedralAngle: angle } = sheet;
  const first = enteredToMm(size.first);
  if (size.as === 'throat') {
    const leg = twinSize('throat', first, angle);
    return { leg1: leg, leg2: leg, throat: first, isoscelesThroat: first, equal: true, angle };
  }
  const second = size.second === null ? first : enteredToMm(size.second);
  const isoscelesThroat = twinSize('leg', Math.min(first, second), angle);
  const equal = first === second;
  const throat = equal ? isoscelesThroat : triangleThroat(first, second, angle);
  return { leg1: first, leg2: second, throat, isoscelesThroat, equal, angle };
}
