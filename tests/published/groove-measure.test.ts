import { describe, expect, it } from 'vitest';
import type { ButtJoint, Preparation } from '../../src/joint/index.ts';
import { build, defaultJoint } from '../../src/joint/index.ts';
import { measure } from '../../src/measure/index.ts';
import table from './data/groove.json';

// Source: closed forms of plane geometry (derived), stated in the data file.

interface GrooveCase {
  readonly id: string;
  readonly kind: string;
  readonly inputs: Readonly<Record<string, number>>;
  readonly expected: Readonly<Record<string, number>>;
}

const preparations: Readonly<Record<string, Preparation>> = {
  'single-V': 'singleV',
  'double-V': 'doubleV',
  'single-bevel': 'singleBevel',
  'single-U': 'singleU',
  'single-J': 'singleJ',
  'single-V-full': 'singleV',
};

const cases = table.cases as unknown as readonly GrooveCase[];

function jointOf({ kind, inputs }: GrooveCase): ButtJoint {
  const bevel = inputs['bevel_deg'] ?? (inputs['groove_deg'] ?? NaN) / 2;
  const t = inputs['t'] ?? NaN;
  const rootFace = inputs['rootFace'] ?? NaN;
  return {
    ...defaultJoint('butt', preparations[kind]),
    stage: 'fitUp',
    t1: t,
    t2: t,
    bevelAngle1: bevel,
    bevelAngle2: bevel,
    rootBevelAngle1: bevel,
    rootBevelAngle2: bevel,
    rootSideShare: 0.5,
    rootFace1: rootFace,
    rootFace2: rootFace,
    rootOpening: inputs['rootOpening'] ?? NaN,
    rootRadius: inputs['rootRadius'] ?? 6,
  };
}

describe('a groove at fit-up, as built', () => {
  it.each(cases)('has the area, width and fit-up dimensions of $id', (one) => {
    const { inputs, expected } = one;
    const joint = jointOf(one);
    const { values } = measure(build(joint));
    expect(values.grooveArea?.value).toBeCloseTo(expected['grooveArea'] ?? NaN, 9);
    const width = expected['topWidth'] ?? expected['grooveTopWidth'];
    if (width !== undefined) expect(values.grooveWidth?.value).toBeCloseTo(width, 9);
    expect(values.rootOpening?.value).toBeCloseTo(joint.rootOpening, 9);
    expect(values.rootFace?.value).toBeCloseTo(joint.rootFace1, 9);
    expect(values.bevelAngle1?.value).toBeCloseTo(joint.bevelAngle1, 9);
    const both = one.kind.endsWith('-V') || one.kind === 'single-U' || one.kind === 'single-V-full';
    expect(values.grooveAngle?.value).toBeCloseTo(joint.bevelAngle1 * (both ? 2 : 1), 9);
    if (inputs['rootRadius'] !== undefined) {
      expect(values.rootRadius?.value).toBeCloseTo(inputs['rootRadius'], 9);
    }
    if (one.kind !== 'single-V-full') {
      expect(values.mass?.value).toBeCloseTo(expected['massSteel_kg_per_m_rho7850'] ?? NaN, 9);
    }
  });
});

describe('a finished single V, as built', () => {
  const full = cases.find(({ kind }) => kind === 'single-V-full') as GrooveCase;
  const { inputs, expected } = full;
  const grooveWidth = expected['grooveTopWidth'] ?? NaN;
  const past = ((inputs['capWidth'] ?? NaN) - grooveWidth) / 2;
  const rootPast = ((inputs['rootWidth'] ?? NaN) - (inputs['rootOpening'] ?? NaN)) / 2;
  const { values } = measure(
    build({
      ...jointOf(full),
      stage: 'welded',
      capHeight: inputs['capHeight'] ?? NaN,
      capPast1: past,
      capPast2: past,
      rootHeight: inputs['rootHeight'] ?? NaN,
      rootPast1: rootPast,
      rootPast2: rootPast,
    }),
  );

  it('holds groove, cap and root bead in its weld metal area', () => {
    expect(values.weldArea?.value).toBeCloseTo(expected['totalArea_idealGroove'] ?? NaN, 9);
    expect(values.mass?.value).toBeCloseTo(expected['massSteel_kg_per_m_rho7850'] ?? NaN, 9);
    expect(values.grooveArea?.value).toBeCloseTo(expected['grooveArea'] ?? NaN, 9);
  });

  it('has the widths and heights it was given', () => {
    expect(values.faceWidth?.value).toBeCloseTo(17, 9);
    expect(values.rootWidth?.value).toBeCloseTo(5, 9);
    expect(values['faceReinforcement.higher']?.value).toBeCloseTo(2, 9);
    expect(values['rootReinforcement.higher']?.value).toBeCloseTo(1, 9);
    expect(values.capPastGroove1?.value).toBeCloseTo(past, 9);
    expect(values.underfill?.value).toBe(0);
    expect(values.rootConcavity?.value).toBe(0);
    expect(values.incompletePenetration?.value).toBe(0);
    // toe at (8.5, 12): nearest of the root outline is plate 2's root surface straight below
    expect(values.jointThickness?.value).toBeCloseTo(12, 9);
  });
});
