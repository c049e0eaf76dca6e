import type { Contour } from '../geometry/index.ts';
import { closestOfContours } from '../geometry/index.ts';
import type { Side } from '../joint/index.ts';
import type { ExposedWeld } from './exposed-weld.ts';
import type { Measurement } from './measurement.ts';
import { measuredLength, span } from './witness.ts';

/** Least distance between the face and the root outline, taken across the weld, mm. Derived. */
export function jointThickness(face: Side, { bead }: ExposedWeld, root: Side): Measurement[] {
  const pairs: (readonly [Contour, Contour])[] = [[bead, root.outline]];
  if (root.bead !== null) {
    // the root bead to what the first pair leaves out of the face side
    for (const beyond of face.beyond) if (beyond.length > 0) pairs.push([beyond, root.bead]);
  }
  const least = pairs
    .map(([onFace, onRoot]) => closestOfContours(onFace, onRoot))
    .reduce((best, pair) => (pair.distance < best.distance ? pair : best));
  return [measuredLength('jointThickness', least.distance, span(least.a.point, least.b.point))];
}
