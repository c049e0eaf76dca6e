import type { CompiledLimitSet, JobSheet } from '../limits/index.ts';
import { dueSkills, nextSpec, skillsOf, withoutSlips } from '../quiz/index.ts';
import type { Chooser } from './calls.svelte.ts';

/** Questions of what a sheet lets be asked, as the way to practise chooses them from the calls so far. */
export function waysChooser(
  sheet: JobSheet,
  limits: CompiledLimitSet,
  now: () => Date = () => new Date(),
): Chooser {
  return (run, records, seed) => {
    const calls = withoutSlips(records);
    return nextSpec(run.way, {
      skills: skillsOf(sheet, limits),
      skill: run.skill,
      calls,
      inRun: calls.filter((call) => call.run === run.id),
      due: dueSkills(calls, now()).flatMap(({ skill, isDue }) => (isDue ? [skill] : [])),
      seed,
    });
  };
}
