import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { LessonFiles } from '../../src/lesson/index.ts';

const lessons = fileURLToPath(new URL('../../lessons', import.meta.url));

/** Names of all lesson folders, in order. */
export const lessonFolders = (): readonly string[] => readdirSync(lessons).sort();

/** Every file of one lesson's folder. */
export function lessonFiles(folder: string): LessonFiles {
  return new Map(
    readdirSync(`${lessons}/${folder}`).map((name) => [
      name,
      readFileSync(`${lessons}/${folder}/${name}`, 'utf8'),
    ]),
  );
}
