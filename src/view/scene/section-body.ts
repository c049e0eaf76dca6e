import type { Point, Region, Segment } from '../../geometry/index.ts';
import type { Section } from '../../joint/index.ts';
import { type Cut, cutAway, type ViewEdge } from './cut-away.ts';
import { freehandTo } from './freehand-break.ts';
import type { Lines } from './lines.ts';
import { drawPiece, flattenInto, flattenPiece, moveTo, pathOf, samePoint } from './outline-path.ts';
import type { View } from './view-transform.ts';

/** Path data of the section itself, by line type. */
export interface SectionBody {
  /** hatched: plate 1, plate 2, backing strip */
  readonly plates: readonly [string, string];
  readonly backing: string;
  readonly weld: string;
  /** wide: every edge of metal that an eye meets */
  readonly outline: string;
  /** narrow: where weld and base metal are fused */
  readonly fusion: string;
  /** narrow, freehand: where the view breaks off */
  readonly breaks: string;
}

/** The straightened outlines that labels keep clear of, px. */
export interface BodyLines {
  /** every visible edge, breaks and fusion line included: base metal's, then the weld's */
  readonly outline: Lines;
  /** where the weld's begin in it */
  readonly weldFrom: number;
}

interface Pen {
  d: string;
  at: Point | null;
}

/** A piece of metal with the path data that goes along it from its start. */
interface DrawnEdge extends ViewEdge {
  readonly d: string;
}

/** The section as this view shows it, `cuts` taken from each plate. */
export function sectionBody(section: Section, view: View, cuts: PlateCuts): SectionBody {
  return drawBody(section, view, shownPlates(section, cuts));
}

/** The same with the straightened outlines that labels keep clear of. */
export function sectionWithLines(
  section: Section,
  view: View,
  cuts: PlateCuts,
): { readonly body: SectionBody; readonly lines: BodyLines } {
  const plates = shownPlates(section, cuts);
  return { body: drawBody(section, view, plates), lines: bodyLines(section, view, plates) };
}

type PlateCuts = readonly [readonly Cut[], readonly Cut[]];
type ShownPlates = readonly [readonly ViewEdge[], readonly ViewEdge[]];

function shownPlates(section: Section, cuts: PlateCuts): ShownPlates {
  return [cutAway(section.plates[0], cuts[0]), cutAway(section.plates[1], cuts[1])];
}

function drawBody(section: Section, view: View, [edges1, edges2]: ShownPlates): SectionBody {
  const [drawn1, drawn2] = [drawEdges(view, edges1), drawEdges(view, edges2)];
  const weldMetal = [...section.welds, ...section.spatter];
  const outline: Pen = { d: '', at: null };
  const fusion: Pen = { d: '', at: null };
  const breaks: Pen = { d: '', at: null };
  for (const { piece, broken, d } of [...drawn1, ...drawn2]) {
    const pen = broken ? breaks : isFused(piece, section.welds) ? fusion : outline;
    stroke(pen, view, piece, d);
  }
  const plates = [section.plates[0], section.plates[1]] as const;
  for (const region of weldMetal) {
    for (const piece of region) {
      if (!isFused(piece, plates)) stroke(outline, view, piece, drawPiece(view, piece));
    }
  }
  const backing = section.backing ?? [];
  for (const piece of backing) stroke(outline, view, piece, drawPiece(view, piece));
  return {
    plates: [fillPath(view, drawn1), fillPath(view, drawn2)],
    backing: pathOf(view, backing, true),
    weld: weldMetal.map((region) => pathOf(view, region, true)).join(''),
    outline: outline.d,
    fusion: fusion.d,
    breaks: breaks.d,
  };
}

/** Each edge is both filled and stroked, so its path data is written once. */
function drawEdges(view: View, edges: readonly ViewEdge[]): readonly DrawnEdge[] {
  return edges.map(({ piece, broken }) => ({
    piece,
    broken,
    d: broken ? freehandTo(view, piece.a, piece.b) : drawPiece(view, piece),
  }));
}

function bodyLines(section: Section, view: View, plates: ShownPlates): BodyLines {
  const outline: number[] = [];
  for (const edges of plates) for (const { piece } of edges) flattenPiece(outline, view, piece);
  if (section.backing !== null) flattenInto(outline, view, section.backing);
  const weldFrom = outline.length;
  for (const region of section.welds) flattenInto(outline, view, region);
  for (const bump of section.spatter) flattenInto(outline, view, bump);
  return { outline, weldFrom };
}

/** Whether one of the regions walks this same piece the other way: metal joined to metal. */
function isFused(piece: Segment, regions: readonly Region[]): boolean {
  for (const region of regions)
    for (const other of region)
      if (samePoint(piece.a, other.b) && samePoint(piece.b, other.a)) return true;
  return false;
}

function stroke(pen: Pen, view: View, piece: Segment, d: string): void {
  if (pen.at === null || !samePoint(pen.at, piece.a)) pen.d += moveTo(view, piece.a);
  pen.d += d;
  pen.at = piece.b;
}

function fillPath(view: View, edges: readonly DrawnEdge[]): string {
  const [first] = edges;
  // the whole plate lies beyond the cuts
  if (first === undefined) return '';
  let path = moveTo(view, first.piece.a);
  for (const { d } of edges) path += d;
  return `${path}Z`;
}
