import { describe, expect, it } from 'vitest';
import { middleOf } from '../../src/quiz/middle.ts';

describe('the middle of some numbers', () => {
  it('is the one with as many below as above it', () => {
    expect(middleOf([30, 1, 2])).toBe(2);
    expect(middleOf([10, 9, 100, 8, 1])).toBe(9);
    expect(middleOf([4])).toBe(4);
  });

  it('lies midway between two where they are even in number', () => {
    expect(middleOf([10, 1, 2, 100])).toBe(6);
    expect(middleOf([3, 1])).toBe(2);
  });

  it('of none is 0, and the list stays as it was', () => {
    expect(middleOf([])).toBe(0);
    const list = [3, 1, 2];
    middleOf(list);
    expect(list).toEqual([3, 1, 2]);
  });
});
