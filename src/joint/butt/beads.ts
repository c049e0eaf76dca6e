import { distance } from '../../geometry/index.ts';
import type { Contour, Point } from '../../geometry/index.ts';
import { bead, type BeadEnd } from '../bead.ts';
import { profileFolds, type BeadShape } from '../bead-profile.ts';
import type { ButtJoint } from '../joint.ts';
import { refuse } from '../refuse.ts';
import type { Bound } from './deposit.ts';
import { LEAST_LENGTH } from './edge-preparation.ts';
import type { Pair } from './pair.ts';
import { place } from './plate-frame.ts';
import type { SetPlate, SetUp } from './set-up.ts';
import type { PlateEnds } from './weld-ends.ts';

/** The exposed face from toe to toe, overlap rolled over the surfaces included. */
export function faceBead(joint: ButtJoint, { plates }: SetUp, ends: Pair<PlateEnds>): Bound {
  const shape = {
    rise: joint.capHeight,
    shift: joint.crownShift,
    reverse: 0,
    dip: joint.capDip,
  };
  const endOf = (plate: SetPlate, { face }: PlateEnds): BeadEnd => ({
    toe: place(plate.frame, face.toe),
    surface: plate.face,
    overlap: plate.number === 1 ? joint.overlap1 : joint.overlap2,
    overlapField: `overlap${plate.number}`,
  });
  const both = [endOf(plates[0], ends[0]), endOf(plates[1], ends[1])] as const;
  checkChord('capPast1', both[0].toe, both[1].toe, shape);
  return { contour: bead(both, 'left', shape), isBead: true, field: 'capHeight' };
}

/** The exposed root bead, or the second cap of a two-sided joint, from root toe to root toe. */
export function rootBead(joint: ButtJoint, { plates }: SetUp, ends: Pair<PlateEnds>): Bound {
  const shape = { rise: joint.rootHeight, shift: 0, reverse: 0, dip: 0 };
  const endOf = (plate: SetPlate, { root }: PlateEnds): BeadEnd => ({
    toe: place(plate.frame, root.toe),
    surface: plate.root,
    overlap: 0,
    overlapField: '',
  });
  const both = [endOf(plates[0], ends[0]), endOf(plates[1], ends[1])] as const;
  checkChord('rootPast1', both[0].toe, both[1].toe, shape);
  return { contour: bead(both, 'right', shape), isBead: true, field: 'rootHeight' };
}

function checkChord(field: string, toe1: Point, toe2: Point, shape: BeadShape): void {
  const chord = distance(toe1, toe2);
  // touching edges and a bead that nowhere runs past them
  if (chord < LEAST_LENGTH) refuse(field, null, 'joint_error_bead_without_width');
  if (profileFolds(chord, shape)) refuse('capDip', null, 'joint_error_face_folds');
}

/** A straight closure between two points: where the weld ends without a bead. */
export function closure(contour: Contour): Bound {
  return { contour, isBead: false, field: 'incompletePenetration' };
}
