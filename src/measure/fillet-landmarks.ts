import type { Extreme, Point, Vector } from '../geometry/index.ts';
import {
  add,
  cross,
  dot,
  extremeFromLine,
  length,
  normalise,
  perpendicularRight,
  scale,
  subtract,
} from '../geometry/index.ts';
import type { FilletRoot, Section, SurfaceLine } from '../joint/index.ts';
import type { ExposedWeld } from './exposed-weld.ts';
import { exposedWeld } from './exposed-weld.ts';
import { stationOn, surfaceCrossing } from './surface-line.ts';

/** The points and lines of a fillet joint that every measurement of it starts from. */
export interface FilletLandmarks {
  readonly surfaces: readonly [SurfaceLine, SurfaceLine];
  readonly filletRoot: FilletRoot;
  /** O, the theoretical root: where the two surface lines cross. */
  readonly o: Point;
  /** Unit, from O halfway between the two surfaces, through the weld. */
  readonly bisector: Vector;
  /** Cosine of half the dihedral angle. */
  readonly cosHalf: number;
  readonly weld: FilletWeld | null;
}

/** What is there once the joint is welded. */
export interface FilletWeld extends ExposedWeld {
  /** From O along each surface line to the toe, mm. */
  readonly legs: readonly [number, number];
  readonly chordLength: number;
  /** Unit, square to the chord, away from O. */
  readonly outward: Vector;
  /** Distance from O to the straight line through the toes, mm. */
  readonly chordThroat: number;
  /** Where the face stands farthest outside the chord, and by how much. */
  readonly outermost: Extreme;
  /** Where the face lies deepest inside the chord, and by how much. */
  readonly innermost: Extreme;
}

/** Landmarks of a fillet section; null for a section that is none. */
export function filletLandmarks(section: Section): FilletLandmarks | null {
  const { filletRoot, face } = section;
  const [first, second] = face.surfaces;
  const o = surfaceCrossing(first, second);
  // a butt joint, or plates that never meet
  if (filletRoot === null || o === null) return null;
  const sum = add(first.along, second.along);
  return {
    surfaces: face.surfaces,
    filletRoot,
    o,
    bisector: normalise(sum),
    cosHalf: length(sum) / 2,
    weld: filletWeld(section, o),
  };
}

function filletWeld({ face }: Section, o: Point): FilletWeld | null {
  const weld = exposedWeld(face);
  // not yet welded
  if (weld === null) return null;
  const { bead, toes, lips } = weld;
  const [toe1, toe2] = toes;
  const chord = subtract(toe2, toe1);
  const chordLength = length(chord);
  const side = perpendicularRight(scale(chord, 1 / chordLength));
  const outward = dot(subtract(toe1, o), side) < 0 ? scale(side, -1) : side;
  return {
    bead,
    toes,
    lips,
    legs: [legTo(face.surfaces[0], o, toe1), legTo(face.surfaces[1], o, toe2)],
    chordLength,
    outward,
    chordThroat: Math.abs(cross(subtract(toe1, o), chord)) / chordLength,
    outermost: extremeFromLine(bead, toe1, outward),
    innermost: extremeFromLine(bead, toe1, scale(outward, -1)),
  };
}

function legTo(surface: SurfaceLine, o: Point, at: Point): number {
  return stationOn(surface, at) - stationOn(surface, o);
}
