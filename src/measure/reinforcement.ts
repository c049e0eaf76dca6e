import type { Contour, Point, Vector } from '../geometry/index.ts';
import {
  dot,
  extremeFromLine,
  normalise,
  perpendicularLeft,
  scale,
  subtract,
} from '../geometry/index.ts';
import type { Side, SurfaceLine } from '../joint/index.ts';
import type { Measurement, MeasurementId } from './measurement.ts';
import type { PointPair } from './witness.ts';
import { measuredLength, noWitness, span } from './witness.ts';

/**
 * Reinforcement of one side of a butt weld, mm, outward, never negative.
 * toPlate1, toPlate2: greatest height of the bead above each surface line
 * carried on, normal to it; higher: the lesser of the two, above the plate that
 * stands higher (ASME B31.3 Table 341.3.2 note (8), public extract); lower: the
 * greater; toes: above the straight line through the toes. ISO 6520-1, 502 on
 * the face, 504 on the root.
 */
export function reinforcement(
  name: 'faceReinforcement' | 'rootReinforcement',
  { bead, toes, surfaces }: Side,
): Measurement[] {
  // no weld metal shows on this side
  if (bead === null || toes === null) return noReinforcement(name);
  const first = above(`${name}.toPlate1`, bead, surfaces[0], toes[0]);
  const second = above(`${name}.toPlate2`, bead, surfaces[1], toes[1]);
  const [lesser, greater] =
    (first.value ?? 0) <= (second.value ?? 0) ? [first, second] : [second, first];
  return [
    first,
    second,
    { ...lesser, id: `${name}.higher` },
    { ...greater, id: `${name}.lower` },
    aboveToes(`${name}.toes`, bead, toes, surfaces[0].normal),
  ];
}

function above(
  id: MeasurementId,
  bead: Contour,
  { origin, normal }: SurfaceLine,
  toe: Point,
): Measurement {
  return heightOf(id, bead, origin, normal, (foot) => [[[toe, foot]], []]);
}

function aboveToes(
  id: MeasurementId,
  bead: Contour,
  toes: readonly [Point, Point],
  up: Vector,
): Measurement {
  const square = normalise(perpendicularLeft(subtract(toes[1], toes[0])));
  const normal = dot(square, up) < 0 ? scale(square, -1) : square;
  return heightOf(id, bead, toes[0], normal, () => [[], [toes]]);
}

function heightOf(
  id: MeasurementId,
  bead: Contour,
  origin: Point,
  normal: Vector,
  linesTo: (foot: Point) => readonly [readonly PointPair[], readonly PointPair[]],
): Measurement {
  const crest = extremeFromLine(bead, origin, normal);
  // nowhere above the line
  if (crest.value <= 0) return measuredLength(id, 0, noWitness);
  const foot = subtract(crest.point, scale(normal, crest.value));
  return measuredLength(id, crest.value, span(foot, crest.point, ...linesTo(foot)));
}

function noReinforcement(name: 'faceReinforcement' | 'rootReinforcement'): Measurement[] {
  const readings = ['toPlate1', 'toPlate2', 'higher', 'lower', 'toes'] as const;
  return readings.map((reading) => measuredLength(`${name}.${reading}`, 0, noWitness));
}
