import type { Point } from '../../geometry/index.ts';
import { add, dot, scale, subtract } from '../../geometry/index.ts';
import type { Section } from '../../joint/index.ts';
import { closedShape, type ClosedShape } from './closed-shape.ts';
import { callSheet, type Paper } from './call-sheet.ts';
import { fitClosely, fitScale } from './fit-closely.ts';
import { fitView } from './fit-view.ts';
import { plateCuts } from './plate-cuts.ts';
import { heldScale } from './run-scale.ts';
import { type SectionBody, sectionBody } from './section-body.ts';
import type { Sheet } from './sheet.ts';
import { toPx, TRUE_SCALE, type View } from './view-transform.ts';

/** What is drawn of a section that a person has to call: no figure on it but one known size. */
export interface CallDrawing {
  readonly view: View;
  readonly sheet: Sheet;
  readonly body: SectionBody;
  /** as an inspector meets it: one tone, closed; null for a cut */
  readonly closed: ClosedShape | null;
  readonly known: KnownSize;
}

/** A thickness told for scale, as a dimension beside the plate it belongs to: path data, px. */
export interface KnownSize {
  readonly lines: string;
  readonly heads: string;
  /** where its text stands, how it is turned, degrees, and its foot from there, px */
  readonly text: Point & { readonly turn: number; readonly foot: number };
  /** its middle and ends in the section plane, mm, for what keeps clear of it */
  readonly points: readonly Point[];
  readonly plate: 0 | 1;
}

export interface CallDrawingInput extends Paper {
  readonly section: Section;
  /** cut: hatched, fused, open gaps. outside: what can be reached, in one tone. */
  readonly view: 'outside' | 'cut';
  /** whether an eye gets to the root side of the finished weld */
  readonly rootAccessible: boolean;
  readonly known: { readonly plate: 0 | 1; readonly mm: number };
  /** drawn size of the questions before, px per mm, which this one is to be near; null for the first */
  readonly held: number | null;
  /** what `runScale` makes of the sections that may come; null where that isn't known */
  readonly runScale: number | null;
  /** px per mm of the reader's screen at life size; null until it is calibrated */
  readonly trueScale: number | null;
}

/** The first drawing of a run of which nothing is known leaves so much room for larger joints. */
const FIRST = 0.92;

/** A section is never so large that less than this share of the room round it is left: no toe at the very edge. */
const BARELY = 0.2;

/** Lays out the drawing of a question. The same input gives the same drawing. */
export function callDrawing(input: CallDrawingInput): CallDrawing {
  const { section, known } = input;
  const sheet = callSheet(section, known, input);
  const view = fitClosely(section, sheet, drawnScale(input, sheet));
  const cuts = plateCuts(section, view, sheet);
  return {
    view,
    sheet,
    body: sectionBody(section, view, cuts),
    closed: input.view === 'cut' ? null : closedShape(section, view, input.rootAccessible, cuts),
    known: knownSize(section, view, sheet, known),
  };
}

/** The first at the scale of the run, the others near the first; of a run of which nothing is known, near what fits. */
function drawnScale(
  { section, held, runScale, trueScale }: CallDrawingInput,
  sheet: Sheet,
): number {
  const closest = fitScale(section, sheet, BARELY);
  if (held === null && runScale !== null) return Math.min(runScale, closest);
  const fit = fitView(section, sheet, null, false, trueScale ?? TRUE_SCALE).scale;
  return held === null ? fit * FIRST : heldScale(fit, closest, held);
}

/** From a plate's visible end to the dimension line, how far an extension runs past it, arrowheads, px. */
const [OFF, PAST, LENGTH, HALF_WIDTH] = [16, 6, 11, 1.9];
/** From the dimension line to its text's foot: over it, or under it where that is further out, px. */
const [OVER, UNDER] = [-6, 18];

/** The thickness of a plate across its visible end. */
function knownSize(
  section: Section,
  view: View,
  sheet: Sheet,
  { plate, mm }: CallDrawingInput['known'],
): KnownSize {
  const { face } = section.plateSurfaces[plate];
  const onFace = add(face.origin, scale(face.along, visibleEnd(section, view, sheet, plate)));
  const corners = [onFace, add(onFace, scale(face.normal, -mm))] as const;
  const out = (corner: Point, px: number): Point => add(corner, scale(face.along, px / view.scale));
  const [from, to] = corners.map((corner) => toPx(view, out(corner, OFF))) as [Point, Point];
  const along = scale(subtract(to, from), 1 / Math.hypot(to.x - from.x, to.y - from.y));
  const aside = { x: -along.y, y: along.x };
  const turn = readable(along);
  const up = { x: Math.sin((turn * Math.PI) / 180), y: -Math.cos((turn * Math.PI) / 180) };
  // away from the plate, over the line or under it
  const isOuter = dot(up, { x: face.along.x, y: -face.along.y }) > 0;
  const head = (tip: Point, sense: 1 | -1): string => {
    const back = add(tip, scale(along, sense * LENGTH));
    return path([tip, add(back, scale(aside, HALF_WIDTH)), add(back, scale(aside, -HALF_WIDTH))]);
  };
  const extensions = corners.map((corner) =>
    path([toPx(view, out(corner, 4)), toPx(view, out(corner, OFF + PAST))]),
  );
  return {
    plate,
    lines: path([from, to]) + extensions.join(''),
    heads: `${head(from, 1)}Z${head(to, -1)}Z`,
    text: { ...scale(add(from, to), 0.5), turn, foot: isOuter ? OVER : UNDER },
    points: [0, 0.25, 0.5, 0.75, 1].map((share) =>
      out(add(onFace, scale(face.normal, -mm * share)), OFF + 8),
    ),
  };
}

/** Along a line, read from below or from the right, degrees clockwise. */
function readable({ x, y }: Point): number {
  const turn = (Math.atan2(y, x) * 180) / Math.PI;
  if (turn > 80) return turn - 180;
  return turn < -100 ? turn + 180 : turn;
}

const path = (points: readonly Point[]): string =>
  points
    .map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${x.toFixed(2)} ${y.toFixed(2)}`)
    .join('');

/** How far along its face a plate can be seen, mm from the face line's origin. */
function visibleEnd(section: Section, view: View, sheet: Sheet, plate: 0 | 1): number {
  const { face } = section.plateSurfaces[plate];
  const cut = plateCuts(section, view, sheet)[plate].find(
    ({ away }) => Math.abs(dot(away, face.along) - 1) < 1e-9,
  );
  if (cut !== undefined) return dot(subtract(cut.at, face.origin), face.along);
  return Math.max(
    ...section.plates[plate].map(({ a }) => dot(subtract(a, face.origin), face.along)),
  );
}
