import type { Measurements } from '../measure/index.ts';
import { sizeForRatio } from '../measure/index.ts';
import type { Message } from '../units/index.ts';
import type { Reading } from './assess.ts';
import { assess } from './assess.ts';
import type { JobSheet } from './job-sheet.ts';
import type { Check } from './judging.ts';
import { readingOf, throatReading, withPenetration } from './reading.ts';
import { inUnit, ownLength } from './sheet-length.ts';
import { sheetRequirement, type SheetSum } from './sheet-requirement.ts';
import type { SpecifiedSize } from './sheet-size.ts';
import type { SymbolValue } from './substitute.ts';

const half = ['/', 'psi', 2] as const;
const sums = {
  leg: { formula: 'z', tree: 'z' },
  throat: { formula: 'a', tree: 'a' },
  twinLeg: { formula: 'a / cos(psi / 2)', tree: ['/', 'a', ['cos', half]] },
  twinThroat: { formula: 'z cos(psi / 2)', tree: ['*', 'z', ['cos', half]] },
  triangleThroat: {
    formula: 'z1 z2 sin(psi) / sqrt(z1^2 + z2^2 - 2 z1 z2 cos(psi))',
    tree: [
      '/',
      ['*', ['*', 'z1', 'z2'], ['sin', 'psi']],
      [
        'sqrt',
        [
          '-',
          ['+', ['^', 'z1', 2], ['^', 'z2', 2]],
          ['*', ['*', ['*', 2, 'z1'], 'z2'], ['cos', 'psi']],
        ],
      ],
    ],
  },
} as const satisfies Record<string, SheetSum>;

/** The legs that the sheet asks for, each put to its own plate; of a throat, the legs of its triangle. */
export function legChecks(
  measurements: Measurements,
  sheet: JobSheet,
  size: SpecifiedSize,
): readonly Check[] {
  const first = ownLength(sheet.size.first);
  const second = sheet.size.second === null ? first : ownLength(sheet.size.second);
  const asLeg = sheet.size.as === 'leg';
  return ([1, 2] as const).map((side) => {
    const own = side === 1 ? first : second;
    const entered: SymbolValue = { value: own.value, unit: own.unit };
    const requirement = sheetRequirement(sheet, {
      id: 'sheet_leg',
      subject: `leg${side}`,
      name: 'limits_name_leg',
      side,
      sense: 'min',
      unit: own.unit,
      limit: asLeg ? own.value : inUnit(size.leg1, own.unit),
      lastPlace: own.lastPlace,
      sum: asLeg ? sums.leg : sums.twinLeg,
      inputs: { z: entered, a: entered, psi: { value: size.angle, unit: 'deg' } },
    });
    return assess(requirement, readingOf(`leg${side}`, measurements, sheet) ?? absent, sheet);
  });
}

/**
 * The throat that the sheet asks for: of equal legs the isosceles throat, of
 * unequal ones the throat of the largest triangle in the specified ratio.
 */
export function throatCheck(
  measurements: Measurements,
  sheet: JobSheet,
  size: SpecifiedSize,
): Check {
  const first = ownLength(sheet.size.first);
  const second = sheet.size.second === null ? first : ownLength(sheet.size.second);
  const entered: SymbolValue = { value: first.value, unit: first.unit };
  const { throat, equal, angle } = size;
  const sum =
    sheet.size.as === 'throat' ? sums.throat : equal ? sums.twinThroat : sums.triangleThroat;
  const requirement = sheetRequirement(sheet, {
    id: 'sheet_throat',
    subject: equal ? 'isoscelesThroat' : 'theoreticalThroat',
    name: 'limits_name_throat',
    sense: 'min',
    unit: first.unit,
    limit: inUnit(throat, first.unit),
    lastPlace: first.lastPlace,
    sum,
    inputs: {
      z: entered,
      a: entered,
      z1: entered,
      z2: { value: second.value, unit: second.unit },
      psi: { value: angle, unit: 'deg' },
    },
  });
  const reading = equal
    ? throatReading(measurements, sheet)
    : unequalThroat(measurements, sheet, size);
  return assess(requirement, reading ?? absent, sheet);
}

function unequalThroat(
  measurements: Measurements,
  sheet: JobSheet,
  { leg1, leg2 }: SpecifiedSize,
): Reading | null {
  const triangle = sizeForRatio(measurements.section, leg1 / leg2);
  if (triangle === null) return null;
  const remarks: readonly Message[] = triangle.note === null ? [] : [triangle.note];
  const plain = { value: triangle.throat, remarks, refer: triangle.note?.refer === true };
  return withPenetration(plain, measurements, sheet);
}

/** The sheet asks for something that this section has no measurement of. */
export const absent: Reading = {
  value: null,
  remarks: [{ key: 'limits_reason_not_measured' }],
  refer: false,
};
