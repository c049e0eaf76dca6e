import { build, parseJoint, type Joint } from '../joint/index.ts';
import { parseJobSheet } from '../limits/index.ts';
import { readFigure } from './figure.ts';
import { refuseUnknown, required, splitFrontMatter } from './front-matter.ts';
import { LessonError, type Block, type Lesson, type LessonState } from './lesson.ts';
import { readBlocks } from './markdown.ts';
import { readJson } from './read-json.ts';
import { readTargets, readTask } from './task.ts';

/** The text of every file of a lesson's folder, by file name. */
export type LessonFiles = ReadonlyMap<string, string>;

/**
 * Reads and validates one lesson folder. Throws a LessonError that names the
 * file and the key at fault; a lesson either reads whole or not at all.
 *
 * @param folder the folder's name, a two-figure number and a slug: `01-leg-and-throat`
 */
export function parseLesson(folder: string, files: LessonFiles): Lesson {
  const name = /^(\d{2})-([a-z0-9]+(?:-[a-z0-9]+)*)$/.exec(folder);
  if (!name) throw new LessonError(folder, 'folder', 'is named like 01-leg-and-throat');
  const source = files.get('index.md');
  if (source === undefined) throw new LessonError(`${folder}/index.md`, 'file', 'is missing');

  const file = `${folder}/index.md`;
  const { keys, body } = splitFrontMatter(file, source);
  refuseUnknown(file, keys, ['title', 'summary', 'minutes']);
  const minutes = Number(required(file, keys, 'minutes'));
  if (!Number.isInteger(minutes) || minutes < 1) {
    throw new LessonError(file, 'minutes', 'is a whole number of minutes, 1 or more');
  }

  const state = (stateFile: string): LessonState => readState(folder, files, stateFile);
  const targets = readTargets(`${folder}/target.json`, files.get('target.json'));
  const blocks = readBlocks(file, body, (fence) => {
    if (fence.name === 'figure') {
      return { kind: 'figure', figure: readFigure(file, fence.text, state) };
    }
    if (fence.name === 'task') {
      return { kind: 'task', task: readTask(file, fence.text, state, targets) };
    }
    throw new LessonError(file, fence.name || 'fence', 'a fenced block is a figure or a task');
  });

  requireSection(file, blocks, 'Sources');
  if (!blocks.some((block) => block.kind === 'caution')) {
    throw new LessonError(file, 'caution', 'a lesson carries at least one caution ("> …")');
  }
  return {
    slug: name[2] ?? '',
    order: Number(name[1]),
    title: required(file, keys, 'title'),
    summary: required(file, keys, 'summary'),
    minutes,
    blocks,
  };
}

function requireSection(file: string, blocks: readonly Block[], title: string): void {
  const at = blocks.findIndex((block) => block.kind === 'heading' && block.text === title);
  if (at < 0 || blocks[at + 1] === undefined) {
    throw new LessonError(file, title, 'a lesson ends with this section, and it is not empty');
  }
}

/** A plain state file: `{ "joint": {…}, "sheet": {…} }`, the sheet optional. */
function readState(folder: string, files: LessonFiles, name: string): LessonState {
  const file = `${folder}/${name}`;
  const text = files.get(name);
  if (text === undefined) throw new LessonError(file, 'file', 'is named by the lesson but missing');
  const data = readJson(file, text);
  for (const key of Object.keys(data)) {
    if (key !== 'joint' && key !== 'sheet') throw new LessonError(file, key, 'is not a known key');
  }
  return {
    joint: accept(file, 'joint', () => buildable(parseJoint(data['joint']))),
    sheet:
      data['sheet'] === undefined
        ? null
        : accept(file, 'sheet', () => parseJobSheet(data['sheet'])),
  };
}

/** A joint within its ranges may still be none that can exist: only building it tells. */
function buildable(joint: Joint): Joint {
  build(joint);
  return joint;
}

function accept<T>(file: string, key: string, parse: () => T): T {
  try {
    return parse();
  } catch (error) {
    throw new LessonError(file, key, error instanceof Error ? error.message : String(error));
  }
}
