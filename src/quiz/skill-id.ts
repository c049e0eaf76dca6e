import { isQuantity } from './quantity.ts';
import type { Skill, SkillId } from './skill.ts';

/** The id of a skill: its kind, stage, quantity and sense, with points between, and `refer` where it is of what is open. */
export const skillIdOf = ({ kind, stage, quantity, sense, refers }: Omit<Skill, 'id'>): SkillId =>
  `${kind}.${stage}.${quantity}.${sense}${refers ? '.refer' : ''}`;

const shape = /^(fillet|butt)\.(fitUp|welded)\.([A-Za-z]+)\.(min|max)(\.refer)?$/u;

/** The skill that an id names, whether or not any sheet can ask it; null for no id. */
export function skillOf(id: SkillId): Skill | null {
  const parts = shape.exec(id);
  if (parts === null) return null;
  const [, kind, stage, quantity, sense, open] = parts as unknown as [
    string,
    Skill['kind'],
    Skill['stage'],
    string,
    Skill['sense'],
    string | undefined,
  ];
  if (!isQuantity(quantity)) return null;
  return { id, kind, stage, quantity, sense, refers: open !== undefined };
}
