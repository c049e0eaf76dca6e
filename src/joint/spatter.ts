import { arc, line } from '../geometry/index.ts';
import type { Point, Region } from '../geometry/index.ts';
import type { SpatterBump } from './joint.ts';

/** Width of a bump over its height: a flattened droplet, steep-sided but not undercut. */
const WIDTH_OVER_HEIGHT = 2.5;

/** Half the width of a bump along the surface, mm. */
export function halfWidth(bump: SpatterBump): number {
  return (bump.height * WIDTH_OVER_HEIGHT) / 2;
}

/** Bulge of a bump's outline, without its sign: height over half width. */
export const BUMP_BULGE = 2 / WIDTH_OVER_HEIGHT;

/** The bump between two points of the surface, walking away from the weld with the air on this hand. */
export function bumpRegion(from: Point, to: Point, air: 'left' | 'right'): Region {
  return air === 'left'
    ? [line(from, to), arc(to, from, BUMP_BULGE)]
    : [arc(from, to, BUMP_BULGE), line(to, from)];
}
