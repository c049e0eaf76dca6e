import { add, perpendicularRight, point, scale } from '../geometry/index.ts';
import type { Point, Vector } from '../geometry/index.ts';
import { deg, toRad } from '../units/index.ts';
import type { FilletJoint } from './joint.ts';
import { isNone } from './least-size.ts';
import type { PlateSurfaces, SurfaceLine } from './section.ts';

/**
 * The plates of a fillet joint as set up for welding. O is the origin, plate 1's
 * carrying surface lies along +x, plate 2's along (cos ψ, sin ψ). Pairs are
 * [plate 1, plate 2]; angles inside are radians.
 */
export interface FilletSetUp {
  /** The surfaces that carry the weld, through O. */
  readonly surfaces: readonly [SurfaceLine, SurfaceLine];
  /** Each plate's two broad faces. */
  readonly plateSurfaces: readonly [PlateSurfaces, PlateSurfaces];
  /** Plate 2's corner at the root, and how far it stands from O along plate 2's surface. */
  readonly corner: Point;
  readonly cornerAlong: number;
  /** From that corner along the side of plate 2 that faces plate 1, away from the weld. */
  readonly faying: Vector;
  /** The angle of plate 2's own metal at that corner. */
  readonly cornerAngle: number;
  /** Where each carrying surface ends, from O; Infinity for a broad face. */
  readonly surfaceEnd: readonly [number, number];
  /** The angle of each plate's own metal at that end. */
  readonly endAngle: readonly [number, number];
  /** Metal under each carrying surface, normal to it. */
  readonly depth: readonly [number, number];
  /** How far fusion can run along the faying surface and still leave a root. */
  readonly deepestPenetration: number;
  /** Corners past each toe, walking away from the weld, to where the plate is cut off. */
  readonly ahead: readonly [readonly Point[], readonly Point[]];
  /** The rest of each plate counter-clockwise: plate 1 from its root on, plate 2 back to its root. */
  readonly behind: readonly [readonly Point[], readonly Point[]];
}

/** Plates are cut off this far past the toe (or past plate 2), mm. */
const CUT_OFF = 60;
/** Fusion may take up this share of a finite faying surface. */
const MOST_FUSED = 0.8;
/** A square end this little off plate 1's square stands square on it, degrees. */
const LEAST_LEAN = 1e-5;

const RIGHT_ANGLE = Math.PI / 2;
const PLUS_X = point(1, 0);
const MINUS_X = point(-1, 0);
const PLUS_Y = point(0, 1);
const MINUS_Y = point(0, -1);

/** Sets plate 2 against plate 1 as the arrangement and the cut of its end have it. */
export function setUpFillet(joint: FilletJoint): FilletSetUp {
  const psi = toRad(deg(joint.dihedralAngle));
  // a lap lies flat on plate 1 whatever the cut of its end
  const square = joint.endCut === 'square' && joint.arrangement !== 'lap';
  // at 90° cos is exactly nothing; a square cut that near to it closes without a wedge too fine to draw
  const upright = Math.abs(joint.dihedralAngle - 90) < (square ? LEAST_LEAN : Number.EPSILON);
  const up = upright ? PLUS_Y : point(Math.cos(psi), Math.sin(psi));
  const gap = joint.rootGap + (square ? gapOfSquareCut(joint, up) : 0);
  const height = isNone(gap) ? 0 : gap;
  const cornerAlong = height / up.y;
  const frame: Frame = {
    psi,
    up,
    square,
    corner: scale(up, cornerAlong),
    cornerAlong,
    height,
    faying: square ? point(-up.y, up.x) : MINUS_X,
    cornerAngle: square ? RIGHT_ANGLE : Math.PI - psi,
  };
  switch (joint.arrangement) {
    case 'tee':
      return setUpTee(joint, frame);
    case 'lap':
      return setUpLap(joint, frame);
    case 'corner':
      return setUpCorner(joint, frame);
  }
}

type Corner = Pick<FilletSetUp, 'corner' | 'cornerAlong' | 'faying' | 'cornerAngle'>;

interface Frame extends Corner {
  readonly psi: number;
  /** along plate 2's surface */
  readonly up: Vector;
  readonly square: boolean;
  /** of plate 2's corner above plate 1's surface */
  readonly height: number;
}

/** How far a square cut holds the weld-side corner off plate 1: only where plate 2 leans away from the weld. */
function gapOfSquareCut(joint: FilletJoint, up: Vector): number {
  const lean = Math.max(0, -up.x);
  return joint.arrangement === 'tee'
    ? joint.t2 * lean
    : Math.min(joint.cornerOverlap, joint.t1) * lean * up.y;
}

function setUpTee({ t1, t2, leg1, leg2 }: FilletJoint, frame: Frame): FilletSetUp {
  const { up, corner, faying, square } = frame;
  const endLength = square ? t2 : t2 / up.y;
  const heel = add(corner, scale(faying, endLength));
  const right = leg1 + CUT_OFF;
  const left = Math.min(heel.x, corner.x) - CUT_OFF;
  const top = scale(up, leg2 + CUT_OFF);
  const back = scale(perpendicularRight(up), -t2);
  const [surface1, surface2] = carryingSurfaces(up);
  return setUpOf(frame, {
    plateSurfaces: [
      { face: surface1, opposite: surfaceLine(point(0, -t1), PLUS_X, MINUS_Y) },
      { face: surface2, opposite: surfaceLine(back, up, scale(surface2.normal, -1)) },
    ],
    surfaceEnd: [Infinity, Infinity],
    endAngle: [Math.PI, Math.PI],
    depth: [t1, t2],
    deepestPenetration: MOST_FUSED * endLength,
    ahead: [[point(right, 0)], [top]],
    behind: [
      [point(left, 0), point(left, -t1), point(right, -t1)],
      [add(top, back), heel],
    ],
  });
}

function setUpLap({ t1, t2, leg1 }: FilletJoint, frame: Frame): FilletSetUp {
  const { psi, up, corner, cornerAlong, height } = frame;
  const endLength = t2 / up.y;
  const top = scale(up, cornerAlong + endLength);
  const right = leg1 + CUT_OFF;
  const left = Math.min(top.x, corner.x, 0) - CUT_OFF;
  const [surface1] = carryingSurfaces(up);
  return setUpOf(frame, {
    plateSurfaces: [
      { face: surface1, opposite: surfaceLine(point(0, -t1), PLUS_X, MINUS_Y) },
      {
        face: surfaceLine(top, MINUS_X, PLUS_Y),
        opposite: surfaceLine(corner, MINUS_X, MINUS_Y),
      },
    ],
    surfaceEnd: [Infinity, cornerAlong + endLength],
    endAngle: [Math.PI, psi],
    depth: [t1, Infinity],
    deepestPenetration: Infinity,
    ahead: [[point(right, 0)], [top, point(left, top.y)]],
    behind: [[point(left, 0), point(left, -t1), point(right, -t1)], [point(left, height)]],
  });
}

function setUpCorner({ t1, t2, cornerOverlap }: FilletJoint, frame: Frame): FilletSetUp {
  const { psi, up, corner, cornerAlong, faying, square } = frame;
  const edge = point(t1 - cornerOverlap, 0);
  const inner = point(-cornerOverlap, 0);
  const top = scale(up, cornerAlong + (square ? t2 : t2 / up.y));
  const out = square ? up : PLUS_Y;
  // plates closing up under the faying surface pinch the root shut before its end
  const pinch = square && up.x < 0 ? MOST_FUSED * up.y : 1;
  return setUpOf(frame, {
    plateSurfaces: [
      { face: surfaceLine(edge, MINUS_Y, PLUS_X), opposite: surfaceLine(inner, MINUS_Y, MINUS_X) },
      {
        face: surfaceLine(top, faying, out),
        opposite: surfaceLine(corner, faying, scale(out, -1)),
      },
    ],
    surfaceEnd: [t1 - cornerOverlap, cornerAlong + (square ? t2 : t2 / up.y)],
    endAngle: [RIGHT_ANGLE, square ? RIGHT_ANGLE : psi],
    depth: [Infinity, Infinity],
    deepestPenetration: cornerOverlap * pinch,
    ahead: [
      [edge, point(edge.x, -CUT_OFF)],
      [top, add(top, scale(faying, CUT_OFF))],
    ],
    behind: [[inner, point(inner.x, -CUT_OFF)], [add(corner, scale(faying, CUT_OFF))]],
  });
}

type Plates = Omit<FilletSetUp, 'surfaces' | keyof Corner>;

// Property by property: an object spread into another is many times slower, and this is built at every move.
function setUpOf(
  { up, corner, cornerAlong, faying, cornerAngle }: Frame,
  plates: Plates,
): FilletSetUp {
  return {
    surfaces: carryingSurfaces(up),
    plateSurfaces: plates.plateSurfaces,
    corner,
    cornerAlong,
    faying,
    cornerAngle,
    surfaceEnd: plates.surfaceEnd,
    endAngle: plates.endAngle,
    depth: plates.depth,
    deepestPenetration: plates.deepestPenetration,
    ahead: plates.ahead,
    behind: plates.behind,
  };
}

function carryingSurfaces(up: Vector): readonly [SurfaceLine, SurfaceLine] {
  const origin = point(0, 0);
  return [surfaceLine(origin, PLUS_X, PLUS_Y), surfaceLine(origin, up, perpendicularRight(up))];
}

function surfaceLine(origin: Point, along: Vector, normal: Vector): SurfaceLine {
  return { origin, along, normal };
}
