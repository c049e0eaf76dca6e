import type { Contour, Point, Vector } from '../../geometry/index.ts';
import {
  add,
  dot,
  extremeFromLine,
  line,
  normalise,
  perpendicularLeft,
  scale,
  subtract,
} from '../../geometry/index.ts';
import type { Side } from '../../joint/index.ts';

/** What a height is reckoned over: a plate's own surface, the higher or lower of the two, the chord. */
export type Datum = 'toPlate1' | 'toPlate2' | 'higher' | 'lower' | 'toes';

/** A straight datum and the way out of the metal from it, unit, square to it. */
interface DatumLine {
  readonly origin: Point;
  readonly normal: Vector;
}

/**
 * Where a cap or root may stand at most: a straight line from over toe 1 to over toe 2, `height` mm
 * over the datum that `reinforcement` in src/measure takes the height from. Between the two plates the
 * higher is the one that the bead stands out less over. Nothing where no weld metal shows.
 */
export function mostHeight(side: Side, datum: Datum, height: number): Contour {
  const { bead, toes } = side;
  if (bead === null || toes === null) return [];
  const { origin, normal } = datumOf(side, bead, toes, datum);
  const over = (toe: Point): Point =>
    add(toe, scale(normal, height - dot(subtract(toe, origin), normal)));
  return [line(over(toes[0]), over(toes[1]))];
}

function datumOf(
  { surfaces }: Side,
  bead: Contour,
  toes: readonly [Point, Point],
  datum: Datum,
): DatumLine {
  const [surface1, surface2] = surfaces;
  if (datum === 'toPlate1') return surface1;
  if (datum === 'toPlate2') return surface2;
  if (datum === 'toes') return { origin: toes[0], normal: outOf(toes, surface1.normal) };
  const [over1, over2] = surfaces.map(
    ({ origin, normal }) => extremeFromLine(bead, origin, normal).value,
  ) as [number, number];
  return over1 <= over2 === (datum === 'higher') ? surface1 : surface2;
}

/**
 * Where a face may lie at least: `depth` mm below the straight line between the groove edges, from
 * which `underfill` in src/measure is taken. Nothing where the groove edges are not known.
 */
export function mostDepth({ grooveEdges, surfaces }: Side, depth: number): Contour {
  if (grooveEdges === null) return [];
  const into = scale(outOf(grooveEdges, surfaces[0].normal), -depth);
  return [line(add(grooveEdges[0], into), add(grooveEdges[1], into))];
}

/** Unit, square to the line between two points, on the side that `up` is on. */
function outOf([first, second]: readonly [Point, Point], up: Vector): Vector {
  const square = normalise(perpendicularLeft(subtract(second, first)));
  return dot(square, up) < 0 ? scale(square, -1) : square;
}
