import type { Contour, Point } from '../geometry/index.ts';

/**
 * The exposed face of a bead between two end points, as tangent arcs.
 * Every swell or hollow is an extreme whose tangent is parallel to the chord:
 * the arc from an end to its nearest extreme has twice the sweep that its own
 * chord makes with the face chord; two neighbouring extremes are joined by two
 * equal arcs that meet half way. One centred extreme is a single arc.
 */
export interface BeadShape {
  /** height of the crown off the chord, mm, outward positive */
  readonly rise: number;
  /** -1..1 share of the half chord, positive towards `to` */
  readonly shift: number;
  /** S-shape: height of a second swell the other way; near `to` when positive, near `from` when negative; 0 for none */
  readonly reverse: number;
  /** depth of a central dip between two crests of height `rise`; 0 for none */
  readonly dip: number;
}

/**
 * @param outward the side of the chord that `rise` counts towards: 'left' or 'right' of the way from `from` to `to`
 */
export declare function beadProfile(from: Point, to: Point, outward: 'left' | 'right', shape: BeadShape): Contour;
