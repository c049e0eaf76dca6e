import type { NoteRequest } from './dimension-request.ts';
import { offerEndLabels } from './place-end.ts';
import type { Search, Wording } from './placement.ts';

/** Directions that a leader may leave its point in, turned from the one asked for, degrees. */
const TURNS = [0, 25, -25, 50, -50, 80, -80, 120, -120, 160] as const;
const TURN_COST = 3;

/** Offers the ways to write a text with a leader to the point that it speaks of. */
export function offerNote(search: Search, { at, towards }: NoteRequest, wording: Wording): void {
  for (const [index, degrees] of TURNS.entries()) {
    if (search.only !== null && search.only.level !== index) continue;
    const turn = (degrees * Math.PI) / 180;
    const along = {
      x: towards.x * Math.cos(turn) - towards.y * Math.sin(turn),
      y: towards.x * Math.sin(turn) + towards.y * Math.cos(turn),
    };
    offerEndLabels(search, wording, {
      level: index,
      end: 'outer',
      tip: at,
      along,
      base: index * TURN_COST,
      lines: [],
      extensions: [],
      heads: [],
      origin: at,
    });
  }
}
