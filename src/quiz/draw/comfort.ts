import type { Check } from '../../limits/index.ts';
import { distanceOf, isCompared, scaleOf, type Compared } from '../distance.ts';
import type { EyeScale } from '../question.ts';
import { faultOf, isOneWith } from '../quantity.ts';
import type { Evaluated } from './evaluate.ts';

/**
 * How far inside its limit whatever isn't asked about stands at least: a tenth of the limit, 2.5
 * degrees, or nothing at all where nothing is permitted. Our own choice, about two scatters of a
 * trained eye.
 */
const comfort: Readonly<Record<EyeScale, number>> = { ratio: 0.1, deg: 2.5, mm: 0 };
/** Of a length at most so much, mm: across a thick plate a tenth would be far. */
const MOST_MM = 0.8;
/** Across a weld a plate's own thickness is the most there is: next to nothing to spare, as a ratio. */
const THICKNESS = 0.005;
/** Between two limits, or between a greatest angle and none: at most this share of the room. */
const SHARE = 0.3;
/** Rounding in a distance. */
const ROUNDING = 1e-7;

export type ComparedCheck = Check & Compared;

/** The checks of one measurement and sense; the first is the one furthest out. */
export function binding(
  checks: readonly Check[],
  measurement: Check['measurement'],
  sense: Check['sense'],
): ComparedCheck | null {
  const group = checks.filter(
    (check): check is ComparedCheck =>
      check.measurement === measurement && check.sense === sense && isCompared(check),
  );
  return group.reduce<ComparedCheck | null>(
    (worst, check) => (worst === null || distanceOf(check) > distanceOf(worst) ? check : worst),
    null,
  );
}

/** How far inside a check has to stand to be out of question, on its own scale. */
export function comfortOf(check: ComparedCheck, checks: readonly Check[]): number {
  const scale = scaleOf(check);
  if (scale === 'mm') return 0;
  const { sense, limit } = check;
  if (check.measurement === 'jointThickness') return THICKNESS;
  const usual = scale === 'ratio' ? Math.min(comfort.ratio, MOST_MM / limit) : comfort.deg;
  const facing = binding(checks, check.measurement, sense === 'max' ? 'min' : 'max');
  if (facing === null) {
    return scale === 'deg' && sense === 'max' ? Math.min(usual, SHARE * limit) : usual;
  }
  // how far a value on the facing limit would stand inside this one
  const room = -distanceOf({ ...check, measured: facing.limit });
  return Math.min(usual, Math.max(0, SHARE * room));
}

/**
 * What on this joint would be a second question beside the decisive check: whatever isn't
 * comfortably inside, unless it is the same fault by another measure and no further out.
 */
export function intruders(
  { checks }: Evaluated,
  decisive: ComparedCheck,
  unsettledBefore: ReadonlySet<string>,
): readonly Check[] {
  const own = faultOf(decisive);
  const out = distanceOf(decisive);
  return checks.filter((check) => {
    const same = check.measurement === decisive.measurement && check.sense === decisive.sense;
    if (!isCompared(check)) {
      // nothing about the decisive measurement may be left open, nor anything else that is there and wasn't open before
      const isThere = check.sense === 'min' || (check.measured ?? 0) !== 0;
      if (check.measurement === decisive.measurement) return true;
      return isThere && !unsettledBefore.has(check.id);
    }
    const distance = distanceOf(check);
    if (same) return distance > out + ROUNDING;
    if (isOneWith(own, faultOf(check))) {
      const inside = -comfortOf(check, checks);
      // degrees and a share of a limit can't be put beside each other
      if (scaleOf(check) !== scaleOf(decisive))
        return decisive.call !== 'reject' && distance > inside + ROUNDING;
      return distance > Math.max(out, inside) + ROUNDING;
    }
    // a root that nobody can see is no question about this joint
    if (check.call === 'refer' && !isHidden(check)) return true;
    return check.call === 'reject' || distance > -comfortOf(check, checks) + ROUNDING;
  });
}

/** Whether a check is left open only because no eye gets to the root side. */
const isHidden = ({ reasons: [first] }: Check): boolean =>
  first?.key === 'limits_reason_root_hidden';
