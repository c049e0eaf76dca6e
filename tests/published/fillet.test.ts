import { describe, expect, it } from 'vitest';
import type { Section } from '../../src/joint/index.ts';
import { build, defaultJoint } from '../../src/joint/index.ts';
import type { MeasurementId } from '../../src/measure/index.ts';
import { measure } from '../../src/measure/index.ts';
import { handFillet } from '../section-fixtures.ts';
import table from './data/fillet.json';

// Source: closed forms of plane geometry (derived), stated in the data file.

interface FilletCase {
  readonly id: string;
  readonly inputs: {
    readonly leg1: number;
    readonly leg2: number;
    readonly dihedral_deg: number;
    readonly faceSagitta: number;
  };
  readonly expected: Readonly<Record<string, unknown>>;
}

/** So convex that a toe angle is under 90 degrees: these have lips. A hand-made section marks none. */
const overhanging = ['CX-6-over', 'CX-5-8-60'];

/** The name of each quantity in the data file, and the measurement that it is. */
const fields: readonly (readonly [string, MeasurementId])[] = [
  ['leg1', 'leg1'],
  ['leg2', 'leg2'],
  ['chord_faceWidth', 'chordLength'],
  ['theoreticalThroat_chord', 'chordThroat'],
  ['actualThroat_minRootToFace', 'actualThroat'],
  ['isoThroat_a_isosceles', 'isoscelesThroat'],
  ['convexity', 'convexity'],
  ['concavity', 'concavity'],
  ['effectiveThroat_minOfChordAndFace', 'effectiveThroat'],
  ['sizeEqualLeg_isosceles', 'sizeEqual'],
  // the leg that runs from toe 2 square to plate 1 is named for its toe here
  ['perpLeg1_toe2ToPlate1', 'perpendicularLeg2'],
  ['perpLeg2_toe1ToPlate2', 'perpendicularLeg1'],
  ['weldArea', 'weldArea'],
  ['toeAngle1_throughAir_deg', 'toeAngle1'],
  ['toeAngle2_throughAir_deg', 'toeAngle2'],
  ['massSteel_kg_per_m_rho7850', 'mass'],
];

/** Twice: on a section put together by hand, and through the joint that a person would set. */
const ways = [
  [
    'by hand',
    ({ leg1, leg2, dihedral_deg, faceSagitta }: FilletCase['inputs']): Section =>
      handFillet({ dihedral: dihedral_deg, leg1, leg2, sagitta: faceSagitta }),
  ],
  [
    'as built',
    ({ leg1, leg2, dihedral_deg, faceSagitta }: FilletCase['inputs']): Section =>
      build({
        ...defaultJoint('fillet'),
        leg1,
        leg2,
        dihedralAngle: dihedral_deg,
        convexity: faceSagitta,
      }),
  ],
] as const;

describe.each(ways)('fillet sections %s', (way, sectionOf) => {
  describe.each(table.cases as readonly FilletCase[])('$id', ({ id, inputs, expected }) => {
    const { values } = measure(sectionOf(inputs));

    it.each(fields)('has the %s of the closed form as its %s', (field, quantity) => {
      const measured = values[quantity]?.value ?? NaN;
      expect(Math.abs(measured - (expected[field] as number))).toBeLessThan(1e-9);
    });

    it('has the unequal size of the closed form, parallel to the chord', () => {
      const [size1, size2] = expected['sizeUnequal_parallelToChord'] as [number, number];
      expect(values['sizePair.1']?.value).toBeCloseTo(size1, 9);
      expect(values['sizePair.2']?.value).toBeCloseTo(size2, 9);
    });

    it('has a theoretical throat of chord throat less concavity', () => {
      const chordThroat = expected['theoreticalThroat_chord'] as number;
      const concavity = expected['concavity'] as number;
      expect(values.theoreticalThroat?.value).toBeCloseTo(chordThroat - concavity, 9);
    });

    it('is as wide across the face as toe to toe unless a steep toe overhangs', () => {
      const chord = expected['chord_faceWidth'] as number;
      const width = values.faceWidth?.value ?? NaN;
      const overhangs = overhanging.includes(id) && way === 'as built';
      if (overhangs) expect(width).toBeGreaterThan(chord + 0.01);
      else expect(width).toBeCloseTo(chord, 9);
    });
  });
});
