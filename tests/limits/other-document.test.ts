import { describe, expect, it } from 'vitest';
import { limitSets, otherDocument } from '../../src/limits/index.ts';
import type { CompiledLimitSet } from '../../src/limits/index.ts';

const set = (id: string): CompiledLimitSet =>
  limitSets.find((one) => one.id === id) as CompiledLimitSet;

describe('a code line that names another document than the limits', () => {
  it.each([
    ['AWS D1.1:2020', 'iso5817-c', 'AWS D1.1/D1.1M'],
    ['aws d1.1/d1.1m, 2015', 'b313-normal', 'AWS D1.1/D1.1M'],
    ['ISO 5817:2023 level C', 'aws-d11-static', 'ISO 5817'],
    ['ASME B31.3-2022', 'b311', 'ASME B31.3'],
    ['ASME B 31.1', 'b313-normal', 'ASME B31.1'],
    ['MIL-STD-2035A', 'mil-std-2219a', 'MIL-STD-2035A(SH)'],
  ])('%s with %s', (code, id, named) => {
    expect(otherDocument(code, set(id), limitSets)).toBe(named);
  });

  it.each([
    ['AWS D1.1:2020', 'aws-d11-static'],
    ['EN ISO 5817 C', 'iso5817-b'],
    ['B31.3', 'b313-severe'],
    ['API 1104, 22nd', 'api-1104'],
    ['', 'iso5817-c'],
    ['our own rules', 'iso5817-c'],
    // a document that none of the sets is from says nothing either way
    ['CSA W59', 'aws-d11-static'],
  ])('is not “%s” with %s', (code, id) => {
    expect(otherDocument(code, set(id), limitSets)).toBeNull();
  });

  it('leaves alone a line that names both', () => {
    expect(otherDocument('AWS D1.1, size by ISO 5817', set('iso5817-c'), limitSets)).toBeNull();
  });
});
