import type { Measurements } from '../measure/index.ts';
import { enteredToMm } from '../units/index.ts';
import { askedOf } from './asked.ts';
import { grooveChecks } from './groove-checks.ts';
import type { JobSheet, SheetLength, Toleranced } from './job-sheet.ts';
import type { Check } from './judging.ts';
import type { CompiledLimitSet } from './limit-set.ts';
import { prepareLimits, type Scope } from './prepare.ts';
import { setChecks } from './set-checks.ts';
import { specifiedSize, type SpecifiedSize } from './sheet-size.ts';
import { legChecks, throatCheck } from './size-checks.ts';

/**
 * Puts every requirement of the job sheet and the limit set to what was
 * measured: the sheet's own first, then how the plates lie to each other, then
 * the set's rows in the document's order.
 */
export function judge(
  measurements: Measurements,
  sheet: JobSheet,
  limits: CompiledLimitSet,
): readonly Check[] {
  const { section, values } = measurements;
  const size = specifiedSize(sheet);
  const scope: Scope = { values, sheet: sheetValues(size, sheet) };
  const made = setChecks(measurements, sheet, prepareLimits(limits), scope);
  const ofSet = made.map(({ check }) => check);
  if (section.kind === 'butt') {
    return section.stage === 'fitUp' ? [...grooveChecks(measurements, sheet), ...ofSet] : ofSet;
  }
  if (section.stage === 'fitUp') return ofSet;
  // a set that says how far under its nominal a throat may be is not overruled by the nominal
  const replaced =
    size.equal &&
    made.some(
      ({ check, criterion }) => criterion.standsFor === 'throat' && check.call !== 'notAssessed',
    );
  const otherwise = new Set<Check['measurement']>();
  for (const { check, criterion } of made)
    if (criterion.standsFor === 'leg' && check.call !== 'notAssessed')
      otherwise.add(check.measurement);
  // legs that only follow from a specified throat step back with it
  const legs =
    replaced && sheet.size.as === 'throat'
      ? []
      : legChecks(measurements, sheet, size).filter(
          ({ measurement }) => !otherwise.has(measurement),
        );
  const throat = replaced ? [] : [throatCheck(measurements, sheet, size)];
  return [...legs, ...throat, ...ofSet];
}

const sheetValues = (
  { leg1, leg2, isoscelesThroat, angle }: SpecifiedSize,
  { groove }: JobSheet,
): Scope['sheet'] => ({
  sheetLeg1: leg1,
  sheetLeg2: leg2,
  sheetThroat: isoscelesThroat,
  sheetAngle: angle,
  sheetRootOpening: lengthAsked(groove.rootOpening),
  sheetRootFace: lengthAsked(groove.rootFace),
  sheetGrooveAngle: askedOf(groove.grooveAngle) ?? Number.NaN,
  sheetBevelAngle: askedOf(groove.bevelAngle) ?? Number.NaN,
});

function lengthAsked(dimension: Toleranced<SheetLength>): number {
  const asked = askedOf(dimension);
  return asked === null ? Number.NaN : enteredToMm(asked);
}
