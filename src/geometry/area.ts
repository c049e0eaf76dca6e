import type { Contour, Point, Segment } from './shape.ts';

/** Below this bulge the closed form loses more digits than the series drops. */
const SERIES_BELOW = 0.1;

/**
 * Area between a piece and its chord, mm², positive when the arc lies to the
 * right of the way from `a` to `b` (what it adds to a region on its left).
 * With θ the sweep and R the radius it is R²(θ - sin θ)/2; written in the bulge
 * k and chord c it is c²((1 + k²)² atan k - k(1 - k²)) / (8k²), and for a flat
 * arc the series c²(k/3 + k³/15 - k⁵/105 + …), whose n-th term is
 * (-1)ⁿ k²ⁿ⁻¹ / ((2n+1)(2n-1)(2n-3)). Derived.
 */
export function capArea(segment: Segment): number {
  const { a, b, bulge: k } = segment;
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const square = dx * dx + dy * dy;
  const kk = k * k;
  if (Math.abs(k) < SERIES_BELOW) {
    const tail = kk * (1 / 315 - kk * (1 / 693 - kk * (1 / 1287 - kk / 2145)));
    return square * k * (1 / 3 + kk * (1 / 15 - kk * (1 / 105 - tail)));
  }
  return (square * ((1 + kk) ** 2 * Math.atan(k) - k * (1 - kk))) / (8 * kk);
}

/**
 * Area swept by the straight line from `pole` to a point that walks the piece,
 * mm², positive when it turns counter-clockwise (half of x dy - y dx about the
 * pole, Green's theorem). Summed round a closed contour it is the area inside.
 */
export function segmentArea(segment: Segment, pole: Point = { x: 0, y: 0 }): number {
  const { a, b } = segment;
  const chord = (a.x - pole.x) * (b.y - pole.y) - (a.y - pole.y) * (b.x - pole.x);
  return chord / 2 + capArea(segment);
}

/**
 * Area inside a contour, mm², positive when it is walked counter-clockwise. An
 * open contour is closed by the straight line from its end to its start; an
 * empty one has no area.
 */
export function contourArea(contour: Contour): number {
  const pole = contour[0]?.a;
  // nothing encloses nothing
  if (pole === undefined) return 0;
  let sum = 0;
  for (const segment of contour) sum += segmentArea(segment, pole);
  return sum;
}
