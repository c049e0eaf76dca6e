export type { Estimate } from './estimate.ts';
export { chanceOfReject, type Curve, type PlacedCall } from './curve.ts';
export { biasAtLimit, scatterAtLimit, type AtLimit } from './at-limit.ts';
export {
  chanceOfRight,
  currentEye,
  distanceFor,
  practiceDistance,
  tellingDistance,
  type Side,
} from './current-eye.ts';
export { eyeOf, type Eye, type EyeFigures, type EyeGroup, type Verdict } from './eye-of.ts';
export { isInCurve, withoutSlips } from './kept-calls.ts';
export { fairWithin, fewest, usualScatter } from './support.ts';
export { shiftOf, tallyOf, type Confusion, type Counted, type Tally } from './tally.ts';
export type { Sureness, SurePoint } from './sureness.ts';
