import type { Lesson } from '../lesson/index.ts';

/**
 * Every lesson in the lessons folder, in order. The build reads and checks the
 * folders; only the page that shows lessons imports this, so that none of them
 * is part of the first load.
 */
const found = import.meta.glob<Lesson>('../../lessons/*/index.md', {
  eager: true,
  import: 'default',
});

export const lessons: readonly Lesson[] = Object.values(found).sort((a, b) => a.order - b.order);

/** The lesson that `#lessons/<slug>` asks for, or the first. */
export function lessonOf(hash: string): Lesson | undefined {
  const slug = /^#lessons\/([^/]+)/.exec(hash)?.[1];
  return lessons.find((lesson) => lesson.slug === slug) ?? lessons[0];
}
