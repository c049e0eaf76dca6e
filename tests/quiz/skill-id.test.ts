import { describe, expect, it } from 'vitest';
import { skillIdOf, skillOf } from '../../src/quiz/skill-id.ts';
import { limitSets } from '../../src/limits/index.ts';
import { measurementCatalogue } from '../../src/measure/index.ts';
import { quantityOf, type SkillId } from '../../src/quiz/index.ts';

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

  it('is read for whatever a set of anyone’s own may put a limit to', () => {
    for (const { judged, id } of Object.values(measurementCatalogue))
      if (judged) expect(skillOf(`fillet.welded.${quantityOf(id)}.max`), id).not.toBeNull();
    for (const quantity of ['misalignment', 'angleDeparture'])
      expect(skillOf(`butt.fitUp.${quantity}.max`), quantity).not.toBeNull();
  });

  it('is read for every row of the built-in sets', () => {
    for (const { criteria } of limitSets)
      for (const subject of criteria.flatMap(({ measurements }) => measurements))
        expect(skillOf(`butt.welded.${quantityOf(subject)}.min`), subject).not.toBeNull();
  });

  it.each([
    '',
    'fillet.welded.undercut',
    'fillet.welded.undercut.most',
    'fillet.welded.undercut.max.refers',
    'fillet.welded.undercut1.max',
    'fillet.welded..max',
    'fillet.molten.undercut.max',
    'fillet.welded.constructor.max',
    'fillet.welded.nonsense.min.refer',
    'a fillet.welded.undercut.max',
    'fillet.welded.undercut.max.',
  ])('is not "%s"', (text) => {
    expect(skillOf(text as SkillId)).toBeNull();
  });
});
