import type { DimensionRequest, Lettering } from './dimension-request.ts';
import type { DrawingSheet } from './drawing-sheet.ts';
import { offerAngle } from './place-angle.ts';
import { offerCaption } from './place-caption.ts';
import { offerLinear, offerRunning } from './place-linear.ts';
import { offerListed } from './place-listed.ts';
import { offerNote } from './place-note.ts';
import { addLines } from './lines.ts';
import { type Placement, type Search, type Site, type Wording, wordingsOf } from './placement.ts';

/** A dimension with its place. */
export interface Placed {
  readonly request: DimensionRequest;
  readonly placement: Placement;
  /** what it cost when it was last chosen among all */
  readonly chosenAt: number;
}

/** What a layout comes to; `dropped` found no place, least important last placed. */
export interface DimensionLayout {
  readonly placed: readonly Placed[];
  readonly dropped: readonly DimensionRequest[];
}

/** A dimension that could only be drawn at a higher cost than this is left out. */
const TOO_UGLY = 75;

/** What a place may cost at most: twice as much where a text has its line to fall back on. */
function ceilingOf(request: DimensionRequest): number {
  return request.kind === 'running' && request.label === 'endOrOn' ? 2 * TOO_UGLY : TOO_UGLY;
}

/** The layout before, for the next one. */
export interface LayoutBefore {
  /** each dimension's place, by key, and what it cost when it was chosen */
  readonly places: ReadonlyMap<string, Pick<Placement, 'cost' | 'site'>>;
  /**
   * Under the hand: a label that has a site stays there as long as it may, whatever its lines come to
   * cross and though a better place may have come free. Nothing jumps while it is looked at;
   * letting go settles it.
   */
  readonly moving: boolean;
}

const NOTHING_BEFORE: LayoutBefore = { places: new Map(), moving: false };
/** How much dearer than in the layout before a place is looked for first. */
const DEARER = 4;

/**
 * Lays the dimensions out in order of rank, each in its cheapest free place.
 * Labels end up pairwise disjoint and clear of the outline. What finds no place
 * is dropped, unless it is out of limit, lit or kept: those are laid out again ahead
 * of the others, and as a last resort written on free paper, with a leader if
 * one fits. Fills `sheet`; the same requests and sheet give the same layout.
 * `before` makes it quicker, not other, unless it is moving: a place mostly costs
 * what it did, so the search starts with that as its limit.
 */
export function layOut(
  freshSheet: () => DrawingSheet,
  lettering: Lettering,
  requests: readonly DimensionRequest[],
  before: LayoutBefore = NOTHING_BEFORE,
): DimensionLayout {
  const byRank = [...requests].sort((p, q) => p.asked.rank - q.asked.rank);
  const first = place(freshSheet(), lettering, byRank, before, false);
  if (!first.dropped.some(neverDropped)) return first;
  const urgent = byRank.filter(neverDropped);
  const rest = byRank.filter((request) => !neverDropped(request));
  return place(freshSheet(), lettering, [...urgent, ...rest], before, true);
}

/** The places of a layout by key, for the next one. */
export function placesOf({ placed }: DimensionLayout): LayoutBefore['places'] {
  return new Map(
    placed.map(({ request, placement: { site }, chosenAt: cost }) => [
      request.asked.key,
      { cost, site },
    ]),
  );
}

function neverDropped({ asked }: DimensionRequest): boolean {
  return asked.lit || asked.tone !== 'plain' || asked.kept === true;
}

function place(
  sheet: DrawingSheet,
  lettering: Lettering,
  requests: readonly DimensionRequest[],
  before: LayoutBefore,
  list: boolean,
): DimensionLayout {
  const placed: Placed[] = [];
  const dropped: DimensionRequest[] = [];
  for (const request of requests) {
    const kept =
      list && neverDropped(request) ? null : samePlace(sheet, lettering, request, before);
    const placement =
      kept ??
      (list && neverDropped(request)
        ? listed(sheet, lettering, request)
        : (knownPlace(sheet, lettering, request, before) ??
          cheapest(sheet, lettering, request, ceilingOf(request))));
    if (placement === null) {
      dropped.push(request);
      continue;
    }
    // What it cost where it was chosen, whatever it has come to while it was held: so the next search starts.
    const chosenAt = before.places.get(request.asked.key)?.cost;
    placed.push({
      request,
      placement,
      chosenAt: kept === null || chosenAt === undefined ? placement.cost : chosenAt,
    });
    sheet.boxes.push(placement.box);
    addLines(sheet.firm, placement.lines);
    addLines(sheet.thin, placement.extensions);
  }
  return { placed, dropped };
}

/** The place of the layout before, while a section moves and the label may stand there. */
function samePlace(
  sheet: DrawingSheet,
  lettering: Lettering,
  request: DimensionRequest,
  { places, moving }: LayoutBefore,
): Placement | null {
  const before = moving ? places.get(request.asked.key) : undefined;
  if (before === undefined || before.site === null) return null;
  return cheapest(sheet, lettering, request, ceilingOf(request), before.site);
}

/** The cheapest place if it costs about what it did in the layout before, otherwise null. */
function knownPlace(
  sheet: DrawingSheet,
  lettering: Lettering,
  request: DimensionRequest,
  { places }: LayoutBefore,
): Placement | null {
  const limit = (places.get(request.asked.key)?.cost ?? Infinity) + DEARER;
  return limit < ceilingOf(request) ? cheapest(sheet, lettering, request, limit) : null;
}

/** The cheapest place under the limit, or null; of `only` one, where that is given. */
function cheapest(
  sheet: DrawingSheet,
  lettering: Lettering,
  request: DimensionRequest,
  limit: number,
  only: Site | null = null,
): Placement | null {
  const search: Search = { sheet, lettering, best: null, limit, only };
  for (const wording of wordingsOf(request, lettering, only?.name)) {
    if (wording.cost >= search.limit) break;
    offerAll(search, request, wording);
  }
  return search.best;
}

/** The cheapest place at any price, free paper included. */
function listed(
  sheet: DrawingSheet,
  lettering: Lettering,
  request: DimensionRequest,
): Placement | null {
  const search: Search = { sheet, lettering, best: null, limit: Infinity, only: null };
  const wordings = wordingsOf(request, lettering);
  for (const wording of wordings) offerAll(search, request, wording);
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
