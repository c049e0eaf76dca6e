import type { Point } from '../../geometry/index.ts';
import type { AngleRequest, Arrowhead } from './dimension-request.ts';
import { labelCost, lineCost } from './drawing-sheet.ts';
import { extensionFrom } from './extension-line.ts';
import { type LabelBox, type Line, reach, uprightBox } from './label-box.ts';
import {
  type Arc,
  besideBox,
  drawingCost,
  labelHeight,
  LANDING,
  offer,
  type Placement,
  type Search,
  type Wording,
} from './placement.ts';

/** Under this much arc the arrowheads turn outside, as a multiple of their length. */
const ROOM = 34 / 11;
/** How much arc is drawn beyond an arm when the arrowheads stand outside, px. */
const STUB = 22;
/** An arc is compared with the rest of the drawing as this many straight lines. */
const STEPS = 8;
/** Text stands this far outside the arc, px. */
const OFF_ARC = 6;
/** Leaders of angles that have no room beside their arc, px. */
const LEADERS = [18, 30, 44, 60, 80, 104, 132] as const;
/** Places along the arc for the label, as shares of it, best first. */
const SHARES = [0.5, 0.35, 0.65, 0.2, 0.8] as const;
const LEADER_SHARE = 0.38;
const COST = { radius: 2, share: 12, landing: 12, leaderPx: 0.1 } as const;

type Drawn = Omit<Placement, 'box' | 'anchor'>;

/** Offers the ways to draw an angle: its arc at each radius, the text just outside it or on a landing. */
export function offerAngle(search: Search, request: AngleRequest, wording: Wording): void {
  for (const [index, radius] of request.radii.entries()) {
    const base = index * COST.radius + wording.cost;
    if (base >= search.limit) return;
    const drawn = drawnAngle(search, request, radius, wording, base);
    if (drawn.cost >= search.limit) continue;
    offerOutsideArc(search, request, radius, drawn);
    offerOnLanding(search, request, radius, { ...drawn, cost: drawn.cost + COST.landing });
  }
}

function drawnAngle(
  search: Search,
  { vertex, start, end }: AngleRequest,
  radius: number,
  wording: Wording,
  base: number,
): Drawn {
  const { sheet, lettering } = search;
  const turned = (end - start) * radius < ROOM * lettering.arrowLength;
  const spare = turned ? STUB / radius : 0;
  const arc: Arc = { centre: vertex, radius, start: start - spare, end: end + spare };
  const lines = arcLines(arc);
  const extended = (angle: number): readonly Line[] =>
    extensionFrom(sheet, vertex, { x: Math.cos(angle), y: Math.sin(angle) }, radius);
  const extensions = [...extended(start), ...extended(end)];
  const heads = [
    arcHead(vertex, radius, start, turned ? 1 : -1),
    arcHead(vertex, radius, end, turned ? -1 : 1),
  ];
  const cost = base + drawingCost(search, lines, extensions, search.limit - base);
  return { cost, site: null, wording, lines, landings: [], extensions, arc, heads, origin: null };
}

function offerOutsideArc(
  search: Search,
  { vertex, start, end }: AngleRequest,
  radius: number,
  drawn: Drawn,
): void {
  const level = uprightBox(0, 0, drawn.wording.width, labelHeight(search.lettering));
  for (const share of SHARES) {
    const cost = drawn.cost + Math.abs(share - 0.5) * COST.share;
    if (cost >= search.limit) return;
    const angle = start + (end - start) * share;
    const [x, y] = [Math.cos(angle), Math.sin(angle)];
    const far = radius + OFF_ARC + reach(level, x, y);
    const box: LabelBox = { ...level, x: vertex.x + x * far, y: vertex.y + y * far };
    const labelled = cost + labelCost(search.sheet, box);
    if (labelled >= search.limit) continue;
    offer(search, { ...drawn, cost: labelled, box, anchor: 'middle' });
  }
}

function offerOnLanding(
  search: Search,
  { vertex, start, end }: AngleRequest,
  radius: number,
  drawn: Drawn,
): void {
  const { sheet, lettering } = search;
  // Off the middle, where the throat of a weld runs.
  const angle = start + (end - start) * LEADER_SHARE;
  const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
  const foot = { x: vertex.x + ux * radius, y: vertex.y + uy * radius };
  for (const length of LEADERS) {
    const cost = drawn.cost + length * COST.leaderPx;
    if (cost >= search.limit) return;
    const knee = { x: foot.x + ux * length, y: foot.y + uy * length };
    const leader: Line = { x1: foot.x, y1: foot.y, x2: knee.x, y2: knee.y };
    for (const side of [1, -1] as const) {
      const x = knee.x + side * LANDING;
      const box = besideBox(x, knee.y, side, drawn.wording.width, labelHeight(lettering));
      const labelled = cost + labelCost(sheet, box) + (side * ux < 0 ? 1 : 0);
      if (labelled >= search.limit) continue;
      const landing: Line = { x1: knee.x, y1: knee.y, x2: x, y2: knee.y };
      offer(search, {
        ...drawn,
        cost: labelled + lineCost(sheet, leader) + lineCost(sheet, landing),
        box,
        anchor: side === 1 ? 'start' : 'end',
        lines: [...drawn.lines, leader, landing],
        landings: [landing],
      });
    }
  }
}

/** The arc as short lines, for keeping labels off it; the arc itself is drawn round. */
function arcLines({ centre, radius, start, end }: Arc): readonly Line[] {
  const lines: Line[] = [];
  for (let step = 0; step < STEPS; step++) {
    const one = start + ((end - start) * step) / STEPS;
    const two = start + ((end - start) * (step + 1)) / STEPS;
    lines.push({
      x1: centre.x + radius * Math.cos(one),
      y1: centre.y + radius * Math.sin(one),
      x2: centre.x + radius * Math.cos(two),
      y2: centre.y + radius * Math.sin(two),
    });
  }
  return lines;
}

/** An arrowhead on the arc, pointing clockwise (1) or counter-clockwise (-1). */
function arcHead(vertex: Point, radius: number, angle: number, sign: 1 | -1): Arrowhead {
  return {
    x: vertex.x + radius * Math.cos(angle),
    y: vertex.y + radius * Math.sin(angle),
    dx: -Math.sin(angle) * sign,
    dy: Math.cos(angle) * sign,
  };
}
