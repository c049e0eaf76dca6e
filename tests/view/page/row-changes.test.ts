import { describe, expect, it } from 'vitest';
import { limitSets, parseLimitSet } from '../../../src/limits/index.ts';
import { sourceOf } from '../../../src/state/own-sets.svelte.ts';
import { givenOf, withGiven, withOptional } from '../../../src/view/page/own-limits/row-changes.ts';

const house = limitSets.find(({ id }) => id === 'lock-gate-house');

describe('the circumstances that a row of an own set is for', () => {
  it('are added and taken out one by one, and leave no empty list behind', () => {
    const row = house?.criteria[0];
    if (row === undefined) throw new Error('the house set has no row');
    const hot = withGiven(withGiven(row, 'temperature', 'over750F'), 'seam', 'girth');
    expect(hot.given).toEqual({ temperature: ['over750F'], seam: ['girth'] });
    expect(givenOf(hot, 'temperature')).toBe('over750F');
    expect(withGiven(hot, 'seam', '').given).toEqual({ temperature: ['over750F'] });
    expect('given' in withGiven(withGiven(hot, 'seam', ''), 'temperature', '')).toBe(false);
  });

  it('several of one name, as a file may have them, come back as they were', () => {
    const row = house?.criteria[0];
    if (row === undefined) throw new Error('the house set has no row');
    const two = withGiven(row, 'category', 'A,B');
    expect(two.given).toEqual({ category: ['A', 'B'] });
    expect(withGiven(two, 'category', givenOf(two, 'category'))).toEqual(two);
  });

  it('make a set that can be read again from its file', () => {
    if (house === undefined) throw new Error('there is no house set');
    const source = sourceOf(house);
    const criteria = source.criteria.map((row) => withGiven(row, 'stress', 'acrossWeld'));
    expect(parseLimitSet({ ...source, criteria }).criteria[0]?.given).toEqual({
      stress: ['acrossWeld'],
    });
  });
});

describe('a condition of a row', () => {
  it('is dropped when nothing is left of it in any column', () => {
    const row = house?.criteria[0];
    if (row === undefined) throw new Error('the house set has no row');
    const set = withOptional(row, 'when', { any: 't1 > 5 mm' });
    expect(set.when).toEqual({ any: 't1 > 5 mm' });
    expect('when' in withOptional(set, 'when', { any: ' ' })).toBe(false);
    expect('nominal' in withOptional(set, 'nominal', {})).toBe(false);
    expect(withOptional(set, 'when', { mm: 't1 > 5 mm' }).when).toEqual({ mm: 't1 > 5 mm' });
  });
});
