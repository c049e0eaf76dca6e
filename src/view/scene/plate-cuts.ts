import type { Point, Region, Vector } from '../../geometry/index.ts';
import { add, dot, scale, subtract } from '../../geometry/index.ts';
import type { PlateSurfaces, Section } from '../../joint/index.ts';
import type { Cut } from './cut-away.ts';
import type { Sheet } from './sheet.ts';
import { toMm, type View } from './view-transform.ts';

/** A plate that runs further than this from the weld is taken to run on, mm. */
const RUNS_ON = 30;
/** A plate is shown whole when no more than this of its depth would be cut off, px. */
const SPARE_DEPTH = 8;
/** A break stays this far inside the end that a plate is built with, mm. */
const SHORT_OF_END = 0.2;

/** Where the view breaks each plate off: at the edge of the sheet, square to the plate or along it. */
export function plateCuts(
  section: Section,
  view: View,
  sheet: Sheet,
): readonly [readonly Cut[], readonly Cut[]] {
  return [cutsOf(section, view, sheet, 0), cutsOf(section, view, sheet, 1)];
}

function cutsOf(section: Section, view: View, sheet: Sheet, plate: 0 | 1): readonly Cut[] {
  const surfaces = section.plateSurfaces[plate];
  const frame = frameOf(view, sheet);
  const built = builtExtent(section.plates[plate], surfaces);
  const { face } = surfaces;
  const cuts: Cut[] = [];
  const inward = scale(face.normal, -1);
  const depth = Math.min(built.depth, depthRoom(frame, surfaces, sheet, view));
  if ((built.depth - depth) * view.scale > SPARE_DEPTH) {
    cuts.push({ at: add(face.origin, scale(inward, depth)), away: inward });
  }
  for (const away of [face.along, scale(face.along, -1)]) {
    const end = away === face.along ? built.ahead : built.behind;
    if (end < RUNS_ON) continue;
    const room = Math.min(
      reachIn(frame, face.origin, away),
      reachIn(frame, add(face.origin, scale(inward, depth)), away),
      end - SHORT_OF_END,
    );
    cuts.push({ at: add(face.origin, scale(away, room)), away });
  }
  return cuts;
}

/** How far a plate reaches from its face's origin along and against its direction, and below its face, mm. */
function builtExtent(plate: Region, { face }: PlateSurfaces) {
  let [ahead, behind, depth] = [0, 0, 0];
  for (const { a } of plate) {
    const from = subtract(a, face.origin);
    ahead = Math.max(ahead, dot(from, face.along));
    behind = Math.max(behind, -dot(from, face.along));
    depth = Math.max(depth, -dot(from, face.normal));
  }
  return { ahead, behind, depth };
}

/** The view's part of the section plane, mm. */
export interface Frame {
  readonly low: Point;
  readonly high: Point;
}

/** What of the section plane lies on the sheet. */
export function frameOf(view: View, sheet: Sheet): Frame {
  return {
    low: toMm(view, { x: sheet.left, y: sheet.bottom }),
    high: toMm(view, { x: sheet.right, y: sheet.top }),
  };
}

/** How far one can go from a point in a direction before leaving the frame, mm; 0 outside it. */
function reachIn(frame: Frame, from: Point, direction: Vector): number {
  const x = reachOnAxis(from.x, direction.x, frame.low.x, frame.high.x);
  const y = reachOnAxis(from.y, direction.y, frame.low.y, frame.high.y);
  return Math.max(0, Math.min(x, y));
}

function reachOnAxis(from: number, step: number, low: number, high: number): number {
  // going along the other axis
  if (Math.abs(step) < 1e-9) return Infinity;
  return ((step > 0 ? high : low) - from) / step;
}

/** A plate leans from this sine on; one that hardly does is shown as deep as an upright or level one. */
const LEANS = 0.02;

/** Depth that can be shown: to the sheet's edge under a level or upright plate, a strip of a leaning one. */
function depthRoom(frame: Frame, { face }: PlateSurfaces, sheet: Sheet, view: View): number {
  const { along, origin } = face;
  const lean = Math.min(Math.abs(along.x), Math.abs(along.y));
  const whole = reachIn(frame, origin, scale(face.normal, -1));
  if (lean > LEANS) {
    const strip = (sheet.margins.metal * 1.2) / view.scale;
    return Math.abs(along.y) > 0.3 ? Math.min(whole, strip) : whole;
  }
  // its far side too stays on the sheet as far as its face does
  const reach = Math.max(reachIn(frame, origin, along), reachIn(frame, origin, scale(along, -1)));
  return Math.max(0, whole - lean * reach);
}
