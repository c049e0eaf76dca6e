import { near, TOLERANCE } from '../../geometry/index.ts';
import type { Contour } from '../../geometry/index.ts';
import type { ButtJoint, PlateNumber } from '../joint.ts';
import { refuse } from '../refuse.ts';
import type { SurfaceLine } from '../section.ts';
import { isTwoSided } from '../prepared-sides.ts';
import { portionOf, prepareEdge, type PreparedEdge } from './edge-preparation.ts';
import { both, type Pair } from './pair.ts';
import { cornersOf, heightOn, place, placeContour, placePlates, surfaceOf } from './plate-frame.ts';
import type { PlateFrame } from './plate-frame.ts';

/** Edges that miss one another by less leave a gap too small to draw, mm. */
export const LEAST_GAP = 1e-6;

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
  readonly low: Pair<number>;
  readonly high: Pair<number>;
}

/** Both plates set for welding. */
export interface SetUp {
  readonly plates: Pair<SetPlate>;
  readonly contact: Contact | null;
  readonly twoSided: boolean;
}

/** The plates as the fit-up fields of the joint say. */
export function setUp(joint: ButtJoint): SetUp {
  const edges = both((i) => prepareEdge(joint, i === 0 ? 1 : 2));
  const frames = placePlates(joint, edges);
  const plates = both((i): SetPlate => ({
    number: i === 0 ? 1 : 2,
    edge: edges[i],
    frame: frames[i],
    face: surfaceOf(frames[i], edges[i], 'face'),
    root: surfaceOf(frames[i], edges[i], 'root'),
  }));
  return { plates, contact: contactOf(joint, plates), twoSided: isTwoSided(joint) };
}

/** Edge of a plate between two heights, in the section, climbing. */
export function edgeBetween({ edge, frame }: SetPlate, from: number, to: number): Contour {
  return placeContour(frame, portionOf(edge, from, to));
}

function contactOf(joint: ButtJoint, plates: Pair<SetPlate>): Contact | null {
  // an opening holds them apart
  if (joint.rootOpening > 0) return null;
  const [span1, span2] = both((i) => foremostSpan(plates[i]));
  const low = Math.max(span1.low, span2.low);
  const high = Math.min(span1.high, span2.high);
  // the foremost stretches pass above one another, with room to draw a gap between them
  if (high < low - TOLERANCE) return high < low - LEAST_GAP ? null : refuseApart();
  const heights = (y: number): Pair<number> => both((i) => heightOfPlace(plates[i], y));
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

/** Edges that no longer face each other make no groove. */
export function refuseApart(): never {
  return refuse('offset', null, 'joint_error_edges_apart');
}
