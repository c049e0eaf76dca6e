import type { Point, Region } from './shape.ts';
import { carrierOf, leftOf } from './carrier.ts';
import { nearestOnSegment } from './nearest.ts';
import { TOLERANCE } from './tolerance.ts';

/** Where a point lies with regard to a region. */
export type Whereabouts = 'inside' | 'edge' | 'outside';

/**
 * Whether a point lies inside a closed contour, on its edge (within the
 * tolerance) or outside, by the number of times the contour winds round it;
 * the sense of walking does not matter. Nothing is inside an empty contour.
 */
export function pointInRegion(at: Point, region: Region): Whereabouts {
  let turned = 0;
  for (const segment of region) {
    if (nearestOnSegment(at, segment).distance <= TOLERANCE) return 'edge';
    const ax = segment.a.x - at.x;
    const ay = segment.a.y - at.y;
    const bx = segment.b.x - at.x;
    const by = segment.b.y - at.y;
    const side = ax * by - ay * bx;
    turned += Math.atan2(side === 0 ? 0 : side, ax * bx + ay * by);
    // The chord stands in for the arc; a point between the two is on the other
    // side of the arc, a whole turn more or less. The same `side` decides both,
    // so a point on the chord can't fall between them.
    const left = side >= 0;
    if (segment.bulge > 0 && !left && leftOf(carrierOf(segment), at) > 0) turned += 2 * Math.PI;
    if (segment.bulge < 0 && left && leftOf(carrierOf(segment), at) < 0) turned -= 2 * Math.PI;
  }
  return Math.abs(turned) > Math.PI ? 'inside' : 'outside';
}
