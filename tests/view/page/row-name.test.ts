import { expect, it } from 'vitest';
import type { Check } from '../../../src/limits/index.ts';
import type { Message } from '../../../src/units/index.ts';
import { namedChecks, rowName } from '../../../src/view/page/row-name.ts';
import { plainCheck } from '../../limits/plain-check.ts';

const row = (
  id: string,
  sense: Check['sense'],
  name: Message,
  status: Check['source']['status'] = 'seen',
): Check => ({ ...plainCheck, id, sense, name, source: { ...plainCheck.source, status } });

const opening: Message = { key: 'scene_rootopening' };
const least: Message = { key: 'bench_row_least', values: { name: opening } };
const most: Message = { key: 'bench_row_most', values: { name: opening } };

/** What each row of a list is called. */
const names = (rows: readonly Check[]): readonly Message[] => rows.map((one) => rowName(one, rows));

it('says of a least beside a most of one quantity which is which', () => {
  expect(names([row('a', 'min', opening), row('b', 'max', opening)])).toEqual([least, most]);
  expect(names([row('a', 'min', opening)])).toEqual([opening]);
});

it('puts nothing beside the name of a row that is of one plate each', () => {
  const [one, two] = [1, 2].map((side) => ({ key: 'scene_legof', values: { side } }));
  if (one === undefined || two === undefined) throw new Error('two plates');
  expect(names([row('least1', 'min', one), row('most2', 'max', two)])).toEqual([one, two]);
});

it('says which is the sheet’s and which the limit set’s of two that ask the same', () => {
  const throat: Message = { key: 'limits_name_throat' };
  const rows = [row('sheet', 'min', throat, 'sheet'), row('set', 'min', throat)];
  expect(names(rows)).toEqual([
    { key: 'bench_row_by_sheet', values: { name: throat } },
    { key: 'bench_row_by_set', values: { name: throat } },
  ]);
});

it('says both of what is limited both ways by both, and of the one left over only which way', () => {
  const rows = [
    row('sheetLeast', 'min', opening, 'sheet'),
    row('sheetMost', 'max', opening, 'sheet'),
    row('setMost', 'max', opening),
  ];
  expect(names(rows)).toEqual([
    least,
    { key: 'bench_row_by_sheet', values: { name: most } },
    { key: 'bench_row_by_set', values: { name: most } },
  ]);
});

it('names the rows of a list, and leaves a row alone that is as it was', () => {
  const rows = [row('least', 'min', opening), row('most', 'max', opening)];
  const both = namedChecks(rows);
  expect(both.map((one) => one.name)).toEqual([least, most]);
  expect(namedChecks([...rows], both)).toBe(both);
  const moved = namedChecks([...rows.slice(0, 1), row('most', 'max', opening)], both);
  expect(moved[0]).toBe(both[0]);
  expect(moved[1]).not.toBe(both[1]);
  // its figure moved, its name did not
  expect(moved[1]?.name).toBe(both[1]?.name);
});

it('names a list anew when a row goes, changes sides or comes from elsewhere', () => {
  const [first, second] = [row('least', 'min', opening), row('most', 'max', opening)];
  const both = namedChecks([first, second]);
  // alone it needs no telling apart
  expect(namedChecks([first], both)[0]?.name).toEqual(opening);
  const sides = namedChecks([first, row('most', 'min', opening)], both);
  expect(sides.map((one) => one.name)).toEqual([opening, opening]);
  // the same row in all but where it comes from
  const ofSheet = namedChecks([first, row('most', 'min', opening, 'sheet')], sides);
  expect(ofSheet.map((one) => one.name.key)).toEqual(['bench_row_by_set', 'bench_row_by_sheet']);
  const another = namedChecks([first, row('mean', 'max', opening)], sides);
  expect(another.map((one) => one.name)).toEqual([least, most]);
  const other = namedChecks([first, row('most', 'max', { key: 'scene_rootface' })], both);
  expect(other.map((one) => one.name.key)).toEqual(['scene_rootopening', 'scene_rootface']);
});
