import type { Point } from '../../geometry/index.ts';
import { boxesMeet, type LabelBox, uprightBox } from './label-box.ts';
import { countMeeting, type Lines } from './lines.ts';
import type { Sheet } from './sheet.ts';

/** Middle of the tag from the handle, in half widths and half heights beyond the focus ring; best first. */
const SIDES = [
  [1, 1],
  [1, -1],
  [-1, 1],
  [-1, -1],
  [0, 1],
  [0, -1],
  [1, 0],
  [-1, 0],
] as const;
const PAST_RING = [8, 22, 44] as const;
const OVER_LABEL = 100;
const OVER_LINE = 6;

/**
 * Where the tag of a focused handle stands: over base metal or air beside it,
 * on no label and on as little of the outline as can be; always on the sheet.
 */
export function tagBox(
  sheet: Sheet,
  at: Point,
  size: { readonly width: number; readonly height: number },
  labels: readonly LabelBox[],
  outline: Lines,
): LabelBox {
  let best = uprightBox(at.x, at.y, size.width, size.height);
  let least = Infinity;
  for (const past of PAST_RING) {
    for (const [right, down] of SIDES) {
      const x = at.x + right * (past + size.width / 2);
      const y = at.y + down * (past + 10 + size.height / 2);
      const box = uprightBox(x, y, size.width, size.height);
      const off = offSheet(sheet, box);
      const cost = off * 50 + past + cover(box, labels, outline);
      if (cost < least) [best, least] = [box, cost];
    }
  }
  return best;
}

function cover(box: LabelBox, labels: readonly LabelBox[], outline: Lines): number {
  const over = labels.filter((label) => boxesMeet(box, label, 1)).length;
  return over * OVER_LABEL + countMeeting(outline, box, 0, 8) * OVER_LINE;
}

/** By how much the box sticks out of the drawing, px. */
function offSheet({ width, height }: Sheet, box: LabelBox): number {
  const x = Math.max(0, box.halfWidth - box.x, box.x + box.halfWidth - width);
  const y = Math.max(0, box.halfHeight - box.y, box.y + box.halfHeight - height);
  return x + y;
}
