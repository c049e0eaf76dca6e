/** A rectangle on the drawing that may stand turned, px, y down. */
export interface LabelBox {
  readonly x: number;
  readonly y: number;
  readonly halfWidth: number;
  readonly halfHeight: number;
  /** cosine and sine of the turn, clockwise on the screen */
  readonly cos: number;
  readonly sin: number;
}

export function uprightBox(x: number, y: number, width: number, height: number): LabelBox {
  return { x, y, halfWidth: width / 2, halfHeight: height / 2, cos: 1, sin: 0 };
}

/** A straight line on the drawing, px. */
export interface Line {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** Half of the box's extent along the unit direction (dx, dy). */
export function reach(box: LabelBox, dx: number, dy: number): number {
  return (
    box.halfWidth * Math.abs(dx * box.cos + dy * box.sin) +
    box.halfHeight * Math.abs(dy * box.cos - dx * box.sin)
  );
}

/** Whether the line meets the box grown by `clear` px on every side. */
export function lineMeetsBox(box: LabelBox, line: Line, clear: number): boolean {
  const { x1, y1, x2, y2 } = line;
  const halfWidth = box.halfWidth + clear;
  const halfHeight = box.halfHeight + clear;
  const round = halfWidth + halfHeight;
  if (x1 < box.x - round && x2 < box.x - round) return false;
  if (x1 > box.x + round && x2 > box.x + round) return false;
  if (y1 < box.y - round && y2 < box.y - round) return false;
  if (y1 > box.y + round && y2 > box.y + round) return false;
  const ax = (x1 - box.x) * box.cos + (y1 - box.y) * box.sin;
  const ay = (y1 - box.y) * box.cos - (x1 - box.x) * box.sin;
  const bx = (x2 - box.x) * box.cos + (y2 - box.y) * box.sin;
  const by = (y2 - box.y) * box.cos - (x2 - box.x) * box.sin;
  // What is left of the line, as shares of its length, after each pair of sides.
  const start = overlapOfRange(ax, bx - ax, halfWidth);
  if (start === null) return false;
  const rest = overlapOfRange(ay, by - ay, halfHeight);
  if (rest === null) return false;
  return Math.max(start.from, rest.from) <= Math.min(start.to, rest.to);
}

function overlapOfRange(
  at: number,
  step: number,
  half: number,
): { readonly from: number; readonly to: number } | null {
  // A line that runs along this pair of sides is either wholly between them or wholly outside.
  if (Math.abs(step) < 1e-12) return Math.abs(at) <= half ? EVERYTHING : null;
  const first = (-half - at) / step;
  const second = (half - at) / step;
  const from = Math.max(0, Math.min(first, second));
  const to = Math.min(1, Math.max(first, second));
  return from <= to ? { from, to } : null;
}

const EVERYTHING = { from: 0, to: 1 } as const;

/** Whether two boxes overlap when `apart` px must stay free between them. */
export function boxesMeet(p: LabelBox, q: LabelBox, apart: number): boolean {
  const dx = q.x - p.x;
  const dy = q.y - p.y;
  return (
    meetAlong(p, q, dx, dy, p.cos, p.sin, apart) &&
    meetAlong(p, q, dx, dy, -p.sin, p.cos, apart) &&
    meetAlong(p, q, dx, dy, q.cos, q.sin, apart) &&
    meetAlong(p, q, dx, dy, -q.sin, q.cos, apart)
  );
}

/** Two convex figures are apart if some side's direction parts them. */
function meetAlong(
  p: LabelBox,
  q: LabelBox,
  dx: number,
  dy: number,
  ux: number,
  uy: number,
  apart: number,
): boolean {
  return Math.abs(dx * ux + dy * uy) < reach(p, ux, uy) + reach(q, ux, uy) + apart;
}
