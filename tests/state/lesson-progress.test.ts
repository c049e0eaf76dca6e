import { describe, expect, it } from 'vitest';
import { LessonProgress } from '../../src/state/lesson-progress.svelte.ts';
import type { Shelf } from '../../src/state/shelf.ts';

function shelfWith(text: string | null, accepts = true): Shelf & { kept: string | null } {
  const shelf = {
    kept: text,
    read: () => shelf.kept,
    write: (_name: string, next: string) => {
      if (accepts) shelf.kept = next;
      return accepts;
    },
  };
  return shelf;
}

describe('LessonProgress', () => {
  it('remembers a task from one visit to the next', () => {
    const shelf = shelfWith(null);
    new LessonProgress(shelf).markDone('leg-and-throat', 'grow-the-legs');
    const next = new LessonProgress(shelf);
    expect(next.isDone('leg-and-throat', 'grow-the-legs')).toBe(true);
    expect(next.isDone('leg-and-throat', 'fill-the-hollow')).toBe(false);
    expect(next.isDone('other', 'grow-the-legs')).toBe(false);
  });

  it('takes in what another tab has got right meanwhile, and does not wipe it', () => {
    const shelf = shelfWith(null);
    const [one, other] = [new LessonProgress(shelf), new LessonProgress(shelf)];
    one.markDone('a', '1');
    other.markDone('b', '2');
    expect(other.isDone('a', '1')).toBe(true);
    const next = new LessonProgress(shelf);
    expect(next.isDone('a', '1') && next.isDone('b', '2')).toBe(true);
  });

  it('goes on without a shelf that accepts anything', () => {
    const progress = new LessonProgress(shelfWith(null, false));
    progress.markDone('a', '1');
    expect(progress.isDone('a', '1')).toBe(true);
  });

  it.each(['{', '{"a/1":true}', '7', 'null'])(
    'reads the mangled text %s as nothing done',
    (text) => {
      const progress = new LessonProgress(shelfWith(text));
      expect(progress.isDone('a', '1')).toBe(false);
      progress.markDone('a', '1');
      expect(progress.isDone('a', '1')).toBe(true);
    },
  );
});
