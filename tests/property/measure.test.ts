/**
 * Properties of every measurement over the whole domain of joints. The joints
 * come from the ranges of the joint floor; what cannot be built is passed over.
 */
import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import type { Contour, Point } from '../../src/geometry/index.ts';
import { pointAt } from '../../src/geometry/index.ts';
import type { ButtJoint, FilletJoint, Joint, Section } from '../../src/joint/index.ts';
import { build, JointError } from '../../src/joint/index.ts';
import type { MeasurementId, Measurements, Witness } from '../../src/measure/index.ts';
import { measure, measurementCatalogue } from '../../src/measure/index.ts';
import { anyJoint, everydayFillet } from '../joint/any-joint.ts';
import { movedSection } from '../moved-section.ts';
import { runs } from '../runs.ts';
import { buttJoints } from './butt-joints.ts';

/** Below this a length is a trace that the joint floor may take as nothing, mm. */
const REAL = 1e-3;

// the full count takes minutes
vi.setConfig({ testTimeout: 1_800_000 });

const check = (full: number) => ({ numRuns: runs(full) });
const joints: fc.Arbitrary<Joint> = fc.oneof(
  anyJoint('fillet'),
  everydayFillet,
  buttJoints(0.1),
  buttJoints(0.3),
);

function sectionOf(joint: Joint): Section | null {
  try {
    return build(joint);
  } catch (error) {
    if (error instanceof JointError) return null;
    throw error;
  }
}

/** Runs a check on every joint that can be built. */
function onSections(arbitrary: fc.Arbitrary<Joint>, see: (section: Section, joint: Joint) => void) {
  let kept = 0;
  return {
    property: fc.property(arbitrary, (joint) => {
      const section = sectionOf(joint);
      if (section === null) return;
      kept += 1;
      see(section, joint);
    }),
    kept: () => kept,
  };
}

const valueOf = ({ values }: Measurements, id: MeasurementId): number => values[id]?.value ?? NaN;

/** Rounding of a moved section; an angle is known no better than the piece it is taken on is long. */
const ROUNDING = { mm: 1e-7, mm2: 1e-7, 'kg/m': 1e-7, deg: 1e-4 } as const;

/** As given to the last nanometre; a trace of a length may have been taken as nothing. */
function expectGiven(measured: Measurements, id: MeasurementId, given: number): void {
  const off = Math.abs(valueOf(measured, id) - given);
  expect(off, id).toBeLessThan(isTrace(given) ? 2e-6 : 1e-9);
}

const isTrace = (length: number): boolean => length !== 0 && Math.abs(length) < REAL;

/** Whether a witness is as long, or as wide, as the value it stands for. */
function shows(witness: Witness, size: number, id: MeasurementId): boolean {
  switch (witness.kind) {
    case 'none':
      return size < 1e-9;
    case 'distance': {
      const { from, to } = witness;
      return Math.abs(Math.hypot(to.x - from.x, to.y - from.y) - size) < 1e-9;
    }
    case 'angle': {
      // the groove angle is a sum of bevel angles; a turned plate changes what lies between the edges
      if (id.endsWith('rooveAngle')) return true;
      const arm = (at: Point) => Math.atan2(at.y - witness.vertex.y, at.x - witness.vertex.x);
      const opening = ((arm(witness.to) - arm(witness.from)) * 180) / Math.PI;
      const off = (((opening - size) % 360) + 540) % 360;
      return Math.abs(off - 180) < 1e-9;
    }
    case 'triangle':
    case 'area':
      return true;
  }
}

describe('every measurement of every joint that can be built', () => {
  test('is a number with a witness as long, or as wide, as its value says', () => {
    const { property, kept } = onSections(joints, (section) => {
      const wrong = Object.values(measure(section).values).filter(
        (one) =>
          !Number.isFinite(one.value) ||
          one.unit !== measurementCatalogue[one.id].unit ||
          // square to a turned plate is square but for rounding
          (measurementCatalogue[one.id].signed !== true && (one.value ?? NaN) < -1e-9) ||
          !shows(one.witness, Math.abs(one.value ?? NaN), one.id),
      );
      // one assertion a section: this is the longest of all properties
      if (wrong.length > 0) expect(wrong).toEqual([]);
    });
    fc.assert(property, check(20_000));
    expect(kept()).toBeGreaterThan(runs(20_000) * 0.2);
  });

  test('fits the catalogue, and nothing judged is missing', () => {
    const { property } = onSections(joints, (section, joint) => {
      const { values } = measure(section);
      const misplaced = Object.values(values).filter(({ id }) => {
        const { kinds, stages } = measurementCatalogue[id];
        return !kinds.includes(section.kind) || !stages.includes(section.stage);
      });
      expect(misplaced).toEqual([]);
      const missing = Object.values(measurementCatalogue).filter(
        ({ id, judged, kinds, stages }) =>
          judged &&
          kinds.includes(section.kind) &&
          stages.includes(section.stage) &&
          values[id] === undefined &&
          !meaningless(id, joint),
      );
      expect(missing.map(({ id }) => id)).toEqual([]);
    });
    fc.assert(property, check(5_000));
  });

  test('stays the same wherever the section lies and whichever way it is turned or mirrored', () => {
    const motions = fc.record({
      turn: fc.double({ min: -180, max: 180, noNaN: true }),
      shift: fc.record({
        x: fc.double({ min: -50, max: 50, noNaN: true }),
        y: fc.double({ min: -50, max: 50, noNaN: true }),
      }),
      mirror: fc.boolean(),
    });
    fc.assert(
      fc.property(joints, motions, (joint, motion) => {
        const section = sectionOf(joint);
        if (section === null) return;
        const there = measure(movedSection(section, motion));
        for (const { id, value, unit } of Object.values(measure(section).values)) {
          const off = Math.abs(valueOf(there, id) - (value ?? NaN));
          expect(off, id).toBeLessThan(ROUNDING[unit]);
        }
      }),
      check(5_000),
    );
  });

  test('grows with the section: lengths once, areas twice, angles not at all', () => {
    fc.assert(
      fc.property(joints, fc.double({ min: 0.2, max: 5, noNaN: true }), (joint, scale) => {
        const section = sectionOf(joint);
        if (section === null) return;
        const grown = measure(movedSection(section, { scale }));
        for (const { id, value, unit } of Object.values(measure(section).values)) {
          const power = unit === 'mm' ? 1 : unit === 'deg' ? 0 : 2;
          const expected = (value ?? NaN) * scale ** power;
          expect(Math.abs(valueOf(grown, id) - expected), id).toBeLessThan(ROUNDING[unit]);
        }
      }),
      check(5_000),
    );
  });
});

/** What has no meaning for this joint and may be absent. */
function meaningless(id: MeasurementId, joint: Joint): boolean {
  if (joint.kind === 'fillet') return id === 'edgeRemaining' && joint.arrangement !== 'lap';
  const { preparation, backing } = joint;
  const twoSided = preparation === 'doubleV' || preparation === 'doubleBevel';
  const bothPlates = ['singleV', 'doubleV', 'singleU'].includes(preparation);
  if (id.startsWith('rootBevel') || id === 'rootGrooveAngle') {
    return !twoSided || (id === 'rootBevelAngle2' && !bothPlates);
  }
  if (preparation === 'square' && ['bevelAngle1', 'grooveAngle', 'rootFace'].includes(id)) {
    return true;
  }
  if (id === 'bevelAngle2') return !bothPlates;
  const hidden = id.startsWith('root') && id !== 'rootOpening' && id !== 'rootFace';
  return backing === 'strip' && (hidden || id === 'jointThickness');
}

describe('what is measured on a built fillet', () => {
  test('is what the joint was given', () => {
    const { property } = onSections(anyJoint('fillet'), (section, any) => {
      const joint = any as FilletJoint;
      const measured = measure(section);
      const reads = (id: MeasurementId, value: number): void => {
        expectGiven(measured, id, value);
      };
      reads('t1', joint.t1);
      reads('t2', joint.t2);
      reads('dihedralAngle', joint.dihedralAngle);
      expect(valueOf(measured, 'rootGap')).toBeGreaterThan(joint.rootGap - 1e-6);
      if (joint.endCut === 'fitted') reads('rootGap', joint.rootGap);
      if (joint.stage === 'fitUp') return;
      reads('leg1', joint.leg1);
      reads('leg2', joint.leg2);
      reads('legDifference', Math.abs(joint.leg1 - joint.leg2));
      reads('rootPenetration', joint.rootPenetration);
      reads('undercut1', joint.undercut1Depth);
      reads('undercut2', joint.undercut2Depth);
      if (joint.undercut1Depth > REAL) reads('undercutWidth1', joint.undercut1Width);
      if (joint.overlap1 > REAL) reads('overlap1', joint.overlap1);
      if (joint.overlap2 > REAL) reads('overlap2', joint.overlap2);
      if (joint.reverseCurve === 0 && joint.overlap1 + joint.overlap2 === 0) {
        reads('convexity', Math.max(0, joint.convexity));
        reads('concavity', Math.max(0, -joint.convexity));
      }
    });
    fc.assert(property, check(10_000));
  });

  test('has throats and sizes in their order', () => {
    const { property } = onSections(anyJoint('fillet'), (section) => {
      if (section.stage === 'fitUp') return;
      const measured = measure(section);
      const atMost = (less: MeasurementId, more: MeasurementId): void => {
        expect(valueOf(measured, less), `${less} ≤ ${more}`).toBeLessThan(
          valueOf(measured, more) + 1e-9,
        );
      };
      atMost('theoreticalThroat', 'chordThroat');
      atMost('isoscelesThroat', 'sizeEqual');
      atMost('sizeEqual', 'leg1');
      atMost('sizeEqual', 'leg2');
      atMost('sizePair.1', 'leg1');
      atMost('sizePair.2', 'leg2');
      atMost('effectiveThroat', 'actualThroat');
      atMost('contactLeg2', 'leg2');
      atMost('leg1', 'visibleLeg1');
      // the cosine rule: a face as wide as its two lips are apart
      const angle = (valueOf(measured, 'dihedralAngle') * Math.PI) / 180;
      const [a, b] = [valueOf(measured, 'leg1'), valueOf(measured, 'leg2')];
      const chord = Math.sqrt(a * a + b * b - 2 * a * b * Math.cos(angle));
      expect(Math.abs(valueOf(measured, 'chordLength') - chord)).toBeLessThan(1e-9);
      const height = (a * b * Math.sin(angle)) / chord;
      expect(Math.abs(valueOf(measured, 'chordThroat') - height)).toBeLessThan(1e-9);
    });
    fc.assert(property, check(10_000));
  });

  test('names its plates and nothing more: with the plates exchanged the readings change places', () => {
    const level = anyJoint('fillet').map((joint) => ({
      ...joint,
      arrangement: 'tee' as const,
      endCut: 'fitted' as const,
      stage: 'welded' as const,
      rootGap: 0,
      rootPenetration: 0,
      spatter: [],
    }));
    const { property } = onSections(level, (section, any) => {
      const joint = any as FilletJoint;
      const exchanged = sectionOf({
        ...joint,
        t1: joint.t2,
        t2: joint.t1,
        leg1: joint.leg2,
        leg2: joint.leg1,
        crownShift: -joint.crownShift,
        reverseCurve: -joint.reverseCurve,
        overlap1: joint.overlap2,
        overlap2: joint.overlap1,
        undercut1Depth: joint.undercut2Depth,
        undercut1Width: joint.undercut2Width,
        undercut1Shape: joint.undercut2Shape,
        undercut2Depth: joint.undercut1Depth,
        undercut2Width: joint.undercut1Width,
        undercut2Shape: joint.undercut1Shape,
      });
      if (exchanged === null) return;
      const there = measure(exchanged);
      for (const { id, value } of Object.values(measure(section).values)) {
        if (id === 'contactLeg2') continue;
        const other = id.endsWith('1') ? id.slice(0, -1) + '2' : id.replace(/2$/, '1');
        const off = Math.abs(valueOf(there, other as MeasurementId) - (value ?? NaN));
        expect(off, id).toBeLessThan(1e-7);
      }
    });
    fc.assert(property, check(5_000));
  });

  test('changes by no more than its face does as the face passes through flat', () => {
    const small = fc.double({ min: 1e-12, max: 1e-7, noNaN: true });
    fc.assert(
      fc.property(everydayFillet, small, (plain, height) => {
        const joint = { ...plain, undercut1Depth: 0 };
        const [flat, swell, hollow] = [0, height, -height].map((convexity) =>
          sectionOf({ ...joint, convexity }),
        );
        if (!flat || !swell || !hollow) return;
        const [outward, inward] = [measure(swell), measure(hollow)];
        for (const { id, value, unit } of Object.values(measure(flat).values)) {
          // a degree of toe angle is 4 · 57.3 · height / chord
          const most = (unit === 'mm' ? 10 : 300) * height + 1e-9;
          for (const near of [outward, inward]) {
            expect(Math.abs(valueOf(near, id) - (value ?? NaN)), id).toBeLessThan(most);
          }
        }
      }),
      check(5_000),
    );
  });
});

describe('what is measured on a built butt joint', () => {
  test('is what the joint was given', () => {
    const { property } = onSections(buttJoints(0.15), (section, any) => {
      const joint = any as ButtJoint;
      const measured = measure(section);
      const reads = (id: MeasurementId, value: number): void => {
        expectGiven(measured, id, value);
      };
      reads('t1', joint.t1);
      reads('t2', joint.t2);
      reads('rootOpening', joint.rootOpening);
      reads('angularMisalignment', joint.angularMisalignment);
      if (joint.angularMisalignment === 0 && !isTrace(joint.offset)) {
        reads('centrelineOffset', joint.offset);
        reads('faceStep', joint.offset + (joint.t2 - joint.t1) / 2);
        reads('rootStep', joint.offset - (joint.t2 - joint.t1) / 2);
      }
      if (joint.preparation !== 'square') reads('bevelAngle1', joint.bevelAngle1);
      if (joint.stage === 'fitUp') return;
      reads('undercut1', joint.undercut1Depth);
      reads('undercut2', joint.undercut2Depth);
      if (joint.overlap1 > REAL) reads('overlap1', joint.overlap1);
      if (joint.capDrop1 === 0) reads('capPastGroove1', joint.capPast1);
      if (joint.capDrop2 === 0) reads('capPastGroove2', joint.capPast2);
      reads('incompletePenetration', joint.incompletePenetration);
      if (joint.backing === 'none') {
        reads('rootUndercut1', joint.rootUndercut1Depth);
        reads('rootUndercut2', joint.rootUndercut2Depth);
      }
      if (joint.overlap1 + joint.overlap2 === 0) {
        reads('faceReinforcement.toes', Math.max(0, joint.capHeight));
      }
    });
    fc.assert(property, check(10_000));
  });
});

describe('no place on an outline beats the extreme that was measured', () => {
  /** Places all along a contour, each with the contour's own points among them. */
  const placesOn = (contour: Contour): Point[] =>
    contour.flatMap((piece) => Array.from({ length: 21 }, (_, i) => pointAt(piece, i / 20)));
  const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;
  const from = (a: Point, b: Point): Point => ({ x: b.x - a.x, y: b.y - a.y });

  test('on the face of a fillet', () => {
    const { property } = onSections(anyJoint('fillet'), (section) => {
      const { bead, toes, surfaces, undercuts } = section.face;
      if (bead === null || toes === null) return;
      const measured = measure(section);
      const places = placesOn(bead);
      const least = (distances: readonly number[]): number => Math.min(...distances);
      const roots = section.filletRoot?.weldRoots ?? [];
      const actual = valueOf(measured, 'actualThroat');
      const toFace = least(
        roots.flatMap((root) => places.map((at) => Math.hypot(at.x - root.x, at.y - root.y))),
      );
      expect(toFace).toBeGreaterThan(actual - 1e-9);
      // and the sample comes close: 20 steps a piece miss by a fraction of a step's square
      expect(toFace).toBeLessThan(actual + 0.3);

      // O is the origin; half way between the surfaces from there
      const [along1, along2] = [surfaces[0].along, surfaces[1].along];
      const sum = { x: along1.x + along2.x, y: along1.y + along2.y };
      const size = valueOf(measured, 'sizeEqual');
      const twice = dot(sum, sum);
      const sizes = places.map((at) => (2 * dot(at, sum)) / twice);
      expect(least(sizes)).toBeGreaterThan(size - 1e-9);
      expect(least(sizes)).toBeLessThan(size + 0.3);

      const chord = from(toes[0], toes[1]);
      const long = Math.hypot(chord.x, chord.y);
      const off = places.map((at) => {
        const reach = from(toes[0], at);
        return (reach.x * chord.y - reach.y * chord.x) / long;
      });
      expect(Math.max(...off)).toBeLessThan(valueOf(measured, 'convexity') + 1e-9);
      expect(-least(off)).toBeLessThan(valueOf(measured, 'concavity') + 1e-9);

      for (const [i, id] of (['undercut1', 'undercut2'] as const).entries()) {
        const { normal, origin } = surfaces[i as 0 | 1];
        const depths = placesOn(undercuts[i as 0 | 1]).map((at) => -dot(from(origin, at), normal));
        expect(Math.max(0, ...depths)).toBeLessThan(valueOf(measured, id) + 1e-9);
      }
    });
    fc.assert(property, check(5_000));
  });

  test('on the cap and root of a butt weld', () => {
    const { property } = onSections(buttJoints(0.15), (section) => {
      const measured = measure(section);
      const { bead, surfaces, grooveEdges } = section.face;
      if (bead === null || grooveEdges === null) return;
      const places = placesOn(bead);
      const heights = surfaces.map(({ origin, normal }) =>
        Math.max(0, ...places.map((at) => dot(from(origin, at), normal))),
      );
      const [first, second] = heights as [number, number];
      expect(first).toBeLessThan(valueOf(measured, 'faceReinforcement.toPlate1') + 1e-9);
      expect(second).toBeLessThan(valueOf(measured, 'faceReinforcement.toPlate2') + 1e-9);
      expect(first).toBeGreaterThan(valueOf(measured, 'faceReinforcement.toPlate1') - 0.3);

      // between the groove edges, below the line that joins them
      const within = places.filter((at) =>
        surfaces.every(({ along }, i) => dot(from(grooveEdges[i as 0 | 1], at), along) <= 0),
      );
      const [edge1, edge2] = grooveEdges;
      const across = from(edge1, edge2);
      const width = Math.hypot(across.x, across.y);
      const depths = within.map((at) => {
        const reach = from(edge1, at);
        return (reach.x * across.y - reach.y * across.x) / width;
      });
      const underfill = valueOf(measured, 'underfill');
      if (width > 1e-6) expect(Math.max(0, ...depths)).toBeLessThan(underfill + 1e-9);
      expect(valueOf(measured, 'underfillHigh')).toBeGreaterThan(-1e-9);

      // two places with the face below the line between them everywhere: a hull line of the sample
      // (the under-side of metal that overhangs lies below any such line)
      if (valueOf(measured, 'overlap1') + valueOf(measured, 'overlap2') > 0) return;
      const dip = valueOf(measured, 'capDip');
      const toes = section.face.toes as readonly [Point, Point];
      const chord = from(...toes);
      const sampled = deepestBelowHull(places, { x: -chord.y, y: chord.x });
      expect(sampled).toBeLessThan(dip + 1e-9);
      expect(sampled).toBeGreaterThan(dip - 0.3);
    });
    fc.assert(property, check(5_000));
  });

  /** Depth of a chain of places below its own upper hull, by Andrew's monotone chain. */
  function deepestBelowHull(places: readonly Point[], up: Point): number {
    const size = Math.hypot(up.x, up.y);
    const along = { x: up.y / size, y: -up.x / size };
    const seen = places
      .map((at) => ({ x: dot(at, along), y: dot(at, up) / size }))
      .sort((a, b) => a.x - b.x || b.y - a.y);
    const hull: Point[] = [];
    for (const at of seen) {
      for (;;) {
        const last = hull.at(-1);
        const before = hull.at(-2);
        if (!last || !before) break;
        const turn = from(before, last);
        const next = from(last, at);
        if (turn.x * next.y - turn.y * next.x < 0) break;
        hull.pop();
      }
      hull.push(at);
    }
    let deepest = 0;
    for (let i = 1; i < hull.length; i += 1) {
      const [a, b] = [hull[i - 1] as Point, hull[i] as Point];
      const edge = from(a, b);
      const long = Math.hypot(edge.x, edge.y);
      for (const at of seen) {
        if (at.x < a.x || at.x > b.x || long === 0) continue;
        const reach = from(a, at);
        deepest = Math.max(deepest, (reach.x * edge.y - reach.y * edge.x) / long);
      }
    }
    return deepest;
  }
});
