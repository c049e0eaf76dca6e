import {
  add,
  crownTowards,
  dot,
  pointAt,
  reverseContour,
  scale,
  subtract,
  tangentAt,
  TOLERANCE,
} from '../geometry/index.ts';
import type { Contour, Point } from '../geometry/index.ts';
import type { Side, SurfaceLine } from './section.ts';
import type { SurfaceWalk } from './surface-walk.ts';

/** What a side is put together from. */
export interface SideParts {
  readonly surfaces: readonly [SurfaceLine, SurfaceLine];
  readonly grooveEdges: readonly [Point, Point] | null;
  /** from fused toe 1 to fused toe 2; null when there is no weld on this side */
  readonly bead: Contour | null;
  readonly walks: readonly [
    Pick<SurfaceWalk, 'beyond' | 'undercut'>,
    Pick<SurfaceWalk, 'beyond' | 'undercut'>,
  ];
  /** closes the outline where there is no bead: across a gap, say; empty when the walks meet */
  readonly between: Contour;
}

/** One side of a joint, its toes and lips read off the bead. */
export function assembleSide({ surfaces, grooveEdges, bead, walks, between }: SideParts): Side {
  const [walk1, walk2] = walks;
  const ends = bead === null ? null : endsOf(bead);
  return {
    outline: [...reverseContour(walk1.beyond), ...(bead ?? between), ...walk2.beyond],
    surfaces,
    grooveEdges,
    bead,
    toes: ends,
    lips:
      bead === null || ends === null
        ? null
        : [
            lipPoint(bead, ends[0], surfaces[0]),
            lipPoint(reverseContour(bead), ends[1], surfaces[1]),
          ],
    beyond: [walk1.beyond, walk2.beyond],
    undercuts: [walk1.undercut, walk2.undercut],
  };
}

function endsOf(bead: Contour): readonly [Point, Point] {
  const first = bead[0];
  const last = bead[bead.length - 1];
  if (!first || !last) throw new Error('A bead has at least one piece.');
  return [first.a, last.b];
}

/**
 * The lip: the point on the surface line level with the outermost weld metal,
 * followed along `bead` from `toe` (where it begins) until the outline first
 * turns back. The toe itself when the metal never stands out past it, or when
 * the face runs on to its other end without turning back. Toeline's own reading of
 * a word the trade uses loosely.
 */
export function lipPoint(bead: Contour, toe: Point, surface: SurfaceLine): Point {
  const out = turnsBackAt(bead, toe, surface);
  return out === null || out <= TOLERANCE ? toe : add(toe, scale(surface.along, out));
}

/** How far out past `toe` the outline first turns back, mm; null when it never does. */
function turnsBackAt(bead: Contour, toe: Point, { along }: SurfaceLine): number | null {
  const outBy = (p: Point): number => dot(subtract(p, toe), along);
  for (const piece of bead) {
    // sets off inwards: the end of the piece before was outermost
    if (dot(tangentAt(piece, 0), along) <= 0) return outBy(piece.a);
    const crown = crownTowards(piece, along);
    if (crown !== null && crown < 1) return outBy(pointAt(piece, crown));
  }
  return null;
}
