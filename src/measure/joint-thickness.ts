import type { Contour } from '../geometry/index.ts';
import {
  boundsGap,
  closestOfContours,
  contourBounds,
  contourEnd,
  line,
  nearPoint,
} from '../geometry/index.ts';
import type { Groove, Side } from '../joint/index.ts';
import type { ExposedWeld } from './exposed-weld.ts';
import type { Measurement } from './measurement.ts';
import { measuredLength, span } from './witness.ts';

type ContourPair = readonly [Contour, Contour];

/**
 * Least distance between the face and the root outline, taken across the weld,
 * mm. The root outline of an unfused root goes up its edges and across the end
 * of the weld also where the edges touch and nothing of that is seen. Derived.
 */
export function jointThickness(
  face: Side,
  { bead }: ExposedWeld,
  root: Side,
  groove: Groove | null,
): Measurement[] {
  const weldOnRoot = root.bead ?? unfusedRoot(groove);
  const pairs: [ContourPair, ...ContourPair[]] = [[bead, root.outline]];
  if (weldOnRoot.length > 0) {
    if (root.bead === null) pairs.push([bead, weldOnRoot]);
    // to what the first pair leaves out of the face side
    for (const beyond of face.beyond) if (beyond.length > 0) pairs.push([beyond, weldOnRoot]);
  }
  const [[onFace, onRoot], ...others] = pairs;
  let least = closestOfContours(onFace, onRoot);
  for (const [one, other] of others) {
    // no nearer than their bounds, and those stand farther apart already
    if (boundsGap(contourBounds(one), contourBounds(other)) >= least.distance) continue;
    const pair = closestOfContours(one, other);
    if (pair.distance < least.distance) least = pair;
  }
  return [measuredLength('jointThickness', least.distance, span(least.a.point, least.b.point))];
}

/** The edges left bare from the root groove edge up, and the straight end of the weld between them. */
function unfusedRoot(groove: Groove | null): Contour {
  // where the groove was isn't known
  if (groove === null) return [];
  const [bare1, bare2] = [bareFromRoot(groove, 0), bareFromRoot(groove, 1)];
  if (bare1.length === 0 || bare2.length === 0) return [...bare1, ...bare2];
  const [from, to] = [contourEnd(bare1), contourEnd(bare2)];
  // edges that touch leave the weld no end but a point
  return nearPoint(from, to) ? [...bare1, ...bare2] : [...bare1, line(from, to), ...bare2];
}

/** The unfused pieces of one edge that follow one another from its root groove edge. */
function bareFromRoot({ preparedEdges, unfused }: Groove, plate: 0 | 1): Contour {
  let end = preparedEdges[plate][0]?.a;
  const bare = [];
  for (const piece of unfused[plate]) {
    if (end === undefined || !nearPoint(piece.a, end)) break;
    bare.push(piece);
    end = piece.b;
  }
  return bare;
}
