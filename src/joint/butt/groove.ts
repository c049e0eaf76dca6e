import {
  cross,
  distance,
  nearPoint,
  reverseContour,
  subtract,
  TOLERANCE,
} from '../../geometry/index.ts';
import type { Contour, Point, Region, Segment } from '../../geometry/index.ts';
import type { Groove } from '../section.ts';
import { setbackAt } from './edge-preparation.ts';
import { regionThrough, via } from './outline.ts';
import { both, type Pair } from './pair.ts';
import { place, placeContour } from './plate-frame.ts';
import { edgeBetween, LEAST_GAP, refuseApart, type SetUp } from './set-up.ts';

/** The edges' pieces by name, and the void between them at fit-up. */
export function grooveOf(set: SetUp, unfused: Pair<Contour>): Groove {
  const piecesOf = (name: 'faceBevel' | 'rootFace' | 'rootBevel'): Pair<Contour | null> =>
    both((i) => {
      const { edge, frame } = set.plates[i];
      const piece = edge[name];
      return piece === null ? null : placeContour(frame, [piece]);
    });
  const [rootFace1, rootFace2] = piecesOf('rootFace');
  return {
    preparedEdges: both((i) => placeContour(set.plates[i].frame, set.plates[i].edge.path)),
    faceBevels: piecesOf('faceBevel'),
    rootBevels: piecesOf('rootBevel'),
    rootFaces: [rootFace1 ?? [], rootFace2 ?? []],
    unfused,
    void: grooveVoid(set),
  };
}

/**
 * The void between the prepared edges, closed by the straight lines between the
 * face groove edges and between the root groove edges; in two parts where the
 * edges touch on the way. Refused when the edges have slid past one another so
 * far that such a line would run through metal.
 */
function grooveVoid(set: SetUp): readonly Region[] {
  const { contact } = set;
  const tops = both((i) => set.plates[i].edge.thickness);
  const parts =
    contact === null
      ? [voidBetween(set, [0, 0], tops)]
      : [voidBetween(set, contact.high, tops), voidBetween(set, [0, 0], contact.low)];
  return parts.filter((part) => part !== null);
}

function voidBetween({ plates }: SetUp, from: Pair<number>, to: Pair<number>): Region | null {
  const edges = both((i) => edgeBetween(plates[i], from[i], to[i]));
  const endsAt = (heights: Pair<number>): Pair<Point> =>
    both((i) => {
      const { edge, frame } = plates[i];
      return place(frame, { x: setbackAt(edge, heights[i]), y: heights[i] });
    });
  const [low, high] = [endsAt(from), endsAt(to)];
  const region = regionThrough(
    via(low[0]),
    via(low[1]),
    edges[1],
    via(high[1]),
    via(high[0]),
    reverseContour(edges[0]),
  );
  // nothing between edges that touch all the way; edges that touch nowhere have slid apart
  if (region === null) return nearPoint(...low) || nearPoint(...high) ? null : refuseApart();
  const corners: Point[] = [];
  for (const edge of edges)
    for (let i = 1; i < edge.length; i++) corners.push((edge[i] as Segment).a);
  const feet = low.filter((foot, i) => !nearPoint(foot, high[i as 0 | 1]));
  const heads = high.filter((head, i) => !nearPoint(head, low[i as 0 | 1]));
  // where the edges touch there is a point, not a line, to stay clear of
  const overLow = nearPoint(...low) ? [] : within(low, [...corners, ...heads]);
  const underHigh = nearPoint(...high) ? [] : within(high, [...corners, ...feet]);
  const clear =
    overLow.every((at) => heightOver(low, at) > TOLERANCE) &&
    underHigh.every((at) => heightOver(high, at) < -TOLERANCE);
  return clear ? region : refuseApart();
}

/** The points that lie between the ends of a line from plate 1 to plate 2, neither left nor right of it. */
export function within([from, to]: Pair<Point>, points: readonly Point[]): Point[] {
  return points.filter(({ x }) => x >= from.x - LEAST_GAP && x <= to.x + LEAST_GAP);
}

/** Height of a point over the line from plate 1 to plate 2, mm. */
export function heightOver([from, to]: Pair<Point>, at: Point): number {
  return cross(subtract(to, from), subtract(at, from)) / distance(from, to);
}
