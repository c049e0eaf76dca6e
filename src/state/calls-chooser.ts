import type { CompiledLimitSet, JobSheet } from '../limits/index.ts';
import { below, happens, pick, random, skillsOf, type SheetSkill } from '../quiz/index.ts';
import type { Chooser } from './calls.svelte.ts';

/** Where a first question stands, on each scale: easy, but not at once to be seen. */
const FIRST = { ratio: 0.25, deg: 8, mm: 0.6 } as const;

/** Questions of any skill that a sheet lets be asked, accept and reject alike often. */
export function plainChooser(sheet: JobSheet, limits: CompiledLimitSet): Chooser {
  return (run, _records, seed) => {
    const skills = skillsOf(sheet, limits);
    const chance = random(seed);
    const own = skills.filter(({ id }) => run.skill === null || id === run.skill);
    if (own.length === 0) return null;
    const skill: SheetSkill = pick(chance, own);
    const away = Math.min(FIRST[skill.scale], skill.reach);
    const side = happens(chance, 0.5) ? 1 : -1;
    return {
      version: 1,
      seed: below(chance, 2 ** 32),
      skill: skill.id,
      view: pick(chance, skill.views),
      asked: skill.reach === 0 ? 'refer' : side * away,
    };
  };
}
