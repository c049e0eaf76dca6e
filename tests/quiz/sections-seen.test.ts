import { describe, expect, it } from 'vitest';
import { build, defaultJoint } from '../../src/joint/index.ts';
import { defaultJobSheet } from '../../src/limits/index.ts';
import { measure } from '../../src/measure/index.ts';
import { recordedFor, viewsOf } from '../../src/quiz/sections-seen.ts';
import { skillOf } from '../../src/quiz/skill-id.ts';
import type { Skill, SkillId } from '../../src/quiz/index.ts';

const skill = (id: SkillId): Skill => {
  const found = skillOf(id);
  if (found === null) throw new Error(`no skill ${id}`);
  return found;
};
const seen = { ...defaultJobSheet(), rootAccessible: true };
const hidden = { ...seen, rootAccessible: false };
const [either, cut] = [['outside', 'cut'], ['cut']] as const;

describe('the views that a skill can be asked in', () => {
  it.each<SkillId>([
    'fillet.welded.undercut.max',
    'fillet.welded.leg.min',
    'fillet.welded.isoscelesThroat.min',
    'fillet.welded.contactLeg.min',
    'fillet.welded.effectiveThroat.min',
    'butt.welded.faceReinforcement.max',
    'fillet.fitUp.rootGap.max',
  ])('are both for %s, whether or not the root is seen', (id) => {
    expect(viewsOf(skill(id), seen)).toEqual(either);
    expect(viewsOf(skill(id), hidden)).toEqual(either);
  });

  it.each<SkillId>([
    'fillet.welded.rootPenetration.min',
    'fillet.welded.actualThroat.min',
    'fillet.welded.deepThroat.min',
    'fillet.welded.rootGap.max',
    'butt.welded.jointThickness.min',
  ])('are a cut alone for %s, which nothing outside shows', (id) => {
    expect(viewsOf(skill(id), seen)).toEqual(cut);
  });

  it.each<SkillId>([
    'butt.welded.rootReinforcement.max',
    'butt.welded.rootUndercut.max',
    'butt.welded.rootConcavity.max',
    'butt.welded.incompletePenetration.max',
  ])('are a cut alone for %s where no eye gets to the root', (id) => {
    expect(viewsOf(skill(id), seen)).toEqual(either);
    expect(viewsOf(skill(id), hidden)).toEqual(cut);
  });

  it('are both of what lies open before welding', () => {
    expect(viewsOf(skill('butt.fitUp.rootOpening.max'), hidden)).toEqual(either);
  });
});

describe('what the fit-up record tells', () => {
  const measured = (rootGap: number) =>
    measure(build({ ...defaultJoint('fillet'), endCut: 'fitted', rootGap }));
  const told = (id: SkillId, view: 'outside' | 'cut', gap: number) =>
    recordedFor(skill(id), view, measured(gap));

  it('is the gap under a finished fillet that is seen from outside', () => {
    expect(told('fillet.welded.leg.min', 'outside', 1.5)).toEqual([
      { measurement: 'rootGap', value: expect.closeTo(1.5, 9) as number },
    ]);
    expect(told('fillet.welded.leg.min', 'cut', 1.5)).toEqual([]);
    expect(told('fillet.fitUp.rootGap.max', 'outside', 1.5)).toEqual([]);
  });

  it('is no gap only where the answer hangs on there being none', () => {
    expect(told('fillet.welded.leg.min', 'outside', 0)).toEqual([]);
    for (const id of ['fillet.welded.contactLeg.min', 'fillet.welded.effectiveThroat.min'] as const)
      expect(told(id, 'outside', 0)).toEqual([{ measurement: 'rootGap', value: 0 }]);
  });

  it('is nothing of a butt weld', () => {
    const butt = measure(build(defaultJoint('butt')));
    expect(recordedFor(skill('butt.welded.undercut.max'), 'outside', butt)).toEqual([]);
  });
});
