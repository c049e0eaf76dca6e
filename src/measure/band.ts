import type { Contour, Point, Vector } from '../geometry/index.ts';
import {
  atLeast,
  atMost,
  crownTowards,
  dot,
  intersectLine,
  pointAt,
  subtract,
} from '../geometry/index.ts';

/** A strip of the section between two parallel lines square to `along`, at `from` and `to` mm from `origin`. */
export interface Band {
  readonly origin: Point;
  /** unit */
  readonly along: Vector;
  readonly from: number;
  readonly to: number;
}

/** The place inside a band that lies farthest towards `normal`, and how far from the band's origin, mm. */
export interface BandExtreme {
  readonly point: Point;
  readonly value: number;
}

/**
 * The place of a contour, inside a band, that lies farthest from the band's
 * origin towards `normal` (unit, square to the band's direction); the earliest
 * of equals. null when no part of the contour lies in the band.
 */
export function extremeInBand(contour: Contour, band: Band, normal: Vector): BandExtreme | null {
  let found: BandExtreme | null = null;
  const offer = (point: Point): void => {
    const value = dot(subtract(point, band.origin), normal);
    if (found === null || value > found.value) found = { point, value };
  };
  const offerInside = (point: Point): void => {
    const station = dot(subtract(point, band.origin), band.along);
    if (atLeast(station, band.from) && atMost(station, band.to)) offer(point);
  };
  for (const segment of contour) {
    offerInside(segment.a);
    offerInside(segment.b);
    const crown = crownTowards(segment, normal);
    if (crown !== null) offerInside(pointAt(segment, crown));
  }
  for (const station of [band.from, band.to]) {
    // no end on that side
    if (!Number.isFinite(station)) continue;
    const at = {
      x: band.origin.x + band.along.x * station,
      y: band.origin.y + band.along.y * station,
    };
    for (const { point } of intersectLine(at, normal, contour)) offer(point);
  }
  return found;
}
