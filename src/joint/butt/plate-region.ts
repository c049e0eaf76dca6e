import { reverseContour } from '../../geometry/index.ts';
import type { Contour, Region } from '../../geometry/index.ts';
import type { PlateNumber } from '../joint.ts';
import { regionThrough } from './outline.ts';

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
  const region =
    plate === 1
      ? regionThrough(reverseContour(root), climb, face)
      : regionThrough(reverseContour(face), reverseContour(climb), root);
  // a plate runs on past the joint
  if (region === null) throw new Error('A plate has an area.');
  return region;
}
