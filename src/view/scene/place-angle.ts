import type { Point } from '../../geometry/index.ts';
import type { AngleRequest, Arrowhead, Lettering } from './dimension-request.ts';
import type { DrawingSheet } from './drawing-sheet.ts';
import { type LabelBox, type Line, reach, uprightBox } from './label-box.ts';
import {
  type Arc,
  besideBox,
  drawingCost,
  labelCost,
  labelHeight,
  LANDING,
  type Offer,
  type Placement,
  type Wording,
} from './placement.ts';
import { visibleReach } from './visible-reach.ts';

const EXTENSION_PAST = 6;
const EXTENSION_GAP = 10;
/** Under this much arc the arrowheads turn outside, as a multiple of their length. */
const ROOM = 34 / 11;
/** How much arc is drawn beyond an arm when the arrowheads stand outside, px. */
const STUB = 22;
const STEPS = 8;
/** Leaders of angles that have no room beside their arc, px. */
const LEADERS = [18, 30, 44, 60, 80, 104, 132] as const;
/** Places along the arc for the label, as shares of it, best first. */
const SHARES = [0.5, 0.35, 0.65, 0.2, 0.8] as const;

/** Offers the ways to draw an angle: its arc at each radius, the text just outside it or on a landing. */
export function offerAngle(
  sheet: DrawingSheet,
  lettering: Lettering,
  request: AngleRequest,
  wording: Wording,
  offer: Offer,
): boolean {
  const { vertex, start, end, radii } = request;
  const height = labelHeight(lettering);
  for (const [index, radius] of radii.entries()) {
    const sweep = end - start;
    const turned = sweep * radius < ROOM * lettering.arrowLength;
    const spare = turned ? STUB / radius : 0;
    const arc: Arc = { centre: vertex, radius, start: start - spare, end: end + spare };
    const lines = arcLines(arc);
    const heads = [
      arcHead(vertex, radius, start, turned ? 1 : -1),
      arcHead(vertex, radius, end, turned ? -1 : 1),
    ];
    const extensions = [
      ...armLine(sheet, vertex, start, radius),
      ...armLine(sheet, vertex, end, radius),
    ];
    const drawn = drawingCost(sheet, lines, extensions);
    if (drawn === Infinity) continue;
    const base = index * 2 + drawn + wording.cost;
    const common = { wording, lines, landings: [], extensions, arc, heads, origin: null };
    for (const share of SHARES) {
      const angle = start + sweep * share;
      const out = { x: Math.cos(angle), y: Math.sin(angle) };
      const level = uprightBox(0, 0, wording.width, height);
      const far = radius + 6 + reach(level, out.x, out.y);
      const box: LabelBox = { ...level, x: vertex.x + out.x * far, y: vertex.y + out.y * far };
      const labelled = labelCost(sheet, box);
      if (labelled === Infinity) continue;
      const cost = base + labelled + Math.abs(share - 0.5) * 12;
      if (offer({ ...common, cost, box, anchor: 'middle' })) return true;
    }
    if (
      offerOnLanding(sheet, request, radius, wording, height, { ...common, cost: base + 12 }, offer)
    ) {
      return true;
    }
  }
  return false;
}

function offerOnLanding(
  sheet: DrawingSheet,
  { vertex, start, end }: AngleRequest,
  radius: number,
  wording: Wording,
  height: number,
  common: Omit<Placement, 'box' | 'anchor'>,
  offer: Offer,
): boolean {
  const middle = (start + end) / 2;
  const out = { x: Math.cos(middle), y: Math.sin(middle) };
  const foot = { x: vertex.x + out.x * radius, y: vertex.y + out.y * radius };
  for (const length of LEADERS) {
    const knee = { x: foot.x + out.x * length, y: foot.y + out.y * length };
    for (const side of out.x < 0 ? ([-1, 1] as const) : ([1, -1] as const)) {
      const x = knee.x + side * LANDING;
      const box = besideBox(x, knee.y, side, wording.width, height);
      const labelled = labelCost(sheet, box);
      if (labelled === Infinity) continue;
      const leader = { x1: foot.x, y1: foot.y, x2: knee.x, y2: knee.y };
      const landing = { x1: knee.x, y1: knee.y, x2: x, y2: knee.y };
      const drawn = drawingCost(sheet, [leader, landing], []);
      if (drawn === Infinity) continue;
      const cost = common.cost + labelled + drawn + length * 0.1;
      const lines = [...common.lines, leader, landing];
      const anchor = side === 1 ? 'start' : 'end';
      if (offer({ ...common, cost, box, anchor, lines, landings: [landing] })) return true;
    }
  }
  return false;
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

/** An arm's extension line, as far as no visible edge stands for it. */
function armLine(
  sheet: DrawingSheet,
  vertex: Point,
  angle: number,
  radius: number,
): readonly Line[] {
  const out = { x: Math.cos(angle), y: Math.sin(angle) };
  const covered = visibleReach(sheet.outline, vertex, out);
  const start = covered > EXTENSION_GAP ? covered : EXTENSION_GAP;
  const end = radius + EXTENSION_PAST;
  if (start >= end - 2) return [];
  return [
    {
      x1: vertex.x + out.x * start,
      y1: vertex.y + out.y * start,
      x2: vertex.x + out.x * end,
      y2: vertex.y + out.y * end,
    },
  ];
}
