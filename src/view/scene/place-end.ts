import type { Point } from '../../geometry/index.ts';
import type { Arrowhead, Lettering } from './dimension-request.ts';
import type { DrawingSheet } from './drawing-sheet.ts';
import type { Line } from './label-box.ts';
import {
  besideBox,
  drawingCost,
  labelCost,
  labelHeight,
  LANDING,
  type Offer,
  TEXT_GAP,
  type Wording,
} from './placement.ts';

/** What an end label belongs to: the parts of its dimension that are drawn in any case. */
export interface EndLabel {
  /** where the line ends that the label is carried on from */
  readonly tip: Point;
  /** unit direction outwards */
  readonly along: Point;
  readonly base: number;
  readonly lines: readonly Line[];
  readonly extensions: readonly Line[];
  readonly heads: readonly Arrowhead[];
  readonly origin: Point | null;
  /** side that an upright line's text goes to first: away from the weld */
  readonly side?: 1 | -1;
}

/** Below this slope a tail counts as level and its text stands straight behind it. */
const LEVEL = 0.2;
const SHORTEST_TAIL = 22;
const LONGEST_TAIL = 264;
const TAIL_STEP = 11;

/** Offers the places for a label at the end of a line carried on past its tip. */
export function offerEndLabels(
  sheet: DrawingSheet,
  lettering: Lettering,
  wording: Wording,
  end: EndLabel,
  offer: Offer,
): boolean {
  const { tip, along } = end;
  const height = labelHeight(lettering);
  for (let tail = SHORTEST_TAIL; tail <= LONGEST_TAIL; tail += TAIL_STEP) {
    const x = tip.x + along.x * tail;
    const y = tip.y + along.y * tail;
    if (x < sheet.left || x > sheet.right || y < sheet.top || y > sheet.bottom) return false;
    const upright = Math.abs(along.x) < LEVEL / 2;
    const forward = upright ? (end.side ?? 1) : along.x < 0 ? -1 : 1;
    const level = Math.abs(along.y) < LEVEL;
    for (const side of level ? [forward] : [forward, -forward]) {
      const sideways = side as 1 | -1;
      const column = level ? null : columnX(sheet, x, sideways);
      const plain = level ? x : x + sideways * LANDING;
      for (const start of column === null ? [plain] : [column, plain]) {
        const box = besideBox(start, y, sideways, wording.width, height);
        const labelled = labelCost(sheet, box);
        if (labelled === Infinity) continue;
        const leader: Line = { x1: tip.x, y1: tip.y, x2: x, y2: y };
        const landing: Line = { x1: x, y1: y, x2: start, y2: y };
        const lines = level ? [...end.lines, leader] : [...end.lines, leader, landing];
        const drawn = drawingCost(sheet, lines, end.extensions);
        if (drawn === Infinity) continue;
        const awkward = (sideways === forward ? 0 : 22) + (start === plain && !level ? 4 : 0);
        const cost =
          end.base + wording.cost + labelled + drawn + awkward + (tail - SHORTEST_TAIL) * 0.12;
        const done = offer({
          cost,
          box,
          wording,
          anchor: sideways === 1 ? 'start' : 'end',
          lines,
          landings: level ? [leader] : [landing],
          extensions: end.extensions,
          arc: null,
          heads: end.heads,
          origin: end.origin,
        });
        if (done) return true;
      }
    }
  }
  return false;
}

/** Where the landing from `x` ends when it can reach the drawing's shared left edge of face labels. */
function columnX(sheet: DrawingSheet, x: number, side: 1 | -1): number | null {
  if (sheet.column === null || side === -1) return null;
  const end = sheet.column - TEXT_GAP;
  return end >= x + LANDING / 2 && end <= x + 190 ? end : null;
}
