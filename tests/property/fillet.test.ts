import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  contourArea,
  contourEnd,
  contourStart,
  isSimpleOutline,
  nearestOnContour,
  nearPoint,
  pointAt,
  pointInRegion,
  type Contour,
  type Region,
} from '../../src/geometry/index.ts';
import { build, JointError, type FilletJoint, type Section } from '../../src/joint/index.ts';
import { anyJoint, everydayFillet } from '../joint/any-joint.ts';
import { runs } from '../runs.ts';

/** The section, or null when the joint is refused by name; anything else that is thrown fails the test. */
function built(joint: FilletJoint): Section | null {
  try {
    return build(joint);
  } catch (error) {
    if (!(error instanceof JointError)) throw error;
    expect(error.reason.key).toMatch(/^joint_error_[a-z_]+$/);
    expect(error.bound === null || Number.isFinite(error.bound)).toBe(true);
    return null;
  }
}

const regionsOf = (section: Section): readonly Region[] => [
  ...section.plates,
  ...section.welds,
  ...section.deposits,
  ...section.spatter,
];

const total = (regions: readonly Region[]): number =>
  regions.reduce((sum, region) => sum + contourArea(region), 0);

describe('Over the whole domain of fillet joints', () => {
  test('every outline is simple, closed and counter-clockwise, or the joint is refused by name', () => {
    let kept = 0;
    const asked = runs(20_000);
    fc.assert(
      fc.property(anyJoint('fillet'), (joint) => {
        const section = built(joint);
        if (section === null) return;
        kept += 1;
        for (const region of regionsOf(section)) {
          expect(isSimpleOutline(region)).toBe(true);
          expect(contourArea(region)).toBeGreaterThan(0);
        }
      }),
      { numRuns: asked },
    );
    // a domain that is nearly all refused would prove nothing
    expect(kept / asked).toBeGreaterThan(0.2);
  });

  test('no coordinate and no bulge is anything but a number', () => {
    fc.assert(
      fc.property(anyJoint('fillet'), (joint) => {
        const section = built(joint);
        if (section === null) return;
        const numbers: number[] = [];
        collectNumbers(section, numbers);
        expect(numbers.every(Number.isFinite)).toBe(true);
      }),
      { numRuns: runs(5_000) },
    );
  });

  test('metal is neither made nor lost: plates and weld hold what was prepared and deposited', () => {
    fc.assert(
      // to whole thousandths, because what is under a ten-millionth is left out of a section
      fc.property(anyJoint('fillet').map(toThousandths), (joint) => {
        const section = built(joint);
        if (section === null || section.stage === 'fitUp') return;
        const before = total(build({ ...joint, stage: 'fitUp' }).plates);
        const now = total(section.plates) + total(section.welds);
        const added = total(section.deposits) - gougedArea(section) - meltedEdgeArea(joint);
        expect(Math.abs(now - before - added)).toBeLessThan(1e-9);
      }),
      { numRuns: runs(10_000) },
    );
  });

  test('plates, weld and spatter lie side by side and never in one another', () => {
    fc.assert(
      fc.property(anyJoint('fillet'), (joint) => {
        const section = built(joint);
        if (section === null) return;
        const solids = [...section.plates, ...section.welds, ...section.spatter];
        solids.forEach((solid, i) => {
          solids.forEach((other, j) => {
            if (i !== j) expect(deepestInside(solid, other)).toBeLessThan(1e-6);
          });
        });
      }),
      { numRuns: runs(5_000) },
    );
  });

  test('the exposed outline runs unbroken from plate 1 to plate 2, air on its right', () => {
    fc.assert(
      fc.property(anyJoint('fillet'), (joint) => {
        const section = built(joint);
        if (section === null) return;
        const { outline, bead, toes, beyond } = section.face;
        for (const [i, piece] of outline.entries()) {
          const next = outline[i + 1];
          if (next) expect(nearPoint(piece.b, next.a)).toBe(true);
        }
        if (bead === null || toes === null) return;
        expect(nearPoint(contourStart(bead), toes[0])).toBe(true);
        expect(nearPoint(contourEnd(bead), toes[1])).toBe(true);
        expect(nearPoint(contourStart(beyond[0]), toes[0])).toBe(true);
        expect(nearPoint(contourStart(beyond[1]), toes[1])).toBe(true);
      }),
      { numRuns: runs(5_000) },
    );
  });

  test('toes stand on the surface lines at the legs, lips level with them or farther out', () => {
    fc.assert(
      fc.property(anyJoint('fillet'), (joint) => {
        const section = built(joint);
        if (section?.stage !== 'welded') return;
        const { toes, lips, surfaces } = section.face;
        for (const i of [0, 1] as const) {
          const { along } = surfaces[i];
          const toe = toes?.[i];
          const lip = lips?.[i];
          if (!toe || !lip) throw new Error('a welded face has toes and lips');
          const leg = i === 0 ? joint.leg1 : joint.leg2;
          expect(toe.x * along.x + toe.y * along.y).toBeCloseTo(leg, 9);
          const past = (lip.x - toe.x) * along.x + (lip.y - toe.y) * along.y;
          expect(past).toBeGreaterThanOrEqual(0);
          const overlap = i === 0 ? joint.overlap1 : joint.overlap2;
          if (overlap > 1e-6) expect(past).toBeCloseTo(overlap, 9);
        }
      }),
      { numRuns: runs(5_000) },
    );
  });
});

describe('An everyday fillet', () => {
  test('is never refused', () => {
    fc.assert(
      fc.property(everydayFillet, (joint) => {
        expect(() => build(joint)).not.toThrow();
      }),
      { numRuns: runs(5_000) },
    );
  });
});

function toThousandths(joint: FilletJoint): FilletJoint {
  const fields: [string, unknown][] = Object.entries(joint);
  const rounded = fields.map(([field, value]): [string, unknown] => [
    field,
    typeof value === 'number' ? Math.round(value * 1000) / 1000 : value,
  ]);
  return Object.fromEntries(rounded) as unknown as FilletJoint;
}

function collectNumbers(value: unknown, into: number[]): void {
  if (typeof value === 'number') into.push(value);
  else if (typeof value === 'object' && value !== null) {
    for (const inner of Object.values(value)) collectNumbers(inner, into);
  }
}

/** Base metal gouged out beside the toes: between each undercut and its surface. */
function gougedArea({ face }: Section): number {
  return face.undercuts.reduce((sum, groove) => sum + Math.abs(contourArea(groove)), 0);
}

/**
 * A lap's melted edge: a corner of angle κ rounded off by a circle that touches
 * both sides at a from the corner. Radius a tan(κ/2), so the loss is a kite less
 * a sector: aR - R²(π - κ)/2.
 */
function meltedEdgeArea({ arrangement, edgeMelt, ...joint }: FilletJoint): number {
  if (arrangement !== 'lap') return 0;
  const corner = (joint.dihedralAngle * Math.PI) / 180;
  const endFace = (joint.t2 + joint.rootGap) / Math.sin(corner) - joint.leg2;
  const a = edgeMelt * endFace;
  const radius = a * Math.tan(corner / 2);
  return a * radius - (radius * radius * (Math.PI - corner)) / 2;
}

/** How deep the outline of one region reaches into another, at its corners and the middles of its pieces. */
function deepestInside(outline: Contour, region: Region): number {
  let deepest = 0;
  for (const piece of outline) {
    for (const at of [piece.a, pointAt(piece, 0.5)]) {
      if (pointInRegion(at, region) !== 'inside') continue;
      deepest = Math.max(deepest, nearestOnContour(at, region).distance);
    }
  }
  return deepest;
}
