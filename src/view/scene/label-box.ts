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
