import type { Contour, Segment } from './shape.ts';
import { carrierOf } from './carrier.ts';
import { crownTowards } from './extreme.ts';
import { isLine, pointAt } from './segment.ts';

/** The upright rectangle that just holds a shape, mm. */
export interface Bounds {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

const COMPASS = [
  { x: 1, y: 0 },
  { x: 0, y: 1 },
  { x: -1, y: 0 },
  { x: 0, y: -1 },
] as const;

/** The exact bounds of a piece, the crowns of an arc included. */
export function segmentBounds(segment: Segment): Bounds {
  const { a, b } = segment;
  let left = Math.min(a.x, b.x);
  let right = Math.max(a.x, b.x);
  let bottom = Math.min(a.y, b.y);
  let top = Math.max(a.y, b.y);
  if (!isLine(segment)) {
    const { tangent } = carrierOf(segment);
    for (const direction of COMPASS) {
      const t = crownTowards(segment, direction, tangent);
      if (t === null) continue;
      const { x, y } = pointAt(segment, t);
      left = Math.min(left, x);
      right = Math.max(right, x);
      bottom = Math.min(bottom, y);
      top = Math.max(top, y);
    }
  }
  return { left, bottom, right, top };
}

/** The exact bounds of a contour. Refused for an empty one. */
export function contourBounds(contour: Contour): Bounds {
  const [first, ...rest] = contour;
  if (first === undefined) throw new Error('An empty contour has no bounds.');
  let all = segmentBounds(first);
  for (const segment of rest) {
    const one = segmentBounds(segment);
    all = {
      left: Math.min(all.left, one.left),
      bottom: Math.min(all.bottom, one.bottom),
      right: Math.max(all.right, one.right),
      top: Math.max(all.top, one.top),
    };
  }
  return all;
}

/** Least distance between two rectangles, mm; 0 when they touch or overlap. */
export function boundsGap(a: Bounds, b: Bounds): number {
  const dx = Math.max(0, a.left - b.right, b.left - a.right);
  const dy = Math.max(0, a.bottom - b.top, b.bottom - a.top);
  return Math.sqrt(dx * dx + dy * dy);
}
