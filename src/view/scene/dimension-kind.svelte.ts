import type { Section } from '../../joint/index.ts';
import type { DimensionContext } from './dimension-context.ts';
import type { DimensionRequest } from './dimension-request.ts';
import { filletDimensions } from './fillet-dimensions.ts';

/** Chooses what of a section is dimensioned, and in what manner. */
export type Dimensioning = (context: DimensionContext) => readonly DimensionRequest[];

/** The manner of butt joints, fetched when the first one is drawn; undimensioned for that moment. */
let butt = $state.raw<Dimensioning>(() => []);
let asked = false;

/** The manner in which a kind of joint is dimensioned. */
export function dimensioningOf(kind: Section['kind']): Dimensioning {
  if (kind === 'fillet') return filletDimensions;
  if (!asked) void fetchButt();
  return butt;
}

async function fetchButt(): Promise<void> {
  asked = true;
  try {
    butt = (await import('./butt-dimensions.ts')).buttDimensions;
  } catch {
    // Asked again by the next drawing: the network may be back.
    asked = false;
  }
}
