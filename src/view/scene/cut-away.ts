import type { Point, Region, Segment, Vector } from '../../geometry/index.ts';
import { arc, isLine, line, pointAt, splitSegment } from '../../geometry/index.ts';

/** A straight cut through the view: what lies on the side that `away` points to is left out. */
export interface Cut {
  readonly at: Point;
  readonly away: Vector;
}

/** A piece of what is left: metal's own edge, or where the view breaks off. */
export interface ViewEdge {
  readonly piece: Segment;
  readonly broken: boolean;
}

/** How near to a cut an end counts as on it, mm. */
const ON_CUT = 1e-9;
const HALVINGS = 48;

/**
 * What a partial view shows of a region: its own edges on this side of every
 * cut, in walking order, joined by straight broken edges along the cuts. Meant
 * for cuts that cross a plate once, from side to side.
 */
export function cutAway(region: Region, cuts: readonly Cut[]): readonly ViewEdge[] {
  let edges: readonly ViewEdge[] = region.map((piece) => ({ piece, broken: false }));
  for (const cut of cuts) edges = cutOnce(edges, cut);
  return edges;
}

function cutOnce(edges: readonly ViewEdge[], cut: Cut): readonly ViewEdge[] {
  // most cuts of a frame miss a plate
  if (edges.every(({ piece }) => isInside(piece, cut))) return edges;
  const kept: ViewEdge[] = [];
  for (const edge of edges) {
    const piece = insideOf(edge.piece, cut);
    if (piece === edge.piece) kept.push(edge);
    else if (piece !== null) kept.push({ piece, broken: edge.broken });
  }
  return closeAlongCut(kept);
}

const isInside = ({ a, b }: Segment, cut: Cut): boolean =>
  beyond(cut, a) <= ON_CUT && beyond(cut, b) <= ON_CUT;

/** What of a piece is on this side of the cut; null where nothing is. */
export function insideOf(piece: Segment, cut: Cut): Segment | null {
  if (isInside(piece, cut)) return piece;
  const start = beyond(cut, piece.a);
  const end = beyond(cut, piece.b);
  if (start >= -ON_CUT && end >= -ON_CUT) return null;
  const share = crossing(piece, cut, start);
  const [first, second] = isLine(piece) ? splitLine(piece, share) : splitSegment(piece, share);
  return start < 0 ? first : second;
}

function beyond({ at, away }: Cut, point: Point): number {
  return (point.x - at.x) * away.x + (point.y - at.y) * away.y;
}

/** Where a piece whose ends lie on either side crosses the cut; a line exactly, an arc by halving. */
function crossing(piece: Segment, cut: Cut, start: number): number {
  if (isLine(piece)) return start / (start - beyond(cut, piece.b));
  let low = 0;
  let high = 1;
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    const same = beyond(cut, pointAt(piece, middle)) < 0 === start < 0;
    if (same) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function splitLine({ a, b }: Segment, share: number): [Segment, Segment] {
  const middle = { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
  return [arc(a, middle, 0), arc(middle, b, 0)];
}

/** Joins each end that has lost its neighbour to the next start by a broken edge. */
function closeAlongCut(edges: readonly ViewEdge[]): readonly ViewEdge[] {
  const closed: ViewEdge[] = [];
  edges.forEach((edge, index) => {
    closed.push(edge);
    const next = edges[(index + 1) % edges.length];
    if (next === undefined) return;
    const end = edge.piece.b;
    const start = next.piece.a;
    if (Math.hypot(end.x - start.x, end.y - start.y) > ON_CUT) {
      closed.push({ piece: line(end, start), broken: true });
    }
  });
  return closed;
}
