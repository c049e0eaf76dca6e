import type { Contour, Point } from '../../../src/geometry/index.ts';
import {
  JointError,
  type ButtJoint,
  type Groove,
  type Section,
  type Side,
} from '../../../src/joint/index.ts';

/**
 * A single V that can be worked by hand: 10 mm plates, 45° bevels over a 2 mm
 * root face, 2 mm root opening. Noses at x = -1 and 1, face groove edges at
 * x = -9 and 9; toes 1 mm past every groove edge, cap and root bead flat.
 */
export function butt(changes: Partial<ButtJoint> = {}): ButtJoint {
  return {
    version: 1,
    kind: 'butt',
    preparation: 'singleV',
    product: 'plate',
    stage: 'welded',
    t1: 10,
    t2: 10,
    bevelAngle1: 45,
    bevelAngle2: 45,
    rootBevelAngle1: 45,
    rootBevelAngle2: 45,
    rootFace1: 2,
    rootFace2: 2,
    rootSideShare: 0.5,
    rootRadius: 3,
    rootOpening: 2,
    backing: 'none',
    backingThickness: 6,
    backingWidth: 30,
    offset: 0,
    angularMisalignment: 0,
    capHeight: 0,
    crownShift: 0,
    capDip: 0,
    capPast1: 1,
    capPast2: 1,
    capDrop1: 0,
    capDrop2: 0,
    rootHeight: 0,
    rootPast1: 1,
    rootPast2: 1,
    incompletePenetration: 0,
    fusionDepth: 1,
    undercut1Depth: 0,
    undercut1Width: 2,
    undercut1Shape: 'sharp',
    undercut2Depth: 0,
    undercut2Width: 2,
    undercut2Shape: 'sharp',
    rootUndercut1Depth: 0,
    rootUndercut1Width: 2,
    rootUndercut1Shape: 'sharp',
    rootUndercut2Depth: 0,
    rootUndercut2Width: 2,
    rootUndercut2Shape: 'sharp',
    overlap1: 0,
    overlap2: 0,
    spatter: [],
    ...changes,
  };
}

/** The corners of a contour in walking order, rounding of doubles taken off. */
export function cornersOf(contour: Contour): readonly (readonly [number, number])[] {
  const first = contour[0];
  if (first === undefined) return [];
  return [first.a, ...contour.map(({ b }) => b)].map(roundedPoint);
}

/** A point as [x, y], rounding of doubles taken off. */
export function roundedPoint({ x, y }: Point): readonly [number, number] {
  return [rounded(x), rounded(y)];
}

/** A number to 1e-10, never -0. */
export function rounded(value: number): number {
  return Math.round(value * 1e10) / 1e10 + 0;
}

export function grooveOf({ groove }: Section): Groove {
  if (groove === null) throw new Error('a butt joint has a groove');
  return groove;
}

export function rootOf({ root }: Section): Side {
  if (root === null) throw new Error('a butt joint has a root side');
  return root;
}

/** The error a joint is refused with; null when it isn't. */
export function refusalOf(make: () => unknown): JointError | null {
  try {
    make();
    return null;
  } catch (error) {
    if (error instanceof JointError) return error;
    throw error;
  }
}
