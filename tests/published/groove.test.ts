import { describe, expect, test } from 'vitest';
import { contourArea, contourEnd, distance, sagitta } from '../../src/geometry/index.ts';
import { build, defaultJoint, type ButtJoint, type Preparation } from '../../src/joint/index.ts';
import table from './data/groove.json';

// Source: closed forms of plane geometry (derived), stated in the data file. Here the shape
// itself is held against them; what is measured on it, in groove-measure.test.ts.

interface GrooveCase {
  readonly id: string;
  readonly kind: string;
  readonly inputs: Readonly<Record<string, number>>;
  readonly expected: Readonly<Record<string, number>>;
}

const cases = table.cases as unknown as readonly GrooveCase[];
const preparations = {
  'single-V': 'singleV',
  'double-V': 'doubleV',
  'single-bevel': 'singleBevel',
  'single-U': 'singleU',
  'single-J': 'singleJ',
  'single-V-full': 'singleV',
} as Readonly<Record<string, Preparation>>;

function jointOf({ kind, inputs }: GrooveCase): ButtJoint {
  const given = (name: string): number => inputs[name] ?? NaN;
  const bevel = inputs['bevel_deg'] ?? given('groove_deg') / 2;
  return {
    ...defaultJoint('butt', preparations[kind]),
    t1: given('t'),
    t2: given('t'),
    bevelAngle1: bevel,
    bevelAngle2: bevel,
    rootBevelAngle1: bevel,
    rootBevelAngle2: bevel,
    rootFace1: given('rootFace'),
    rootFace2: given('rootFace'),
    rootOpening: given('rootOpening'),
    rootRadius: inputs['rootRadius'] ?? 4,
  };
}

describe('the shape of a groove', () => {
  test.each(cases)('$id encloses the area of its closed form, at its width', (one) => {
    const { groove, face } = build({ ...jointOf(one), stage: 'fitUp' });
    const area = (groove?.void ?? []).reduce((sum, part) => sum + contourArea(part), 0);
    expect(Math.abs(area - (one.expected['grooveArea'] ?? NaN))).toBeLessThan(1e-9);
    const width = one.expected['topWidth'] ?? one.expected['grooveTopWidth'];
    if (width === undefined || face.grooveEdges === null) return;
    expect(Math.abs(distance(...face.grooveEdges) - width)).toBeLessThan(1e-9);
    const [left, right] = (groove?.preparedEdges ?? []).map(contourEnd);
    expect([left, right]).toEqual(face.grooveEdges);
  });

  test('filled flush to its edges, it takes its own area of weld metal', () => {
    for (const one of cases) {
      const flush = {
        capHeight: 0,
        capPast1: 0,
        capPast2: 0,
        rootHeight: 0,
        rootPast1: 0,
        rootPast2: 0,
      };
      // a groove without root opening has no root to fill
      const joint = { ...jointOf(one), ...flush, stage: 'welded' as const };
      if (joint.rootOpening === 0) continue;
      const area = build(joint).deposits.reduce((sum, part) => sum + contourArea(part), 0);
      expect(Math.abs(area - (one.expected['grooveArea'] ?? NaN))).toBeLessThan(1e-9);
    }
  });

  test('with its cap and root bead, it takes those segments more (SVF-12-60-3-2)', () => {
    const full = cases.find(({ kind }) => kind === 'single-V-full');
    if (full === undefined) throw new Error('the table has a finished single V');
    const { inputs, expected } = full;
    const past = ((inputs['capWidth'] ?? NaN) - (expected['grooveTopWidth'] ?? NaN)) / 2;
    const rootPast = ((inputs['rootWidth'] ?? NaN) - (inputs['rootOpening'] ?? NaN)) / 2;
    const section = build({
      ...jointOf(full),
      stage: 'welded',
      capHeight: inputs['capHeight'] ?? NaN,
      capPast1: past,
      capPast2: past,
      rootHeight: inputs['rootHeight'] ?? NaN,
      rootPast1: rootPast,
      rootPast2: rootPast,
    });
    const area = section.deposits.reduce((sum, part) => sum + contourArea(part), 0);
    expect(Math.abs(area - (expected['totalArea_idealGroove'] ?? NaN))).toBeLessThan(1e-9);
    const [cap] = section.face.bead ?? [];
    expect(cap && sagitta(cap)).toBeCloseTo(inputs['capHeight'] ?? NaN, 12);
  });
});
