import type { Point } from '../../geometry/index.ts';
import type { Arrowhead, LinearRequest, RunningRequest, Way } from './dimension-request.ts';
import { labelCost } from './drawing-sheet.ts';
import type { Line } from './label-box.ts';
import { offerEndLabels } from './place-end.ts';
import {
  aboveLineBox,
  drawingCost,
  offer,
  type Search,
  type Site,
  type Wording,
} from './placement.ts';
import { extensionFrom } from './extension-line.ts';

/** Under this much room the arrowheads turn outside, as a multiple of their length. */
const ROOM = 40 / 11;
/** Free line at each end of a text that stands on it, px. */
const TEXT_ROOM = 10;
/** Line drawn behind an arrowhead that stands outside, px. */
const STUB = 13;
const COST = {
  /** each level further down the list */
  level: 2,
  /** text at the end that doesn't look into the air */
  inner: 24,
  /** text at the end that belongs on its line: more than a shorter wording */
  notOnLine: 34,
  /** text on a line that others run close to: only where no fair place is left past the arrow */
  onCrowdedLine: 75,
  slide: 10,
} as const;
/** Places along the line for a text that stands on it, best first. */
const SLIDES = [0.5, 0.42, 0.58, 0.34, 0.66] as const;

/** A dimension line with what is drawn with it. */
interface DimensionLine {
  readonly a: Point;
  readonly along: Point;
  readonly length: number;
  readonly base: number;
  /** which of its levels it stands on, counted from the best */
  readonly place: number;
  readonly lines: readonly Line[];
  readonly extensions: readonly Line[];
  readonly heads: readonly Arrowhead[];
  readonly origin: Point | null;
}

/** Offers the ways to draw a distance with a dimension line set off from it. */
export function offerLinear(search: Search, request: LinearRequest, wording: Wording): void {
  const { levels, instead } = request;
  if (offerWay(search, request, wording, request, 0) || instead === undefined) return;
  offerWay(search, request, wording, instead(), levels.length);
}

/** Offers the levels of one way, counted on from `first`; whether nothing after them is worth a look. */
function offerWay(
  search: Search,
  request: LinearRequest,
  wording: Wording,
  { off, levels }: Way,
  first: number,
): boolean {
  let place = first;
  for (const level of levels) {
    const here = place;
    place++;
    if (search.only !== null && search.only.level !== here) continue;
    if (here * COST.level + wording.cost >= search.limit) return true;
    offerAtLevel(search, request, wording, off, level, here);
    if (search.only !== null) return true;
  }
  return false;
}

function offerAtLevel(
  search: Search,
  request: LinearRequest,
  wording: Wording,
  off: Point,
  level: number,
  place: number,
): void {
  const { from, to, bare, label, outer } = request;
  const { sheet, lettering, only } = search;
  const base = place * COST.level;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  // no room for even a hairline between the ends: nothing to point at
  const along =
    length < 1e-6
      ? { x: -off.y, y: off.x }
      : { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const turned = length < ROOM * lettering.arrowLength;
  const a = { x: from.x + off.x * level, y: from.y + off.y * level };
  const b = { x: to.x + off.x * level, y: to.y + off.y * level };
  const extensions: Line[] = [];
  if (bare !== 'both' && bare !== 'from')
    extensions.push(...extensionFrom(sheet, from, off, level));
  if (bare !== 'both' && bare !== 'to') extensions.push(...extensionFrom(sheet, to, off, level));
  const lines: Line[] = [{ x1: a.x, y1: a.y, x2: b.x, y2: b.y }];
  const heads: Arrowhead[] = turned
    ? [head(a, along, 1), head(b, along, -1)]
    : [head(a, along, -1), head(b, along, 1)];
  const drawn = { a, along, length, base, place, lines, extensions, heads, origin: null };
  if (!turned && label === 'on' && mayBe(only, 'on')) offerOnLine(search, wording, drawn);
  const stub = lettering.arrowLength + STUB;
  for (const end of ['outer', 'inner'] as const) {
    if (!mayBe(only, end)) continue;
    const atTo = (outer === 'to') === (end === 'outer');
    const [tip, far] = atTo ? [b, a] : [a, b];
    const out = atTo ? along : { x: -along.x, y: -along.y };
    offerEndLabels(search, wording, {
      tip,
      along: out,
      level: place,
      end,
      base: base + (end === 'outer' ? 0 : COST.inner) + (label === 'on' ? COST.notOnLine : 0),
      lines: turned ? [...lines, lineFrom(far, out, -stub)] : lines,
      extensions,
      heads,
      origin: null,
      side: off.x * level < -0.5 ? -1 : 1,
    });
  }
}

/** Offers the ways to draw one arrow of a running dimension: text on the line, or past its arrow. */
export function offerRunning(search: Search, request: RunningRequest, wording: Wording): void {
  const { from, to, label } = request;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  // a throat of nothing has no direction to be drawn in
  if (length < 1e-6) return;
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const lines: Line[] = [{ x1: from.x, y1: from.y, x2: to.x, y2: to.y }];
  const heads = length < search.lettering.arrowLength * 1.5 ? [] : [head(to, along, 1)];
  const [extensions, origin] = [[], from];
  if (label !== 'end' && mayBe(search.only, 'on')) {
    const base = label === 'on' ? 0 : COST.onCrowdedLine;
    const on = { a: from, along, length, base, place: 0, lines, extensions, heads, origin };
    offerOnLine(search, wording, on);
  }
  if (!mayBe(search.only, 'outer')) return;
  const base = label === 'on' ? COST.notOnLine : 0;
  const end = 'outer';
  offerEndLabels(search, wording, {
    level: 0,
    end,
    tip: to,
    along,
    base,
    lines,
    extensions,
    heads,
    origin,
    next: request.next,
  });
}

function offerOnLine(search: Search, wording: Wording, line: DimensionLine): void {
  const { sheet, lettering, only } = search;
  const { a, along, length, place, lines, extensions, heads, origin } = line;
  if (wording.width + 2 * TEXT_ROOM > length) return;
  const bare = line.base + wording.cost;
  const base = bare + drawingCost(search, lines, extensions, search.limit - bare);
  const half = wording.width / 2 + TEXT_ROOM;
  for (const share of SLIDES) {
    if (only !== null && only.along !== share) continue;
    if (share * length < half || (1 - share) * length < half) continue;
    const cost = base + Math.abs(share - 0.5) * COST.slide;
    if (cost >= search.limit) return;
    const x = a.x + along.x * length * share;
    const y = a.y + along.y * length * share;
    const box = aboveLineBox(x, y, along.x, along.y, wording.width, lettering);
    offer(search, {
      cost: cost + labelCost(sheet, box),
      site: { name: wording.name, level: place, end: 'on', along: share, landing: null },
      box,
      wording,
      anchor: 'middle',
      lines,
      landings: [],
      extensions,
      arc: null,
      heads,
      origin,
    });
  }
}

const mayBe = (only: Site | null, end: Site['end']): boolean => only === null || only.end === end;

function lineFrom(tip: Point, along: Point, length: number): Line {
  return { x1: tip.x, y1: tip.y, x2: tip.x + along.x * length, y2: tip.y + along.y * length };
}

function head(tip: Point, along: Point, sign: 1 | -1): Arrowhead {
  return { x: tip.x, y: tip.y, dx: along.x * sign, dy: along.y * sign };
}
