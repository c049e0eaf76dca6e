import { boxesMeet, type LabelBox, type Line } from './label-box.ts';
import {
  anyMeets,
  countCrossings,
  insideLines,
  lineMeetsBox,
  type Lines,
  runsBeside,
} from './lines.ts';

/** Free paper between a label and the outline, and between two labels, px. */
const OFF_OUTLINE = 2;
const APART = 3;
/** A line may come this near to a label that it doesn't belong to, px. */
const OFF_LINE = 1;

/** What a fault costs in the choice between two places; a forbidden place costs Infinity. */
const COST = {
  labelOnThinLine: 26,
  lineOverLine: 10,
  lineOverExtension: 3,
  lineOverOutline: 40,
  besideLine: 16,
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
  /** every visible edge: never under a label, crossed by a leader only with reluctance, as good as an extension line */
  readonly outline: Lines;
  /** construction and extension lines: a label may cover them if it must */
  readonly thin: number[];
  /** dimension lines and leaders: never under a label */
  readonly firm: number[];
  /** where the weld's edges begin in `outline`, for what lies under a label */
  readonly weldFrom: number;
  /** left edge shared by the labels that belong to the face, if there is one */
  readonly column: number | null;
  /** labels placed: nothing may cover them */
  readonly boxes: LabelBox[];
  /** handles: never under a label, but lines run to them */
  readonly marks: readonly LabelBox[];
}

/**
 * Cost of putting a label into `box`; Infinity where it may not stand: off the
 * sheet, on the outline, another label, a handle or a dimension line, and inside
 * the weld, where no paper is cleared round a text, on any line at all.
 */
export function labelCost(sheet: DrawingSheet, box: LabelBox): number {
  if (!within(sheet, box)) return Infinity;
  for (const other of sheet.boxes) if (boxesMeet(box, other, APART)) return Infinity;
  for (const mark of sheet.marks) if (boxesMeet(box, mark, 0)) return Infinity;
  if (anyMeets(sheet.outline, box, OFF_OUTLINE)) return Infinity;
  if (anyMeets(sheet.firm, box, OFF_LINE)) return Infinity;
  if (!anyMeets(sheet.thin, box, OFF_LINE)) return 0;
  return groundAt(sheet, box.x, box.y) === 'weld' ? Infinity : COST.labelOnThinLine;
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

/**
 * Cost of drawing a dimension line or leader; Infinity when it runs through a label or leaves the
 * drawing. Reckoned no further than `most`, which is as good as not at all.
 */
export function lineCost(sheet: DrawingSheet, line: Line, most = Infinity): number {
  return crossingCost(sheet, line, most, 1, COST.lineOverLine);
}

/** The same for an extension line, which is cut where a landing crosses it. */
export function extensionCost(sheet: DrawingSheet, line: Line, most = Infinity): number {
  return crossingCost(sheet, line, most, 1 / 2, COST.lineOverExtension);
}

/** What crosses counts for `share` of what it costs a leader, over a dimension line `overLine`; the dearest first. */
function crossingCost(
  sheet: DrawingSheet,
  line: Line,
  most: number,
  share: number,
  overLine: number,
): number {
  if (isBlocked(sheet, line)) return Infinity;
  let cost = 0;
  const over = (lines: Lines, each: number): boolean => {
    cost += each * countCrossings(lines, line, (most - cost) / each);
    return cost >= most;
  };
  if (over(sheet.outline, COST.lineOverOutline * share)) return cost;
  if (over(sheet.firm, overLine)) return cost;
  if (over(sheet.thin, COST.lineOverExtension * share)) return cost;
  return cost + (runsBeside(sheet.firm, line) ? COST.besideLine * share : 0);
}

/** Whether a line leaves the drawing or runs through a label. */
export function isBlocked(sheet: DrawingSheet, line: Line): boolean {
  if (!inside(sheet, line.x1, line.y1) || !inside(sheet, line.x2, line.y2)) return true;
  for (const box of sheet.boxes) if (lineMeetsBox(box, line, OFF_LINE)) return true;
  return false;
}

function inside(sheet: DrawingSheet, x: number, y: number): boolean {
  return x >= sheet.left && x <= sheet.right && y >= sheet.top && y <= sheet.bottom;
}

export type Ground = 'weld' | 'metal' | 'air';

/** What a label at this place would lie on. */
export function groundAt(
  { outline, weldFrom }: Pick<DrawingSheet, 'outline' | 'weldFrom'>,
  x: number,
  y: number,
): Ground {
  if (insideLines(outline, weldFrom, outline.length, x, y)) return 'weld';
  return insideLines(outline, 0, weldFrom, x, y) ? 'metal' : 'air';
}
