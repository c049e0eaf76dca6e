import type { Message } from '../../units/index.ts';
import type { CallRecord, Way } from '../call-record.ts';
import { eyeOf, fewest } from '../eye/index.ts';
import type { SheetSkill } from '../skills.ts';
import type { SkillId } from '../skill.ts';
import type { Due } from './due.ts';

/** One thing to do next, and why. */
export interface Suggestion {
  readonly way: Way;
  readonly skill: SkillId | null;
  readonly why: Message;
}

/** Calls after which finding the limit tells more than further practice. Our choice. */
const KNOWS_THE_RULE = 10;

/**
 * What to do next: a skill whose time has come; else one that is nearly known well enough to say
 * where its line is drawn; else one that is off to one side; else the one with the fewest calls.
 */
export function suggestNext(
  calls: readonly CallRecord[],
  skills: readonly SheetSkill[],
  due: readonly Due[],
): Suggestion | null {
  if (skills.length === 0) return null;
  if (calls.length === 0) {
    const first = skills.find(({ reach }) => reach > 0)?.id ?? null;
    return { way: 'practice', skill: first, why: { key: 'calls_suggest_first' } };
  }
  const counts = new Map<SkillId, number>(
    skills.map(({ id }) => [id, calls.filter((call) => call.skill === id).length]),
  );
  const ready = due.find(({ skill, isDue }) => isDue && counts.has(skill));
  if (ready !== undefined) {
    return { way: 'due', skill: ready.skill, why: { key: 'calls_suggest_due' } };
  }
  const nearly = skills.find(({ id, reach }) => {
    const count = counts.get(id) ?? 0;
    return reach > 0 && count >= KNOWS_THE_RULE && count < fewest.bias;
  });
  if (nearly !== undefined) {
    const left = fewest.bias - (counts.get(nearly.id) ?? 0);
    return {
      way: 'limit',
      skill: nearly.id,
      why: { key: 'calls_suggest_limit', values: { left } },
    };
  }
  for (const { id } of skills) {
    const verdict = eyeOf(calls.filter((call) => call.skill === id))?.verdict;
    if (verdict === 'strict' || verdict === 'lenient') {
      return { way: 'practice', skill: id, why: { key: `calls_suggest_${verdict}` } };
    }
  }
  const [least] = [...counts].sort((a, b) => a[1] - b[1]);
  return { way: 'practice', skill: least?.[0] ?? null, why: { key: 'calls_suggest_least' } };
}
