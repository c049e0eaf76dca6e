import type { ComparedCheck } from '../../../src/quiz/draw/comfort.ts';
import { plainCheck } from '../../limits/plain-check.ts';

/** A check with nothing to it but what a test says, of a row of its own. */
export const madeCheck = (changed: Partial<ComparedCheck>): ComparedCheck => ({
  ...plainCheck,
  id: `made.${changed.measurement ?? 'undercut1'}.${changed.sense ?? 'max'}`,
  ...changed,
});
