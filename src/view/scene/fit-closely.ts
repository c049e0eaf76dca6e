import type { Section } from '../../joint/index.ts';
import { centred, extent, fits, largestFitting, seenPoints } from './fit-view.ts';
import type { Sheet } from './sheet.ts';
import type { View } from './view-transform.ts';

/** The largest scale at which a section fits its sheet with that share of the room round it, px per mm. */
export function fitScale(section: Section, sheet: Sheet, share: number): number {
  return largestFitting(seenPoints(section, sheet), sheet, share);
}

/** Steps in which the room round a section is given up for its size. */
const ROOM_STEPS = 10;

/** The section at a given scale, with as much of the room round it as the sheet has at that scale. */
export function fitClosely(section: Section, sheet: Sheet, pxPerMm: number): View {
  const seen = seenPoints(section, sheet);
  let left = ROOM_STEPS;
  while (left > 0 && !fits(extent(seen, pxPerMm, left / ROOM_STEPS), sheet)) left--;
  return centred(section, sheet, seen, pxPerMm, left / ROOM_STEPS);
}
