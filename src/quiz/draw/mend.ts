import type { Joint } from '../../joint/index.ts';
import type { Check } from '../../limits/index.ts';
import { isCompared, valueAt } from '../distance.ts';
import { quantityOf, sideOf } from '../quantity.ts';
import { between, type Random } from '../random.ts';
import { comfortOf, type ComparedCheck } from './comfort.ts';
import type { Evaluated } from './evaluate.ts';
import { numberIn, within, type Fields } from './joint-fields.ts';

/** A change of the joint that takes one check further inside by `more`, or several to choose from. */
type Mend = (joint: Joint, check: ComparedCheck, more: number) => Fields | readonly Fields[];

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

/** The leg in question, or where it may not be touched the other by as much. */
const ownLeg: Mend = (joint, check, more) => {
  const own = straight('leg#')(joint, check, more) as Fields;
  const side = sideOf(check.measurement) ?? 1;
  const moved = Number(own[`leg${side}`]) - numberIn(joint, `leg${side}`);
  return [own, { [`leg${3 - side}`]: numberIn(joint, `leg${3 - side}`) + moved }];
};

const bothLegs =
  (times: number) =>
  (joint: Joint): Fields => ({
    leg1: within('fillet', 'leg1', numberIn(joint, 'leg1') * times),
    leg2: within('fillet', 'leg2', numberIn(joint, 'leg2') * times),
  });

const fuller = (joint: Joint): Fields => ({
  ...bothLegs(1.06)(joint),
  ...(numberIn(joint, 'convexity') < 0 ? { convexity: numberIn(joint, 'convexity') / 2 } : {}),
});

/** Either leg brought so near to the other that they differ by no more than is well inside. */
const nearerLegs: Mend = (joint, check, more) => {
  const [leg1, leg2] = [numberIn(joint, 'leg1'), numberIn(joint, 'leg2')];
  const apart = Math.sign(leg1 - leg2) * valueAt(-more, check);
  return [{ leg1: leg2 + apart }, { leg2: leg1 - apart }];
};

/** Either bevel turned so that together they make what is well inside. */
const otherBevel =
  (name: string): Mend =>
  (joint, check, more) => {
    const turn = valueAt(-more, check) - check.measured;
    return ['2', '1'].map((side) => ({
      [`${name}${side}`]: numberIn(joint, `${name}${side}`) + turn,
    }));
  };

const flatter: Mend = (joint) =>
  joint.kind === 'fillet'
    ? { convexity: joint.convexity / 2, crownShift: joint.crownShift / 2, reverseCurve: 0 }
    : { capHeight: joint.capHeight * 0.75, crownShift: joint.crownShift / 2, capDip: 0 };

const mends: Readonly<Record<string, Mend>> = {
  leg: ownLeg,
  contactLeg: straight('leg2'),
  legDifference: nearerLegs,
  sizeEqual: fuller,
  sizePair: fuller,
  theoreticalThroat: fuller,
  actualThroat: fuller,
  effectiveThroat: fuller,
  deepThroat: fuller,
  isoscelesThroat: (joint, { sense }) => (sense === 'min' ? fuller(joint) : bothLegs(0.94)(joint)),
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
  grooveAngle: otherBevel('bevelAngle'),
  rootGrooveAngle: otherBevel('rootBevelAngle'),
  rootOpening: straight('rootOpening'),
};

/** A check that came too near its limit, on the joint where it did. */
export interface Intruding {
  readonly check: Check;
  readonly on: Evaluated;
}

/**
 * Changes that take what came too near its limit back inside, without touching what decides; null
 * where something can't be helped.
 */
export function mend(
  chance: Random,
  intruding: readonly Intruding[],
  kept: readonly string[],
): Fields | null {
  let changed: Fields = {};
  for (const { check, on } of intruding) {
    const change = mends[quantityOf(check.measurement)];
    if (change === undefined || !isCompared(check)) return null;
    const more = comfortOf(check, on.checks) * between(chance, 1.1, 1.5);
    const ways = [change(on.joint, check, more)].flat() as readonly Fields[];
    const free = ways.map((fields) => without(fields, kept, on.joint));
    const way = free.find((fields) => Object.keys(fields).length > 0);
    changed = { ...changed, ...way };
  }
  return Object.keys(changed).length > 0 ? changed : null;
}

/** What of a change is new to the joint and may be touched. */
const without = (fields: Fields, kept: readonly string[], joint: Joint): Fields =>
  Object.fromEntries(
    Object.entries(fields).filter(
      ([name, value]) => !kept.includes(name) && value !== Reflect.get(joint, name),
    ),
  );
