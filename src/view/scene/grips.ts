import type { Point, Vector } from '../../geometry/index.ts';
import { add, dot, length, nearestOnContour, scale, subtract } from '../../geometry/index.ts';
import type { Joint, Section, Side, SurfaceLine } from '../../joint/index.ts';
import { numberAt } from '../../state/parameter.ts';

/** Where a parameter is taken hold of and how that point goes per unit of it, mm. */
export interface Grip {
  readonly at: Point;
  readonly axis: Vector;
}

export type Find = (joint: Joint, section: Section) => Grip | null;
export type Plate = 0 | 1;
/** The grips of a kind of joint, by the field that they move. */
export type Grips = Readonly<Record<string, Find>>;

/** A point within this of a surface lies on it, mm. */
const NEAR = 1e-3;
export const PER_DEGREE = Math.PI / 180;
/** How far past the weld the handles of plate 2's place and turn stand, mm. */
export const PAST = 3;
/** Reach of a carrying surface while there is no toe, mm. */
const FIT_UP_REACH = 9;

export const station = ({ origin, along }: SurfaceLine, point: Point): number =>
  dot(subtract(point, origin), along);
export const onLine = ({ origin, along }: SurfaceLine, at: number): Point =>
  add(origin, scale(along, at));
export const number = (joint: Joint, field: string): number => numberAt(joint, field) ?? 0;

/** A toe moves along its own surface. */
export const toe =
  (side: 'face' | 'root', plate: Plate): Find =>
  (_joint, section) => {
    const own = section[side];
    return own?.toes == null ? null : { at: own.toes[plate], axis: own.surfaces[plate].along };
  };

/** The crown stands its height off the chord, shifted along it, and moves square to it. */
export const crown =
  (side: 'face' | 'root', height: string): Find =>
  (joint, section) => {
    const own = section[side];
    if (own?.toes == null) return null;
    const [p, q] = own.toes;
    const half = scale(subtract(q, p), 0.5);
    const left = { x: -half.y, y: half.x };
    const size = length(half);
    // toes on one point leave no chord to stand off
    if (size === 0) return null;
    const outward = scale(left, (outwardIsLeft(own, left) ? 1 : -1) / size);
    const shift = side === 'face' ? number(joint, 'crownShift') : 0;
    const foot = add(add(p, half), scale(half, shift));
    return { at: add(foot, scale(outward, number(joint, height))), axis: outward };
  };

function outwardIsLeft({ surfaces }: Side, left: Vector): boolean {
  return dot(add(surfaces[0].normal, surfaces[1].normal), left) > 0;
}

/** The bottom of an undercut, half its width past the toe; where it would start while there is none. */
export const undercut =
  (side: 'face' | 'root', plate: Plate): Find =>
  (joint, section) => {
    const own = section[side];
    if (own?.toes == null) return null;
    const surface = own.surfaces[plate];
    const name = `${side === 'root' ? 'rootUndercut' : 'undercut'}${plate + 1}`;
    const depth = number(joint, `${name}Depth`);
    const from = Math.max(0, station(surface, own.toes[plate]));
    const foot = onLine(surface, from + number(joint, `${name}Width`) / 2);
    // A surface that ends at the toe has no room for an undercut.
    const bare = own.beyond[plate];
    if (depth === 0 && (bare.length === 0 || nearestOnContour(foot, bare).distance > NEAR))
      return null;
    return { at: add(foot, scale(surface.normal, -depth)), axis: scale(surface.normal, -1) };
  };

export const overlap =
  (plate: Plate): Find =>
  (_joint, { face }) => {
    const lip = face.lips?.[plate] ?? face.toes?.[plate];
    return lip === undefined ? null : { at: lip, axis: face.surfaces[plate].along };
  };

/** Plate 2's surface, taken hold of past its toe, swings round the root. */
const dihedralAngle: Find = (_joint, { face }) => {
  const surface = face.surfaces[1];
  const toe2 = face.toes?.[1];
  const arm = toe2 === undefined ? FIT_UP_REACH : station(surface, toe2) + PAST / 2;
  const { x, y } = surface.along;
  return { at: onLine(surface, arm), axis: scale({ x: -y, y: x }, arm * PER_DEGREE) };
};

/** Plate 2's corner lifts off plate 1 along plate 2's own surface; the gap is square to plate 1. */
const rootGap: Find = (_joint, { face, filletRoot }) => {
  if (filletRoot === null) return null;
  const [surface1, surface2] = face.surfaces;
  const lift = dot(surface2.along, surface1.normal);
  return { at: filletRoot.plate2Corner, axis: scale(surface2.along, 1 / lift) };
};

const rootPenetration: Find = (joint, { face }) => {
  const [surface] = face.surfaces;
  const back = scale(surface.along, -1);
  return { at: add(surface.origin, scale(back, number(joint, 'rootPenetration'))), axis: back };
};

const edgeMelt: Find = (joint, { face, plateSurfaces, filletRoot }) => {
  if (filletRoot?.edge == null || face.toes === null) return null;
  const left = subtract(plateSurfaces[1].face.origin, face.toes[1]);
  return { at: add(face.toes[1], scale(left, number(joint, 'edgeMelt'))), axis: left };
};

const cornerOverlap: Find = (_joint, { plateSurfaces, face }) => ({
  at: plateSurfaces[0].face.origin,
  axis: scale(face.surfaces[0].along, -1),
});

/** The far side of a plate. */
function plateSide(plate: Plate): Find {
  return (_joint, { plateSurfaces, face }) => {
    const { opposite } = plateSurfaces[plate];
    const middle = (face.toes?.[plate] ?? null) === null ? FIT_UP_REACH / 2 : 0;
    return { at: add(opposite.origin, scale(opposite.along, middle)), axis: opposite.normal };
  };
}

/** How each parameter of a fillet that has a place on the drawing is taken hold of. */
export const filletGrips: Grips = {
  leg1: toe('face', 0),
  leg2: toe('face', 1),
  convexity: crown('face', 'convexity'),
  rootPenetration,
  edgeMelt,
  dihedralAngle,
  cornerOverlap,
  rootGap,
  t1: plateSide(0),
  t2: plateSide(1),
  undercut1Depth: undercut('face', 0),
  undercut2Depth: undercut('face', 1),
  overlap1: overlap(0),
  overlap2: overlap(1),
};
