import type { Point, Vector } from '../../geometry/index.ts';
import { add, contourBounds, dot, scale, subtract } from '../../geometry/index.ts';
import type { Section, Side, SurfaceLine } from '../../joint/index.ts';
import type { Sheet } from './sheet.ts';
import { TRUE_SCALE, type View } from './view-transform.ts';

/** A point that must be seen, with `room` px of drawing beyond it in that direction (y up). */
interface Seen {
  readonly point: Point;
  readonly room: Vector;
}

const LEAST_SCALE = 0.5;
const LARGEST_SCALE = 100;
const HALVINGS = 40;
/** An earlier view is kept until the fitting one is this many times larger. */
const WORTH_ENLARGING = 1.3;
/** While a view is kept, room may shrink to this share before the joint is fitted anew. */
export const LEAST_ROOM = 0.6;
/** A fit-up without a weld shows this much of each carrying surface, mm. */
const FIT_UP_REACH = 9;

/**
 * The largest view that shows the weld, what it joins and room for the
 * dimensions round it; plates run on to the edge and break off there. With the
 * view before, that one is kept as long as it serves, so that the drawing holds
 * still under the hand.
 */
export function fitView(
  section: Section,
  sheet: Sheet,
  before: View | null,
  hold = false,
  trueScale: number = TRUE_SCALE,
): View {
  const sameSheet =
    before?.width === sheet.width &&
    before.height === sheet.height &&
    before.subject === subjectOf(section);
  if (hold && sameSheet) return before;
  const seen = seenPoints(section, sheet);
  if (sameSheet && showsAll(before, seen, sheet)) {
    const worthIt = fits(extent(seen, before.scale * WORTH_ENLARGING, 1), sheet);
    if (!worthIt) return before;
  }
  return centred(section, sheet, seen, largestScale(seen, sheet, trueScale));
}

/** The whole section at a given scale, centred; a true-size view is `fitAt(…, TRUE_SCALE)`. */
export function fitAt(section: Section, sheet: Sheet, pxPerMm: number): View {
  return centred(section, sheet, seenPoints(section, sheet), pxPerMm);
}

/** The points at a scale, with that share of their room, in the middle of the sheet. */
export function centred(
  section: Section,
  sheet: Sheet,
  seen: readonly Seen[],
  pxPerMm: number,
  share = 1,
): View {
  const { left, right, top, bottom } = extent(seen, pxPerMm, share);
  return {
    scale: pxPerMm,
    originX: Math.round((sheet.left + sheet.right - left - right) / 2),
    originY: Math.round((sheet.top + sheet.bottom + top + bottom) / 2),
    width: sheet.width,
    height: sheet.height,
    subject: subjectOf(section),
  };
}

/** Joints of one sort may share a view. */
function subjectOf({ kind, form, stage }: Section): string {
  return `${kind} ${form} ${stage}`;
}

function largestScale(seen: readonly Seen[], sheet: Sheet, trueScale: number): number {
  return readable(largestFitting(seen, sheet, 1), trueScale);
}

/** The largest scale at which the points fit the sheet with that share of their room, px per mm. */
export function largestFitting(seen: readonly Seen[], sheet: Sheet, share: number): number {
  let low = LEAST_SCALE;
  let high = LARGEST_SCALE;
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (fits(extent(seen, middle, share), sheet)) low = middle;
    else high = middle;
  }
  return low;
}

/** Whether that much fits the sheet. */
export function fits({ left, right, bottom, top }: Extent, sheet: Sheet): boolean {
  return right - left <= sheet.right - sheet.left && top - bottom <= sheet.bottom - sheet.top;
}

/** Rounded down to a drawn scale that can be said: 9.5 : 1 rather than 9.53 : 1. */
function readable(pxPerMm: number, trueScale: number): number {
  const times = pxPerMm / trueScale;
  const step = times >= 5 ? 0.5 : times >= 2 ? 0.2 : times >= 0.5 ? 0.1 : 0.05;
  return Math.max(step, Math.floor(times / step) * step) * trueScale;
}

function showsAll(view: View, seen: readonly Seen[], sheet: Sheet): boolean {
  const { left, right, top, bottom } = extent(seen, view.scale, LEAST_ROOM);
  return (
    view.originX + left >= sheet.left &&
    view.originX + right <= sheet.right &&
    view.originY - top >= sheet.top &&
    view.originY - bottom <= sheet.bottom
  );
}

/** Bounds of the points with their room, px from the plane's origin, y up. */
interface Extent {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** What points and that share of their room take up at a scale. */
export function extent(points: readonly Seen[], pxPerMm: number, share: number): Extent {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { point, room } of points) {
    const x = point.x * pxPerMm + room.x * share;
    const y = point.y * pxPerMm + room.y * share;
    left = Math.min(left, x);
    right = Math.max(right, x);
    bottom = Math.min(bottom, y);
    top = Math.max(top, y);
  }
  return { left, right, bottom, top };
}

/** What must be seen of a section, and the room beyond it. */
export function seenPoints(section: Section, sheet: Sheet): readonly Seen[] {
  const seen: Seen[] = [];
  const { above, below } = sheet.margins;
  const clear = section.kind === 'butt' ? [above * 0.7, below * 0.8] : [0, 0];
  for (const region of [...section.welds, ...section.spatter]) {
    seen.push(...corners(region, clear[0], clear[1]));
  }
  if (section.kind === 'fillet') seen.push(...filletPoints(section, sheet));
  else seen.push(...buttPoints(section, sheet));
  return seen;
}

/** A region's corners with room kept over and under it. */
function corners(region: Section['welds'][number], above = 0, below = 0): readonly Seen[] {
  const { left, right, bottom, top } = contourBounds(region);
  return [
    { point: { x: left, y: bottom }, room: { x: 0, y: -below } },
    { point: { x: right, y: top }, room: { x: 0, y: above } },
  ];
}

function filletPoints(section: Section, { margins, depthShare, whole }: Sheet): readonly Seen[] {
  const seen: Seen[] = [];
  const air = [margins.beside, margins.above] as const;
  for (const plate of [0, 1] as const) {
    const carrying = section.face.surfaces[plate];
    const toe = section.face.toes?.[plate] ?? along(carrying, FIT_UP_REACH);
    seen.push({ point: toe, room: scale(carrying.along, air[plate]) });
    // The other leg is carried out from its toe along this surface.
    const otherToe = section.face.toes?.[1 - plate];
    const reach = dot(subtract(toe, carrying.origin), carrying.along);
    if (otherToe !== undefined) {
      const beside = add(otherToe, scale(carrying.along, reach));
      seen.push({ point: beside, room: scale(carrying.along, air[plate] * 0.9) });
    }
    const undercut = section.face.undercuts[plate].at(-1)?.b;
    if (undercut !== undefined) {
      seen.push({ point: undercut, room: scale(carrying.along, air[plate] * 0.8) });
    }
    const { face, opposite } = section.plateSurfaces[plate];
    const broad = sameLine(face, carrying);
    const start = broad ? toe : face.origin;
    seen.push({ point: start, room: scale(face.along, broad ? air[plate] : margins.metal) });
    // Beyond a plate's own corner the dimension line of the other leg still needs air.
    if (!broad) seen.push({ point: start, room: scale(face.normal, margins.above / 2) });
    const thickness = Math.abs(dot(subtract(opposite.origin, face.origin), face.normal));
    const depth =
      plate === whole ? thickness : Math.min(thickness, depthShown(section, depthShare));
    const under = add(start, scale(face.normal, -depth));
    seen.push({ point: under, room: scale(face.normal, -margins.under) });
    seen.push({
      point: add(face.origin, scale(face.normal, -depth)),
      room: scale(face.normal, -margins.under),
    });
  }
  return seen;
}

/** How much of a thick plate's depth is worth showing, mm: a share of the weld's width. */
function depthShown({ face }: Section, share: number): number {
  if (face.toes === null) return FIT_UP_REACH / 2;
  const [p, q] = face.toes;
  return Math.hypot(p.x - q.x, p.y - q.y) * share;
}

function buttPoints(section: Section, { margins }: Sheet): readonly Seen[] {
  const seen: Seen[] = [];
  for (const side of [section.face, section.root]) {
    if (side === null) continue;
    const beyond = side === section.face ? margins.above : margins.below;
    for (const plate of [0, 1] as const) {
      const surface = side.surfaces[plate];
      const start = farthest(side, plate);
      seen.push({ point: start, room: scale(surface.along, margins.flank) });
      seen.push({ point: start, room: scale(surface.normal, beyond) });
    }
  }
  if (section.backing !== null) seen.push(...corners(section.backing));
  return seen;
}

/** The toe, lip or groove edge that lies farthest along a surface. */
function farthest({ surfaces, toes, lips, grooveEdges }: Side, plate: 0 | 1): Point {
  const surface = surfaces[plate];
  const marks = [toes, lips, grooveEdges].flatMap((pair) => (pair === null ? [] : [pair[plate]]));
  const stations = marks.map((mark) => dot(subtract(mark, surface.origin), surface.along));
  return along(surface, Math.max(0, ...stations));
}

function along({ origin, along: direction }: SurfaceLine, station: number): Point {
  return add(origin, scale(direction, station));
}

function sameLine(p: SurfaceLine, q: SurfaceLine): boolean {
  return (
    Math.abs(dot(p.normal, q.normal)) > 0.999 &&
    Math.abs(dot(subtract(q.origin, p.origin), p.normal)) < 1e-6
  );
}
