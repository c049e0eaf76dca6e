import type { Point } from '../../geometry/index.ts';
import type { Arrowhead, Lettering, LinearRequest, RunningRequest } from './dimension-request.ts';
import type { DrawingSheet } from './drawing-sheet.ts';
import type { Line } from './label-box.ts';
import { offerEndLabels } from './place-end.ts';
import { aboveLineBox, drawingCost, labelCost, type Offer, type Wording } from './placement.ts';
import { visibleReach } from './visible-reach.ts';

/** An extension line starts this far off its point and runs this far past the dimension line, px. */
const EXTENSION_GAP = 10;
const EXTENSION_PAST = 6;
/** Under this much room the arrowheads turn outside, as a multiple of their length. */
const ROOM = 40 / 11;
/** Free line at each end of a text that stands on it, px. */
const TEXT_ROOM = 10;
/** What a text that belongs on its line costs at the end of it: more than a shorter wording. */
const PREFER_ON = 34;
/** Places along the line for a text that stands on it, best first. */
const SLIDES = [0.5, 0.42, 0.58, 0.34, 0.66] as const;

/** Offers the ways to draw a distance with a dimension line set off from it. */
export function offerLinear(
  sheet: DrawingSheet,
  lettering: Lettering,
  request: LinearRequest,
  wording: Wording,
  offer: Offer,
): boolean {
  const { from, to } = request;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  // no room for even a hairline between the ends: nothing to point at
  const along =
    length < 1e-6
      ? { x: -request.off.y, y: request.off.x }
      : { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const turned = length < ROOM * lettering.arrowLength;
  const ways = [request, ...(request.instead ?? [])].flatMap(({ off, levels }) =>
    levels.map((level) => ({ off, level })),
  );
  for (const [index, { off, level }] of ways.entries()) {
    const a = { x: from.x + off.x * level, y: from.y + off.y * level };
    const b = { x: to.x + off.x * level, y: to.y + off.y * level };
    const extensions = [
      ...(request.bare === 'from' || request.bare === 'both'
        ? []
        : extensionLine(sheet, from, off, level)),
      ...(request.bare === 'to' || request.bare === 'both'
        ? []
        : extensionLine(sheet, to, off, level)),
    ];
    const stub = lettering.arrowLength + 13;
    const lines: Line[] = [{ x1: a.x, y1: a.y, x2: b.x, y2: b.y }];
    const heads: Arrowhead[] = turned
      ? [head(a, along, 1), head(b, along, -1)]
      : [head(a, along, -1), head(b, along, 1)];
    const base = index * 2;
    if (!turned && request.label === 'on') {
      if (
        offerOnLine(
          sheet,
          lettering,
          wording,
          { a, b, along, length, base, lines, heads, extensions },
          offer,
        )
      ) {
        return true;
      }
    }
    for (const end of ['outer', 'inner'] as const) {
      const atTo = (request.outer === 'to') === (end === 'outer');
      const tip = atTo ? b : a;
      const far = atTo ? a : b;
      const out = atTo ? along : { x: -along.x, y: -along.y };
      const shown = turned ? [...lines, stubLine(far, out, -stub)] : lines;
      const placed = offerEndLabels(
        sheet,
        lettering,
        wording,
        {
          tip,
          along: out,
          base: base + (end === 'outer' ? 0 : 24) + (request.label === 'on' ? PREFER_ON : 0),
          lines: shown,
          extensions,
          heads,
          origin: null,
          side: off.x * (level < 0 ? -1 : 1) < -0.5 ? -1 : 1,
        },
        offer,
      );
      if (placed) return true;
    }
  }
  return false;
}

/** Offers the ways to draw one arrow of a running dimension: text on the line, or past its arrow. */
export function offerRunning(
  sheet: DrawingSheet,
  lettering: Lettering,
  request: RunningRequest,
  wording: Wording,
  offer: Offer,
): boolean {
  const { from, to } = request;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  // a throat of nothing has no direction to be drawn in
  if (length < 1e-6) return false;
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const lines: Line[] = [{ x1: from.x, y1: from.y, x2: to.x, y2: to.y }];
  const heads = length < lettering.arrowLength * 1.5 ? [] : [head(to, along, 1)];
  const drawn = { a: from, b: to, along, length, base: 0, lines, heads, extensions: [] };
  if (request.label === 'on') {
    if (offerOnLine(sheet, lettering, wording, { ...drawn, origin: from }, offer)) return true;
  }
  return offerEndLabels(
    sheet,
    lettering,
    wording,
    {
      tip: to,
      along,
      base: request.label === 'on' ? PREFER_ON : 0,
      lines,
      extensions: [],
      heads,
      origin: from,
    },
    offer,
  );
}

interface OnLine {
  readonly a: Point;
  readonly b: Point;
  readonly along: Point;
  readonly length: number;
  readonly base: number;
  readonly lines: readonly Line[];
  readonly extensions: readonly Line[];
  readonly heads: readonly Arrowhead[];
  readonly origin?: Point;
}

function offerOnLine(
  sheet: DrawingSheet,
  lettering: Lettering,
  wording: Wording,
  line: OnLine,
  offer: Offer,
): boolean {
  const { a, along, length } = line;
  if (wording.width + 2 * TEXT_ROOM > length) return false;
  let drawn: number | null = null;
  for (const share of SLIDES) {
    const half = wording.width / 2 + TEXT_ROOM;
    if (share * length < half || (1 - share) * length < half) continue;
    const x = a.x + along.x * length * share;
    const y = a.y + along.y * length * share;
    const box = aboveLineBox(x, y, along.x, along.y, wording.width, lettering);
    const labelled = labelCost(sheet, box);
    if (labelled === Infinity) continue;
    drawn ??= drawingCost(sheet, line.lines, line.extensions);
    if (drawn === Infinity) return false;
    const done = offer({
      cost: line.base + wording.cost + labelled + drawn + Math.abs(share - 0.5) * 10,
      box,
      wording,
      anchor: 'middle',
      lines: line.lines,
      landings: [],
      extensions: line.extensions,
      arc: null,
      heads: line.heads,
      origin: line.origin ?? null,
    });
    if (done) return true;
  }
  return false;
}

/** From 10 px off its point, or where a visible edge that serves as its first part ends, to 6 px past the line. */
function extensionLine(
  sheet: DrawingSheet,
  point: Point,
  off: Point,
  level: number,
): readonly Line[] {
  const out = level < 0 ? { x: -off.x, y: -off.y } : off;
  const covered = visibleReach(sheet.outline, point, out);
  const start = covered > EXTENSION_GAP ? covered : EXTENSION_GAP;
  const end = Math.abs(level) + EXTENSION_PAST;
  if (start >= end - 2) return [];
  return [
    {
      x1: point.x + out.x * start,
      y1: point.y + out.y * start,
      x2: point.x + out.x * end,
      y2: point.y + out.y * end,
    },
  ];
}

function stubLine(tip: Point, along: Point, length: number): Line {
  return { x1: tip.x, y1: tip.y, x2: tip.x + along.x * length, y2: tip.y + along.y * length };
}

function head(tip: Point, along: Point, sign: 1 | -1): Arrowhead {
  return { x: tip.x, y: tip.y, dx: along.x * sign, dy: along.y * sign };
}
