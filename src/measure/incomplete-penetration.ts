import type { Contour, Point } from '../geometry/index.ts';
import {
  add,
  contourEnd,
  contourStart,
  dot,
  nearPoint,
  scale,
  subtract,
} from '../geometry/index.ts';
import type { Groove, Side } from '../joint/index.ts';
import type { Measurement, Witness } from './measurement.ts';
import { measuredLength, noWitness, span } from './witness.ts';

/**
 * Greatest height of either prepared edge that no weld metal is fused to, along
 * its plate's normal, mm (ISO 6520-1, 4021, at mid-wall 402; from memory,
 * verify). A bevel bare below a groove edge of the face is underfill and doesn't count,
 * an edge bare from root to face does.
 */
export function incompletePenetration(groove: Groove, face: Side): Measurement {
  let [tallest, witness]: [number, Witness] = [0, noWitness];
  for (const i of [0, 1] as const) {
    const { normal } = face.surfaces[i];
    const [rootEdge, faceEdge] = [
      contourStart(groove.preparedEdges[i]),
      contourEnd(groove.preparedEdges[i]),
    ];
    for (const [start, end] of unbrokenRuns(groove.unfused[i])) {
      // bare up to the face, unless all the way from the root
      if (nearPoint(end, faceEdge) && !nearPoint(start, rootEdge)) continue;
      const rise = dot(subtract(end, start), normal);
      if (Math.abs(rise) <= tallest) continue;
      const level = add(start, scale(normal, rise));
      [tallest, witness] = [Math.abs(rise), span(start, level, [[end, level]])];
    }
  }
  return measuredLength('incompletePenetration', tallest, witness);
}

/** Start and end of each stretch of pieces that join one another. */
function unbrokenRuns(pieces: Contour): (readonly [Point, Point])[] {
  const runs: [Point, Point][] = [];
  for (const { a, b } of pieces) {
    const last = runs.at(-1);
    if (last !== undefined && nearPoint(last[1], a)) last[1] = b;
    else runs.push([a, b]);
  }
  return runs;
}
