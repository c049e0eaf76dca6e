import { spatterBounds, type Joint, type PlateNumber } from '../joint/index.ts';

/** A new bump: large enough to see, clear of the toe and of the bumps before it. */
export function addSpatter(joint: Joint, plate: PlateNumber): Joint {
  const before = joint.spatter.filter((bump) => bump.plate === plate).length;
  return {
    ...joint,
    spatter: [...joint.spatter, { plate, place: 4 + 3 * before, height: 0.8 }],
  };
}

export const removeSpatter = (joint: Joint, index: number): Joint => ({
  ...joint,
  spatter: joint.spatter.filter((_, place) => place !== index),
});

/** Whether one more bump may be added. */
export const hasRoomForSpatter = (joint: Joint): boolean =>
  joint.spatter.length < spatterBounds.most;
