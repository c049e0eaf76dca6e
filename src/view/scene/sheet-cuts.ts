import type { Contour } from '../../geometry/index.ts';
import { type Cut, insideOf } from './cut-away.ts';
import { frameOf } from './plate-cuts.ts';
import type { Sheet } from './sheet.ts';
import type { View } from './view-transform.ts';

/** What of lines that belong to no metal lies on the sheet: they end where a plate's view breaks off. */
export function onSheet(lines: Contour, view: View, sheet: Sheet): Contour {
  // most joints have no flaw to limit
  if (lines.length === 0) return lines;
  const { low, high } = frameOf(view, sheet);
  const cuts: readonly Cut[] = [
    { at: low, away: { x: -1, y: 0 } },
    { at: low, away: { x: 0, y: -1 } },
    { at: high, away: { x: 1, y: 0 } },
    { at: high, away: { x: 0, y: 1 } },
  ];
  let left = lines;
  for (const cut of cuts)
    left = left.map((piece) => insideOf(piece, cut)).filter((piece) => piece !== null);
  return left;
}
