import type { CallRecord } from '../call-record.ts';
import type { EyeScale } from '../question.ts';
import type { PlacedCall } from './curve.ts';
import type { Estimate } from './estimate.ts';
import { fittedEye, type FittedEye } from './eye-posterior.ts';
import { isInCurve, placed } from './kept-calls.ts';
import { fairWithin, fewest, sameMagnification, usualScatter } from './support.ts';

/** On which side of the limit an eye draws its line: rejects too much, accepts too much, or neither by much. */
export type Verdict = 'strict' | 'lenient' | 'fair';

/**
 * An eye's figures as far as its calls support them, on the scale of its distances (logarithm of the
 * ratio, degrees or mm). Bias above 0: lenient, half rejected only past the limit.
 */
export interface EyeFigures {
  readonly calls: number;
  /** the middle one of the magnifications that the calls were made at */
  readonly pxPerMm: number;
  readonly bias: Estimate | null;
  readonly scatter: Estimate | 'sharperThanShown' | null;
  /** share of calls made blindly, as fitted with the others */
  readonly lapse: number;
  /** null: the calls can't tell yet */
  readonly verdict: Verdict | null;
}

/** The calls at about one magnification, and whether they stand in the pooled figures. */
export interface EyeGroup extends EyeFigures {
  readonly pooled: boolean;
}

/** A person's eye for one skill. */
export interface Eye extends EyeFigures {
  readonly scale: EyeScale;
  /** one for each magnification, the one with the most calls first */
  readonly groups: readonly EyeGroup[];
}

/**
 * Bias and scatter of one skill from its kept calls (slips taken out), with 95 per cent intervals.
 * Magnifications more than a tenth apart are fitted apart; those whose intervals overlap the largest
 * group's are pooled with it. Calls on another scale than the latest are left out. Null without calls.
 */
export function eyeOf(calls: readonly CallRecord[]): Eye | null {
  const usable = calls.filter(isInCurve);
  const scale = usable.at(-1)?.scale;
  if (scale === undefined) return null;
  const groups = byMagnification(usable.filter((call) => call.scale === scale)).map((group) => ({
    group,
    fit: fitOf(group, scale),
  }));
  const main = groups[0]?.fit as FittedEye;
  const marked = groups.map(({ group, fit }, i) => ({
    group,
    fit,
    pooled: i === 0 || (overlap(fit.bias, main.bias) && overlap(fit.scatter, main.scatter)),
  }));
  const together = marked.filter(({ pooled }) => pooled).flatMap(({ group }) => group);
  const fit = groups.length === 1 ? main : fitOf(together, scale);
  return {
    ...figuresOf(together, fit, scale),
    scale,
    groups: marked.map((one) => ({ ...figuresOf(one.group, one.fit, scale), pooled: one.pooled })),
  };
}

const fitOf = (calls: readonly CallRecord[], scale: EyeScale): FittedEye =>
  fittedEye(calls.map(placed), scale);

function figuresOf(
  calls: readonly CallRecord[],
  { bias, scatter, lapse }: FittedEye,
  scale: EyeScale,
): EyeFigures {
  const hasBias = calls.length >= fewest.bias;
  return {
    calls: calls.length,
    pxPerMm: calls.map((call) => call.pxPerMm).sort(rising)[Math.floor(calls.length / 2)] ?? NaN,
    bias: hasBias ? bias : null,
    scatter:
      calls.length < fewest.scatter
        ? null
        : isParted(calls.map(placed))
          ? 'sharperThanShown'
          : scatter,
    lapse,
    verdict: hasBias ? verdictOf(bias, usualScatter[scale] * fairWithin) : null,
  };
}

/** What the interval of a bias supports, and no more; fair where even its far end is small. */
export function verdictOf({ low, high }: Estimate, fair: number): Verdict | null {
  if (low >= -fair && high <= fair) return 'fair';
  if (high < 0) return 'strict';
  return low > 0 ? 'lenient' : null;
}

/** Whether one distance parts all that was accepted from all that was rejected: no finite slope fits best. */
export function isParted(calls: readonly PlacedCall[]): boolean {
  const distances = (rejected: boolean): readonly number[] =>
    calls.filter((call) => call.rejected === rejected).map(({ distance }) => distance);
  return Math.max(...distances(false)) <= Math.min(...distances(true));
}

/** Groups whose magnifications lie within a tenth of one middle, the largest group first. */
function byMagnification(calls: readonly CallRecord[]): readonly (readonly CallRecord[])[] {
  const groups: CallRecord[][] = [];
  const widest = (1 + sameMagnification) / (1 - sameMagnification);
  let least = -Infinity;
  for (const call of [...calls].sort((a, b) => rising(a.pxPerMm, b.pxPerMm))) {
    if (call.pxPerMm > least * widest || groups.length === 0) {
      groups.push([]);
      least = call.pxPerMm;
    }
    groups.at(-1)?.push(call);
  }
  return groups.sort((a, b) => b.length - a.length);
}

const rising = (a: number, b: number): number => a - b;
const overlap = (a: Estimate, b: Estimate): boolean => a.low <= b.high && b.low <= a.high;
