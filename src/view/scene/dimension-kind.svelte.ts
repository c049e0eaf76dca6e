import type { Section } from '../../joint/index.ts';
import { type BandDrawing, filletBand, NO_BAND } from './allowed-band.ts';
import type { DimensionContext } from './dimension-context.ts';
import type { DimensionRequest } from './dimension-request.ts';
import { filletDimensions } from './fillet-dimensions.ts';
import { filletGrips, type Grips } from './grips.ts';

/** Chooses what of a section is dimensioned, and in what manner. */
export type Dimensioning = (context: DimensionContext) => readonly DimensionRequest[];

type ButtDrawing = typeof import('./butt-drawing.ts');

/** What is special to butt joints, fetched when the first one is drawn; bare lines for that moment. */
let butt = $state.raw<ButtDrawing | null>(null);
let asked = false;

/** The manner in which a kind of joint is dimensioned. */
export function dimensioningOf(kind: Section['kind']): Dimensioning {
  return kind === 'fillet' ? filletDimensions : (buttDrawing()?.buttDimensions ?? (() => []));
}

/** How what the sheet allows of a kind of joint is drawn. */
export function bandDrawingOf(kind: Section['kind']): BandDrawing {
  return kind === 'fillet' ? filletBand : (buttDrawing()?.buttBand ?? (() => NO_BAND));
}

/** How the parameters of a kind of joint are taken hold of on the drawing. */
export function gripsOf(kind: Section['kind']): Grips {
  return kind === 'fillet' ? filletGrips : (buttDrawing()?.buttGrips ?? {});
}

function buttDrawing(): ButtDrawing | null {
  if (!asked) void fetchButt();
  return butt;
}

async function fetchButt(): Promise<void> {
  asked = true;
  try {
    butt = await import('./butt-drawing.ts');
  } catch {
    // Asked again by the next drawing: the network may be back.
    asked = false;
  }
}
