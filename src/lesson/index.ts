export * from './lesson.ts';
export * from './condition.ts';
export { parseLesson, type LessonFiles } from './parse-lesson.ts';
