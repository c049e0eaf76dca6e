import type { CallRecord } from '../call-record.ts';
import { middleOf } from '../middle.ts';
import type { EyeScale } from '../question.ts';
import { isParted } from './curve.ts';
import type { Estimate } from './estimate.ts';
import { fittedEye, type FittedEye } from './eye-posterior.ts';
import { isInCurve, placed } from './kept-calls.ts';
import { fairWithin, fewest, sameMagnification, usualLapse, usualScatter } from './support.ts';

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
  /** share of calls made blindly, as fitted with the bias; what is held likely where there is no bias */
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
  const groups = byMagnification(usable.filter((call) => call.scale === scale));
  const together = groups.flat();
  if (together.length < fewest.bias) {
    const figures = groups.map((group) => ({ ...figuresOf(group, null, scale), pooled: true }));
    return { ...figuresOf(together, null, scale), scale, groups: figures };
  }
  const fits = groups.map((group) => fitOf(group, scale));
  const main = fits[0] as FittedEye;
  const pooled = fits.map(
    ({ bias, scatter }) => overlap(bias, main.bias) && overlap(scatter, main.scatter),
  );
  const kept = groups.filter((_, i) => pooled[i]).flat();
  return {
    ...figuresOf(kept, groups.length === 1 ? main : fitOf(kept, scale), scale),
    scale,
    groups: groups.map((group, i) => ({
      ...figuresOf(group, fits[i] as FittedEye, scale),
      pooled: pooled[i] as boolean,
    })),
  };
}

const fitOf = (calls: readonly CallRecord[], scale: EyeScale): FittedEye =>
  fittedEye(calls.map(placed), scale);

/** What of a fit its calls support; without a fit nothing but their number. */
function figuresOf(
  calls: readonly CallRecord[],
  fit: FittedEye | null,
  scale: EyeScale,
): EyeFigures {
  const bias = calls.length >= fewest.bias ? (fit?.bias ?? null) : null;
  const scatter = calls.length >= fewest.scatter ? (fit?.scatter ?? null) : null;
  return {
    calls: calls.length,
    pxPerMm: middleOf(calls.map((call) => call.pxPerMm)),
    bias,
    scatter: scatter !== null && isParted(calls.map(placed)) ? 'sharperThanShown' : scatter,
    lapse: fit?.lapse ?? usualLapse,
    verdict: bias === null ? null : verdictOf(bias, usualScatter[scale] * fairWithin),
  };
}

/** What the interval of a bias supports, and no more; fair where even its far end is small. */
export function verdictOf({ low, high }: Estimate, fair: number): Verdict | null {
  if (low >= -fair && high <= fair) return 'fair';
  if (high < 0) return 'strict';
  return low > 0 ? 'lenient' : null;
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
