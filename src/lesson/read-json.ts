import { LessonError } from './lesson.ts';

/** JSON text whose top level is an object. */
export function readJson(file: string, text: string): Readonly<Record<string, unknown>> {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    throw new LessonError(file, 'JSON', error instanceof Error ? error.message : String(error));
  }
  if (typeof data !== 'object' || data === null || Array.isArray(data)) {
    throw new LessonError(file, 'JSON', 'is an object');
  }
  return data as Readonly<Record<string, unknown>>;
}
