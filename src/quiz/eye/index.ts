export type { Estimate } from './estimate.ts';
export { biasAtLimit, scatterAtLimit } from './at-limit.ts';
export { chanceOfReject, type Curve } from './curve.ts';
export { currentEye, practiceDistance, tellingDistance, type Side } from './current-eye.ts';
export { eyeOf, type Eye, type EyeFigures } from './eye-of.ts';
export { withoutSlips } from './kept-calls.ts';
export { fewest } from './support.ts';
export { shiftOf, tallyOf, type Confusion, type Counted, type Tally } from './tally.ts';
