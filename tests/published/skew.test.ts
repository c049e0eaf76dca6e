import { describe, expect, it } from 'vitest';
import { build, defaultJoint } from '../../src/joint/index.ts';
import { measure } from '../../src/measure/index.ts';
import { handFillet } from '../section-fixtures.ts';
import table from './data/skew.json';

// Source: closed forms (derived), stated in the data file: flat fillets with equal
// legs b along the plates, w = b sin ψ square to them, throat t, at the angle ψ.

const leg = 10;
const ways = [
  ['by hand', (dihedral: number) => handFillet({ dihedral, leg1: leg, leg2: leg })],
  [
    'as built',
    (dihedralAngle: number) =>
      build({ ...defaultJoint('fillet'), dihedralAngle, leg1: leg, leg2: leg }),
  ],
] as const;

const throatAt = (sectionOf: (dihedral: number) => ReturnType<typeof build>, dihedral: number) =>
  measure(sectionOf(dihedral)).values.chordThroat?.value ?? NaN;

describe.each(ways)('a skewed flat fillet %s', (_way, sectionOf) => {
  it.each(table.cases)('has the leg and throat ratios of $id', ({ inputs, expected }) => {
    const { values } = measure(sectionOf(inputs.dihedral_deg));
    const throat = values.chordThroat?.value ?? NaN;
    const perpendicular = values.perpendicularLeg1?.value ?? NaN;
    const along = values.leg1?.value ?? NaN;
    expect(values.dihedralAngle?.value).toBeCloseTo(inputs.dihedral_deg, 9);
    expect(throat / along).toBeCloseTo(expected.throat_over_alongPlateLeg, 9);
    expect(throat / perpendicular).toBeCloseTo(expected.throat_over_perpLeg, 9);
    expect((values.weldArea?.value ?? NaN) / throat ** 2).toBeCloseTo(
      expected.area_over_throatSq,
      9,
    );
    expect((values.faceWidth?.value ?? NaN) / throat).toBeCloseTo(
      expected.faceWidth_over_throat,
      9,
    );
    // how much longer a leg must be for the throat of the same leg at 90°
    const square = throatAt(sectionOf, 90);
    expect((perpendicular * square) / throat / leg).toBeCloseTo(
      expected.legFactorPerp_equalThroatTo90,
      9,
    );
    expect(square / throat).toBeCloseTo(expected.legFactorAlong_equalThroatTo90, 9);
  });
});
