import { settledSheet, skillOf } from '../../../src/quiz/index.ts';
import type { SkillId } from '../../../src/quiz/index.ts';
import { drawPlaced, type Placed, type Wanted } from '../../../src/quiz/draw/pair.ts';
import { sheetUnder } from '../question-sheets.ts';

export const patience = { forms: 150, tried: 36 };
const seeds = Array.from({ length: 40 }, (_, seed) => seed + 500);

/** A skill on the opening sheet under a set, a fifth past its limit and a fifth inside, with what a test changes. */
export function wantedOf(id: SkillId, more: Partial<Wanted> = {}, set = 'iso5817-c'): Wanted {
  const skill = skillOf(id);
  if (skill === null) throw new Error(`no skill ${id}`);
  const { sheet, limits } = sheetUnder(set);
  return {
    skill,
    sheet: settledSheet(sheet),
    limits,
    distances: () => [0.2, -0.2],
    suits: () => true,
    ...more,
  };
}
/** What forty seeds give. */
export const drawn = (wanted: Wanted): readonly (readonly Placed[])[] =>
  seeds.flatMap((seed) => {
    const placed = drawPlaced(seed, wanted, patience);
    return placed === null ? [] : [placed];
  });
