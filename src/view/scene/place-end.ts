import type { Point } from '../../geometry/index.ts';
import type { Arrowhead } from './dimension-request.ts';
import { type DrawingSheet, labelCost } from './drawing-sheet.ts';
import type { Line } from './label-box.ts';
import {
  besideBox,
  drawingCost,
  labelHeight,
  leaderCost,
  LANDING,
  offer,
  type Search,
  type Site,
  TEXT_GAP,
  type Wording,
} from './placement.ts';

/** What an end label belongs to: the parts of its dimension that are drawn in any case. */
export interface EndLabel {
  /** which level of which end, to find the place again */
  readonly level: number;
  readonly end: Exclude<Site['end'], 'on'>;
  /** where the line ends that the label is carried on from */
  readonly tip: Point;
  /** unit direction outwards */
  readonly along: Point;
  readonly base: number;
  readonly lines: readonly Line[];
  readonly extensions: readonly Line[];
  readonly heads: readonly Arrowhead[];
  readonly origin: Point | null;
  /** how far past the tip another arrow ends that the line must not seem to belong to, px */
  readonly next?: number | undefined;
  /** side that an upright line's text goes to first: away from the weld */
  readonly side?: 1 | -1;
}

/** Below this slope a tail counts as level and its text stands straight behind it. */
const LEVEL = 0.2;
const SHORTEST_TAIL = 22;
const LONGEST_TAIL = 264;
const TAIL_STEP = 11;
const TAILS = Array.from(
  { length: (LONGEST_TAIL - SHORTEST_TAIL) / TAIL_STEP + 1 },
  (_, place) => SHORTEST_TAIL + place * TAIL_STEP,
);
/** With one that ends between its own arrow and the next, which the others would seem to belong to. */
const SQUEEZED_TAILS = [6, ...TAILS];
const COST = {
  tailPx: 0.12,
  backwards: 22,
  outOfColumn: 4,
  pastNext: 30,
  /** its landing can't but cross the face that the next arrow ends at */
  squeezed: -30,
} as const;

/** Offers the places for a label at the end of a line carried on past its tip. */
export function offerEndLabels(search: Search, wording: Wording, end: EndLabel): void {
  const { sheet, only } = search;
  const { tip, along } = end;
  const bare = end.base + wording.cost;
  if (bare >= search.limit) return;
  const base = bare + drawingCost(search, end.lines, end.extensions, search.limit - bare);
  const upright = Math.abs(along.x) < LEVEL / 2;
  const forward = upright ? (end.side ?? 1) : along.x < 0 ? -1 : 1;
  const level = Math.abs(along.y) < LEVEL;
  const next = end.next ?? Infinity;
  for (const tail of next / 2 < SHORTEST_TAIL ? SQUEEZED_TAILS : TAILS) {
    if (only !== null && only.along !== tail) continue;
    const reach =
      tail < SHORTEST_TAIL
        ? COST.squeezed
        : (tail > next / 2 ? COST.pastNext : 0) + (tail - SHORTEST_TAIL) * COST.tailPx;
    const far = base + reach;
    if (far >= search.limit) return;
    const x = tip.x + along.x * tail;
    const y = tip.y + along.y * tail;
    if (x < sheet.left || x > sheet.right || y < sheet.top || y > sheet.bottom) return;
    const leader: Line = { x1: tip.x, y1: tip.y, x2: x, y2: y };
    const cost = far + leaderCost(search, leader, search.limit - far);
    // A longer leader crosses no less.
    if (cost >= search.limit) return;
    if (level) {
      offerOn(search, wording, end, leader, {
        tail,
        landing: 'straight',
        start: x,
        side: forward,
        cost,
      });
      continue;
    }
    const column = forward === 1 || upright ? columnX(sheet, x) : null;
    if (column !== null) {
      const back = forward === 1 ? 0 : COST.backwards;
      offerOn(search, wording, end, leader, {
        tail,
        landing: 'column',
        start: column,
        side: 1,
        cost: cost + back,
      });
    }
    const plain = cost + COST.outOfColumn;
    offerOn(search, wording, end, leader, {
      tail,
      landing: 'forward',
      start: x + forward * LANDING,
      side: forward,
      cost: plain,
    });
    const back = forward === 1 ? -1 : 1;
    const backwards = plain + COST.backwards;
    offerOn(search, wording, end, leader, {
      tail,
      landing: 'back',
      start: x + back * LANDING,
      side: back,
      cost: backwards,
    });
  }
}

interface Landing {
  readonly tail: number;
  readonly landing: NonNullable<Site['landing']>;
  /** where the landing ends and the text begins after its gap */
  readonly start: number;
  readonly side: 1 | -1;
  /** the leader's own included */
  readonly cost: number;
}

function offerOn(
  search: Search,
  wording: Wording,
  end: EndLabel,
  leader: Line,
  { tail, landing: way, start, side, cost }: Landing,
): void {
  if (cost >= search.limit) return;
  const { sheet, lettering, only } = search;
  if (only !== null && only.landing !== way) return;
  const { x2: x, y2: y } = leader;
  const box = besideBox(start, y, side, wording.width, labelHeight(lettering));
  const labelled = cost + labelCost(sheet, box);
  if (labelled >= search.limit) return;
  const landing: Line = { x1: x, y1: y, x2: start, y2: y };
  const straight = start === x;
  const drawn = labelled + (straight ? 0 : leaderCost(search, landing, search.limit - labelled));
  if (drawn >= search.limit) return;
  offer(search, {
    cost: drawn,
    site: { name: wording.name, level: end.level, end: end.end, along: tail, landing: way },
    box,
    wording,
    anchor: side === 1 ? 'start' : 'end',
    lines: straight ? [...end.lines, leader] : [...end.lines, leader, landing],
    landings: straight ? [leader] : [landing],
    extensions: end.extensions,
    arc: null,
    heads: end.heads,
    origin: end.origin,
  });
}

/** Where the landing from `x` ends when it can reach the drawing's shared left edge of face labels. */
function columnX(sheet: DrawingSheet, x: number): number | null {
  if (sheet.column === null) return null;
  const end = sheet.column - TEXT_GAP;
  return end >= x + LANDING / 2 && end <= x + 190 ? end : null;
}
