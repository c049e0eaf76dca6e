import { expect, it } from 'vitest';
import { isNamesake } from '../../src/state/namesake.ts';
import { plainCheck } from '../limits/plain-check.ts';

it('takes two checks for one quantity by their name and plate, whatever else they are', () => {
  const leg = (side: number) => ({
    ...plainCheck,
    name: { key: 'limits_name_leg', values: { side } },
  });
  expect(isNamesake(leg(1), { ...leg(1), id: 'other', sense: 'max' })).toBe(true);
  expect(isNamesake(leg(1), leg(2))).toBe(false);
  expect(isNamesake(leg(1), { ...leg(1), name: { key: 'limits_name_leg' } })).toBe(false);
  expect(isNamesake(leg(1), { ...leg(1), name: { key: 'limits_name_throat' } })).toBe(false);
});
