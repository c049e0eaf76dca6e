import { parametersOf } from '../joint/index.ts';
import { measurementIds } from '../measure/index.ts';
import { listOf, readKeys, refuseUnknown, required } from './front-matter.ts';
import { constructionNames, type Figure, type LessonState } from './lesson.ts';

/** The keys of a figure, in a `figure` block and in a `task` block alike. */
export const figureKeys = ['state', 'drive', 'show', 'read', 'caption'] as const;

/** A `figure` block: `state`, `drive`, `show`, `read`, `caption`. */
export function readFigure(
  file: string,
  text: string,
  state: (file: string) => LessonState,
): Figure {
  const keys = readKeys(file, text);
  refuseUnknown(file, keys, figureKeys);
  return figureFrom(file, keys, state);
}

/** The figure that a block's keys describe; parameters and measurements are checked by name. */
export function figureFrom(
  file: string,
  keys: ReadonlyMap<string, string>,
  state: (file: string) => LessonState,
): Figure {
  const start = state(required(file, keys, 'state'));
  const fields = parametersOf(start.joint).map((parameter) => parameter.field);
  return {
    start,
    drive: listOf(file, keys, 'drive', fields),
    show: listOf(file, keys, 'show', constructionNames),
    read: listOf(file, keys, 'read', measurementIds),
    caption: keys.get('caption') ?? '',
  };
}
