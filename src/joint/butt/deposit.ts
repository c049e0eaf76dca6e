import {
  chordOf,
  contourArea,
  contourPiece,
  intersectContours,
  nearPoint,
  pointAtLocation,
  reverseContour,
  TOLERANCE,
} from '../../geometry/index.ts';
import type { Contour, Location, Region } from '../../geometry/index.ts';
import { refuse } from '../refuse.ts';
import { regionThrough, via } from './outline.ts';
import { both, type Pair } from './pair.ts';

/**
 * The surface of one plate as prepared, from the weld's lower end to its upper:
 * root surface out to the groove edge, edge, face surface. Places along it are
 * piece number plus share of the piece.
 */
export interface Wall {
  readonly contour: Contour;
  /** where the edges begin and cease to touch; both beyond the wall's ends when they don't */
  readonly low: number;
  readonly high: number;
}

/** The upper or lower bound of a weld, from plate 1 to plate 2. */
export interface Bound {
  readonly contour: Contour;
  /** an exposed bead, which may have eaten into a plate, or a straight closure */
  readonly isBead: boolean;
  /** the joint's field that shapes it */
  readonly field: 'capHeight' | 'rootHeight' | 'incompletePenetration';
}

/** Where a bead meets a wall, as places along each. */
interface Meeting {
  readonly bead: number;
  readonly wall: number;
}

/** Meetings of a bead with each plate's wall other than its toe, from the toe inward. */
export type BeadMeetings = Pair<readonly Meeting[]>;

/** The places where a bead, having left its toes, meets the plates as prepared again. */
export function meetings(bead: Bound, walls: Pair<Wall>): BeadMeetings {
  const { contour } = bead;
  return both((i) => {
    const toe = i === 0 ? contour[0]?.a : contour[contour.length - 1]?.b;
    const wall = walls[i].contour;
    const found: Meeting[] = [];
    for (const { point, a, b } of intersectContours(contour, wall)) {
      if (toe === undefined || nearPoint(point, toe)) continue;
      found.push({ bead: placeOn(contour, a), wall: placeOn(wall, b) });
    }
    return i === 0 ? found : found.reverse();
  });
}

/**
 * Weld metal outside the plates as prepared, between a lower and an upper
 * bound: what `weldArea` counts. Where the edges touch it comes in two parts,
 * and crests beside a hollow that has eaten into a plate are parts of their own.
 */
export function depositsOf(
  walls: Pair<Wall>,
  bottom: Bound,
  top: Bound,
  bottomMeetings: BeadMeetings | null,
  topMeetings: BeadMeetings | null,
): readonly Region[] {
  const lower = clip(bottom, walls, bottomMeetings, 'bottom');
  const upper = clip(top, walls, topMeetings, 'top');
  const regions = [...lower.crests, ...upper.crests];
  const [wall1, wall2] = walls;
  const add = (region: Region | null): void => {
    if (region !== null) regions.push(region);
  };
  const touching = walls.every(
    (wall, i) =>
      lower.ends[i as 0 | 1] < wall.high + TOLERANCE &&
      upper.ends[i as 0 | 1] > wall.low - TOLERANCE,
  );
  if (!touching) {
    add(
      regionThrough(
        lower.contour,
        stretch(wall2, lower.ends[1], upper.ends[1]),
        reverseContour(upper.contour),
        reverseContour(stretch(wall1, lower.ends[0], upper.ends[0])),
      ),
    );
    return regions;
  }
  if (walls.every((wall, i) => lower.ends[i as 0 | 1] <= wall.low)) {
    add(
      regionThrough(
        lower.contour,
        stretch(wall2, lower.ends[1], wall2.low),
        reverseContour(stretch(wall1, lower.ends[0], wall1.low)),
      ),
    );
  }
  if (walls.every((wall, i) => upper.ends[i as 0 | 1] >= wall.high)) {
    add(
      regionThrough(
        stretch(wall2, wall2.high, upper.ends[1]),
        reverseContour(upper.contour),
        reverseContour(stretch(wall1, wall1.high, upper.ends[0])),
      ),
    );
  }
  return regions;
}

interface Clipped {
  /** the part of the bound that lies outside both plates */
  readonly contour: Contour;
  /** where it ends on each wall */
  readonly ends: Pair<number>;
  /** metal between a toe and the place where the bead has eaten into the plate */
  readonly crests: readonly Region[];
}

function clip(
  bound: Bound,
  walls: Pair<Wall>,
  found: BeadMeetings | null,
  level: 'bottom' | 'top',
): Clipped {
  const { contour } = bound;
  const toes: Pair<Meeting> =
    level === 'bottom'
      ? [
          { bead: 0, wall: 0 },
          { bead: contour.length, wall: 0 },
        ]
      : [
          { bead: 0, wall: walls[0].contour.length },
          { bead: contour.length, wall: walls[1].contour.length },
        ];
  const way = both((i) => [toes[i], ...(found?.[i] ?? [])]);
  if (!keepsOrder(way, level)) refuse(bound.field, null, 'joint_error_bead_through_edge');
  const crests: Region[] = [];
  const inner = both((i) =>
    way[i].reduce((outer, meeting) => {
      const [a, b] = i === 0 ? [outer, meeting] : [meeting, outer];
      const crest = regionThrough(
        cut(contour, a.bead, b.bead),
        a.wall < b.wall
          ? reverseContour(stretch(walls[i], a.wall, b.wall))
          : stretch(walls[i], b.wall, a.wall),
      );
      // a bead over its plate walks back along the wall clockwise on the face, counter-clockwise on the root
      if (crest !== null && contourArea(crest) > 0 === (level === 'bottom')) {
        crests.push(level === 'bottom' ? crest : reverseContour(crest));
      }
      return meeting;
    }),
  );
  return {
    contour: found === null ? contour : cut(contour, inner[0].bead, inner[1].bead),
    ends: [inner[0].wall, inner[1].wall],
    crests,
  };
}

/** Whether a bead meets the walls one after another, inward from toe 1 and then outward to toe 2. */
function keepsOrder([way1, way2]: Pair<readonly Meeting[]>, level: 'bottom' | 'top'): boolean {
  const inward = level === 'bottom' ? 1 : -1;
  const along = [...way1, ...[...way2].reverse()];
  const goesInward = (way: readonly Meeting[]): boolean =>
    way.every(
      (meeting, i) => i === 0 || (meeting.wall - (way[i - 1] as Meeting).wall) * inward > 0,
    );
  return (
    goesInward(way1) &&
    goesInward(way2) &&
    along.every((meeting, i) => i === 0 || meeting.bead >= (along[i - 1] as Meeting).bead)
  );
}

/** The stretch of a wall between two places; its one point when they meet. */
function stretch({ contour }: Wall, from: number, to: number): Contour {
  const part = cut(contour, from, to);
  return part.length > 0 ? part : via(pointAtLocation(contour, locationOf(contour, from)));
}

function cut(contour: Contour, from: number, to: number): Contour {
  // a whole closure, or nothing at all
  if (from === 0 && to === contour.length) return contour;
  if (to <= from) return [];
  return contourPiece(contour, locationOf(contour, from), locationOf(contour, to));
}

function locationOf(contour: Contour, place: number): Location {
  const index = Math.min(Math.floor(place), contour.length - 1);
  return { index, t: place - index };
}

/** Piece number plus share; within the tolerance of a piece's end, that end. */
function placeOn(contour: Contour, { index, t }: Location): number {
  const piece = contour[index];
  const size = piece === undefined ? 0 : chordOf(piece);
  if (t * size <= TOLERANCE) return index;
  if ((1 - t) * size <= TOLERANCE) return index + 1;
  return index + t;
}
