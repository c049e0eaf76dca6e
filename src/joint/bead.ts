import { reverseContour } from '../geometry/index.ts';
import type { Contour, Point, Segment } from '../geometry/index.ts';
import { beadProfile, type BeadShape } from './bead-profile.ts';
import { isNone } from './least-size.ts';
import { overlapRoll, walkRoll, type OverlapRoll } from './overlap-roll.ts';
import { refuse } from './refuse.ts';
import type { SurfaceLine } from './section.ts';

/** One end of a bead: its fused toe, the surface it stands on, and how far it rolls over. */
export interface BeadEnd {
  readonly toe: Point;
  readonly surface: SurfaceLine;
  readonly overlap: number;
  /** the joint's field that `overlap` comes from */
  readonly overlapField: string;
}

/**
 * The exposed weld metal from fused toe 1 to fused toe 2: the face, and at an
 * overlap the unfused under-surface and the nose, which the face leaves smoothly.
 * The shape's heights count from the chord through the fused toes.
 */
export function bead(
  ends: readonly [BeadEnd, BeadEnd],
  outward: 'left' | 'right',
  shape: BeadShape,
): Contour {
  const [end1, end2] = ends;
  const roll1 = rollAt(end1);
  const roll2 = rollAt(end2);
  const noses = [roll1?.nose ?? null, roll2?.nose ?? null] as const;
  const face = beadProfile(end1.toe, end2.toe, outward, shape, noses);
  if (roll1 === null && roll2 === null) return face;

  const first = face[0] as Segment;
  const last = face[face.length - 1] as Segment;
  const before = roll1 ? rolled(roll1, first.a, first.bulge, end1) : [];
  const after = roll2 ? rolled(roll2, last.b, last.bulge, end2) : [];
  return [...before, ...face, ...reverseContour(after)];
}

function rollAt({ toe, surface, overlap }: BeadEnd): OverlapRoll | null {
  return isNone(overlap) ? null : overlapRoll(toe, surface, overlap);
}

function rolled(roll: OverlapRoll, leave: Point, bulge: number, end: BeadEnd): Contour {
  // a face arc of half a circle or more leaves the nose the wrong way round
  const walk = Math.abs(bulge) < 1 ? walkRoll(roll, leave) : null;
  if (walk === null) refuse(end.overlapField, 0, 'joint_error_overlap_inside_face');
  return walk;
}
