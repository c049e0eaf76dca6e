import { spatterBounds, type ParameterRange } from '../joint/index.ts';

const known: (readonly ParameterRange[] | undefined)[] = [];

/** The two parameters of one bump in the list, the very same each time. */
export const spatterRanges = (index: number): readonly ParameterRange[] =>
  (known[index] ??= (['place', 'height'] as const).map((name) => ({
    field: `spatter.${index}.${name}`,
    group: 'discontinuities',
    ...spatterBounds[name],
    step: name === 'place' ? 0.5 : 0.1,
  })));
