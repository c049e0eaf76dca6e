import { defaultJoint } from '../../joint/index.ts';
import type { FilletJoint, Stage } from '../../joint/index.ts';
import { specifiedSize } from '../../limits/index.ts';
import type { JobSheet } from '../../limits/index.ts';
import { between, happens, lengthBetween, pick, type Random } from '../random.ts';
import { within } from './joint-fields.ts';

/** Legs come out at least and at most so many times what is asked for, before anything is judged. */
const [LEAST_LEG, MOST_LEG] = [1.14, 1.38];

/** A tee stands off its angle by so much at most, degrees, where nothing is said of it; common practice, no source. */
const MOST_OFF = 1.5;

/**
 * A sound fillet as the sheet asks for it, in one of its arrangements: thickness, angle and the shape
 * of the face as they happen to be, no flaw.
 */
export function filletForm(chance: Random, sheet: JobSheet, stage: Stage): FilletJoint {
  const size = specifiedSize(sheet);
  const arrangement = pick(chance, ['tee', 'tee', 'lap', 'corner'] as const);
  const leg = (asked: number): number =>
    within('fillet', 'leg1', asked * lengthBetween(chance, LEAST_LEG, MOST_LEG));
  const [leg1, leg2] = [leg(size.leg1), leg(size.leg2)];
  const plain = defaultJoint('fillet', arrangement);
  const [t1, t2] = thicknesses(chance, arrangement, leg1, leg2);
  const chord = Math.hypot(leg1, leg2);
  // plates as they come together in a shop; cut to it, or the angle would leave a gap of its own
  const isOff = arrangement === 'tee' && happens(chance, 0.5);
  const off = isOff ? between(chance, -MOST_OFF, MOST_OFF) : 0;
  return {
    ...plain,
    stage,
    t1,
    t2,
    leg1,
    leg2,
    dihedralAngle: within('fillet', 'dihedralAngle', size.angle + off),
    cornerOverlap: arrangement === 'corner' ? between(chance, 0, 0.15 * t1) : plain.cornerOverlap,
    endCut: isOff || happens(chance, 0.5) ? 'fitted' : 'square',
    convexity: between(chance, -0.02, 0.07) * chord,
    crownShift: between(chance, -0.3, 0.3),
    fusionDepth: between(chance, 0.5, 1.6),
    rootPenetration: happens(chance, 0.5) ? between(chance, 0, 1) : 0,
    edgeMelt: arrangement === 'lap' && happens(chance, 0.5) ? between(chance, 0, 0.3) : 0,
  };
}

/** Plates that have room for the legs, from as thin as that up to the thickest there is, in half millimetres. */
function thicknesses(
  chance: Random,
  arrangement: FilletJoint['arrangement'],
  leg1: number,
  leg2: number,
): readonly [number, number] {
  const plate = (room: number): number => {
    const least = Math.max(4, room);
    return Math.min(40, Math.ceil(2 * lengthBetween(chance, least, Math.max(1.3 * least, 30))) / 2);
  };
  switch (arrangement) {
    case 'tee':
      return [plate(0.9 * leg1), plate(0.9 * leg2)];
    case 'lap':
      return [plate(0.9 * leg1), plate(1.25 * leg2 + 1.5)];
    case 'corner':
      return [plate(1.5 * leg1 + 1.5), plate(1.25 * leg2 + 1.5)];
  }
}
