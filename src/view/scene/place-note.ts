import type { Lettering, NoteRequest } from './dimension-request.ts';
import type { DrawingSheet } from './drawing-sheet.ts';
import { offerEndLabels } from './place-end.ts';
import type { Offer, Wording } from './placement.ts';

/** Directions that a leader may leave its point in, turned from the one asked for, degrees. */
const TURNS = [0, 25, -25, 50, -50, 80, -80, 120, -120, 160] as const;

/** Offers the ways to write a text with a leader to the point that it speaks of. */
export function offerNote(
  sheet: DrawingSheet,
  lettering: Lettering,
  request: NoteRequest,
  wording: Wording,
  offer: Offer,
): boolean {
  const { at, towards } = request;
  for (const [index, degrees] of TURNS.entries()) {
    const turn = (degrees * Math.PI) / 180;
    const along = {
      x: towards.x * Math.cos(turn) - towards.y * Math.sin(turn),
      y: towards.x * Math.sin(turn) + towards.y * Math.cos(turn),
    };
    const placed = offerEndLabels(
      sheet,
      lettering,
      wording,
      { tip: at, along, base: index * 3, lines: [], extensions: [], heads: [], origin: at },
      offer,
    );
    if (placed) return true;
  }
  return false;
}
