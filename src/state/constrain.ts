import { JointError, parametersOf, type Joint, type ParameterRange } from '../joint/index.ts';
import type { Message } from '../units/index.ts';
import { sectionOf } from './built.ts';
import { numberAt, withNumber } from './parameter.ts';
import { spatterRanges } from './spatter-ranges.ts';

/** Where a parameter was stopped short of what was asked, and why. */
export interface Stop {
  readonly field: string;
  readonly at: number;
  readonly reason: Message;
}

export interface Constrained {
  readonly joint: Joint;
  readonly stop: Stop | null;
}

/** How near to the true stop the bisection comes, mm or degrees. */
const NEAR = 1e-3;

/**
 * The joint with `field` as near to `asked` as can be built, every other field untouched: first the
 * parameter's own bounds, then bisection between the present, good value and the asked one.
 */
export function constrain(joint: Joint, field: string, asked: number): Constrained {
  const range = rangeOf(joint, field);
  const present = numberAt(joint, field);
  // Not a parameter of this joint, or no number: nothing moves.
  if (range === undefined || present === null || !Number.isFinite(asked)) {
    return { joint, stop: null };
  }
  const wanted = Math.min(range.max, Math.max(range.min, asked));
  const outside: Stop | null =
    wanted === asked
      ? null
      : {
          field,
          at: wanted,
          reason: {
            key: asked > wanted ? 'bench_stop_most' : 'bench_stop_least',
            values: { bound: { value: wanted, unit: range.unit } },
          },
        };
  if (wanted === present) return { joint, stop: outside };
  const whole = attempt(joint, field, wanted);
  if (whole.joint !== null) return { joint: whole.joint, stop: outside };
  return bisect(joint, field, present, wanted, whole.reason);
}

/** The bounds of a parameter of this joint, a bump in its spatter list included. */
function rangeOf(joint: Joint, field: string): ParameterRange | undefined {
  const named = (range: ParameterRange): boolean => range.field === field;
  return (
    parametersOf(joint).find(named) ??
    joint.spatter.flatMap((_, index) => spatterRanges(index)).find(named)
  );
}

type Attempt =
  | { readonly joint: Joint; readonly reason: null }
  | { readonly joint: null; readonly reason: Message };

function attempt(joint: Joint, field: string, value: number): Attempt {
  const next = withNumber(joint, field, value);
  try {
    sectionOf(next);
    return { joint: next, reason: null };
  } catch (error) {
    if (error instanceof JointError) return { joint: null, reason: error.reason };
    throw error;
  }
}

function bisect(
  joint: Joint,
  field: string,
  present: number,
  wanted: number,
  refused: Message,
): Constrained {
  let good = joint;
  let near = present;
  let far = wanted;
  let reason = refused;
  while (Math.abs(far - near) > NEAR) {
    const middle = (near + far) / 2;
    const tried = attempt(joint, field, middle);
    if (tried.joint === null) {
      far = middle;
      reason = tried.reason;
    } else {
      near = middle;
      good = tried.joint;
    }
  }
  return { joint: good, stop: { field, at: near, reason } };
}
