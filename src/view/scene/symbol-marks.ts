import type { SymbolElement, SymbolSystem } from '../../limits/index.ts';
import { roundHalfAway } from '../../units/index.ts';
import { sheetLengthText } from '../sheet-length.ts';
import {
  across,
  alongFillet,
  CAP,
  GAP,
  HEIGHT,
  FILLET,
  heights,
  penAt,
  shape,
  SQUARE,
  type MarkPlace,
} from './symbol-shapes.ts';
import { textWidth } from './text-width.ts';

/** A piece of a symbol: a drawn line, a filled shape, or the dashes of the identification line. */
export interface SymbolPath {
  readonly part:
    | 'reference'
    | 'identification'
    | 'arrow'
    | 'arrowHead'
    | 'allRound'
    | 'field'
    | 'tail'
    | 'mark'
    | 'contour';
  readonly look: 'line' | 'dashed' | 'filled';
  readonly d: string;
}

/** A word or figure, its baseline at (x, y). */
export interface SymbolText {
  readonly part: 'size' | 'depth' | 'rootOpening' | 'grooveAngle' | 'backing' | 'tail';
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

export interface DrawnMark {
  readonly paths: readonly SymbolPath[];
  readonly texts: readonly SymbolText[];
  /** how far it reaches from its line, px */
  readonly reach: number;
}

/** Figures in a mark are this much of the others. */
const INNER = 0.85;

/** A slanting side leaves this share of the mouth where the figure in it begins. */
const SLANT = (HEIGHT - INNER) / HEIGHT;

/** What a mark's root opening takes in the mark, in sizes of the type. */
const openingWidth = ({ rootOpening }: SymbolElement, column: 'mm' | 'in'): number =>
  rootOpening === null ? 0 : textWidth(sheetLengthText(rootOpening, column), INNER, 400);

/** Half the width of a mark in sizes of the type: as wide as its proportions ask, or the figure in it. */
export function halfWidth(element: SymbolElement, column: 'mm' | 'in'): number {
  const inside = openingWidth(element, column);
  switch (element.kind) {
    case 'fillet':
      return FILLET / 2;
    case 'square':
      return Math.max(0.3, inside / 2 + 0.25);
    case 'V':
      return Math.max(HEIGHT * Math.tan(Math.PI / 6), (inside / 2 + 0.15) / SLANT);
    case 'bevel':
      return Math.max(0.8, (inside + 0.4) / SLANT / 2);
    case 'U':
      return Math.max(0.85, inside / 2 + 0.3);
    case 'J':
      return Math.max(0.6, inside / 2 + 0.25);
    case 'backRun':
      return 0.7;
    case 'strip':
      return 0.9;
  }
}

/** The figures left of a mark: legs or throat with their letter, or the depth of preparation. */
function leftText({ size, depth }: SymbolElement, column: 'mm' | 'in'): string {
  const text = (length: NonNullable<SymbolElement['depth']>): string =>
    sheetLengthText(length, column);
  if (size === null) return depth === null ? '' : text(depth);
  const { prefix, first, second } = size;
  return prefix + text(first) + (second === null ? '' : ` × ${prefix}${text(second)}`);
}

/** What a mark and the figures left of it take up left of its centre, in sizes of the type. */
export function roomLeft(element: SymbolElement, column: 'mm' | 'in', half: number): number {
  const beside = leftText(element, column);
  return half + (beside === '' ? 0 : textWidth(beside, 1, 400) + GAP);
}

/**
 * A weld mark with what is written round it. Upright sides stand on the left
 * whichever way the mark points; the root opening stands inside it, the groove
 * angle beyond its mouth. Beyond the mark AWS has the angle and then the
 * contour, ISO the contour and then the angle (from memory, verify).
 */
export function drawMark(
  element: SymbolElement,
  system: SymbolSystem,
  column: 'mm' | 'in',
  place: MarkPlace,
  size: number,
): DrawnMark {
  const { kind, contour, grooveAngle, rootOpening } = element;
  const { half } = place;
  const pen = penAt(place, size);
  const paths: SymbolPath[] = [{ part: 'mark', look: 'line', d: shape(kind, half, pen) }];
  const texts: SymbolText[] = [];
  const write = (part: SymbolText['part'], text: string, out: number, scale = 1, along = 0) => {
    const { x, y } = pen.baseline(along, out, scale);
    texts.push({ part, text, x, y, size: size * scale, anchor: 'middle' });
  };
  const beside = leftText(element, column);
  if (beside !== '') {
    const { x, y } = pen.baseline(-half - GAP, 0.25 + CAP / 2, 1);
    const part = element.size === null ? 'depth' : 'size';
    texts.push({ part, text: beside, x, y, size, anchor: 'end' });
  }
  if (rootOpening !== null) {
    const middle = kind === 'square' ? SQUARE / 2 : HEIGHT - INNER / 2;
    // between a bevel's upright and its slanting side the room lies left of the middle
    const along = kind === 'bevel' ? half * (SLANT - 1) - 0.02 : 0;
    write('rootOpening', sheetLengthText(rootOpening, column), middle, INNER, along);
  }
  if (kind === 'strip' && system === 'ISO') write('backing', 'M', heights.strip / 2, INNER * 0.9);

  let reach = heights[kind];
  const addAngle = (): void => {
    if (grooveAngle === null) return;
    write('grooveAngle', `${roundHalfAway(grooveAngle, 1)}°`, reach + GAP + CAP / 2);
    reach += GAP + CAP;
  };
  const addContour = (): void => {
    if (contour === 'none') return;
    const bulge = { flush: 0, convex: 0.3, concave: -0.3 }[contour];
    if (kind === 'fillet') {
      paths.push({ part: 'contour', look: 'line', d: alongFillet(bulge, pen) });
      return;
    }
    const level = reach + GAP + Math.max(0, -bulge);
    paths.push({
      part: 'contour',
      look: 'line',
      d: across(Math.max(half, 0.8), level, bulge, pen),
    });
    reach = level + Math.max(0, bulge);
  };
  for (const add of system === 'AWS' ? [addAngle, addContour] : [addContour, addAngle]) add();
  return { paths, texts, reach: reach * size };
}
