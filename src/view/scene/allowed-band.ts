import type { Contour, Point } from '../../geometry/index.ts';
import { add, arcThroughSagitta, cross, line, scale, subtract } from '../../geometry/index.ts';
import type { Section, Side } from '../../joint/index.ts';
import { leastTriangle, type Check, type LeastTriangle } from '../../limits/index.ts';
import type { Measurements } from '../../measure/index.ts';
import { flawLimits } from './flaw-limits.ts';
import { lineTo, moveTo, pathOf } from './outline-path.ts';
import type { View } from './view-transform.ts';

/** The most that is allowed of something, mm, and whether the weld is inside it by every check. */
export interface Bound {
  /** null where there is no limit */
  readonly limit: number | null;
  readonly holds: boolean;
}

/** What the sheet allows of the face, and of the root of a butt weld. */
export interface AllowedBand {
  /** fillet: the least triangle at the root */
  readonly least: LeastTriangle;
  /** greatest convexity of a fillet, greatest reinforcement of a butt weld */
  readonly most: Bound;
  /** greatest root reinforcement, and greatest depth below flush */
  readonly mostRoot: Bound;
  readonly below: Bound;
  /** how far the undercuts and the offset that are there may go */
  readonly flaws: Contour;
}

/** The tightest least and most that the checks set on the shape of the face. */
export function allowedBandOf(checks: readonly Check[], measurements: Measurements): AllowedBand {
  return {
    least: leastTriangle(checks, measurements),
    most: mostOf(checks, FACE),
    mostRoot: mostOf(checks, ROOT),
    below: mostOf(checks, BELOW),
    flaws: flawLimits(checks, measurements),
  };
}

type Subject = Check['measurement'];

/** What stands on its limit may be this far past it in binary, mm. */
const ON_LIMIT = 1e-9;

function mostOf(checks: readonly Check[], subjects: ReadonlySet<Subject>): Bound {
  let least: number | null = null;
  let holds = true;
  for (const { measurement, sense, limit, margin } of checks) {
    if (sense !== 'max' || limit === null || !subjects.has(measurement)) continue;
    least = Math.min(least ?? limit, limit);
    holds &&= margin !== null && margin >= -ON_LIMIT;
  }
  return { limit: least, holds };
}

const FACE: ReadonlySet<Subject> = new Set<Subject>([
  'convexity',
  'faceReinforcement.toPlate1',
  'faceReinforcement.toPlate2',
  'faceReinforcement.higher',
  'faceReinforcement.lower',
  'faceReinforcement.toes',
]);
const ROOT: ReadonlySet<Subject> = new Set<Subject>([
  'rootReinforcement.toPlate1',
  'rootReinforcement.toPlate2',
  'rootReinforcement.higher',
  'rootReinforcement.lower',
  'rootReinforcement.toes',
]);
const BELOW: ReadonlySet<Subject> = new Set<Subject>(['underfill']);

/** The band as drawn: tone inside the weld, tone in the air, and its limits as lines. */
export interface DrawnBand {
  readonly inside: string;
  readonly outside: string;
  readonly limits: string;
  /** the limit lines in the section plane, for their captions and for keeping labels off */
  readonly least: Contour;
  readonly most: Contour;
  readonly flaws: Contour;
}

export const NO_BAND: DrawnBand = {
  inside: '',
  outside: '',
  limits: '',
  least: [],
  most: [],
  flaws: [],
};

/** The room between the least and the most that the sheet allows, on this section. */
export function drawnBand(section: Section, band: AllowedBand, view: View): DrawnBand {
  const shape =
    section.kind === 'fillet'
      ? filletBand(section.face, band, view)
      : buttBand(section, band, view);
  const { flaws } = band;
  return { ...shape, limits: shape.limits + pathOf(view, flaws), flaws };
}

function filletBand(side: Side, band: AllowedBand, view: View): DrawnBand {
  const { bead, toes, surfaces } = side;
  if (bead === null || toes === null) return NO_BAND;
  const { least: triangle, most } = band;
  const origin = surfaces[0].origin;
  const corners =
    triangle.leg1 === null || triangle.leg2 === null
      ? null
      : ([
          add(origin, scale(surfaces[0].along, triangle.leg1)),
          add(origin, scale(surfaces[1].along, triangle.leg2)),
        ] as const);
  const least: Contour = corners === null ? [] : [line(corners[0], corners[1])];
  // The air is on the root's far side of the chord.
  const rootLeft = cross(subtract(toes[1], toes[0]), subtract(origin, toes[0])) > 0;
  const mostArc: Contour =
    most.limit === null
      ? []
      : [arcThroughSagitta(toes[0], toes[1], rootLeft ? -most.limit : most.limit)];
  const face = pathOf(view, bead);
  // Past a limit that the weld is outside of there is no room to show.
  const roomInside = corners !== null && triangle.holds;
  const roomOutside = most.limit !== null && most.holds;
  return {
    inside: roomInside ? `${face}${lineTo(view, corners[1])}${lineTo(view, corners[0])}Z` : '',
    outside: roomOutside ? `${face}Z${pathOf(view, mostArc)}Z` : '',
    limits: pathOf(view, least) + pathOf(view, mostArc),
    least,
    most: mostArc,
    flaws: [],
  };
}

function buttBand({ face, root }: Section, band: AllowedBand, view: View): DrawnBand {
  const cap = capBand(face, band.most, band.below, view);
  const pass = root === null ? NO_BAND : capBand(root, band.mostRoot, NO_BOUND, view);
  return {
    inside: cap.inside,
    outside: cap.outside + pass.outside,
    limits: cap.limits + pass.limits,
    least: cap.least,
    most: cap.most,
    flaws: [],
  };
}

const NO_BOUND: Bound = { limit: null, holds: true };

/** Straight limits a given height above, and depth below, the line from toe to toe. */
function capBand(side: Side, most: Bound, below: Bound, view: View): DrawnBand {
  const { bead, toes, surfaces } = side;
  if (bead === null || toes === null) return NO_BAND;
  const shifted = (by: number): readonly [Point, Point] => [
    add(toes[0], scale(surfaces[0].normal, by)),
    add(toes[1], scale(surfaces[1].normal, by)),
  ];
  const above = most.limit === null ? null : shifted(most.limit);
  const under = below.limit === null ? null : shifted(-below.limit);
  const face = pathOf(view, bead);
  const close = ([p, q]: readonly [Point, Point]): string =>
    `${lineTo(view, q)}${lineTo(view, p)}Z`;
  return {
    inside: under !== null && below.holds ? face + close(under) : '',
    outside: above !== null && most.holds ? face + close(above) : '',
    limits: [above, under]
      .map((pair) => (pair === null ? '' : moveTo(view, pair[0]) + lineTo(view, pair[1])))
      .join(''),
    least: under === null ? [] : [line(...under)],
    most: above === null ? [] : [line(...above)],
    flaws: [],
  };
}
