import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { limitSetSchema, LimitsError, parseLimitSet } from '../../src/limits/index.ts';
import { accepts } from '../joint/json-schema.ts';

type Json = Record<string, unknown>;

const folder = 'src/limits/sets';
const sources = readdirSync(folder).filter((name) => !name.endsWith('.compiled.json'));
const read = (name: string): Json => JSON.parse(readFileSync(`${folder}/${name}`, 'utf8')) as Json;
const house = (): Json => read('lock-gate-house.json');

function parses(value: unknown): boolean {
  try {
    parseLimitSet(value);
    return true;
  } catch (error) {
    if (error instanceof LimitsError) return false;
    throw error;
  }
}

const withRow = (row: Json): Json => {
  const [first, ...others] = house()['criteria'] as Json[];
  const changed = Object.entries({ ...first, ...row }).filter(([, value]) => value !== undefined);
  return { ...house(), criteria: [Object.fromEntries(changed), ...others] };
};

/** Slips that a person writing a set by hand makes, each named. */
const slips: readonly (readonly [string, Json])[] = [
  ['an unknown field of the set', { ...house(), author: 'me' }],
  ['an unknown field of a row', withRow({ maximum: { mm: '1 mm' } })],
  ['a missing status', withRow({ status: undefined })],
  ['a status that is no choice', withRow({ status: 'guessed' })],
  ['a kind that is no choice', withRow({ kind: 'lap' })],
  ['an empty name', withRow({ name: '  ' })],
  ['a clause that is a number', withRow({ clause: 2.1 })],
  ['a text longer than any name', withRow({ note: 'x'.repeat(201) })],
  ['a measurement that nothing judges', withRow({ measurements: ['weldArea'] })],
  ['lengths and angles in one row', withRow({ measurements: ['leg1', 'toeAngle1'] })],
  ['no measurement', withRow({ measurements: [] })],
  ['a least beside a most', withRow({ min: { any: '1 deg' } })],
  ['neither least nor most', withRow({ max: undefined })],
  ['a formula for both beside one for each', withRow({ max: { any: '1 deg', mm: '1 deg' } })],
  ['a limit without a formula', withRow({ max: {} })],
  ['short said to be false', withRow({ short: false })],
  ['a symbol with a space', { ...house(), symbols: { 'a b': 'leg1' } }],
  ['a circumstance that is no choice', withRow({ given: { seam: ['spiral'] } })],
  ['a last place of nothing', { ...house(), lastPlace: { mm: 0, in: 0.01, deg: 1 } }],
  ['a later version', { ...house(), version: 2 }],
  ['a column that there is not', { ...house(), columns: ['cm'] }],
  ['no list of rows', { ...house(), criteria: {} }],
];

describe('the published schema of a limit set', () => {
  it.each(sources)('takes the built-in set %s, as the reader does', (name) => {
    expect(accepts(limitSetSchema, read(name))).toBe(true);
    expect(parses(read(name))).toBe(true);
  });

  it.each(slips)('refuses %s, as the reader does', (_, slip) => {
    expect(accepts(limitSetSchema, slip)).toBe(false);
    expect(parses(slip)).toBe(false);
  });

  it('takes a row with a formula for each column, and one with every condition', () => {
    const row = withRow({
      max: { mm: '1 deg', in: '1 deg' },
      when: { any: 't1 > 3 mm' },
      given: { seam: ['girth'] },
      forms: ['tee'],
      symbols: { T: 't1' },
      short: true,
    });
    expect(accepts(limitSetSchema, row)).toBe(true);
    expect(parses(row)).toBe(true);
  });

  it('is plain JSON of draft 2020-12', () => {
    expect(JSON.parse(JSON.stringify(limitSetSchema))).toEqual(limitSetSchema);
    expect(limitSetSchema['$schema']).toBe('https://json-schema.org/draft/2020-12/schema');
  });
});
