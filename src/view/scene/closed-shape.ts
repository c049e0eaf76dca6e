import type { Contour, Point } from '../../geometry/index.ts';
import { add, dot, polyline, scale, subtract } from '../../geometry/index.ts';
import type { Section, SurfaceLine } from '../../joint/index.ts';
import { type Cut, cutAway } from './cut-away.ts';
import { freehandTo } from './freehand-break.ts';
import { drawPiece, lineTo, moveTo } from './outline-path.ts';
import type { View } from './view-transform.ts';

/**
 * What turns a section into the joint as it is met from outside: what lies behind a surface is
 * filled with the metal's tone, and a root side that no eye gets to is left out.
 */
export interface ClosedShape {
  /** filled with the metal's tone, over the outline's inner half */
  readonly fill: string;
  /** outline that the section has not, where what is filled looks into the air */
  readonly rim: string;
  /** filled with paper: what lies beyond a root surface that can't be seen */
  readonly away: string;
  /** the plates' surfaces on a root side that is left out */
  readonly edges: string;
  /** break lines across what is filled */
  readonly breaks: string;
}

const NOTHING: ClosedShape = { fill: '', rim: '', away: '', edges: '', breaks: '' };
/** How far the closed root reaches into the metal, and to either side, as shares of the thinner plate. */
const INTO = 0.34;
const ASIDE = 0.8;
/** How far what lies beyond a closed root is left out, mm: past any root bead or strip. */
const BEYOND = 16;
/** No plate is shown further than that, mm. */
const FARTHEST = 400;

/** The joint as an eye meets it: `cuts` are where the view breaks each plate off. */
export function closedShape(
  section: Section,
  view: View,
  rootAccessible: boolean,
  cuts: readonly [readonly Cut[], readonly Cut[]],
): ClosedShape {
  if (section.kind === 'fillet') return filletGap(section, view, cuts[1]);
  const middle = unfusedMiddle(section, view);
  // before welding the groove is open to both sides
  if (section.stage === 'fitUp' || rootAccessible || section.root === null)
    return { ...NOTHING, fill: middle };
  const root = closedRoot(section.root.surfaces, section, view, cuts);
  return { ...root, fill: middle + root.fill };
}

/** Corners of plate 2 within this of its lowest belong to its end, mm; a gap under this is none. */
const NEAR_END = 6.5;
const NEAR_SURFACE = 1e-6;

/** The gap under plate 2 of a fillet, as far as both plates reach: it lies behind the weld. */
function filletGap(
  { filletRoot, plates, stage, face }: Section,
  view: View,
  cuts: readonly Cut[],
): ClosedShape {
  if (filletRoot === null || stage === 'fitUp') return NOTHING;
  const { origin, along, normal } = face.surfaces[0];
  const height = (point: Point): number => dot(subtract(point, origin), normal);
  const station = (point: Point): number => dot(subtract(point, origin), along);
  const corners = plates[1].map(({ a }) => a);
  const lowest = Math.min(...corners.map(height));
  if (lowest < NEAR_SURFACE) return NOTHING;
  const end = corners
    .filter((corner) => height(corner) < lowest + NEAR_END)
    .sort((p, q) => station(p) - station(q));
  const [left, right] = [end[0], end.at(-1)];
  if (left === undefined || right === undefined) return NOTHING;
  const under = plates[0].map(({ a }) => a).filter((corner) => Math.abs(height(corner)) < 1e-6);
  const start = Math.max(station(left), Math.min(...under.map(station)));
  const top = start > station(left) ? at({ origin, along, normal }, start, height(left)) : left;
  const foot = (point: Point): Point => add(point, scale(normal, -height(point)));
  const edges = cutAway(polyline([top, right, foot(right), foot(top)], true), cuts);
  const [first] = edges;
  if (first === undefined) return NOTHING;
  const drawn = edges.map(({ piece }) => drawPiece(view, piece)).join('');
  const broken = edges.find((edge) => edge.broken);
  return {
    ...NOTHING,
    fill: `${moveTo(view, first.piece.a)}${drawn}Z`,
    rim: broken === undefined ? stroke(view, top, foot(top)) : '',
    breaks: broken === undefined ? '' : stroke(view, broken.piece.a, broken.piece.b),
  };
}

const at = ({ origin, along, normal }: SurfaceLine, station: number, height: number): Point =>
  add(add(origin, scale(along, station)), scale(normal, height));

const stroke = (view: View, from: Point, to: Point): string =>
  moveTo(view, from) + lineTo(view, to);

/** What is left unfused between the two welds of a two-sided joint. */
function unfusedMiddle({ groove, welds }: Section, view: View): string {
  if (groove === null || welds.length < 2) return '';
  const [edge1, edge2] = groove.unfused.map(pointsOf);
  return polygon(view, [...(edge1 ?? []), ...(edge2 ?? []).reverse()]);
}

function closedRoot(
  [surface1, surface2]: readonly [SurfaceLine, SurfaceLine],
  section: Section,
  view: View,
  cuts: readonly [readonly Cut[], readonly Cut[]],
): ClosedShape {
  const thinner = Math.min(thicknessOf(section, 0), thicknessOf(section, 1));
  const on = ({ origin, along }: SurfaceLine, station: number): Point =>
    add(origin, scale(along, station));
  const near = ASIDE * thinner + 4;
  const [end1, end2] = [shownOf(surface1, cuts[0]), shownOf(surface2, cuts[1])];
  const line = [
    on(surface1, end1),
    on(surface1, Math.min(near, end1)),
    on(surface2, Math.min(near, end2)),
    on(surface2, end2),
  ] as const;
  const [far1, near1, near2, far2] = line;
  const shifted = (by: number): readonly Point[] =>
    line.map((point, index) => add(point, scale((index < 2 ? surface1 : surface2).normal, by)));
  const [, into1 = near1, into2 = near2] = shifted(-INTO * thinner);
  const wave = freehandTo(view, near1, near2);
  const on1 = moveTo(view, near1);
  const beyond = [far2, ...[...shifted(BEYOND)].reverse(), far1];
  return {
    rim: '',
    fill: `${on1}${wave}${lineTo(view, into2)}${lineTo(view, into1)}Z`,
    away: `${on1}${wave}${beyond.map((point) => lineTo(view, point)).join('')}Z`,
    edges: stroke(view, far1, near1) + stroke(view, near2, far2),
    breaks: on1 + wave,
  };
}

/** How far a plate is shown along its surface, mm. */
function shownOf({ origin, along }: SurfaceLine, cuts: readonly Cut[]): number {
  const ends = cuts
    .filter(({ away }) => dot(away, along) > 0.9)
    .map(({ at: end }) => dot(subtract(end, origin), along));
  return Math.min(FARTHEST, ...ends);
}

function thicknessOf({ plateSurfaces }: Section, plate: 0 | 1): number {
  const { face, opposite } = plateSurfaces[plate];
  return Math.abs(dot(subtract(face.origin, opposite.origin), face.normal));
}

const pointsOf = (contour: Contour): Point[] => {
  const [first] = contour;
  return first === undefined ? [] : [first.a, ...contour.map(({ b }) => b)];
};

function polygon(view: View, points: readonly Point[]): string {
  const [first, ...rest] = points;
  if (first === undefined || rest.length < 2) return '';
  return `${moveTo(view, first)}${rest.map((point) => lineTo(view, point)).join('')}Z`;
}
