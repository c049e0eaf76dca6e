import { describe, expect, it } from 'vitest';
import type { Section } from '../../src/joint/index.ts';
import { build, defaultJoint } from '../../src/joint/index.ts';
import { measure } from '../../src/measure/index.ts';
import { at, handFillet } from '../section-fixtures.ts';
import table from './data/fillet-root.json';

// Source: closed forms of plane geometry (derived), stated in the data file.

interface GapCase {
  readonly id: string;
  readonly inputs: {
    readonly leg1: number;
    readonly leg2_measuredFromPlate1: number;
    readonly rootGap: number;
  };
  readonly expected: {
    readonly leg2_contact: number;
    readonly throat_toTheoreticalRoot: number;
    readonly throat_toPlateCorner: number;
    readonly throat_loss: number;
    readonly weldArea_noMetalInGap: number;
  };
}

interface PenetrationCase {
  readonly id: string;
  readonly inputs: {
    readonly leg: number;
    readonly dihedral_deg: number;
    readonly penetrationAlongBisector: number;
    readonly faceSagitta: number;
  };
  readonly expected: {
    readonly theoreticalThroat: number;
    readonly actualThroat_crown: number;
    readonly effectiveThroat_minusConvexity: number;
    readonly deepPenetrationThroat_s_flat: number;
  };
}

const cases: readonly { readonly kind: string }[] = table.cases;
const gaps = cases.filter(({ kind }) => kind === 'fillet-root-gap') as unknown as GapCase[];
const penetrations = cases.filter(
  ({ kind }) => kind === 'fillet-root-penetration',
) as unknown as PenetrationCase[];

const gapWays = [
  [
    'by hand',
    ({ leg1, leg2_measuredFromPlate1: leg2, rootGap }: GapCase['inputs']): Section => {
      const corner = at(0, rootGap);
      return handFillet({ leg1, leg2, plate2Corner: corner, weldRoots: [corner, at(0, 0)] });
    },
  ],
  [
    'as built',
    ({ leg1, leg2_measuredFromPlate1: leg2, rootGap }: GapCase['inputs']): Section =>
      build({ ...defaultJoint('fillet'), leg1, leg2, rootGap }),
  ],
] as const;

describe.each(gapWays)('a fillet over a root gap, %s', (_way, sectionOf) => {
  it.each(gaps)('has the legs, throats and area of $id', ({ inputs, expected }) => {
    const { values } = measure(sectionOf(inputs));
    expect(values.rootGap?.value).toBeCloseTo(inputs.rootGap, 9);
    expect(values.contactLeg2?.value).toBeCloseTo(expected.leg2_contact, 9);
    expect(values.chordThroat?.value).toBeCloseTo(expected.throat_toTheoreticalRoot, 9);
    expect(values.actualThroat?.value).toBeCloseTo(expected.throat_toPlateCorner, 9);
    expect(values.effectiveThroat?.value).toBeCloseTo(expected.throat_toPlateCorner, 9);
    const loss = (values.chordThroat?.value ?? NaN) - (values.effectiveThroat?.value ?? NaN);
    expect(loss).toBeCloseTo(expected.throat_loss, 9);
    expect(values.weldArea?.value).toBeCloseTo(expected.weldArea_noMetalInGap, 9);
    // the size keeps its apex at O: the leg, gap included
    expect(values.sizeEqual?.value).toBeCloseTo(inputs.leg1, 9);
  });
});

/** Penetration along the bisector p is q = p / cos(ψ/2) along the faying surface. */
const alongPlate = ({
  dihedral_deg,
  penetrationAlongBisector,
}: PenetrationCase['inputs']): number =>
  penetrationAlongBisector / Math.cos((dihedral_deg * Math.PI) / 360);

const penetrationWays = [
  [
    'by hand',
    (inputs: PenetrationCase['inputs']): Section =>
      handFillet({
        dihedral: inputs.dihedral_deg,
        leg1: inputs.leg,
        leg2: inputs.leg,
        sagitta: inputs.faceSagitta,
        weldRoots: [at(-alongPlate(inputs), 0)],
      }),
  ],
  [
    'as built',
    (inputs: PenetrationCase['inputs']): Section =>
      build({
        ...defaultJoint('fillet'),
        t2: 16,
        dihedralAngle: inputs.dihedral_deg,
        leg1: inputs.leg,
        leg2: inputs.leg,
        convexity: inputs.faceSagitta,
        rootPenetration: alongPlate(inputs),
      }),
  ],
] as const;

describe.each(penetrationWays)('a fillet with root penetration, %s', (_way, sectionOf) => {
  it.each(penetrations)('has the throats of $id', ({ inputs, expected }) => {
    const { values } = measure(sectionOf(inputs));
    const p = inputs.penetrationAlongBisector;
    expect(values.throatPenetration?.value).toBeCloseTo(p, 9);
    expect(values.chordThroat?.value).toBeCloseTo(expected.theoreticalThroat, 9);
    expect((values.chordThroat?.value ?? NaN) + p).toBeCloseTo(
      expected.deepPenetrationThroat_s_flat,
      9,
    );
    expect(values.deepThroat?.value).toBeCloseTo(expected.effectiveThroat_minusConvexity, 9);
  });

  it('has an actual throat that is the shortest distance, not the sum at the crown', () => {
    // worked with the face's own circle: 6.494754798 (crown sum 6.456854249, and 4.956854249 without penetration)
    const hollow = penetrations.find(({ id }) => id === 'PN-8-90-1p5-cv') as PenetrationCase;
    const { values } = measure(sectionOf(hollow.inputs));
    expect(values.actualThroat?.value).toBeCloseTo(6.494754798, 8);
    expect(values.deepThroat?.value).toBeCloseTo(6.456854249, 8);
    expect(values.theoreticalThroat?.value).toBeCloseTo(4.956854249, 8);
  });
});
