import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  compileLimits,
  limitSets,
  parseLimitSet,
  type LimitSet,
} from '../../../src/limits/index.ts';
import { nearestName } from '../../../src/limits/compile/nearest-name.ts';
import { ownSet, row } from '../own-rows.ts';

const source = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../../src/limits/sets/${name}`, import.meta.url), 'utf8'));

const underfill = row('', 'underfill', {}) as LimitSet['criteria'][number];
const setOf = (...criteria: LimitSet['criteria']): LimitSet => ({
  ...ownSet(...criteria),
  symbols: { a: 'sheetThroat' },
});

describe('compiling a set', () => {
  it('gives again what is committed beside each source', async () => {
    for (const { id: name } of limitSets) {
      const result = await compileLimits(parseLimitSet(source(`${name}.json`)));
      expect(result).toEqual({ ok: true, limits: source(`${name}.compiled.json`) });
    }
  });

  it('compiles limit, condition and nominal of each column', async () => {
    const result = await compileLimits(
      setOf({
        ...underfill,
        id: 'one',
        when: { mm: 'tMin > 3 mm', in: 'tMin > 1/8 in' },
        max: { mm: '2 mm', in: '1/16 in' },
        short: true,
        nominal: { any: 'a' },
        symbols: { b: 'faceWidth' },
      }),
    );
    expect(result.ok && result.limits.trees).toEqual({
      one: {
        when: { mm: ['>', 'tMin', ['mm', 3]], in: ['>', 'tMin', ['in', ['/', 1, 8]]] },
        limit: { mm: ['mm', 2], in: ['in', ['/', 1, 16]] },
        nominal: { any: 'a' },
      },
    });
  });

  it('takes the row’s own symbols before the set’s', async () => {
    const result = await compileLimits(
      setOf({ ...underfill, id: 'one', max: { any: '0.1 a' }, symbols: { a: 'toeAngle' } }),
    );
    expect(result).toMatchObject({
      ok: false,
      problems: [{ reason: { key: 'limits_formula_gives' } }],
    });
  });

  it('names the criterion and the field at fault, all of them, and takes nothing', async () => {
    const result = await compileLimits(
      setOf(
        { ...underfill, id: 'good', max: { any: 'a' } },
        { ...underfill, id: 'first', max: { mm: '1', in: '1/16 in' } },
        {
          ...underfill,
          id: 'second',
          when: { any: 'a' },
          min: { any: '0.1 zz' },
          nominal: { any: 'a >' },
        },
      ),
    );
    expect(result).toMatchObject({
      ok: false,
      problems: [
        { criterion: 'first', field: 'max.mm', reason: { key: 'limits_formula_gives' } },
        { criterion: 'second', field: 'when.any', reason: { key: 'limits_formula_gives' } },
        { criterion: 'second', field: 'min.any', reason: { key: 'limits_formula_unknown_symbol' } },
        { criterion: 'second', field: 'nominal.any', reason: { key: 'limits_formula_broken_off' } },
      ],
    });
    expect(!result.ok && result.problems.length).toBe(4);
  });

  it('checks a row that is put to several measurements with each of them', async () => {
    const result = await compileLimits(
      setOf({
        ...underfill,
        id: 'one',
        measurements: ['undercut1', 'underfill'],
        max: { any: '0.1 tHere' },
      }),
    );
    expect(result).toMatchObject({ problems: [{ reason: { key: 'limits_formula_no_plate' } }] });
  });

  it('asks for an angle where an angle is judged', async () => {
    const limits = setOf({
      ...underfill,
      id: 'one',
      measurements: ['toeAngle'],
      min: { any: '100 deg' },
    });
    expect((await compileLimits(limits)).ok).toBe(true);
    const wrong = setOf({
      ...underfill,
      id: 'one',
      measurements: ['angleDeparture'],
      max: { any: 'a' },
    });
    expect((await compileLimits(wrong)).ok).toBe(false);
  });
});

describe('the nearest known name', () => {
  const known = ['tMin', 'tMax', 'faceWidth', 'b'];

  it('is the one with the fewest slips, at most two', () => {
    expect(nearestName('tMn', known)).toBe('tMin');
    expect(nearestName('tMaxx', known)).toBe('tMax');
    expect(nearestName('FACEWIDTH', known)).toBe('faceWidth');
    expect(nearestName('faceWdth', known)).toBe('faceWidth');
    expect(nearestName('faceWh', known)).toBeNull();
  });

  it('is none where nearly anything would do', () => {
    expect(nearestName('c', known)).toBeNull();
    expect(nearestName('zz', known)).toBeNull();
    expect(nearestName('', known)).toBeNull();
    expect(nearestName('tMin', [])).toBeNull();
  });
});
