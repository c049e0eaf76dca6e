import type { LabelBox, Line } from './label-box.ts';

/**
 * Straight lines of the drawing one after the other, four numbers to a line: x1 y1 x2 y2, px. Bare,
 * for at every move of a hand some hundred are made and each is compared with every label and leader.
 */
export type Lines = readonly number[];

export function addLines(all: number[], lines: readonly Line[]): void {
  for (const { x1, y1, x2, y2 } of lines) all.push(x1, y1, x2, y2);
}

/** How many of the lines meet the box grown by `clear` px on every side; counted no further than `enough`. */
export function countMeeting(
  lines: Lines,
  box: LabelBox,
  clear: number,
  enough = Infinity,
): number {
  const { x, y, cos, sin } = box;
  const halfWidth = box.halfWidth + clear;
  const halfHeight = box.halfHeight + clear;
  const reachX = halfWidth * Math.abs(cos) + halfHeight * Math.abs(sin);
  const reachY = halfWidth * Math.abs(sin) + halfHeight * Math.abs(cos);
  let count = 0;
  for (let at = 0; at < lines.length; at += 4) {
    const x1 = (lines[at] as number) - x;
    const x2 = (lines[at + 2] as number) - x;
    if ((x1 < -reachX && x2 < -reachX) || (x1 > reachX && x2 > reachX)) continue;
    const y1 = (lines[at + 1] as number) - y;
    const y2 = (lines[at + 3] as number) - y;
    if ((y1 < -reachY && y2 < -reachY) || (y1 > reachY && y2 > reachY)) continue;
    if (runsThrough(box, x1, y1, x2, y2, clear) && ++count >= enough) break;
  }
  return count;
}

/** Whether any of the lines meets the box grown by `clear`. */
export function anyMeets(lines: Lines, box: LabelBox, clear: number): boolean {
  return countMeeting(lines, box, clear, 1) > 0;
}

/** Whether the line meets the box grown by `clear` px on every side. */
export function lineMeetsBox(box: LabelBox, { x1, y1, x2, y2 }: Line, clear: number): boolean {
  return runsThrough(box, x1 - box.x, y1 - box.y, x2 - box.x, y2 - box.y, clear);
}

/** Whether a line, told from the box's middle, has a share between both pairs of the grown box's sides. */
function runsThrough(
  box: LabelBox,
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  clear: number,
): boolean {
  const { cos, sin } = box;
  const halfWidth = box.halfWidth + clear;
  const halfHeight = box.halfHeight + clear;
  const x = x1 * cos + y1 * sin;
  const y = y1 * cos - x1 * sin;
  const dx = x2 * cos + y2 * sin - x;
  const dy = y2 * cos - x2 * sin - y;
  const from = Math.max(0, entry(x, dx, halfWidth), entry(y, dy, halfHeight));
  const to = Math.min(1, exit(x, dx, halfWidth), exit(y, dy, halfHeight));
  return from <= to;
}

const ALONG = 1e-12;

/** Share of its length at which a line comes between a pair of sides; one that runs along them is there from its start or never. */
function entry(at: number, step: number, half: number): number {
  if (Math.abs(step) < ALONG) return Math.abs(at) <= half ? 0 : Infinity;
  return -at / step - half / Math.abs(step);
}

/** Share of its length at which it leaves them. */
function exit(at: number, step: number, half: number): number {
  return Math.abs(step) < ALONG ? 1 : -at / step + half / Math.abs(step);
}

/** How many of the lines the line properly crosses; counted no further than `enough`. */
export function countCrossings(lines: Lines, line: Line, enough = Infinity): number {
  const left = Math.min(line.x1, line.x2);
  const right = Math.max(line.x1, line.x2);
  const top = Math.min(line.y1, line.y2);
  const bottom = Math.max(line.y1, line.y2);
  let count = 0;
  for (let at = 0; at < lines.length; at += 4) {
    const x1 = lines[at] as number;
    const x2 = lines[at + 2] as number;
    if ((x1 < left && x2 < left) || (x1 > right && x2 > right)) continue;
    const y1 = lines[at + 1] as number;
    const y2 = lines[at + 3] as number;
    if ((y1 < top && y2 < top) || (y1 > bottom && y2 > bottom)) continue;
    if (crossingShare(line, { x1, y1, x2, y2 }) !== NO_CROSSING && ++count >= enough) break;
  }
  return count;
}

/** Two lines nearer than this that run the same way are hard to tell apart, px; nearer than the least they are one. */
const CROWDED = { least: 1.5, most: 12, overlap: 6 } as const;

/** Whether one of the lines runs alongside the line, too near to be told from it. */
export function runsBeside(lines: Lines, line: Line): boolean {
  const { x1, y1 } = line;
  const dx = line.x2 - x1;
  const dy = line.y2 - y1;
  const length = Math.hypot(dx, dy);
  // a line of no length runs nowhere
  if (length < CROWDED.overlap) return false;
  for (let at = 0; at < lines.length; at += 4) {
    const px = (lines[at] as number) - x1;
    const py = (lines[at + 1] as number) - y1;
    const aside = Math.abs(dx * py - dy * px) / length;
    if (aside < CROWDED.least || aside > CROWDED.most) continue;
    const qx = (lines[at + 2] as number) - x1;
    const qy = (lines[at + 3] as number) - y1;
    const size = Math.hypot(qx - px, qy - py);
    const turn = dx * (qy - py) - dy * (qx - px);
    if (size < CROWDED.overlap || Math.abs(turn) > 0.05 * length * size) continue;
    const p = (dx * px + dy * py) / length;
    const q = (dx * qx + dy * qy) / length;
    if (Math.min(length, Math.max(p, q)) - Math.max(0, Math.min(p, q)) > CROWDED.overlap)
      return true;
  }
  return false;
}

const TOUCH = 3;

/** What `crossingShare` gives when there is no crossing; a number, for it is asked thousands of times. */
export const NO_CROSSING = -1;

/**
 * Where `crossing` crosses `line`, as a share of `line`; `NO_CROSSING` when it
 * doesn't, or only touches within 3 px of `line`'s ends.
 */
export function crossingShare(line: Line, crossing: Line): number {
  const { x1, y1, x2, y2 } = line;
  const { x1: x3, y1: y3, x2: x4, y2: y4 } = crossing;
  const dx = x2 - x1;
  const dy = y2 - y1;
  const ex = x4 - x3;
  const ey = y4 - y3;
  const turn = dx * ey - dy * ex;
  // parallel lines don't cross
  if (Math.abs(turn) < 1e-9) return NO_CROSSING;
  const along = ((x3 - x1) * ey - (y3 - y1) * ex) / turn;
  const other = ((x3 - x1) * dy - (y3 - y1) * dx) / turn;
  if (other < 0 || other > 1) return NO_CROSSING;
  const margin = TOUCH / Math.hypot(dx, dy);
  return along > margin && along < 1 - margin ? along : NO_CROSSING;
}

/** Whether a place lies inside the closed outlines that `lines` holds from `from` to `to`: an even-odd count to its right. */
export function insideLines(lines: Lines, from: number, to: number, x: number, y: number): boolean {
  let odd = false;
  for (let at = from; at < to; at += 4) {
    const y1 = lines[at + 1] as number;
    const y2 = lines[at + 3] as number;
    if (y1 > y === y2 > y) continue;
    const x1 = lines[at] as number;
    if (x < x1 + ((y - y1) * ((lines[at + 2] as number) - x1)) / (y2 - y1)) odd = !odd;
  }
  return odd;
}
