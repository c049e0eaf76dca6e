import { possibleQuestions } from '../../../quiz/index.ts';
import type { CallsSession } from '../../../state/calls.svelte.ts';
import { mirrored } from '../../scene/mirrored.ts';
import { RUN_SAMPLE, type PossibleSection } from '../../scene/run-scale.ts';

/**
 * Sections that may come in a run of one skill, in which an eye is measured: they decide how large the
 * first is drawn, so that all come at about one scale. None where a run mixes skills, or has its scale.
 */
export function possibleSections({
  run,
  question,
  heldScale,
  sheet,
  limits,
}: CallsSession): readonly PossibleSection[] {
  const isOfOne = run !== null && (run.way === 'limit' || run.skill !== null);
  if (!isOfOne || question === null || heldScale !== null) return [];
  return possibleQuestions(question.spec.skill, sheet, limits, RUN_SAMPLE).map((one) => ({
    section: one.mirrored ? mirrored(one.measurements.section) : one.measurements.section,
    known: { plate: one.known === 't1' ? 0 : 1 },
  }));
}
