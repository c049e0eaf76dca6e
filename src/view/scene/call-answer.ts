import type { Contour } from '../../geometry/index.ts';
import { add, line, scale } from '../../geometry/index.ts';
import { stepFor, type Check, type JobSheet } from '../../limits/index.ts';
import type { Measurements } from '../../measure/index.ts';
import { type AllowedBand, allowedBandOf, type BandDrawing } from './allowed-band.ts';
import type { CallDrawing } from './call-drawing.ts';
import type { SceneWords } from './dimension-context.ts';
import type { Dimensioning } from './dimension-kind.svelte.ts';
import { litPlace } from './lit-place.ts';
import { pathOf } from './outline-path.ts';
import { composeScene, type Scene } from './scene.ts';
import type { BarLength } from './scale-bar.ts';

/** What is drawn over a question's section once it is called. */
export interface CallAnswer {
  readonly measurements: Measurements;
  readonly checks: readonly Check[];
  readonly alignment: JobSheet['intendedAlignment'];
  /** the check that was asked about */
  readonly decisive: Check;
}

/** How the drawing's words and figures are written. */
export interface CallWriting {
  readonly words: SceneWords;
  readonly bars: readonly BarLength[];
  readonly dimensioning: Dimensioning;
  readonly bandDrawing: BandDrawing;
  readonly trueScale: number;
}

/** Quantities whose explanation the chord or the surface lines are. */
const byChord = /^(convexity|concavity|chordThroat)/u;
const bySurface =
  /^(leg|undercut|underfill|overlap|misalignment|faceR|rootR|rootU|rootC|toeAngle)/u;

/** The true dimensions and the allowed band, in the very view that the question was drawn in. */
export function answeredScene(
  { view, sheet, known }: CallDrawing,
  { measurements, checks, alignment, decisive }: CallAnswer,
  { words, bars, dimensioning, bandDrawing, trueScale }: CallWriting,
): Scene {
  const { measurement } = decisive;
  return composeScene({
    section: measurements.section,
    measurements,
    checks,
    misalignedStep: stepFor[alignment],
    sheet,
    show: {
      legs: true,
      triangle: true,
      throats: true,
      chord: byChord.test(measurement),
      band: true,
      surfaces: bySurface.test(measurement) && measurements.section.kind === 'butt',
      fusion: true,
      toeAngles: measurement.startsWith('toeAngle'),
    },
    band: allowedBandOf(checks, measurements),
    lit: measurement,
    litPlace,
    told: new Set([known.plate === 0 ? 't1' : 't2']),
    held: null,
    kept: known.points,
    words,
    bars,
    dimensioning,
    bandDrawing,
    trueToSize: false,
    trueScale,
    before: { view, places: new Map() },
    moving: false,
    // the view stays what it was, whatever the dimensions would ask for
    hold: true,
  });
}

/** The least triangle of a fillet that isn't there: what shows past the weld is metal missing. '' where none is. */
export function missingMetal(
  { view }: CallDrawing,
  { measurements, checks }: Pick<CallAnswer, 'measurements' | 'checks'>,
): string {
  const { kind, face, stage } = measurements.section;
  if (kind !== 'fillet' || stage === 'fitUp') return '';
  const { least }: AllowedBand = allowedBandOf(checks, measurements);
  if (least.leg1 === null || least.leg2 === null || least.holds) return '';
  const [surface1, surface2] = face.surfaces;
  const corner1 = add(surface1.origin, scale(surface1.along, least.leg1));
  const corner2 = add(surface2.origin, scale(surface2.along, least.leg2));
  const triangle: Contour = [
    line(surface1.origin, corner1),
    line(corner1, corner2),
    line(corner2, surface2.origin),
  ];
  return pathOf(view, triangle, true);
}
