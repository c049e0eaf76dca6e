import { line, TOLERANCE } from '../../geometry/index.ts';
import type { Contour } from '../../geometry/index.ts';
import type { Wall } from './deposit.ts';
import { portionOf, setbackAt } from './edge-preparation.ts';
import { highReach, lowReach, type WeldEnd } from './fusion.ts';
import { both, type Pair } from './pair.ts';
import { placeContour } from './plate-frame.ts';
import type { SetPlate, SetUp } from './set-up.ts';

/** The plates as prepared between the ends of one weld, with the stretch on which they touch marked. */
export function wallsBetween(
  { plates, contact }: SetUp,
  lower: Pair<WeldEnd>,
  upper: Pair<WeldEnd>,
): Pair<Wall> {
  const spans = both((i): Span => ({
    from: lowReach(lower[i]).edge,
    to: highReach(upper[i], plates[i].edge.thickness).edge,
  }));
  // a weld that begins above the touching stretch, or ends below it, is not divided by it
  const divided =
    contact !== null &&
    !spans.every(
      ({ from }, i) => lower[0].onEdge && from >= contact.high[i as 0 | 1] - TOLERANCE,
    ) &&
    !spans.every(({ to }, i) => upper[0].onEdge && to <= contact.low[i as 0 | 1] + TOLERANCE);
  return both((i) => {
    const touching: Span | null = divided ? { from: contact.low[i], to: contact.high[i] } : null;
    return wall(plates[i], lower[i], upper[i], spans[i], touching);
  });
}

interface Span {
  readonly from: number;
  readonly to: number;
}

function wall(
  { edge, frame }: SetPlate,
  lower: WeldEnd,
  upper: WeldEnd,
  span: Span,
  contact: Span | null,
): Wall {
  const surfaceTo = (end: WeldEnd, height: number): Contour => {
    const groove = { x: setbackAt(edge, height), y: height };
    // lying on a backing strip, the root surface is no boundary of the weld's outside
    return !end.full && end.toe.x > groove.x + TOLERANCE ? [line(groove, end.toe)] : [];
  };
  const before = surfaceTo(lower, span.from).map(({ a, b }) => line(b, a));
  const after = surfaceTo(upper, span.to);
  const within = (height: number): number => Math.min(span.to, Math.max(span.from, height));
  const low = within(contact?.from ?? span.from);
  const high = within(contact?.to ?? span.from);
  const parts = [portionOf(edge, span.from, low), portionOf(edge, low, high)] as const;
  const contour = [
    ...before,
    ...parts[0],
    ...parts[1],
    ...portionOf(edge, high, span.to),
    ...after,
  ];
  const mark = before.length + parts[0].length;
  return {
    contour: placeContour(frame, contour),
    low: contact === null ? Infinity : mark,
    high: contact === null ? -Infinity : mark + parts[1].length,
  };
}
