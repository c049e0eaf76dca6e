import { add, arc, dot, line, scale } from '../geometry/index.ts';
import type { Contour, Point } from '../geometry/index.ts';
import type { Nose } from './bead-profile.ts';
import type { SurfaceLine } from './section.ts';

/** Weld metal that rolls over a toe: a straight unfused under-surface, then a round nose. */
export interface OverlapRoll {
  readonly toe: Point;
  /** where the under-surface runs into the nose */
  readonly heel: Point;
  readonly nose: Nose;
  readonly surface: SurfaceLine;
}

/** The under-surface rises this much off the plate, degrees, so that a gauge finds it unfused. */
const RISE = (12 * Math.PI) / 180;
const COS = Math.cos(RISE);
const SIN = Math.sin(RISE);
/** Radius of the nose as a share of the overlap, and at most, mm. */
const NOSE_SHARE = 0.3;
const LARGEST_NOSE = 0.8;

/**
 * The roll past `toe` whose outermost point is exactly `overlap` mm past the toe
 * along the surface: toe to lip, as `overlap1/2` is measured.
 */
export function overlapRoll(toe: Point, surface: SurfaceLine, overlap: number): OverlapRoll {
  const { along, normal } = surface;
  const radius = Math.min(NOSE_SHARE * overlap, LARGEST_NOSE);
  // outermost = run·cos - radius·sin + radius
  const run = (overlap - radius * (1 - SIN)) / COS;
  const heel = add(toe, add(scale(along, run * COS), scale(normal, run * SIN)));
  const centre = add(heel, add(scale(along, -radius * SIN), scale(normal, radius * COS)));
  return { toe, heel, nose: { centre, radius }, surface };
}

/**
 * The roll from the fused toe round to `leave`, the point of the nose where the
 * face begins; null when `leave` lies short of the outermost point, because then
 * the face itself stands farther out than the roll.
 */
export function walkRoll(roll: OverlapRoll, leave: Point): Contour | null {
  const { along, normal } = roll.surface;
  const out = { x: leave.x - roll.nose.centre.x, y: leave.y - roll.nose.centre.y };
  const angle = Math.atan2(dot(out, normal), dot(out, along));
  if (!(angle > 0)) return null;
  const sweep = Math.PI / 2 - RISE + angle;
  const left = along.x * normal.y - along.y * normal.x > 0;
  return [line(roll.toe, roll.heel), arc(roll.heel, leave, (left ? 1 : -1) * Math.tan(sweep / 4))];
}
