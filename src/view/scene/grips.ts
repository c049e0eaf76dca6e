import type { Contour, Point, Vector } from '../../geometry/index.ts';
import {
  add,
  contourEnd,
  contourStart,
  cross,
  dot,
  length,
  nearestOnContour,
  nearPoint,
  scale,
  subtract,
} from '../../geometry/index.ts';
import type { Joint, Section, Side, SurfaceLine } from '../../joint/index.ts';
import { numberAt } from '../../state/parameter.ts';

/** Where a parameter is taken hold of and how that point goes per unit of it, mm. */
export interface Grip {
  readonly at: Point;
  readonly axis: Vector;
}

type Find = (joint: Joint, section: Section) => Grip | null;
type Plate = 0 | 1;

/** A point within this of a surface lies on it, mm. */
const NEAR = 1e-3;
const PER_DEGREE = Math.PI / 180;
/** How far past the weld the handles of plate 2's place and turn stand, mm. */
const PAST = 3;
/** Reach of a carrying surface while there is no toe, mm. */
const FIT_UP_REACH = 9;

const station = ({ origin, along }: SurfaceLine, point: Point): number =>
  dot(subtract(point, origin), along);
const onLine = ({ origin, along }: SurfaceLine, at: number): Point => add(origin, scale(along, at));
const number = (joint: Joint, field: string): number => numberAt(joint, field) ?? 0;

/** A toe moves along its own surface. */
const toe =
  (side: 'face' | 'root', plate: Plate): Find =>
  (_joint, section) => {
    const own = section[side];
    return own?.toes == null ? null : { at: own.toes[plate], axis: own.surfaces[plate].along };
  };

/** The crown stands its height off the chord, shifted along it, and moves square to it. */
const crown =
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
const undercut =
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

const overlap =
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

/** The far side of a plate; in a butt joint its face, for the root surface stays. */
const thickness =
  (plate: Plate): Find =>
  (_joint, section) => {
    const { face, opposite } = section.plateSurfaces[plate];
    if (section.kind === 'fillet') {
      const middle = (section.face.toes?.[plate] ?? null) === null ? FIT_UP_REACH / 2 : 0;
      return { at: add(opposite.origin, scale(opposite.along, middle)), axis: opposite.normal };
    }
    // Plate 2 is placed by its mid-plane, so each of its surfaces takes half.
    const share = plate === 0 ? 1 : 0.5;
    return { at: pastWeld(section, plate, face, PAST), axis: scale(face.normal, share) };
  };

function pastWeld({ face }: Section, plate: Plate, surface: SurfaceLine, past: number): Point {
  const marks = [face.toes?.[plate], face.grooveEdges?.[plate]];
  const stations = marks.flatMap((mark) => (mark === undefined ? [] : [station(surface, mark)]));
  return onLine(surface, Math.max(0, ...stations) + past);
}

const offset: Find = (_joint, section) =>
  section.kind === 'butt'
    ? { at: pastWeld(section, 1, section.plateSurfaces[1].face, PAST), axis: { x: 0, y: 1 } }
    : null;

/** Plate 2 turns about its edge at the root. */
const angularMisalignment: Find = (_joint, section) => {
  const edge = section.groove?.preparedEdges[1][0];
  if (edge === undefined) return null;
  const { face } = section.plateSurfaces[1];
  const at = pastWeld(section, 1, face, 2 * PAST);
  const arm = dot(subtract(at, edge.a), face.along);
  return { at, axis: scale(face.normal, arm * PER_DEGREE) };
};

/** Plate 2's edge moves by half of the opening, for the joint stays centred. */
const rootOpening: Find = (_joint, { groove }) => {
  const edge = groove?.preparedEdges[1];
  return edge === undefined || edge.length === 0
    ? null
    : { at: contourStart(edge), axis: { x: 0.5, y: 0 } };
};

/** The groove edge runs along the surface as the bevel swings: depth / cos² per radian. */
const bevelAngle =
  (plate: Plate): Find =>
  (_joint, { groove, face }) => {
    const bevel: Contour | null | undefined = groove?.faceBevels[plate];
    if (bevel == null || bevel.length === 0 || face.grooveEdges === null) return null;
    const run = subtract(contourEnd(bevel), contourStart(bevel));
    const surface = face.surfaces[plate];
    const depth = Math.abs(dot(run, surface.normal));
    // a bevel lying in the surface has no angle left to give
    if (depth === 0) return null;
    const perRadian = dot(run, run) / depth;
    return { at: face.grooveEdges[plate], axis: scale(surface.along, perRadian * PER_DEGREE) };
  };

const rootFace =
  (plate: Plate): Find =>
  (_joint, { groove, face }) => {
    const piece = groove?.rootFaces[plate];
    const bevel = groove?.faceBevels[plate];
    if (piece === undefined || piece.length === 0 || bevel == null) return null;
    const [p, q] = [contourStart(piece), contourEnd(piece)];
    const { normal } = face.surfaces[plate];
    return { at: dot(subtract(q, p), normal) > 0 ? q : p, axis: normal };
  };

const capDrop =
  (plate: Plate): Find =>
  (_joint, { face }) =>
    face.toes === null
      ? null
      : { at: face.toes[plate], axis: scale(face.surfaces[plate].normal, -1) };

/** What is bare of plate 1 at the root or in the middle; a bevel bare above the face is none of it. */
const incompletePenetration: Find = (joint, { groove, face }) => {
  const bare = groove?.unfused[0] ?? [];
  if (bare.length === 0 || number(joint, 'incompletePenetration') === 0) return null;
  const gap = bare.findIndex(({ a }, i) => i > 0 && !nearPoint(a, bare[i - 1]?.b ?? a));
  const piece = gap < 0 ? bare : bare.slice(0, gap);
  const { normal } = face.surfaces[0];
  const [p, q] = [contourStart(piece), contourEnd(piece)];
  return { at: cross(p, normal) === 0 || dot(subtract(q, p), normal) > 0 ? q : p, axis: normal };
};

/** How each parameter that has a place on the drawing is taken hold of. */
export const grips: Readonly<Record<string, Find>> = {
  leg1: toe('face', 0),
  leg2: toe('face', 1),
  convexity: crown('face', 'convexity'),
  rootPenetration,
  edgeMelt,
  dihedralAngle,
  cornerOverlap,
  rootGap,
  t1: thickness(0),
  t2: thickness(1),
  capPast1: toe('face', 0),
  capPast2: toe('face', 1),
  capHeight: crown('face', 'capHeight'),
  rootPast1: toe('root', 0),
  rootPast2: toe('root', 1),
  rootHeight: crown('root', 'rootHeight'),
  offset,
  angularMisalignment,
  rootOpening,
  bevelAngle1: bevelAngle(0),
  bevelAngle2: bevelAngle(1),
  rootFace1: rootFace(0),
  rootFace2: rootFace(1),
  undercut1Depth: undercut('face', 0),
  undercut2Depth: undercut('face', 1),
  rootUndercut1Depth: undercut('root', 0),
  rootUndercut2Depth: undercut('root', 1),
  overlap1: overlap(0),
  overlap2: overlap(1),
  capDrop1: capDrop(0),
  capDrop2: capDrop(1),
  incompletePenetration,
};
