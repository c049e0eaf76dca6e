import { normalShare } from './normal.ts';

/**
 * The probability that a quantity lies inside its one limit, 0 to 1: measured
 * with the margin given (positive inside) by an instrument of standard
 * uncertainty `uncertainty`, both in one unit, normally distributed. Without
 * uncertainty it is what the margin says. JCGM 106:2012, 7.2 and 7.3
 * (from memory, verify).
 */
export function conformanceProbability(margin: number, uncertainty: number): number {
  // an instrument that never errs: on the limit is inside
  if (uncertainty === 0) return margin >= 0 ? 1 : 0;
  return normalShare(margin / uncertainty);
}
