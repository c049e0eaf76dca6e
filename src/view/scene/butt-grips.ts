import type { Contour, Point } from '../../geometry/index.ts';
import {
  contourEnd,
  contourStart,
  cross,
  dot,
  nearPoint,
  scale,
  subtract,
} from '../../geometry/index.ts';
import type { Section, SurfaceLine } from '../../joint/index.ts';
import {
  crown,
  type Find,
  type Grips,
  number,
  onLine,
  overlap,
  PAST,
  PER_DEGREE,
  type Plate,
  station,
  toe,
  undercut,
} from './grips.ts';

/** The face of a plate, for the root surface stays; plate 2 is placed by its mid-plane, so each of its surfaces takes half. */
const thickness =
  (plate: Plate): Find =>
  (_joint, section) => {
    const { face } = section.plateSurfaces[plate];
    const share = plate === 0 ? 1 : 0.5;
    return { at: pastWeld(section, plate, face, PAST), axis: scale(face.normal, share) };
  };

function pastWeld({ face }: Section, plate: Plate, surface: SurfaceLine, past: number): Point {
  const marks = [face.toes?.[plate], face.grooveEdges?.[plate]];
  const stations = marks.flatMap((mark) => (mark === undefined ? [] : [station(surface, mark)]));
  return onLine(surface, Math.max(0, ...stations) + past);
}

const offset: Find = (_joint, section) => ({
  at: pastWeld(section, 1, section.plateSurfaces[1].face, PAST),
  axis: { x: 0, y: 1 },
});

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

/** How each parameter of a butt joint that has a place on the drawing is taken hold of. */
export const buttGrips: Grips = {
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
