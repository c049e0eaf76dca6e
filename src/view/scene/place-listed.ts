import type { Point } from '../../geometry/index.ts';
import type { DimensionRequest, Lettering } from './dimension-request.ts';
import { boxCost, type DrawingSheet, groundAt, linesCost } from './drawing-sheet.ts';
import { type Line, uprightBox } from './label-box.ts';
import { labelHeight, type Offer, type Wording } from './placement.ts';

/** Grid of the places looked at, px. */
const STEP = 12;

/**
 * Offers any free paper for a label that must be shown and has no proper place,
 * nearest to what it speaks of first, with a straight leader if one runs clear.
 */
export function offerListed(
  sheet: DrawingSheet,
  lettering: Lettering,
  request: DimensionRequest,
  wording: Wording,
  offer: Offer,
): boolean {
  const at = anchorOf(request);
  const height = labelHeight(lettering);
  let found = false;
  for (let y = sheet.top + height / 2; y <= sheet.bottom - height / 2; y += STEP) {
    for (let x = sheet.left + wording.width / 2; x <= sheet.right - wording.width / 2; x += STEP) {
      const box = uprightBox(x, y, wording.width, height);
      // Coloured text never stands on the weld's tone.
      if (boxCost(sheet, box) > 0 || groundAt(sheet, x, y) === 'weld') continue;
      found = true;
      const side = at.x > x ? 1 : -1;
      const leader: Line = { x1: at.x, y1: at.y, x2: x + side * (wording.width / 2 + 3), y2: y };
      const drawn = linesCost(sheet, [leader]);
      const distance = Math.hypot(x - at.x, y - at.y);
      offer({
        cost: 200 + wording.cost + distance + Math.min(drawn, 120),
        box,
        wording,
        anchor: 'middle',
        lines: drawn < 120 ? [leader] : [],
        landings: [],
        extensions: [],
        arc: null,
        heads: [],
        origin: drawn < 120 ? at : null,
      });
    }
  }
  return found;
}

function anchorOf(request: DimensionRequest): Point {
  switch (request.kind) {
    case 'linear':
    case 'running':
    case 'caption':
      return { x: (request.from.x + request.to.x) / 2, y: (request.from.y + request.to.y) / 2 };
    case 'angle':
      return request.vertex;
    case 'note':
      return request.at;
  }
}
