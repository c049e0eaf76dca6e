import type { Contour, Point } from '../../geometry/index.ts';
import { dot, subtract } from '../../geometry/index.ts';
import type { Section, Side } from '../../joint/index.ts';
import {
  type AllowedBand,
  type Bound,
  type DrawnBand,
  type HeightBound,
  NO_BAND,
} from './allowed-band.ts';
import { mostDepth, mostHeight } from './cap-band.ts';
import { lineTo, pathOf } from './outline-path.ts';
import { onSheet } from './sheet-cuts.ts';
import type { Sheet } from './sheet.ts';
import type { View } from './view-transform.ts';

/** The room on the cap and the root of a butt weld. */
export function buttBand(
  { face, root }: Section,
  band: AllowedBand,
  view: View,
  sheet: Sheet,
): DrawnBand {
  const cap = capBand(face, band.most, band.below, view);
  const pass = root === null ? NO_BAND : capBand(root, band.mostRoot, NO_BOUND, view);
  return {
    inside: cap.inside,
    outside: cap.outside + pass.outside,
    limits: cap.limits + pass.limits,
    least: cap.least,
    most: cap.most,
    // the line of the greatest offset runs along a plate that the view may break off sooner
    flaws: onSheet(band.flaws, view, sheet),
  };
}

const NO_BOUND: Bound = { limit: null, holds: true };

/** Straight limits a given height above, and depth below, what each is measured from. */
function capBand(side: Side, most: HeightBound, below: Bound, view: View): DrawnBand {
  const { bead, toes } = side;
  if (bead === null || toes === null) return NO_BAND;
  const above = most.limit === null ? [] : mostHeight(side, most.over, most.limit);
  const under = below.limit === null ? [] : mostDepth(side, below.limit);
  const face = pathOf(view, bead);
  const through = (corners: readonly Point[]): string =>
    `${face}${corners.map((corner) => lineTo(view, corner)).join('')}Z`;
  const back = (limit: Contour): readonly Point[] => limit.flatMap(({ a, b }) => [b, a]);
  const [edge1, edge2] = edgesUnder(side);
  return {
    inside: under.length > 0 && below.holds ? through([...edge2, ...back(under), ...edge1]) : '',
    outside: above.length > 0 && most.holds ? through(back(above)) : '',
    limits: pathOf(view, above) + pathOf(view, under),
    least: under,
    most: above,
    flaws: [],
  };
}

/** The groove edges that the bead lies over: what lies past them has no depth to fall short of. */
function edgesUnder({ toes, grooveEdges, surfaces }: Side): readonly [Point[], Point[]] {
  const under = (plate: 0 | 1): Point[] => {
    const [toe, edge] = [toes?.[plate], grooveEdges?.[plate]];
    if (toe === undefined || edge === undefined) return [];
    return dot(subtract(toe, edge), surfaces[plate].along) > 0 ? [edge] : [];
  };
  return [under(0), under(1)];
}
