import type { Joint } from '../../joint/index.ts';
import type { Check } from '../../limits/index.ts';
import { isCompared, valueAt } from '../distance.ts';
import { quantityOf, sideOf } from '../quantity.ts';
import { between, type Random } from '../random.ts';
import { comfort, comfortOf, type ComparedCheck } from './comfort.ts';
import { numberIn, within, type Fields } from './joint-fields.ts';

/** A change of the joint that takes one check further inside. */
type Mend = (joint: Joint, check: ComparedCheck, more: number) => Fields;

const scaled =
  (...names: readonly string[]): Mend =>
  (joint, { measurement }) => {
    const side = sideOf(measurement) ?? '';
    const fields = names.map((name) => name.replace('#', `${side}`));
    return Object.fromEntries(
      fields.map((name) => {
        const less = numberIn(joint, name) / 2;
        return [name, Math.abs(less) < 0.03 ? 0 : less];
      }),
    );
  };

/** Puts the field to where its measurement stands well inside, `more` of a comfort further. */
const straight =
  (name: string): Mend =>
  (joint, check, more) => {
    const field = name.replace('#', `${sideOf(check.measurement) ?? ''}`);
    const value = valueAt(-more, check);
    return { [field]: within(joint.kind, field, numberIn(joint, field) + value - check.measured) };
  };

const bothLegs =
  (times: number): Mend =>
  (joint) => ({
    leg1: within('fillet', 'leg1', numberIn(joint, 'leg1') * times),
    leg2: within('fillet', 'leg2', numberIn(joint, 'leg2') * times),
  });

const fuller: Mend = (joint, check, more) => ({
  ...bothLegs(1.06)(joint, check, more),
  ...(numberIn(joint, 'convexity') < 0 ? { convexity: numberIn(joint, 'convexity') / 2 } : {}),
});

const nearerLegs: Mend = (joint) => {
  const [leg1, leg2] = [numberIn(joint, 'leg1'), numberIn(joint, 'leg2')];
  return { leg1: 0.7 * leg1 + 0.3 * leg2, leg2: 0.3 * leg1 + 0.7 * leg2 };
};

const flatter: Mend = (joint) =>
  joint.kind === 'fillet'
    ? { convexity: joint.convexity / 2, crownShift: joint.crownShift / 2, reverseCurve: 0 }
    : { capHeight: joint.capHeight * 0.75, crownShift: joint.crownShift / 2, capDip: 0 };

const mends: Readonly<Record<string, Mend>> = {
  leg: straight('leg#'),
  contactLeg: straight('leg2'),
  legDifference: nearerLegs,
  sizeEqual: fuller,
  sizePair: fuller,
  theoreticalThroat: fuller,
  actualThroat: fuller,
  effectiveThroat: fuller,
  deepThroat: fuller,
  isoscelesThroat: (joint, check, more) =>
    check.sense === 'min' ? fuller(joint, check, more) : bothLegs(0.94)(joint, check, more),
  convexity: scaled('convexity'),
  concavity: scaled('convexity', 'reverseCurve'),
  toeAngle: flatter,
  edgeRemaining: scaled('edgeMelt'),
  rootGap: scaled('rootGap'),
  undercut: scaled('undercut#Depth'),
  rootUndercut: scaled('rootUndercut#Depth'),
  overlap: scaled('overlap#'),
  faceReinforcement: scaled('capHeight'),
  rootReinforcement: scaled('rootHeight'),
  underfill: () => ({ capDip: 0, capDrop1: 0, capDrop2: 0, capHeight: 0.8 }),
  misalignment: (joint) => ({ offset: numberIn(joint, 'offset') / 2, angularMisalignment: 0 }),
  angularMisalignment: scaled('angularMisalignment'),
  jointThickness: (joint, check) => ({
    capHeight: joint.kind === 'butt' ? joint.capHeight + 0.2 + (check.limit - check.measured) : 0,
    capDip: 0,
  }),
  capPastGroove: straight('capPast#'),
  bevelAngle: straight('bevelAngle#'),
  rootBevelAngle: straight('rootBevelAngle#'),
  rootOpening: straight('rootOpening'),
};

/**
 * Changes that take what came too near its limit back inside, without touching what decides; null
 * where something can't be helped.
 */
export function mend(
  chance: Random,
  joint: Joint,
  intruding: readonly (readonly [Check, readonly Check[]])[],
  kept: readonly string[],
): Fields | null {
  let changed: Fields = {};
  for (const [check, checks] of intruding) {
    const change = isCompared(check) ? mends[quantityOf(check.measurement)] : undefined;
    if (change === undefined || !isCompared(check)) return null;
    const room = Math.min(comfort.ratio, comfortOf(check, checks));
    const more =
      check.unit === 'deg'
        ? comfortOf(check, checks) + between(chance, 0.1, 1)
        : room * between(chance, 1.1, 1.6);
    const free = Object.entries(change(joint, check, more)).filter(
      ([name, value]) => !kept.includes(name) && value !== Reflect.get(joint, name),
    );
    if (free.length === 0) return null;
    changed = { ...changed, ...Object.fromEntries(free) };
  }
  return changed;
}
