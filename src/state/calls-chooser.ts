import type { CompiledLimitSet, JobSheet } from '../limits/index.ts';
import { dueSkills, nextSpec, skillsOf, withoutSlips } from '../quiz/index.ts';
import { callsIn, type Chooser } from './call-run.ts';

/** Questions of what a sheet lets be asked, as the way to practise chooses them from the calls so far. */
export function waysChooser(
  sheet: JobSheet,
  limits: CompiledLimitSet,
  now: () => Date = () => new Date(),
): Chooser {
  return (run, records, seed) => {
    const calls = withoutSlips(records);
    // the whole log is gone over for this: only where it is asked for
    const due = run.way === 'due' ? dueSkills(calls, now()).filter(({ isDue }) => isDue) : [];
    return nextSpec(run.way, {
      skills: skillsOf(sheet, limits),
      skill: run.skill,
      calls,
      inRun: callsIn(run, records),
      due: due.map(({ skill }) => skill),
      seed,
    });
  };
}
