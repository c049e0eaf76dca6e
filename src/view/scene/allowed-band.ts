import type { Contour, Point } from '../../geometry/index.ts';
import { add, arcThroughSagitta, cross, line, scale, subtract } from '../../geometry/index.ts';
import type { Section, Side } from '../../joint/index.ts';
import type { Check } from '../../limits/index.ts';
import type { Measurements } from '../../measure/index.ts';
import { lineTo, moveTo, pathOf } from './outline-path.ts';
import type { View } from './view-transform.ts';

/** What the sheet allows of the face, mm; null where it sets no limit. */
export interface AllowedBand {
  /** fillet: sides of the least triangle at the root */
  readonly leastLeg1: number | null;
  readonly leastLeg2: number | null;
  /** greatest convexity of a fillet, greatest reinforcement of a butt weld */
  readonly most: number | null;
  /** greatest root reinforcement, and greatest depth below flush */
  readonly mostRoot: number | null;
  readonly below: number | null;
}

type Subject = Check['measurement'];

const THROATS: readonly Subject[] = [
  'theoreticalThroat',
  'isoscelesThroat',
  'effectiveThroat',
  'actualThroat',
];

/** The tightest least and most that the checks set on the shape of the face. */
export function allowedBandOf(checks: readonly Check[], { values }: Measurements): AllowedBand {
  const limits = (sense: 'min' | 'max', subjects: readonly Subject[]): number[] =>
    checks.flatMap(({ measurement, limit, sense: own }) =>
      limit !== null && own === sense && subjects.includes(measurement) ? [limit] : [],
    );
  // A throat a is asked of the leg z = a / cos(ψ/2) of an equal triangle.
  const half = (((values.dihedralAngle?.value ?? 90) / 2) * Math.PI) / 180;
  const byThroat = limits('min', THROATS).map((throat) => throat / Math.cos(half));
  const largest = (all: readonly number[]): number | null =>
    all.length === 0 ? null : Math.max(...all);
  const smallest = (all: readonly number[]): number | null =>
    all.length === 0 ? null : Math.min(...all);
  return {
    leastLeg1: largest([...limits('min', ['leg1', 'sizeEqual', 'sizePair.1']), ...byThroat]),
    leastLeg2: largest([...limits('min', ['leg2', 'sizeEqual', 'sizePair.2']), ...byThroat]),
    most: smallest(limits('max', ['convexity', ...REINFORCEMENT])),
    mostRoot: smallest(limits('max', ROOT_REINFORCEMENT)),
    below: smallest(limits('max', ['underfill'])),
  };
}

const REINFORCEMENT: readonly Subject[] = [
  'faceReinforcement.toPlate1',
  'faceReinforcement.toPlate2',
  'faceReinforcement.higher',
  'faceReinforcement.lower',
  'faceReinforcement.toes',
];
const ROOT_REINFORCEMENT: readonly Subject[] = [
  'rootReinforcement.toPlate1',
  'rootReinforcement.toPlate2',
  'rootReinforcement.higher',
  'rootReinforcement.lower',
  'rootReinforcement.toes',
];

/** The band as drawn: tone inside the weld, tone in the air, and its limits as lines. */
export interface DrawnBand {
  readonly inside: string;
  readonly outside: string;
  readonly limits: string;
  /** the limit lines in the section plane, for their captions and for keeping labels off */
  readonly least: Contour;
  readonly most: Contour;
}

export const NO_BAND: DrawnBand = { inside: '', outside: '', limits: '', least: [], most: [] };

/** The room between the least and the most that the sheet allows, on this section. */
export function drawnBand(section: Section, band: AllowedBand, view: View): DrawnBand {
  if (section.face.bead === null || section.face.toes === null) return NO_BAND;
  return section.kind === 'fillet'
    ? filletBand(section.face, band, view)
    : buttBand(section, band, view);
}

function filletBand(side: Side, band: AllowedBand, view: View): DrawnBand {
  const { bead, toes, surfaces } = side;
  if (bead === null || toes === null) return NO_BAND;
  const { leastLeg1, leastLeg2, most } = band;
  const origin = surfaces[0].origin;
  const corners =
    leastLeg1 === null || leastLeg2 === null
      ? null
      : ([
          add(origin, scale(surfaces[0].along, leastLeg1)),
          add(origin, scale(surfaces[1].along, leastLeg2)),
        ] as const);
  const least: Contour = corners === null ? [] : [line(corners[0], corners[1])];
  // The air is on the root's far side of the chord.
  const rootLeft = cross(subtract(toes[1], toes[0]), subtract(origin, toes[0])) > 0;
  const mostArc: Contour =
    most === null ? [] : [arcThroughSagitta(toes[0], toes[1], rootLeft ? -most : most)];
  const face = pathOf(view, bead);
  const roomInside = corners !== null && holds(bead, corners, origin);
  const roomOutside = most !== null && greatestRise(bead, toes, rootLeft ? -1 : 1) <= most;
  return {
    inside: roomInside ? `${face}${lineTo(view, corners[1])}${lineTo(view, corners[0])}Z` : '',
    outside: roomOutside ? `${face}Z${pathOf(view, mostArc)}Z` : '',
    limits: pathOf(view, least) + pathOf(view, mostArc),
    least,
    most: mostArc,
  };
}

/** Whether the whole face lies beyond the line through the corners, as seen from the root. */
function holds(bead: Contour, [p, q]: readonly [Point, Point], root: Point): boolean {
  const side = (point: Point): number => cross(subtract(q, p), subtract(point, p));
  const rootSide = Math.sign(side(root));
  return bead.every(
    (piece) =>
      side(piece.a) * rootSide <= 1e-9 &&
      side(piece.b) * rootSide <= 1e-9 &&
      side(crown(piece)) * rootSide <= 1e-9,
  );
}

function greatestRise(bead: Contour, [p, q]: readonly [Point, Point], outward: 1 | -1): number {
  const chord = subtract(q, p);
  const size = Math.hypot(chord.x, chord.y);
  const heights = bead.flatMap((piece) =>
    [crown(piece), piece.b].map((point) => (outward * cross(chord, subtract(point, p))) / size),
  );
  return Math.max(0, ...heights);
}

function crown({ a, b, bulge }: Contour[number]): Point {
  return {
    x: (a.x + b.x) / 2 + ((b.y - a.y) * bulge) / 2,
    y: (a.y + b.y) / 2 - ((b.x - a.x) * bulge) / 2,
  };
}

function buttBand(section: Section, band: AllowedBand, view: View): DrawnBand {
  const face = capBand(section.face, band.most, band.below, view);
  const root = section.root === null ? NO_BAND : capBand(section.root, band.mostRoot, null, view);
  return {
    inside: face.inside,
    outside: face.outside + root.outside,
    limits: face.limits + root.limits,
    least: face.least,
    most: face.most,
  };
}

/** Straight limits a given height above, and depth below, the line from toe to toe. */
function capBand(side: Side, most: number | null, below: number | null, view: View): DrawnBand {
  const { bead, toes, surfaces } = side;
  if (bead === null || toes === null) return NO_BAND;
  const shifted = (by: number): readonly [Point, Point] => [
    add(toes[0], scale(surfaces[0].normal, by)),
    add(toes[1], scale(surfaces[1].normal, by)),
  ];
  const [above, under] = [
    most === null ? null : shifted(most),
    below === null ? null : shifted(-below),
  ];
  const face = pathOf(view, bead);
  const close = ([p, q]: readonly [Point, Point]): string =>
    `${lineTo(view, q)}${lineTo(view, p)}Z`;
  const outward = cross(subtract(toes[1], toes[0]), surfaces[0].normal) > 0 ? 1 : -1;
  const within = (limit: number | null, way: 1 | -1): boolean =>
    limit !== null && greatestRise(bead, toes, way) <= limit;
  return {
    inside: under !== null && within(below, outward === 1 ? -1 : 1) ? face + close(under) : '',
    outside: above !== null && within(most, outward) ? face + close(above) : '',
    limits: [above, under]
      .map((pair) => (pair === null ? '' : moveTo(view, pair[0]) + lineTo(view, pair[1])))
      .join(''),
    least: under === null ? [] : [line(...under)],
    most: above === null ? [] : [line(...above)],
  };
}
