import type { Contour, Point, Segment, Vector } from '../../geometry/index.ts';
import { deg, toRad } from '../../units/index.ts';
import type { ButtJoint } from '../joint.ts';
import type { SurfaceLine } from '../section.ts';
import type { PreparedEdge } from './edge-preparation.ts';

/**
 * Where a plate lies: its own frame (x setback from the nose, y height above
 * its root surface) set into the section. Plate 1 is seen in a mirror.
 */
export interface PlateFrame {
  /** the point at setback 0, height 0 */
  readonly origin: Point;
  /** unit, along the plate away from the weld */
  readonly along: Vector;
  /** unit, square to the plate towards the face side */
  readonly normal: Vector;
  readonly mirrored: boolean;
}

/**
 * The frames of both plates. Plate 1's root surface lies on y = 0. Plate 2 is
 * turned by the angular misalignment about its mid-plane point at setback 0,
 * which stands `offset` above plate 1's mid-plane; both are then moved along x
 * until the foremost points of the two edges are the root opening apart, x = 0
 * midway. So the root opening is the least gap along plate 1's surface.
 */
export function placePlates(
  joint: ButtJoint,
  edges: readonly [PreparedEdge, PreparedEdge],
): readonly [PlateFrame, PlateFrame] {
  const half = joint.rootOpening / 2;
  const turn = toRad(deg(joint.angularMisalignment));
  const along = { x: Math.cos(turn), y: Math.sin(turn) };
  const normal = { x: -along.y, y: along.x };
  // every edge is hollow or straight between its corners, so a corner is foremost
  let foremost = Infinity;
  for (const corner of cornersOf(edges[1])) {
    foremost = Math.min(foremost, corner.x * along.x + corner.y * normal.x);
  }
  return [
    { origin: { x: -half, y: 0 }, along: { x: -1, y: 0 }, normal: { x: 0, y: 1 }, mirrored: true },
    {
      origin: {
        x: half - foremost,
        y: joint.t1 / 2 + joint.offset - (normal.y * joint.t2) / 2,
      },
      along,
      normal,
      mirrored: false,
    },
  ];
}

/** The corners of a prepared edge, from root to face, in the plate's own frame. */
export function cornersOf(edge: PreparedEdge): readonly Point[] {
  const first = edge.path[0] as Segment;
  return [first.a, ...edge.path.map((piece) => piece.b)];
}

/** A point of the plate's own frame in the section. */
export function place(frame: PlateFrame, { x, y }: Point): Point {
  const { origin, along, normal } = frame;
  return {
    x: origin.x + x * along.x + y * normal.x,
    y: origin.y + x * along.y + y * normal.y,
  };
}

/** A contour of the plate's own frame in the section; a mirrored frame turns its arcs the other way. */
export function placeContour(frame: PlateFrame, contour: Contour): Contour {
  const sense = frame.mirrored ? -1 : 1;
  const placed: Segment[] = [];
  let a: Point | null = null;
  for (const piece of contour) {
    a ??= place(frame, piece.a);
    const b = place(frame, piece.b);
    placed.push({ a, b, bulge: piece.bulge === 0 ? 0 : sense * piece.bulge });
    a = b;
  }
  return placed;
}

/** Height of a point of the section above the plate's root surface line, mm. */
export function heightOn(frame: PlateFrame, { x, y }: Point): number {
  return (x - frame.origin.x) * frame.normal.x + (y - frame.origin.y) * frame.normal.y;
}

/** The as-supplied surface of a plate on the face or root side, from its groove edge outward. */
export function surfaceOf(
  frame: PlateFrame,
  edge: PreparedEdge,
  side: 'face' | 'root',
): SurfaceLine {
  const first = edge.path[0] as Segment;
  const last = edge.path[edge.path.length - 1] as Segment;
  const { along, normal } = frame;
  return side === 'face'
    ? { origin: place(frame, last.b), along, normal }
    : { origin: place(frame, first.a), along, normal: { x: -normal.x, y: -normal.y } };
}
