import { expect, it } from 'vitest';
import { groupedBy } from '../../src/quiz/grouped.ts';

it('groups by what items have in common, each in the order of the list', () => {
  const groups = groupedBy([5, 2, 8, 3, 4], (n) => (n % 2 === 0 ? 'even' : 'odd'));
  expect([...groups]).toEqual([
    ['odd', [5, 3]],
    ['even', [2, 8, 4]],
  ]);
  expect(groupedBy([], String).size).toBe(0);
});
