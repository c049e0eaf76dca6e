import { beforeAll, describe, expect, it } from 'vitest';
import { limitSets } from '../../../../src/limits/index.ts';
import { quantityOf, type SkillId } from '../../../../src/quiz/index.ts';
import { skillName } from '../../../../src/view/page/calls/fault-name.ts';
import { fetchRest, text } from '../../../../src/view/text.ts';

beforeAll(fetchRest);

/** Every skill that a row of a built-in set could be asked as, of either joint and stage. */
const skills: readonly SkillId[] = [
  ...new Set(
    limitSets.flatMap(({ criteria }) =>
      criteria.flatMap(({ kind: one, measurements }) =>
        (one === undefined ? (['fillet', 'butt'] as const) : [one]).flatMap((kind) =>
          (['fitUp', 'welded'] as const).flatMap((stage) =>
            measurements.flatMap((measurement) =>
              (['min', 'max'] as const).map(
                (sense): SkillId => `${kind}.${stage}.${quantityOf(measurement)}.${sense}`,
              ),
            ),
          ),
        ),
      ),
    ),
  ),
];

describe('the name of a skill', () => {
  const us = { units: 'mm', inches: 'decimal', terms: 'US' } as const;

  it('tells the joint and the stage that it belongs to', () => {
    expect(text(skillName('butt.welded.undercut.max'), us)).toBe('butt: undercut, greatest');
    expect(text(skillName('butt.welded.undercut.max.refer'), us)).toBe(
      'butt: undercut, greatest, or refer',
    );
    expect(text(skillName('fillet.fitUp.rootGap.max'), us)).toBe(
      'fillet fit-up: root opening, greatest',
    );
    expect(text(skillName('fillet.welded.leg.min'), { ...us, terms: 'ISO' })).toBe(
      'fillet: leg length z, least',
    );
  });

  it.each(['US', 'ISO'] as const)('is that of one skill alone in %s terms', (terms) => {
    expect(skills.length).toBeGreaterThan(100);
    const named = new Map<string, SkillId[]>();
    for (const id of skills) {
      const name = text(skillName(id), { ...us, terms });
      named.set(name, [...(named.get(name) ?? []), id]);
    }
    expect([...named.values()].filter((ids) => ids.length > 1)).toEqual([]);
  });
});
