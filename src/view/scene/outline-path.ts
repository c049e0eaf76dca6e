import type { Contour, Point, Segment } from '../../geometry/index.ts';
import { written } from './written.ts';
import { type View, xToPx, yToPx } from './view-transform.ts';

/** An arc that leaves its chord by less than this is drawn straight, px. */
const FLAT = 0.02;
/** How far a flattened arc may stand off the true one when labels are kept clear of it, px. */
const FLATTENING = 0.4;
/** Ends closer than this belong to one stroke, mm. */
const JOINED = 1e-6;

/** The path data of pieces in walking order; a gap between two pieces lifts the pen. */
export function pathOf(view: View, contour: Contour, closed = false): string {
  let d = '';
  let end: Point | null = null;
  for (const piece of contour) {
    if (end === null || !samePoint(end, piece.a)) d += moveTo(view, piece.a);
    d += drawPiece(view, piece);
    end = piece.b;
  }
  return closed && d !== '' ? `${d}Z` : d;
}

export function moveTo(view: View, point: Point): string {
  return `M${written(xToPx(view, point.x))} ${written(yToPx(view, point.y))}`;
}

export function lineTo(view: View, point: Point): string {
  return `L${written(xToPx(view, point.x))} ${written(yToPx(view, point.y))}`;
}

/** One piece from where the pen stands. */
export function drawPiece(view: View, { a, b, bulge }: Segment): string {
  const chord = Math.hypot(b.x - a.x, b.y - a.y) * view.scale;
  if (Math.abs(bulge) * chord < 2 * FLAT) return lineTo(view, b);
  const radius = written((chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge)));
  const large = Math.abs(bulge) > 1 ? 1 : 0;
  // Counter-clockwise stays counter-clockwise to the eye when y is flipped; SVG calls that sweep 0.
  const sweep = bulge > 0 ? 0 : 1;
  return `A${radius} ${radius} 0 ${large} ${sweep} ${written(xToPx(view, b.x))} ${written(yToPx(view, b.y))}`;
}

export function samePoint(p: Point, q: Point): boolean {
  return Math.abs(p.x - q.x) < JOINED && Math.abs(p.y - q.y) < JOINED;
}

/** Appends the contour to `lines` as straight px lines, each within 0.4 px of it. */
export function flattenInto(lines: number[], view: View, contour: Contour): void {
  for (const piece of contour) flattenPiece(lines, view, piece);
}

export function flattenPiece(lines: number[], view: View, { a, b, bulge }: Segment): void {
  halve(lines, xToPx(view, a.x), yToPx(view, a.y), xToPx(view, b.x), yToPx(view, b.y), bulge);
}

function halve(
  lines: number[],
  ax: number,
  ay: number,
  bx: number,
  by: number,
  bulge: number,
): void {
  // twice the sagitta is bulge times chord, compared as squares: asked some hundred times a drawing
  const chordSquared = (bx - ax) ** 2 + (by - ay) ** 2;
  if (bulge * bulge * chordSquared < 4 * FLATTENING * FLATTENING) {
    lines.push(ax, ay, bx, by);
    return;
  }
  // A positive bulge lies to the right of the way; on the screen (y down) that is (-dy, dx) turned.
  const mx = (ax + bx) / 2 - ((by - ay) * bulge) / 2;
  const my = (ay + by) / 2 + ((bx - ax) * bulge) / 2;
  const half = bulge / (1 + Math.sqrt(1 + bulge * bulge));
  halve(lines, ax, ay, mx, my, half);
  halve(lines, mx, my, bx, by, half);
}
