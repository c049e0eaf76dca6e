import type { Region } from '../geometry/index.ts';
import { contourArea } from '../geometry/index.ts';
import type { Section } from '../joint/index.ts';
import type { Measurement } from './measurement.ts';
import { measuredArea, measuredMass } from './witness.ts';

/** Steel, 7850 kg/m³, as kg per metre of weld and mm² of section. */
export const STEEL = 7850e-6;

const sum = (regions: readonly Region[]): number =>
  regions.reduce((total, region) => total + contourArea(region), 0);

/**
 * Areas, mm². weldArea: weld metal outside the plates as prepared. grooveArea:
 * void between the prepared edges at fit-up, closed by the datum lines of both
 * sides. mass: of the weld metal, before welding of what the groove takes, in
 * steel, kg/m. Derived.
 */
export function areas({ stage, groove, deposits }: Section): Measurement[] {
  const measured: Measurement[] = [];
  if (groove !== null) measured.push(measuredArea('grooveArea', sum(groove.void), groove.void));
  if (stage === 'welded') {
    const weld = sum(deposits);
    measured.push(measuredArea('weldArea', weld, deposits));
    measured.push(measuredMass('mass', weld * STEEL, deposits));
  } else if (groove !== null) {
    measured.push(measuredMass('mass', sum(groove.void) * STEEL, groove.void));
  }
  return measured;
}
