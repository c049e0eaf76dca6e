import { boxesMeet, type LabelBox, type Line, lineMeetsBox } from './label-box.ts';

/** Free paper between a label and the outline, and between two labels, px. */
const OFF_OUTLINE = 2;
const APART = 3;
/** A line may come this near to a label that it doesn't belong to, px. */
const OFF_LINE = 1;

/** What a fault costs in the choice between two places; a forbidden place costs Infinity. */
export const COST = {
  labelOnThinLine: 26,
  lineOverLine: 10,
  lineOverExtension: 3,
  lineOverOutline: 40,
} as const;

/**
 * What already stands on the drawing while a layout runs. Filled as the layout
 * goes and thrown away after it; the finished layout holds no reference to it.
 */
export interface DrawingSheet {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  /** never under a label, crossed by a leader only with reluctance */
  readonly outline: readonly Line[];
  /** construction and extension lines: a label may cover them if it must */
  readonly thin: Line[];
  /** dimension lines and leaders: never under a label */
  readonly firm: Line[];
  /** closed outlines, for what lies under a label */
  readonly weld: readonly Line[];
  readonly metal: readonly Line[];
  /** left edge shared by the labels that belong to the face, if there is one */
  readonly column: number | null;
  /** labels placed, and blocks (inset, scale bar) that nothing may cover */
  readonly boxes: LabelBox[];
  /** handles: never under a label, but lines run to them */
  readonly marks: readonly LabelBox[];
}

/** Cost of putting a label into `box`; Infinity where it may not stand. */
export function boxCost(sheet: DrawingSheet, box: LabelBox): number {
  const round = box.halfWidth + box.halfHeight;
  const upright = box.sin === 0;
  const wide = upright ? box.halfWidth : round;
  const high = upright ? box.halfHeight : round;
  if (box.x - wide < sheet.left || box.x + wide > sheet.right) {
    if (upright || !within(sheet, box)) return Infinity;
  }
  if (box.y - high < sheet.top || box.y + high > sheet.bottom) {
    if (upright || !within(sheet, box)) return Infinity;
  }
  for (const other of sheet.boxes) if (boxesMeet(box, other, APART)) return Infinity;
  for (const mark of sheet.marks) if (boxesMeet(box, mark, 0)) return Infinity;
  if (meetsAny(box, sheet.outline, OFF_OUTLINE)) return Infinity;
  if (meetsAny(box, sheet.firm, OFF_LINE)) return Infinity;
  return countMeets(box, sheet.thin) * COST.labelOnThinLine;
}

function within(sheet: DrawingSheet, box: LabelBox): boolean {
  const x = box.halfWidth * Math.abs(box.cos) + box.halfHeight * Math.abs(box.sin);
  const y = box.halfWidth * Math.abs(box.sin) + box.halfHeight * Math.abs(box.cos);
  return (
    box.x - x >= sheet.left &&
    box.x + x <= sheet.right &&
    box.y - y >= sheet.top &&
    box.y + y <= sheet.bottom
  );
}

function meetsAny(box: LabelBox, lines: readonly Line[], clear: number): boolean {
  for (const line of lines) if (lineMeetsBox(box, line, clear)) return true;
  return false;
}

function countMeets(box: LabelBox, lines: readonly Line[]): number {
  let count = 0;
  for (const line of lines) if (lineMeetsBox(box, line, OFF_LINE)) count++;
  return count;
}

/** Cost of drawing these lines; Infinity when one runs through a label or leaves the drawing. */
export function linesCost(sheet: DrawingSheet, lines: readonly Line[]): number {
  let cost = 0;
  for (const line of lines) {
    if (!inside(sheet, line.x1, line.y1) || !inside(sheet, line.x2, line.y2)) return Infinity;
    for (const box of sheet.boxes) if (lineMeetsBox(box, line, OFF_LINE)) return Infinity;
    cost += COST.lineOverLine * crossings(sheet.firm, line);
    cost += COST.lineOverExtension * crossings(sheet.thin, line);
    cost += COST.lineOverOutline * crossings(sheet.outline, line);
  }
  return cost;
}

function inside(sheet: DrawingSheet, x: number, y: number): boolean {
  return x >= sheet.left && x <= sheet.right && y >= sheet.top && y <= sheet.bottom;
}

function crossings(lines: readonly Line[], crossed: Line): number {
  let count = 0;
  for (const line of lines) if (crossingShare(crossed, line) !== null) count++;
  return count;
}

const TOUCH = 3;

/**
 * Where `crossing` crosses `line`, as a share of `line`; null when it doesn't, or
 * only touches within 3 px of `line`'s ends.
 */
export function crossingShare(line: Line, crossing: Line): number | null {
  const { x1, y1, x2, y2 } = line;
  const { x1: x3, y1: y3, x2: x4, y2: y4 } = crossing;
  if (Math.max(x1, x2) < Math.min(x3, x4) || Math.max(x3, x4) < Math.min(x1, x2)) return null;
  if (Math.max(y1, y2) < Math.min(y3, y4) || Math.max(y3, y4) < Math.min(y1, y2)) return null;
  const dx = x2 - x1;
  const dy = y2 - y1;
  const ex = x4 - x3;
  const ey = y4 - y3;
  const turn = dx * ey - dy * ex;
  // parallel lines don't cross
  if (Math.abs(turn) < 1e-9) return null;
  const share = ((x3 - x1) * ey - (y3 - y1) * ex) / turn;
  const other = ((x3 - x1) * dy - (y3 - y1) * dx) / turn;
  if (other < 0 || other > 1) return null;
  const margin = TOUCH / Math.hypot(dx, dy);
  return share > margin && share < 1 - margin ? share : null;
}

export type Ground = 'weld' | 'metal' | 'air';

/** What a label at this place would lie on. */
export function groundAt(
  sheet: Pick<DrawingSheet, 'weld' | 'metal'>,
  x: number,
  y: number,
): Ground {
  if (insideLines(sheet.weld, x, y)) return 'weld';
  return insideLines(sheet.metal, x, y) ? 'metal' : 'air';
}

/** Even-odd count of the closed outlines' lines to the right of the place. */
function insideLines(lines: readonly Line[], x: number, y: number): boolean {
  let odd = false;
  for (const { x1, y1, x2, y2 } of lines) {
    if (y1 > y !== y2 > y && x < x1 + ((y - y1) * (x2 - x1)) / (y2 - y1)) odd = !odd;
  }
  return odd;
}
