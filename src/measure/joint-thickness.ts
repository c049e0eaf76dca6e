import type { Contour } from '../geometry/index.ts';
import { closestOfContours } from '../geometry/index.ts';
import type { Side } from '../joint/index.ts';
import type { Measurement } from './measurement.ts';
import { measuredLength, span } from './witness.ts';

/** Least distance between the face and the root outline, taken across the weld, mm. Derived. */
export function jointThickness(face: Side, root: Side): Measurement[] {
  const pairs: (readonly [Contour, Contour])[] = [];
  if (face.bead !== null) pairs.push([face.bead, root.outline]);
  if (root.bead !== null) pairs.push([face.outline, root.bead]);
  const measured = pairs.map(([onFace, onRoot]) => {
    const { distance, a, b } = closestOfContours(onFace, onRoot);
    return measuredLength('jointThickness', distance, span(a.point, b.point));
  });
  const [first, second] = measured;
  // no weld to go through
  if (first === undefined) return [];
  if (second === undefined) return [first];
  return [(first.value ?? 0) <= (second.value ?? 0) ? first : second];
}
