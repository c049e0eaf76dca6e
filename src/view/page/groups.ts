import type { ParameterRange } from '../../joint/index.ts';

/** What the bench folds away under the four sliders that stand first. */
export const groups = ['joint', 'fitUp', 'weld', 'discontinuities', 'measured', 'sheet'] as const;
export type Group = (typeof groups)[number];

/** Groups that every joint has; the others come and go with what they hold. */
export const isStanding = (group: Group): boolean =>
  group === 'joint' || group === 'measured' || group === 'sheet';

/** The message that names a group. */
export const groupName = (group: Group): string => `bench_group_${group.toLowerCase()}`;

export const inGroup = (
  parameters: readonly ParameterRange[],
  group: Group,
): readonly ParameterRange[] => parameters.filter((parameter) => parameter.group === group);
