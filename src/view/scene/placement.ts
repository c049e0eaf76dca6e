import type { Point } from '../../geometry/index.ts';
import type { Arrowhead, DimensionRequest, Lettering } from './dimension-request.ts';
import { type DrawingSheet, extensionCost, isBlocked, lineCost } from './drawing-sheet.ts';
import type { LabelBox, Line } from './label-box.ts';
import { textWidth } from './text-width.ts';

/** One wording of a label; shorter wordings cost more. */
export interface Wording {
  readonly name: string;
  readonly value: string;
  readonly width: number;
  readonly cost: number;
}

/**
 * Which of a dimension's possible places one is: enough to find it again on a section that has moved
 * a little. An angle's and one on free paper have none: they are looked for anew.
 */
export interface Site {
  readonly name: string;
  readonly level: number;
  readonly end: 'on' | 'outer' | 'inner';
  /** length of the tail, px, or share of the line */
  readonly along: number;
  readonly landing: 'straight' | 'column' | 'forward' | 'back' | null;
}

/** One way to draw a dimension, with what it costs. */
export interface Placement {
  readonly cost: number;
  /** null where it isn't looked for again */
  readonly site: Site | null;
  readonly box: LabelBox;
  readonly wording: Wording;
  readonly anchor: 'start' | 'middle' | 'end';
  /** dimension lines and leaders */
  readonly lines: readonly Line[];
  /** those of `lines` that are landings: they cut the extension lines they cross */
  readonly landings: readonly Line[];
  readonly extensions: readonly Line[];
  readonly arc: Arc | null;
  readonly heads: readonly Arrowhead[];
  /** common origin of running dimensions, or the dot of a note */
  readonly origin: Point | null;
}

/** An angle's dimension line, radians on the screen, clockwise from start to end. */
export interface Arc {
  readonly centre: Point;
  readonly radius: number;
  readonly start: number;
  readonly end: number;
}

/** The search for one dimension's cheapest place. */
export interface Search {
  readonly sheet: DrawingSheet;
  readonly lettering: Lettering;
  best: Placement | null;
  /** what a place must cost less than to be looked at; falls as places are found */
  limit: number;
  /** the only place to look at, or null to look at all */
  readonly only: Site | null;
}

/** Keeps a placement if it is the cheapest so far. */
export function offer(search: Search, placement: Placement): void {
  if (placement.cost >= search.limit) return;
  search.best = placement;
  search.limit = placement.cost;
}

/** Gap between a landing and its text, and the landing's least length, px. */
export const TEXT_GAP = 4;
export const LANDING = 12;

/** Height of a label's box, px: ascenders to descenders. */
export function labelHeight(lettering: Lettering): number {
  return lettering.value * 1.1;
}

/**
 * The wordings of a label, best first; the value is never left out. With `only` the one of that name
 * alone, at the price that it has among them.
 */
export function wordingsOf(
  request: DimensionRequest,
  lettering: Lettering,
  only: string | null = null,
): readonly Wording[] {
  const { names, value } = request.asked;
  // A caption is small text throughout.
  if (request.kind === 'caption') {
    const name = names[0] ?? '';
    const width = textWidth(name, lettering.small, 400) + 2;
    return [{ name, value: '', width, cost: 0 }];
  }
  const valueWidth = textWidth(value, lettering.value, 620) + 2;
  const all: Wording[] = [];
  let place = 0;
  names.forEach((name, index) => {
    if (names.indexOf(name) !== index) return;
    const cost = place === 0 ? 0 : 24 + 6 * place;
    place++;
    if (only !== null && only !== name) return;
    const spaced = name !== '' && value !== '' ? `${name} ` : name;
    const width = textWidth(spaced, lettering.name, 400) + valueWidth;
    all.push({ name, value, width, cost });
  });
  // A figure among others like it means nothing without its name.
  const mayStandAlone = request.kind !== 'running' || request.label !== 'endOrOn';
  if (mayStandAlone && value !== '' && !names.includes('') && (only === null || only === ''))
    all.push({ name: '', value, width: valueWidth, cost: 60 });
  return all;
}

/**
 * Cost of a dimension's own lines, reckoned no further than `most`; an extension line crosses others
 * more freely, for landings cut it.
 */
export function drawingCost(
  search: Search,
  lines: readonly Line[],
  extensions: readonly Line[],
  most = Infinity,
): number {
  let cost = 0;
  for (const line of lines) {
    if (cost >= most) return cost;
    cost += leaderCost(search, line, most - cost);
  }
  for (const line of extensions) {
    if (cost >= most) return cost;
    cost += isHeld(search)
      ? heldCost(search, line)
      : extensionCost(search.sheet, line, most - cost);
  }
  return cost;
}

/** Cost of a dimension line, leader or landing, reckoned no further than `most`. */
export function leaderCost(search: Search, line: Line, most = Infinity): number {
  return isHeld(search) ? heldCost(search, line) : lineCost(search.sheet, line, most);
}

/** Whether a dimension is only asked to stay where it is: under the hand. */
const isHeld = ({ only }: Search): boolean => only !== null;

/** What is held where it is may cross what it likes until the hand lets go, but runs through no label. */
const heldCost = ({ sheet }: Search, line: Line): number => (isBlocked(sheet, line) ? Infinity : 0);

/** An upright label whose near edge stands `TEXT_GAP` beyond (x, y), to the right (1) or left (-1). */
export function besideBox(
  x: number,
  y: number,
  side: 1 | -1,
  width: number,
  height: number,
): LabelBox {
  const halfWidth = width / 2;
  return {
    x: x + side * (TEXT_GAP + halfWidth),
    y,
    halfWidth,
    halfHeight: height / 2,
    cos: 1,
    sin: 0,
  };
}

/**
 * A label whose foot stands above the line through (x, y) along the unit
 * direction (dx, dy), turned so that it is read from below or from the right
 * (ISO 129-1).
 */
export function aboveLineBox(
  x: number,
  y: number,
  dx: number,
  dy: number,
  width: number,
  lettering: Lettering,
): LabelBox {
  // Vertical text climbs: the direction of reading is up, never down.
  const flip = dx < -1e-6 || (Math.abs(dx) <= 1e-6 && dy > 0) ? -1 : 1;
  const cos = dx * flip;
  const sin = dy * flip;
  const halfHeight = labelHeight(lettering) / 2;
  const lift = halfHeight + lettering.value * 0.12;
  return { x: x + sin * lift, y: y - cos * lift, halfWidth: width / 2, halfHeight, cos, sin };
}
