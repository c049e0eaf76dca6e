import type { Contour, Point, Vector } from '../geometry/index.ts';
import {
  dot,
  extremeFromLine,
  normalise,
  perpendicularLeft,
  scale,
  subtract,
} from '../geometry/index.ts';
import type { SurfaceLine } from '../joint/index.ts';
import type { ExposedWeld } from './exposed-weld.ts';
import type { Measurement, MeasurementId } from './measurement.ts';
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
  { bead, toes }: ExposedWeld,
  surfaces: readonly [SurfaceLine, SurfaceLine],
): Measurement[] {
  const over1 = crestOver(bead, surfaces[0]);
  const over2 = crestOver(bead, surfaces[1]);
  const first = shown(`${name}.toPlate1`, over1, toes[0]);
  const second = shown(`${name}.toPlate2`, over2, toes[1]);
  const [lesser, greater] = over1.value <= over2.value ? [first, second] : [second, first];
  return [
    first,
    second,
    measuredLength(`${name}.higher`, lesser.value, lesser.witness),
    measuredLength(`${name}.lower`, greater.value, greater.witness),
    overToes(`${name}.toes`, bead, toes, surfaces[0].normal),
  ];
}

interface Crest {
  readonly value: number;
  readonly point: Point;
  /** Foot of the height on the line it counts from. */
  readonly foot: Point;
}

function crestOver(
  bead: Contour,
  { origin, normal }: Pick<SurfaceLine, 'origin' | 'normal'>,
): Crest {
  const { point, value } = extremeFromLine(bead, origin, normal);
  return { value, point, foot: subtract(point, scale(normal, value)) };
}

function shown(id: MeasurementId, { value, point, foot }: Crest, toe: Point): Measurement {
  // nowhere above the surface
  if (value <= 0) return measuredLength(id, 0, noWitness);
  return measuredLength(id, value, span(foot, point, [[toe, foot]]));
}

function overToes(
  id: MeasurementId,
  bead: Contour,
  toes: readonly [Point, Point],
  up: Vector,
): Measurement {
  const square = normalise(perpendicularLeft(subtract(toes[1], toes[0])));
  const normal = dot(square, up) < 0 ? scale(square, -1) : square;
  const { value, point, foot } = crestOver(bead, { origin: toes[0], normal });
  // nowhere above the chord
  if (value <= 0) return measuredLength(id, 0, noWitness);
  return measuredLength(id, value, span(foot, point, [], [toes]));
}

/** The same of a side on which no weld metal shows: 0 by every reading. */
export function noReinforcement(name: 'faceReinforcement' | 'rootReinforcement'): Measurement[] {
  const readings = ['toPlate1', 'toPlate2', 'higher', 'lower', 'toes'] as const;
  return readings.map((reading) => measuredLength(`${name}.${reading}`, 0, noWitness));
}
