import { isTwoSided } from '../joint/index.ts';
import type { Joint } from '../joint/index.ts';
import { isMeasured, subjects } from '../limits/index.ts';
import type { Check } from '../limits/index.ts';
import { measurementCatalogue } from '../measure/index.ts';
import type { Answer } from './question.ts';
import type { Fault, Quantity } from './skill.ts';

type Subject = Check['measurement'];

/** What is measured, whichever toe, plate or datum it is measured at. */
export const quantityOf = (subject: Subject): Quantity => subject.replace(/\..*$|[12]$/u, '');

/** Every quantity that a limit may be put to, by any set, and what has a name of its own besides. */
const quantities = new Set(
  subjects
    .filter(
      (subject) =>
        !isMeasured(subject) ||
        measurementCatalogue[subject].judged ||
        quantityOf(subject) === subject,
    )
    .map(quantityOf),
);

/** Whether a name from outside is that of a quantity. */
export const isQuantity = (name: string): boolean => quantities.has(name);

/** The plate that a measurement belongs to; null where it belongs to none. */
export const sideOf = (subject: Subject): 1 | 2 | null =>
  /^t[12]$/u.test(subject) ? null : subject.endsWith('1') ? 1 : subject.endsWith('2') ? 2 : null;

/** The fault that a check finds when it rejects. */
export const faultOf = ({ measurement, sense }: Pick<Check, 'measurement' | 'sense'>): Fault =>
  `${quantityOf(measurement)}.${sense}`;

/** Welded from both sides a joint has two faces: what a root has elsewhere goes by a face's name. */
const onSecondFace: Readonly<Record<Quantity, Quantity>> = {
  rootConcavity: 'underfill',
  rootReinforcement: 'faceReinforcement',
  rootUndercut: 'undercut',
};

/** What the fault of a check is called on this joint. */
export function faultOn(joint: Joint, check: Pick<Check, 'measurement' | 'sense'>): Fault {
  const hasTwoFaces = joint.kind === 'butt' && isTwoSided(joint);
  const quantity = quantityOf(check.measurement);
  const face = hasTwoFaces ? onSecondFace[quantity] : undefined;
  return face === undefined ? faultOf(check) : `${face}.${check.sense}`;
}

const throats = [
  'sizeEqual.min',
  'sizePair.min',
  'theoreticalThroat.min',
  'isoscelesThroat.min',
  'actualThroat.min',
  'effectiveThroat.min',
  'deepThroat.min',
] as const satisfies readonly Fault[];

/** A throat, or a size by its triangle, is one fault by several measures. */
const oneFault: readonly (readonly Fault[])[] = [throats];

/**
 * What a fault brings with it: a short leg is short of throat and size by the geometry of its
 * triangle; metal that rolls over a toe leaves it at a sharp angle.
 */
const follows: Readonly<Partial<Record<Fault, readonly Fault[]>>> = {
  'leg.min': [...throats, 'contactLeg.min'],
  'contactLeg.min': ['effectiveThroat.min'],
  'overlap.max': ['toeAngle.min'],
};

/** Whether a joint with the first fault may have the other by the same cause, so that both are a right answer. */
export function isOneWith(fault: Fault, other: Fault): boolean {
  if (fault === other) return true;
  const same = oneFault.some((group) => group.includes(fault) && group.includes(other));
  return same || (follows[fault]?.includes(other) ?? false);
}

/** The fault that an answer to "what is wrong" names; null where it names none. */
export const nameIn = (answered: Answer['fault']): Fault | null =>
  answered === 'somethingElse' || answered === 'notSure' ? null : answered;

/** Whether an answer to "what is wrong" names the fault, or what comes of the same cause. */
export function namesFault(fault: Fault, answered: Answer['fault']): boolean {
  const named = nameIn(answered);
  return named !== null && isOneWith(fault, named);
}

/** Whether what is wrong was named as it is; null where nothing was to be named: no fault, no rejection, no name asked for. */
export const reasonOf = (fault: Fault | null, { call, fault: answered }: Answer): boolean | null =>
  fault === null || call !== 'reject' || answered === null ? null : namesFault(fault, answered);

/** Faults that an eye takes for one another; common practice, no source. */
const lookAlikes: readonly (readonly Fault[])[] = [
  ['undercut.max', 'overlap.max'],
  ['undercut.max', 'toeAngle.min'],
  ['undercut.max', 'underfill.max'],
  ['convexity.max', 'toeAngle.min', 'isoscelesThroat.max'],
  ['convexity.max', 'overlap.max'],
  ['concavity.max', ...throats, 'undercut.max'],
  ['leg.min', 'legDifference.max', ...throats],
  ['leg.max', 'legDifference.max', 'isoscelesThroat.max'],
  ['leg.min', 'contactLeg.min', 'rootGap.max'],
  ['faceReinforcement.max', 'toeAngle.min', 'capPastGroove.max'],
  ['faceReinforcement.max', 'overlap.max'],
  ['rootConcavity.max', 'incompletePenetration.max', 'jointThickness.min', 'rootUndercut.max'],
  ['rootReinforcement.max', 'rootConcavity.max'],
  ['underfill.max', 'capPastGroove.min', 'rootConcavity.max'],
  ['misalignment.max', 'angularMisalignment.max', 'underfill.max'],
  ['rootGap.max', 'angleDeparture.max'],
  ['bevelAngle.max', 'grooveAngle.max', 'rootBevelAngle.max', 'rootGrooveAngle.max'],
  ['bevelAngle.min', 'grooveAngle.min', 'rootBevelAngle.min', 'rootGrooveAngle.min'],
  ['rootOpening.max', 'rootFace.max', 'rootOpening.min', 'rootFace.min'],
];

/** Whether an eye may take the one for the other. */
export const looksLike = (fault: Fault, other: Fault): boolean =>
  fault !== other && lookAlikes.some((group) => group.includes(fault) && group.includes(other));
