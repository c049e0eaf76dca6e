import { describe, expect, it } from 'vitest';
import { QuizError, skillOf, skillsOf } from '../../src/quiz/index.ts';
import type { SkillId } from '../../src/quiz/index.ts';
import { draw, opening, spec } from './asked.ts';

describe('what can be asked', () => {
  it('is what questions can be drawn of, in a steady order, a limit on both sides as two', () => {
    const skills = skillsOf(opening.sheet, opening.limits);
    const ids = skills.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(skillsOf(structuredClone(opening.sheet), opening.limits)).toBe(skills);
    expect(ids).toEqual(
      expect.arrayContaining([
        'fillet.welded.leg.min',
        'fillet.welded.undercut.max',
        'butt.welded.undercut.max',
        'fillet.fitUp.rootGap.max',
        'butt.fitUp.rootOpening.min',
        'butt.fitUp.rootOpening.max',
      ]),
    );
    for (const skill of skills) expect(skillOf(skill.id)).toMatchObject({ id: skill.id });
  });

  // at 90° a face as convex as 1 + 0.15 b leaves its toes at 135° - 2 atan(2 h / b): 82° at b = 10, under 100°
  it('leaves out what never stands alone: convexity under ISO 5817 takes the toe angle with it', () => {
    const ids = skillsOf(opening.sheet, opening.limits).map(({ id }) => id);
    expect(ids).not.toContain('fillet.welded.convexity.max');
    expect(() => draw(opening, spec('fillet.welded.convexity.max', 0.1))).toThrow(
      new QuizError({ key: 'calls_error_not_on_this_sheet' }),
    );
  });

  it('is nothing that has no name, or is of another kind of joint', () => {
    expect(skillOf('fillet.welded.undercut' as SkillId)).toBeNull();
    expect(skillOf('pipe.welded.undercut.max' as SkillId)).toBeNull();
    expect(() => draw(opening, spec('nothing' as SkillId, 0.1))).toThrow(
      'calls_error_no_such_skill',
    );
    expect(() => draw(opening, spec('butt.fitUp.leg.min', 0.1))).toThrow(
      'calls_error_not_on_this_sheet',
    );
  });
});
