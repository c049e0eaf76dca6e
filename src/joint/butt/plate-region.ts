import { reverseContour } from '../../geometry/index.ts';
import type { Contour, Region } from '../../geometry/index.ts';
import type { PlateNumber } from '../joint.ts';
import { outlineThrough } from './outline.ts';

/**
 * A plate walked counter-clockwise, its far end straight: `root` and `face` run
 * away from the joint along its surfaces, `climb` from the one to the other.
 */
export function plateRegion(
  plate: PlateNumber,
  root: Contour,
  climb: Contour,
  face: Contour,
): Region {
  return plate === 1
    ? outlineThrough(reverseContour(root), climb, face)
    : outlineThrough(reverseContour(face), reverseContour(climb), root);
}
