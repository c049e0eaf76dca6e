import { describe, expect, it } from 'vitest';
import { skillIdOf, skillOf } from '../../src/quiz/skill-id.ts';
import type { SkillId } from '../../src/quiz/index.ts';

describe('the id of a skill', () => {
  it.each<readonly [SkillId, object]>([
    [
      'fillet.welded.undercut.max',
      { kind: 'fillet', stage: 'welded', quantity: 'undercut', sense: 'max', refers: false },
    ],
    [
      'butt.fitUp.rootOpening.min.refer',
      { kind: 'butt', stage: 'fitUp', quantity: 'rootOpening', sense: 'min', refers: true },
    ],
  ])('%s says all of it and leads back to it', (id, skill) => {
    expect(skillOf(id)).toEqual({ id, ...skill });
    expect(skillIdOf(skill as Parameters<typeof skillIdOf>[0])).toBe(id);
  });

  it.each([
    '',
    'fillet.welded.undercut',
    'fillet.welded.undercut.most',
    'fillet.welded.undercut.max.refers',
    'fillet.welded.undercut1.max',
    'fillet.welded..max',
    'fillet.molten.undercut.max',
    'a fillet.welded.undercut.max',
    'fillet.welded.undercut.max.',
  ])('is not "%s"', (text) => {
    expect(skillOf(text as SkillId)).toBeNull();
  });
});
