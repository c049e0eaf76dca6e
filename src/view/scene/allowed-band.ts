import type { Contour } from '../../geometry/index.ts';
import { add, arcThroughSagitta, cross, line, scale, subtract } from '../../geometry/index.ts';
import type { Section } from '../../joint/index.ts';
import { leastTriangle, type Check, type LeastTriangle } from '../../limits/index.ts';
import type { Measurements } from '../../measure/index.ts';
import type { Datum } from './cap-band.ts';
import { flawLimits } from './flaw-limits.ts';
import { lineTo, pathOf } from './outline-path.ts';
import type { Sheet } from './sheet.ts';
import type { View } from './view-transform.ts';

/** The most that is allowed of something, mm, and whether the weld is inside it by every check. */
export interface Bound {
  /** null where there is no limit */
  readonly limit: number | null;
  readonly holds: boolean;
}

/** The most that may stand over a datum. */
export interface HeightBound extends Bound {
  readonly over: Datum;
}

/** What the sheet allows of the face, and of the root of a butt weld. */
export interface AllowedBand {
  /** fillet: the least triangle at the root */
  readonly least: LeastTriangle;
  /** greatest convexity of a fillet, greatest reinforcement of a butt weld */
  readonly most: HeightBound;
  /** greatest root reinforcement, and greatest depth below flush */
  readonly mostRoot: HeightBound;
  readonly below: Bound;
  /** how far the undercuts and the offset that are there may go */
  readonly flaws: Contour;
}

/** The tightest least and most that the checks set on the shape of the face. */
export function allowedBandOf(checks: readonly Check[], measurements: Measurements): AllowedBand {
  const { limit, holds } = mostOf(checks, BELOW);
  return {
    least: leastTriangle(checks, measurements),
    most: mostOf(checks, FACE),
    mostRoot: mostOf(checks, ROOT),
    below: { limit, holds },
    flaws: flawLimits(checks, measurements),
  };
}

type Subject = Check['measurement'];

/** What stands on its limit may be this far past it in binary, mm. */
const ON_LIMIT = 1e-9;

/** The limit that is nearest to being passed: of several over one datum, the lowest. */
function mostOf(checks: readonly Check[], subjects: ReadonlyMap<Subject, Datum>): HeightBound {
  let [limit, over]: [number | null, Datum] = [null, 'higher'];
  let nearest = Infinity;
  let holds = true;
  for (const check of checks) {
    const datum = subjects.get(check.measurement);
    if (check.sense !== 'max' || check.limit === null || datum === undefined) continue;
    const margin = check.margin ?? Infinity;
    if (limit === null || margin < nearest || (margin === nearest && check.limit < limit)) {
      [limit, over, nearest] = [check.limit, datum, margin];
    }
    holds &&= check.margin !== null && check.margin >= -ON_LIMIT;
  }
  return { limit, over, holds };
}

const DATUMS = ['toPlate1', 'toPlate2', 'higher', 'lower', 'toes'] as const;
const FACE: ReadonlyMap<Subject, Datum> = new Map<Subject, Datum>([
  ['convexity', 'toes'],
  ...DATUMS.map((datum) => [`faceReinforcement.${datum}`, datum] as const),
]);
const ROOT: ReadonlyMap<Subject, Datum> = new Map<Subject, Datum>(
  DATUMS.map((datum) => [`rootReinforcement.${datum}`, datum]),
);
const BELOW: ReadonlyMap<Subject, Datum> = new Map<Subject, Datum>([['underfill', 'toes']]);

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

/** The room between the least and the most on the welds of one kind of joint. */
export type BandDrawing = (
  section: Section,
  band: AllowedBand,
  view: View,
  sheet: Sheet,
) => DrawnBand;

/** The room between the least and the most that the sheet allows, on this section. */
export function drawnBand(
  section: Section,
  band: AllowedBand,
  view: View,
  sheet: Sheet,
  draw: BandDrawing,
): DrawnBand {
  const { inside, outside, limits, least, most, flaws } = draw(section, band, view, sheet);
  return { inside, outside, limits: limits + pathOf(view, flaws), least, most, flaws };
}

/** The room on the face of a fillet. */
export function filletBand({ face: side }: Section, band: AllowedBand, view: View): DrawnBand {
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
    flaws: band.flaws,
  };
}
