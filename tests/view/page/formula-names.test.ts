import { beforeAll, describe, expect, it } from 'vitest';
import { limitSets } from '../../../src/limits/index.ts';
import { fetchRest, known, text } from '../../../src/view/text.ts';
import { formulaNames } from '../../../src/view/page/own-limits/formula-names.ts';

describe('the names that a formula may use', () => {
  beforeAll(fetchRest);
  const us = { units: 'mm', inches: 'decimal', terms: 'US' } as const;

  it('each have a meaning in words, in every set', () => {
    for (const set of limitSets) {
      for (const { name, meaning } of formulaNames(set)) {
        expect([set.id, name, known(meaning.key)]).toEqual([set.id, name, true]);
      }
    }
  });

  it('mean the thinner plate by t where the set says so, and the plates by their numbers', () => {
    const set = limitSets.find(({ id }) => id === 'iso5817-c');
    if (set === undefined) throw new Error('no such set');
    const meant = new Map(formulaNames(set).map(({ name, meaning }) => [name, text(meaning, us)]));
    expect(meant.get('t')).toBe('thinner plate');
    expect(meant.get('tMin')).toBe('thinner plate');
    expect(meant.get('t1')).toBe('thickness of plate 1');
    expect(meant.get('tHere')).toBe('thickness of the plate that the imperfection lies in');
    expect(meant.get('a')).toBe('throat that the sheet asks for');
  });
});
