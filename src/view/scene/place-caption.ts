import type { CaptionRequest } from './dimension-request.ts';
import { labelCost } from './drawing-sheet.ts';
import type { LabelBox } from './label-box.ts';
import { offer, type Search, type Wording } from './placement.ts';

/** Places along the line, best first. */
const SHARES = [0.5, 0.38, 0.62, 0.26, 0.74] as const;
const END_ROOM = 10;

/** Offers the places for small text along a line that needs no dimension line of its own. */
export function offerCaption(search: Search, request: CaptionRequest, wording: Wording): void {
  const { sheet, lettering } = search;
  const { from, to, sagitta, inward } = request;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (wording.width + 2 * END_ROOM > length) return;
  const dx = (to.x - from.x) / length;
  const dy = (to.y - from.y) / length;
  const flip = dx < -1e-6 || (Math.abs(dx) <= 1e-6 && dy > 0) ? -1 : 1;
  const halfHeight = lettering.small * 0.55;
  // On a curve the text stands on the chord of its own length, so far under the curve.
  const sink = sagitta * (wording.width / length) ** 2 + halfHeight + 3;
  for (const share of SHARES) {
    if (search.only !== null && search.only.along !== share) continue;
    const half = wording.width / 2 + END_ROOM;
    if (share * length < half || (1 - share) * length < half) continue;
    const rise = 4 * sagitta * share * (1 - share);
    const x = from.x + dx * length * share + inward.x * (sink - rise);
    const y = from.y + dy * length * share + inward.y * (sink - rise);
    // The tangent of a shallow arc turns evenly along its chord.
    const turn =
      Math.atan((4 * sagitta * (1 - 2 * share)) / length) *
      (inward.x * dy - inward.y * dx > 0 ? 1 : -1);
    const cos = (dx * Math.cos(turn) - dy * Math.sin(turn)) * flip;
    const sin = (dy * Math.cos(turn) + dx * Math.sin(turn)) * flip;
    const box: LabelBox = { x, y, halfWidth: wording.width / 2, halfHeight, cos, sin };
    // A caption gives way to everything: it never stands on a line.
    if (labelCost(sheet, box) > 0) continue;
    offer(search, {
      cost: Math.abs(share - 0.5),
      box,
      wording,
      anchor: 'middle',
      site: { name: wording.name, level: 0, end: 'on', along: share, landing: null },
      lines: [],
      landings: [],
      extensions: [],
      arc: null,
      heads: [],
      origin: null,
    });
  }
}
