import { describe, expect, it, vi } from 'vitest';
import { limitSets } from '../../src/limits/index.ts';
import type { CompiledLimitSet } from '../../src/limits/index.ts';
import { remembered } from '../../src/quiz/remembered.ts';

const [one, other] = limitSets as readonly [CompiledLimitSet, CompiledLimitSet];

describe('what is remembered of a set', () => {
  it('is worked out once for each set and key, null too', () => {
    const recall = remembered<string | null>();
    const work = vi.fn(() => null);
    for (let i = 0; i < 3; i++) expect(recall(one, 'a', work)).toBeNull();
    expect(work).toHaveBeenCalledTimes(1);
    recall(other, 'a', work);
    recall(one, 'b', work);
    expect(work).toHaveBeenCalledTimes(3);
  });

  it('lets go of what has not been asked for the longest', () => {
    const recall = remembered<number>();
    const work = vi.fn(() => 1);
    recall(one, 'first', work);
    for (let i = 0; i < 63; i++) recall(one, `k${i}`, work);
    recall(one, 'first', work);
    expect(work).toHaveBeenCalledTimes(64);
    recall(one, 'one more', work);
    // asked for again a moment ago, so the second went and it did not
    recall(one, 'first', work);
    expect(work).toHaveBeenCalledTimes(65);
    recall(one, 'k0', work);
    expect(work).toHaveBeenCalledTimes(66);
  });
});
