import type { Joint } from '../joint/index.ts';

/** `spatter.0.height`: a field of one bump in the list. */
const IN_LIST = /^spatter\.(\d+)\.(place|height)$/;

/** Which bump and which of its numbers a field names, or null; most fields have no dot to look behind. */
const inList = (field: string): RegExpExecArray | null =>
  field.includes('.') ? IN_LIST.exec(field) : null;

/** The number that `field` names, or null when this joint has no such number. */
export function numberAt(joint: Joint, field: string): number | null {
  const bump = inList(field);
  const value: unknown =
    bump === null
      ? Object.hasOwn(joint, field) && joint[field as keyof Joint]
      : joint.spatter[Number(bump[1])]?.[bump[2] as 'place' | 'height'];
  return typeof value === 'number' ? value : null;
}

/** The joint with that one number replaced; nothing else moves. */
export function withNumber(joint: Joint, field: string, value: number): Joint {
  const bump = inList(field);
  if (bump === null) return { ...joint, [field]: value };
  const place = Number(bump[1]);
  return {
    ...joint,
    spatter: joint.spatter.map((old, index) =>
      index === place ? { ...old, [bump[2] as string]: value } : old,
    ),
  };
}
