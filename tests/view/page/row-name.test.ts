import { expect, it } from 'vitest';
import type { Check } from '../../../src/limits/index.ts';
import { namedChecks, rowName, twinsAmong } from '../../../src/view/page/row-name.ts';
import { plainCheck } from '../../limits/plain-check.ts';

const row = (id: string, sense: Check['sense'], name: Check['name']): Check => ({
  ...plainCheck,
  id,
  sense,
  name,
});

it('knows a least beside a most of one dimension, of one plate each', () => {
  const rows = [
    row('least', 'min', { key: 'scene_rootopening' }),
    row('leg', 'min', { key: 'scene_leg' }),
    row('most', 'max', { key: 'scene_rootopening' }),
    row('least1', 'min', { key: 'scene_legof', values: { side: 1 } }),
    row('most2', 'max', { key: 'scene_legof', values: { side: 2 } }),
    row('again', 'min', { key: 'scene_leg' }),
  ];
  expect(twinsAmong(rows)).toEqual(['least', 'most']);
  expect(twinsAmong([])).toEqual([]);
});

it('says of twins which is the least and which the most', () => {
  const name = { key: 'scene_rootopening' };
  expect(rowName(row('a', 'min', name), false)).toBe(name);
  expect(rowName(row('a', 'min', name), true)).toEqual({
    key: 'bench_row_least',
    values: { name },
  });
  expect(rowName(row('a', 'max', name), true)).toEqual({ key: 'bench_row_most', values: { name } });
});

it('names the rows of a list, and leaves a row alone that is as it was', () => {
  const name = { key: 'scene_rootopening' };
  const [least, most] = [row('least', 'min', name), row('most', 'max', name)];
  const both = namedChecks([least, most]);
  expect(both.map((one) => one.name.key)).toEqual(['bench_row_least', 'bench_row_most']);
  expect(namedChecks([least, most], both)).toBe(both);
  const moved = namedChecks([least, row('most', 'max', name)], both);
  expect(moved[0]).toBe(both[0]);
  expect(moved[1]).not.toBe(both[1]);
  // its figure moved, its name did not
  expect(moved[1]?.name).toBe(both[1]?.name);
  // alone it needs no telling apart
  expect(namedChecks([least], both)[0]?.name).toBe(name);
});
