import type { Point } from '../../geometry/index.ts';
import type { DimensionRequest } from './dimension-request.ts';
import { groundAt, labelCost, lineCost } from './drawing-sheet.ts';
import { type Line, uprightBox } from './label-box.ts';
import { labelHeight, offer, type Search, type Wording } from './placement.ts';

/** Grid of the places looked at, px. */
const STEP = 12;
/** Any proper place is better than this, and a leader that would cost more is left out. */
const LISTED = 200;
const NO_LEADER = 120;

/**
 * Offers any free paper for a label that must be shown and has no proper place,
 * nearest to what it speaks of first, with a straight leader if one runs clear.
 */
export function offerListed(search: Search, request: DimensionRequest, wording: Wording): void {
  const { sheet, lettering } = search;
  const at = anchorOf(request);
  const height = labelHeight(lettering);
  for (let y = sheet.top + height / 2; y <= sheet.bottom - height / 2; y += STEP) {
    for (let x = sheet.left + wording.width / 2; x <= sheet.right - wording.width / 2; x += STEP) {
      const cost = LISTED + wording.cost + Math.hypot(x - at.x, y - at.y);
      if (cost >= search.limit) continue;
      const box = uprightBox(x, y, wording.width, height);
      // Coloured text never stands on the weld's tone.
      if (labelCost(sheet, box) > 0 || groundAt(sheet, x, y) === 'weld') continue;
      const side = at.x > x ? 1 : -1;
      const leader: Line = { x1: at.x, y1: at.y, x2: x + side * (wording.width / 2 + 3), y2: y };
      const drawn = lineCost(sheet, leader);
      const led = drawn < NO_LEADER;
      offer(search, {
        cost: cost + Math.min(drawn, NO_LEADER),
        box,
        wording,
        anchor: 'middle',
        site: null,
        lines: led ? [leader] : [],
        landings: [],
        extensions: [],
        arc: null,
        heads: [],
        origin: led ? at : null,
      });
    }
  }
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
