import type { Point } from '../../geometry/index.ts';
import type { Section } from '../../joint/index.ts';
import type { Check } from '../../limits/index.ts';
import type { MeasurementId, Measurements } from '../../measure/index.ts';
import { type AllowedBand, type BandDrawing, drawnBand, NO_BAND } from './allowed-band.ts';
import { bandCaptions } from './band-captions.ts';
import type { Construction } from './construction.ts';
import { constructionLines, type ConstructionPaths } from './construction-lines.ts';
import {
  type DimensionContext,
  drawnAs,
  governingThroat,
  type SceneWords,
  tonesOf,
} from './dimension-context.ts';
import { type LayoutBefore, layOut, placesOf } from './dimension-layout.ts';
import {
  type DimensionRequest,
  LETTERING,
  type Lettering,
  type Tone,
} from './dimension-request.ts';
import { type DrawnDimension, drawnDimensions } from './drawn-dimension.ts';
import type { DrawingSheet } from './drawing-sheet.ts';
import { type DrawingFoot, drawingFoot } from './drawing-foot.ts';
import type { Dimensioning } from './dimension-kind.svelte.ts';
import { fitAt, fitView } from './fit-view.ts';
import { heldContours, heldNote } from './held-outline.ts';
import { type LabelBox, uprightBox } from './label-box.ts';
import { addLines, type Lines } from './lines.ts';
import type { LitPlace } from './lit-place.ts';
import { otherDimensions } from './other-dimensions.ts';
import { flattenInto, pathOf } from './outline-path.ts';
import { plateCuts } from './plate-cuts.ts';
import type { BarLength } from './scale-bar.ts';
import { type SectionBody, sectionWithLines } from './section-body.ts';
import type { Sheet } from './sheet.ts';
import { placeTrueSize, type TrueSize } from './true-size.ts';
import { drawnScale, toPx, type View } from './view-transform.ts';

const NOTHING_TOLD: ReadonlySet<MeasurementId> = new Set();

/** Everything that decides what the drawing shows. */
export interface SceneInput {
  readonly section: Section;
  readonly measurements: Measurements;
  readonly checks: readonly Check[];
  /** the step between the plates that misalignment is read from */
  readonly misalignedStep: MeasurementId;
  readonly sheet: Sheet;
  readonly show: Construction;
  readonly band: AllowedBand | null;
  /** what is pointed at among the checks or measurements */
  readonly lit: Check['measurement'] | null;
  /** how the place of what is pointed at and is nothing is ringed; not at all until it is here */
  readonly litPlace?: LitPlace | undefined;
  /** what stands on the drawing already, beside its dimensions */
  readonly told?: ReadonlySet<MeasurementId>;
  readonly held: { readonly section: Section; readonly label: string } | null;
  /** places that labels keep off, px after the view: the handles' points, mm */
  readonly kept: readonly Point[];
  readonly words: SceneWords;
  readonly bars: readonly BarLength[];
  /** what is dimensioned of this kind of joint, and how */
  readonly dimensioning: Dimensioning;
  /** how what the sheet allows of it is drawn */
  readonly bandDrawing: BandDrawing;
  /** drawn at true size and nothing else */
  readonly trueToSize: boolean;
  /** px per mm of the reader's screen at life size */
  readonly trueScale: number;
  /** the view, where `viewOf` has chosen it already */
  readonly view?: View;
  /** the drawing before, so that this one holds still and is quicker laid out */
  readonly before: Pick<Scene, 'view' | 'places'> | null;
  /** under the hand or a key: labels keep their places as long as they can */
  readonly moving: boolean;
  /** under the hand: the view before is kept whatever happens */
  readonly hold: boolean;
}

/** The drawing as path data and placed text, ready for a page or a file. */
export interface Scene {
  readonly view: View;
  readonly sheet: Sheet;
  readonly lettering: Lettering;
  readonly body: SectionBody;
  readonly showsFusion: boolean;
  readonly band: { readonly inside: string; readonly outside: string; readonly limits: string };
  readonly construction: ConstructionPaths;
  readonly held: string;
  readonly dimensions: readonly DrawnDimension[];
  readonly extensions: Readonly<Record<Tone, string>>;
  /** those of what is pointed at */
  readonly litExtensions: Readonly<Record<Tone, string>>;
  /** paper cleared of hatch round what stands on base metal: strokes and boxes */
  readonly clearLines: string;
  readonly clearBoxes: string;
  /** paper cut into extension lines where a landing crosses them */
  readonly cuts: string;
  readonly trueSize: TrueSize | null;
  readonly foot: DrawingFoot;
  /** boxes of all labels and the visible edges, px, for what is placed later */
  readonly labels: readonly LabelBox[];
  readonly outline: Lines;
  /** the labels' places, for the drawing after */
  readonly places: LayoutBefore['places'];
}

/** Half the side of the square that labels keep off a handle, px. */
const HANDLE_ROOM = 7;

/** How the section lies on the sheet: as in the view before, as long as that serves. */
export function viewOf(
  { section, sheet, trueToSize, trueScale, hold }: ViewInput,
  before: View | null,
): View {
  return trueToSize
    ? fitAt(section, sheet, trueScale)
    : fitView(section, sheet, before, hold, trueScale);
}

type ViewInput = Pick<SceneInput, 'section' | 'sheet' | 'trueToSize' | 'trueScale' | 'hold'>;

/** Composes the whole drawing of a section. The same input gives the same drawing. */
export function composeScene(input: SceneInput): Scene {
  const { section, sheet, show } = input;
  const view = input.view ?? viewOf(input, input.before?.view ?? null);
  const lettering = LETTERING[sheet.manner === 'presenting' ? 'presenting' : 'screen'];
  const { body, lines } = sectionWithLines(section, view, plateCuts(section, view, sheet));
  const band =
    show.band && input.band !== null
      ? drawnBand(section, input.band, view, sheet, input.bandDrawing)
      : NO_BAND;
  const construction = constructionLines(input, view);
  const requests = dimensionRequests(input, view, band);
  const heldLines = input.held === null ? [] : heldContours(input.held.section);
  const thin = construction.lines.slice();
  for (const contour of [band.least, band.most, band.flaws, ...heldLines])
    flattenInto(thin, view, contour);
  const fresh = (): DrawingSheet => ({
    left: 4,
    top: 4,
    right: sheet.width - 4,
    bottom: sheet.bottom,
    outline: lines.outline,
    weldFrom: lines.weldFrom,
    thin: thin.slice(),
    firm: [],
    column: columnOf(section, view),
    boxes: [],
    marks: input.kept.map((point) => handleRoom(toPx(view, point))),
  });
  const layout = layOut(
    fresh,
    lettering,
    requests,
    input.before === null ? undefined : { places: input.before.places, moving: input.moving },
  );
  const labels = layout.placed.map(({ placement }) => placement.box);
  for (const { placement } of layout.placed) {
    addLines(thin, placement.lines);
    addLines(thin, placement.extensions);
  }
  const taken = { outline: lines.outline, labels, lines: thin };
  const drawn = drawnDimensions(
    layout.placed,
    lettering,
    lines,
    input.litPlace?.(input, view) ?? '',
  );
  return {
    view,
    sheet,
    lettering,
    body,
    showsFusion: show.fusion,
    band,
    construction: construction.paths,
    held: heldLines.map((contour) => pathOf(view, contour)).join(''),
    dimensions: drawn.dimensions,
    extensions: drawn.extensions,
    litExtensions: drawn.litExtensions,
    clearLines: drawn.clearLines,
    clearBoxes: drawn.clearBoxes,
    cuts: drawn.cuts,
    trueSize: placeTrueSize(section, sheet, view, lines, taken, input.trueScale),
    foot: drawingFoot(
      sheet,
      view.scale,
      drawnScale(view, input.trueScale),
      input.bars,
      input.words,
      layout.dropped.filter(({ kind }) => kind !== 'caption').length,
    ),
    labels,
    outline: lines.outline,
    places: placesOf(layout),
  };
}

function dimensionRequests(
  input: SceneInput,
  view: View,
  band: ReturnType<typeof drawnBand>,
): readonly DimensionRequest[] {
  const { section, measurements, checks, misalignedStep: step, show, sheet, words, lit } = input;
  const context: DimensionContext = {
    section,
    measurements,
    tones: tonesOf(checks, measurements, step),
    checks,
    judges: (id) =>
      checks.some(({ measurement }) => drawnAs(measurement, measurements, step).includes(id)),
    lit: lit === null ? null : (drawnAs(lit, measurements, step)[0] ?? null),
    told: input.told ?? NOTHING_TOLD,
    governing: section.kind === 'fillet' ? governingThroat(checks, measurements) : null,
    show,
    view,
    sheet,
    words,
  };
  const own = input.dimensioning(context);
  const others = otherDimensions(context, new Set(own.map(({ asked }) => asked.key)));
  return [...own, ...others, ...heldNote(input, view), ...bandCaptions(input, view, band)];
}

/** Labels of a fillet's face share a left edge 16 px past the extension line of toe 1. */
function columnOf({ kind, face }: Section, view: View): number | null {
  // Turned left to right its labels end at the toe, and share no left edge.
  if (kind !== 'fillet' || face.toes === null || face.surfaces[0].along.x < 0) return null;
  const lip = face.lips?.[0] ?? face.toes[0];
  return toPx(view, { x: Math.max(face.toes[0].x, lip.x), y: 0 }).x + 16;
}

function handleRoom({ x, y }: Point): LabelBox {
  return uprightBox(x, y, 2 * HANDLE_ROOM, 2 * HANDLE_ROOM);
}
