import type { Point } from '../../../src/geometry/index.ts';
import type { LabelBox } from '../../../src/view/scene/label-box.ts';

/** The four corners of a label's box, in order; worked here without the drawing's own tests of overlap. */
export function cornersOf({ x, y, halfWidth, halfHeight, cos, sin }: LabelBox): readonly Point[] {
  return [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([u = 0, v = 0]) => ({
    x: x + u * halfWidth * cos - v * halfHeight * sin,
    y: y + u * halfWidth * sin + v * halfHeight * cos,
  }));
}

/** Whether a point lies inside a convex polygon, to the same side of every edge. */
export function holds(corners: readonly Point[], { x, y }: Point): boolean {
  const sides = corners.map((p, index) => {
    const q = corners[(index + 1) % corners.length] as Point;
    return (q.x - p.x) * (y - p.y) - (q.y - p.y) * (x - p.x);
  });
  return sides.every((side) => side > 0) || sides.every((side) => side < 0);
}

/** Whether two convex polygons share a point: a corner of one in the other, or two edges that cross. */
export function polygonsMeet(p: readonly Point[], q: readonly Point[]): boolean {
  return (
    p.some((corner) => holds(q, corner)) ||
    q.some((corner) => holds(p, corner)) ||
    edges(p).some(([a, b]) => edges(q).some(([c, d]) => cross(a, b, c, d)))
  );
}

function edges(polygon: readonly Point[]): readonly (readonly [Point, Point])[] {
  return polygon.map((p, index) => [p, polygon[(index + 1) % polygon.length] as Point]);
}

function cross(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point): number =>
    (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}
