import {
  cross,
  distance,
  near,
  nearPoint,
  reverseContour,
  subtract,
  TOLERANCE,
} from '../../geometry/index.ts';
import type { Contour, Point, Region } from '../../geometry/index.ts';
import type { ButtJoint, PlateNumber } from '../joint.ts';
import { refuse } from '../refuse.ts';
import type { Groove, SurfaceLine } from '../section.ts';
import {
  isTwoSided,
  portionOf,
  prepareEdge,
  setbackAt,
  type PreparedEdge,
} from './edge-preparation.ts';
import { regionThrough, via } from './outline.ts';
import { cornersOf, heightOn, place, placeContour, placePlates, surfaceOf } from './plate-frame.ts';
import type { PlateFrame } from './plate-frame.ts';

/** Edges that miss one another by less leave a gap too small to draw, mm. */
const LEAST_GAP = 1e-6;

/** A plate prepared and set in place. */
export interface SetPlate {
  readonly number: PlateNumber;
  readonly edge: PreparedEdge;
  readonly frame: PlateFrame;
  readonly face: SurfaceLine;
  readonly root: SurfaceLine;
}

/**
 * Where the edges touch when there is no root opening: from `low` to `high`,
 * as heights on plate 1 and on plate 2. A single point has low = high.
 */
export interface Contact {
  readonly low: readonly [number, number];
  readonly high: readonly [number, number];
}

/** Both plates set for welding. */
export interface SetUp {
  readonly plates: readonly [SetPlate, SetPlate];
  readonly contact: Contact | null;
  readonly twoSided: boolean;
}

/** The plates as the fit-up fields of the joint say. */
export function setUp(joint: ButtJoint): SetUp {
  const edges = [prepareEdge(joint, 1), prepareEdge(joint, 2)] as const;
  const frames = placePlates(joint, edges);
  const plateOf = (i: 0 | 1): SetPlate => ({
    number: i === 0 ? 1 : 2,
    edge: edges[i],
    frame: frames[i],
    face: surfaceOf(frames[i], edges[i], 'face'),
    root: surfaceOf(frames[i], edges[i], 'root'),
  });
  const plates = [plateOf(0), plateOf(1)] as const;
  return { plates, contact: contactOf(joint, plates), twoSided: isTwoSided(joint) };
}

/** The edges' pieces by name, and the void between them at fit-up. */
export function grooveOf(set: SetUp, unfused: readonly [Contour, Contour]): Groove {
  const [one, two] = set.plates;
  const both = <T>(read: (plate: SetPlate) => T): readonly [T, T] => [read(one), read(two)];
  const piece = (plate: SetPlate, name: 'faceBevel' | 'rootBevel'): Contour | null => {
    const segment = plate.edge[name];
    return segment === null ? null : placeContour(plate.frame, [segment]);
  };
  return {
    preparedEdges: both((plate) => placeContour(plate.frame, plate.edge.path)),
    faceBevels: both((plate) => piece(plate, 'faceBevel')),
    rootBevels: both((plate) => piece(plate, 'rootBevel')),
    rootFaces: both(({ edge, frame }) =>
      edge.rootFace === null ? [] : placeContour(frame, [edge.rootFace]),
    ),
    unfused,
    void: grooveVoid(set),
  };
}

/** Edge of a plate between two heights, in the section, climbing. */
export function edgeBetween({ edge, frame }: SetPlate, from: number, to: number): Contour {
  return placeContour(frame, portionOf(edge, from, to));
}

/** The point of a plate's edge that touches the other plate. */
export function contactPoint(set: SetUp, contact: Contact, end: 'low' | 'high'): Point {
  return { x: 0, y: set.plates[0].frame.origin.y + contact[end][0] };
}

function contactOf(joint: ButtJoint, plates: readonly [SetPlate, SetPlate]): Contact | null {
  // an opening holds them apart
  if (joint.rootOpening > 0) return null;
  const [span1, span2] = [foremostSpan(plates[0]), foremostSpan(plates[1])];
  const low = Math.max(span1.low, span2.low);
  const high = Math.min(span1.high, span2.high);
  // the foremost stretches pass above one another, with room to draw a gap between them
  if (high < low - TOLERANCE) return high < low - LEAST_GAP ? null : refuseApart();
  const heights = (y: number): readonly [number, number] => [
    heightOfPlace(plates[0], y),
    heightOfPlace(plates[1], y),
  ];
  return { low: heights(low), high: heights(Math.max(low, high)) };
}

/** The heights in the section between which an edge stands farthest forward, on x = 0. */
function foremostSpan({ edge, frame }: SetPlate): { readonly low: number; readonly high: number } {
  let low = Infinity;
  let high = -Infinity;
  for (const corner of cornersOf(edge)) {
    const { x, y } = place(frame, corner);
    if (!near(x, 0)) continue;
    low = Math.min(low, y);
    high = Math.max(high, y);
  }
  return { low, high };
}

/** Height on the plate of the contact at x = 0, moved to the corner that it is within rounding. */
function heightOfPlace({ edge, frame }: SetPlate, y: number): number {
  const height = heightOn(frame, { x: 0, y });
  return cornersOf(edge).find((corner) => near(corner.y, height))?.y ?? height;
}

/**
 * The void between the prepared edges, closed by the straight lines between the
 * face groove edges and between the root groove edges; in two parts where the
 * edges touch on the way. Refused when the edges have slid past one another so
 * far that such a line would run through metal.
 */
function grooveVoid(set: SetUp): readonly Region[] {
  const { contact, plates } = set;
  const tops = [plates[0].edge.thickness, plates[1].edge.thickness] as const;
  const parts =
    contact === null
      ? [voidBetween(plates, [0, 0], tops)]
      : [voidBetween(plates, contact.high, tops), voidBetween(plates, [0, 0], contact.low)];
  return parts.filter((part) => part !== null);
}

function voidBetween(
  plates: SetUp['plates'],
  from: readonly [number, number],
  to: readonly [number, number],
): Region | null {
  const [one, two] = plates;
  const left = edgeBetween(one, from[0], to[0]);
  const right = edgeBetween(two, from[1], to[1]);
  const pointAt = (plate: SetPlate, contour: Contour, height: number, last: boolean): Point => {
    const piece = last ? contour[contour.length - 1] : contour[0];
    if (piece !== undefined) return last ? piece.b : piece.a;
    return place(plate.frame, { x: setbackAt(plate.edge, height), y: height });
  };
  const low = [pointAt(one, left, from[0], false), pointAt(two, right, from[1], false)] as const;
  const high = [pointAt(one, left, to[0], true), pointAt(two, right, to[1], true)] as const;
  const region = regionThrough(
    via(low[0]),
    via(low[1]),
    right,
    via(high[1]),
    via(high[0]),
    reverseContour(left),
  );
  // nothing between edges that touch all the way; edges that touch nowhere have slid apart
  if (region === null) {
    if (!nearPoint(...low) && !nearPoint(...high)) refuseApart();
    return null;
  }
  const corners = [left, right].flatMap((contour) => contour.slice(0, -1).map(({ b }) => b));
  const feet = low.filter((foot, i) => !nearPoint(foot, high[i] as Point));
  // where the edges touch there is a point, not a line, to stay clear of
  const clear =
    (nearPoint(...low) || within(low, corners).every((at) => heightOver(low, at) > TOLERANCE)) &&
    (nearPoint(...high) ||
      within(high, [...corners, ...feet]).every((at) => heightOver(high, at) < -TOLERANCE));
  return clear ? region : refuseApart();
}

function refuseApart(): never {
  return refuse('offset', null, 'joint_error_edges_apart');
}

/** The points that lie between the ends of a line from plate 1 to plate 2, neither left nor right of it. */
export function within([from, to]: readonly [Point, Point], points: readonly Point[]): Point[] {
  return points.filter(({ x }) => x >= from.x - TOLERANCE && x <= to.x + TOLERANCE);
}

/** Height of a point over the line from plate 1 to plate 2, mm. */
export function heightOver([from, to]: readonly [Point, Point], at: Point): number {
  return cross(subtract(to, from), subtract(at, from)) / distance(from, to);
}
