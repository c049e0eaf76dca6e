import type { DimensionRequest, Lettering } from './dimension-request.ts';
import type { DrawingSheet } from './drawing-sheet.ts';
import { offerAngle } from './place-angle.ts';
import { offerCaption } from './place-caption.ts';
import { offerLinear, offerRunning } from './place-linear.ts';
import { offerListed } from './place-listed.ts';
import { offerNote } from './place-note.ts';
import { addLines } from './line-grid.ts';
import { type Placement, type Search, type Wording, wordingsOf } from './placement.ts';

/** A dimension with its place. */
export interface Placed {
  readonly request: DimensionRequest;
  readonly placement: Placement;
}

/** What a layout comes to; `dropped` found no place, least important last placed. */
export interface DimensionLayout {
  readonly placed: readonly Placed[];
  readonly dropped: readonly DimensionRequest[];
}

/** A dimension that could only be drawn at a higher cost than this is left out. */
const TOO_UGLY = 75;

/**
 * Lays the dimensions out in order of rank, each in its cheapest free place.
 * Labels end up pairwise disjoint and clear of the outline. What finds no place
 * is dropped, unless it is out of limit or lit: those are laid out again ahead
 * of the others, and as a last resort written on free paper, with a leader if
 * one fits. Fills `sheet`; the same requests and sheet give the same layout.
 */
export function layOut(
  freshSheet: () => DrawingSheet,
  lettering: Lettering,
  requests: readonly DimensionRequest[],
): DimensionLayout {
  const byRank = [...requests].sort((p, q) => p.rank - q.rank);
  const first = place(freshSheet(), lettering, byRank, false);
  if (!first.dropped.some(neverDropped)) return first;
  const urgent = byRank.filter(neverDropped);
  const rest = byRank.filter((request) => !neverDropped(request));
  return place(freshSheet(), lettering, [...urgent, ...rest], true);
}

function neverDropped(request: DimensionRequest): boolean {
  return request.lit || request.tone !== 'plain';
}

function place(
  sheet: DrawingSheet,
  lettering: Lettering,
  requests: readonly DimensionRequest[],
  list: boolean,
): DimensionLayout {
  const placed: Placed[] = [];
  const dropped: DimensionRequest[] = [];
  for (const request of requests) {
    const placement = cheapest(sheet, lettering, request, list && neverDropped(request));
    if (placement === null) {
      dropped.push(request);
      continue;
    }
    placed.push({ request, placement });
    sheet.boxes.push(placement.box);
    addLines(sheet.firm, placement.lines);
    addLines(sheet.thin, placement.extensions);
  }
  return { placed, dropped };
}

function cheapest(
  sheet: DrawingSheet,
  lettering: Lettering,
  request: DimensionRequest,
  list: boolean,
): Placement | null {
  const search: Search = { sheet, lettering, best: null, limit: list ? Infinity : TOO_UGLY };
  const wordings = wordingsOf(request, lettering);
  for (const wording of wordings) {
    if (wording.cost >= search.limit) break;
    offerAll(search, request, wording);
  }
  if (!list) return search.best;
  for (const wording of wordings) offerListed(search, request, wording);
  return search.best;
}

function offerAll(search: Search, request: DimensionRequest, wording: Wording): void {
  switch (request.kind) {
    case 'linear':
      offerLinear(search, request, wording);
      break;
    case 'running':
      offerRunning(search, request, wording);
      break;
    case 'angle':
      offerAngle(search, request, wording);
      break;
    case 'note':
      offerNote(search, request, wording);
      break;
    case 'caption':
      offerCaption(search, request, wording);
      break;
  }
}
