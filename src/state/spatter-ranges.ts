import { spatterBounds, type ParameterRange } from '../joint/index.ts';

/** The two parameters of one bump in the list. */
export const spatterRanges = (index: number): readonly ParameterRange[] =>
  (['place', 'height'] as const).map((name) => ({
    field: `spatter.${index}.${name}`,
    group: 'discontinuities',
    ...spatterBounds[name],
    step: name === 'place' ? 0.5 : 0.1,
  }));
