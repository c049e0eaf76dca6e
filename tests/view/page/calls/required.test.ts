import { beforeAll, describe, expect, it } from 'vitest';
import { drawQuestion, skillsOf, type SheetSkill } from '../../../../src/quiz/index.ts';
import { requiredOf } from '../../../../src/view/page/calls/required.ts';
import { fetchRest, type Reading } from '../../../../src/view/text.ts';
import { sheetUnder } from '../../../quiz/question-sheets.ts';

const reading = { units: 'mm', inches: 'decimal', terms: 'US' } as Reading;
const told = (
  { sheet, limits }: ReturnType<typeof sheetUnder>,
  { id, views }: Pick<SheetSkill, 'id' | 'views'>,
  seed: number,
  asked: number | 'accept' | 'reject' | 'refer',
) => {
  const [view = 'cut'] = views;
  const question = drawQuestion({ version: 1, seed, skill: id, view, asked }, sheet, limits);
  return requiredOf(question, limits, reading);
};

beforeAll(fetchRest);

describe('what is told as required before the call', () => {
  it.each(['iso5817-c', 'aws-d11-static', 'b313-normal', 'lock-gate-house'])(
    'is the same whatever the truth, to the last sign: %s',
    (id) => {
      const one = sheetUnder(id);
      for (const skill of skillsOf(one.sheet, one.limits)) {
        for (let seed = 0; seed < 4; seed++) {
          const asked = skill.refers ? skill.truths : [0.5 * skill.reach, -0.5 * skill.reach];
          const lists = asked.map((where) => told(one, skill, seed, where));
          for (const list of lists) expect([skill.id, list]).toEqual([skill.id, lists[0]]);
          expect(lists[0]?.length).toBeGreaterThan(0);
        }
      }
    },
  );

  // ISO 5817 level C, Table 1 no. 1.10 and 3.2: the figure would tell the width, or the throat itself
  it('is the rule, not its figure, where a limit follows the weld', () => {
    const one = sheetUnder('iso5817-c');
    const leg = { id: 'fillet.welded.leg.min', views: ['cut'] } as const;
    const lines = told(one, leg, 3, 0.1).map(({ limit }) => limit);
    expect(lines).toContain('max 1 mm + 0.15 × face width (4 mm at most)');
    expect(lines).toContain('max 0.5 mm + 0.2 × throat of the equal-leg triangle (3 mm at most)');
    expect(lines).toContain('7.0 min');
  });

  it('names both limits of two plates, not that of the one in question', () => {
    const one = sheetUnder('iso5817-c');
    const undercut = { id: 'butt.welded.undercut.max', views: ['cut'] } as const;
    const both = Array.from({ length: 120 }, (_, seed) =>
      told(one, undercut, seed, 0.1).find(({ name }) => name.key === 'calls_quantity_undercut'),
    ).filter((line) => line?.limit.includes(' / '));
    expect(both.length).toBeGreaterThan(0);
    for (const line of both) expect(line?.limit).toMatch(/^\d\.\d+ max \/ \d\.\d+ max$/u);
  });
});
