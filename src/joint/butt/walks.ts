import { contourStart, extremeFromLine, line, reverseContour } from '../../geometry/index.ts';
import type { Contour } from '../../geometry/index.ts';
import type { ButtJoint } from '../joint.ts';
import { walkSurface, type SurfaceFlaws, type SurfaceWalk } from '../surface-walk.ts';
import { setbackAt } from './edge-preparation.ts';
import { place } from './plate-frame.ts';
import { edgeBetween, type SetPlate } from './set-up.ts';
import { PLATE_BEYOND, type PlateEnds } from './weld-ends.ts';

/** Setback of a plate's far end: both its surfaces run equally far past the outermost toe. */
export function farSetback({ edge }: SetPlate, ends: PlateEnds | null): number {
  const outermost = Math.max(
    setbackAt(edge, edge.thickness),
    setbackAt(edge, 0),
    ends?.face.toe.x ?? 0,
    ends?.root.toe.x ?? 0,
  );
  return outermost + PLATE_BEYOND;
}

/** A plate's outline past a toe, and the same as if no undercut were there. */
export interface PlateWalk extends SurfaceWalk {
  readonly outside: Contour;
}

/**
 * The plate's outline past the face toe: any bare edge above it first, then
 * undercut, surface and spatter.
 */
export function walkFace(
  joint: ButtJoint,
  plate: SetPlate,
  ends: PlateEnds,
  bead: Contour,
): PlateWalk {
  const { number, face } = plate;
  const bumps = joint.spatter.filter((bump) => bump.plate === number);
  const fromToe = number === 1 ? bead : reverseContour(bead);
  const walk = walkFrom(plate, 'face', ends, {
    undercut: ends.faceUndercut,
    spatter: bumps,
    // nothing sticks where weld metal hangs over the surface
    covered:
      bumps.length === 0
        ? 0
        : Math.max(0, extremeFromLine(bead, contourStart(fromToe), face.along).value),
  });
  const bareEdge = bareBevel(plate, ends);
  return after(bareEdge, bareEdge, walk);
}

/** The edge above a face that stops short of its groove edge, climbing; empty when it fills it. */
export function bareBevel(plate: SetPlate, { face: { toe, onEdge } }: PlateEnds): Contour {
  return onEdge ? edgeBetween(plate, toe.y, plate.edge.thickness) : [];
}

/**
 * The same past the root toe; past the end of the weld down the bare edge when
 * the root is unfused, of which an eye sees no more than is open: `openTo` high.
 */
export function walkRoot(plate: SetPlate, ends: PlateEnds, openTo: number): PlateWalk {
  const { toe, onEdge } = ends.root;
  const walk = walkFrom(plate, 'root', ends, {
    undercut: ends.rootUndercut,
    spatter: [],
    covered: 0,
  });
  if (!onEdge) return walk;
  const bareTo = (height: number): Contour => reverseContour(edgeBetween(plate, 0, height));
  return after(bareTo(toe.y), bareTo(Math.min(openTo, toe.y)), walk);
}

function after(bareEdge: Contour, seenEdge: Contour, walk: PlateWalk): PlateWalk {
  // filled to its edges, as most welds are
  if (bareEdge.length === 0) return walk;
  const { undercut, spatter } = walk;
  return {
    bare: bareEdge.concat(walk.bare),
    beyond: seenEdge.concat(walk.beyond),
    undercut,
    spatter,
    outside: bareEdge.concat(walk.outside),
  };
}

function walkFrom(
  plate: SetPlate,
  side: 'face' | 'root',
  ends: PlateEnds,
  flaws: SurfaceFlaws,
): PlateWalk {
  const { number, edge, frame } = plate;
  const height = side === 'face' ? edge.thickness : 0;
  const { toe, onEdge } = ends[side];
  const from = place(frame, onEdge ? { x: setbackAt(edge, height), y: height } : toe);
  const far = place(frame, { x: farSetback(plate, ends), y: height });
  const leftHanded = (number === 1) === (side === 'root');
  const outside = [line(from, far)];
  const walk = walkSurface(outside, leftHanded ? 'left' : 'right', flaws);
  const { bare, beyond, undercut, spatter } = walk;
  return { bare, beyond, undercut, spatter, outside };
}
