import { describe, expect, it } from 'vitest';
import { LessonError, parseLesson } from '../../src/lesson/index.ts';
import { lessonFiles, lessonFolders } from './lesson-folder.ts';

const folder = '01-leg-and-throat';
const good = lessonFiles(folder);

/** The same lesson with one file's text changed (or, with null, left out). */
function changed(file: string, change: ((text: string) => string) | null): Map<string, string> {
  const files = new Map(good);
  if (change === null) files.delete(file);
  else files.set(file, change(good.get(file) ?? ''));
  return files;
}

function refusal(files: ReadonlyMap<string, string>, name = folder): LessonError {
  try {
    parseLesson(name, files);
  } catch (error) {
    if (error instanceof LessonError) return error;
    throw error;
  }
  throw new Error('the lesson was let through');
}

/** Sets a value inside a JSON text, by path. */
const set =
  (path: readonly string[], value: unknown) =>
  (text: string): string => {
    const data = JSON.parse(text) as Record<string, unknown>;
    let at = data;
    for (const key of path.slice(0, -1)) at = at[key] as Record<string, unknown>;
    const last = path.at(-1) ?? '';
    if (value === undefined) Reflect.deleteProperty(at, last);
    else at[last] = value;
    return JSON.stringify(data);
  };

describe('parseLesson', () => {
  it('reads every lesson that ships', () => {
    for (const name of lessonFolders()) {
      expect(parseLesson(name, lessonFiles(name)).slug).toBe(name.slice(3));
    }
  });

  it('reads title, order, blocks, figures and the three tasks of the first lesson', () => {
    const lesson = parseLesson(folder, good);
    expect(lesson).toMatchObject({
      slug: 'leg-and-throat',
      order: 1,
      title: 'Leg and throat',
      minutes: 15,
    });
    const count = (kind: string): number => lesson.blocks.filter((b) => b.kind === kind).length;
    expect(count('figure')).toBe(3);
    expect(count('task')).toBe(3);
    expect(count('caution')).toBe(2);
    const first = lesson.blocks.find((block) => block.kind === 'figure');
    expect(first?.figure.drive).toEqual(['leg1', 'leg2']);
    expect(first?.figure.show).toEqual(['legs', 'surfaces']);
    expect(first?.figure.read).toEqual(['leg1', 'leg2', 'legDifference']);
  });

  it('keeps strong and emphasised runs apart from plain text', () => {
    const lesson = parseLesson(folder, good);
    const runs = lesson.blocks.flatMap((block) => (block.kind === 'paragraph' ? block.text : []));
    expect(runs).toContainEqual({ text: 'theoretical root', voice: 'strong' });
    const items = lesson.blocks.flatMap((block) =>
      block.kind === 'list' ? block.items.flat() : [],
    );
    expect(items).toContainEqual({ text: 'Welding Theory and Application', voice: 'emphasis' });
  });

  it.each([
    ['a folder with no number', good, 'leg-and-throat', 'leg-and-throat', 'folder'],
    ['a missing text', changed('index.md', null), folder, 'index.md', 'file'],
    [
      'no front matter',
      changed('index.md', (t) => t.replace('---\n', '')),
      folder,
      'index.md',
      'front matter',
    ],
    [
      'a missing title',
      changed('index.md', (t) => t.replace(/^title: .*$/m, '')),
      folder,
      'index.md',
      'title',
    ],
    [
      'a misspelt key',
      changed('index.md', (t) => t.replace('minutes: 15', 'minutes: 15\nauthr: x')),
      folder,
      'index.md',
      'authr',
    ],
    [
      'a repeated key',
      changed('index.md', (t) => t.replace('minutes: 15', 'minutes: 15\nminutes: 16')),
      folder,
      'index.md',
      'minutes',
    ],
    [
      'minutes that are no number',
      changed('index.md', (t) => t.replace('minutes: 15', 'minutes: some')),
      folder,
      'index.md',
      'minutes',
    ],
    [
      'no minutes at all',
      changed('index.md', (t) => t.replace('minutes: 15', 'minutes: 0')),
      folder,
      'index.md',
      'minutes',
    ],
    [
      'a line that is no key',
      changed('index.md', (t) => t.replace('minutes: 15', 'minutes: 15\nsome words')),
      folder,
      'index.md',
      'some words',
    ],
    [
      'a parameter that the joint does not have',
      changed('index.md', (t) => t.replace('drive: leg1, leg2', 'drive: leg1, legs2')),
      folder,
      'index.md',
      'drive',
    ],
    [
      'a measurement that does not exist',
      changed('index.md', (t) => t.replace('read: leg1', 'read: legOne')),
      folder,
      'index.md',
      'read',
    ],
    [
      'a construction that does not exist',
      changed('index.md', (t) => t.replace('show: legs, surfaces', 'show: legs, shadows')),
      folder,
      'index.md',
      'show',
    ],
    [
      'a fence that is neither figure nor task',
      changed('index.md', (t) => t.replace('```figure', '```quiz')),
      folder,
      'index.md',
      'quiz',
    ],
    [
      'a picture, which a lesson cannot hold',
      changed('index.md', (t) => t.replace('## Leg\n', '## Leg\n\n![a](b.png)\n')),
      folder,
      'index.md',
      'image',
    ],
    [
      'raw markup',
      changed('index.md', (t) => t.replace('## Leg\n', '## Leg\n\n<b>x</b>\n\n<div></div>\n')),
      folder,
      'index.md',
      'html',
    ],
    [
      'a heading of the first order',
      changed('index.md', (t) => t.replace('## Leg\n', '# Leg\n')),
      folder,
      'index.md',
      'Leg',
    ],
    [
      'no sources',
      changed('index.md', (t) => t.slice(0, t.indexOf('## Sources'))),
      folder,
      'index.md',
      'Sources',
    ],
    [
      'sources that name nothing',
      changed('index.md', (t) => t.slice(0, t.indexOf('## Sources') + 11)),
      folder,
      'index.md',
      'Sources',
    ],
    [
      'no caution',
      changed('index.md', (t) => t.replace(/^> /gm, '')),
      folder,
      'index.md',
      'caution',
    ],
    ['a missing state', changed('convex.json', null), folder, 'convex.json', 'file'],
    ['a state that is no JSON', changed('convex.json', () => '{'), folder, 'convex.json', 'JSON'],
    ['a state that is a list', changed('convex.json', () => '[]'), folder, 'convex.json', 'JSON'],
    [
      'a joint out of range',
      changed('convex.json', set(['joint', 'leg1'], 900)),
      folder,
      'convex.json',
      'joint',
    ],
    [
      // each number is in its range, but a face 8 hollow between legs of 8 passes behind the root
      'a figure whose joint cannot be built',
      changed('bench.json', set(['joint', 'convexity'], -8)),
      folder,
      'bench.json',
      'joint',
    ],
    [
      'a task whose joint cannot be built',
      changed('task-grow.json', set(['joint', 'convexity'], -8)),
      folder,
      'task-grow.json',
      'joint',
    ],
    [
      'a state with a key that nothing reads',
      changed('convex.json', set(['note'], 'x')),
      folder,
      'convex.json',
      'note',
    ],
    [
      'a sheet that is none',
      changed('convex.json', set(['sheet'], { version: 1 })),
      folder,
      'convex.json',
      'sheet',
    ],
    [
      'a task without its target',
      changed('target.json', set(['grow-the-legs'], undefined)),
      folder,
      'index.md',
      'grow-the-legs',
    ],
    ['no targets at all', changed('target.json', null), folder, 'index.md', 'convex-decides'],
    [
      'a target that asks nothing',
      changed('target.json', set(['grow-the-legs'], { conditions: [] })),
      folder,
      'target.json',
      'grow-the-legs',
    ],
    [
      'a target of an unknown shape',
      changed('target.json', set(['grow-the-legs'], { goals: [] })),
      folder,
      'target.json',
      'grow-the-legs',
    ],
    [
      'a condition without a bound',
      changed('target.json', set(['grow-the-legs', 'conditions'], [{ measurement: 'leg1' }])),
      folder,
      'target.json',
      'grow-the-legs',
    ],
    [
      'a condition with an unknown word',
      changed(
        'target.json',
        set(['grow-the-legs', 'conditions'], [{ measurement: 'leg1', most: 3 }]),
      ),
      folder,
      'target.json',
      'grow-the-legs',
    ],
    [
      'a bound that is no number',
      changed(
        'target.json',
        set(['grow-the-legs', 'conditions'], [{ measurement: 'leg1', min: '9' }]),
      ),
      folder,
      'target.json',
      'grow-the-legs',
    ],
    [
      'a task that is done before it starts',
      changed(
        'target.json',
        set(['grow-the-legs', 'conditions'], [{ measurement: 'leg1', min: 1 }]),
      ),
      folder,
      'index.md',
      'grow-the-legs',
    ],
    [
      'a task that drives nothing',
      changed('index.md', (t) =>
        t.replace('state: task-hollow.json\ndrive: convexity', 'state: task-hollow.json'),
      ),
      folder,
      'index.md',
      'fill-the-hollow',
    ],
    [
      'a choice with two right answers',
      changed(
        'target.json',
        set(
          ['convex-decides', 'options'],
          ['a', 'b'].map((id) => ({
            id,
            label: id,
            conditions: [{ measurement: 'leg1', min: 1 }],
          })),
        ),
      ),
      folder,
      'index.md',
      'convex-decides',
    ],
    [
      'an option without a label',
      changed(
        'target.json',
        set(['convex-decides', 'options'], [{ id: 'a', conditions: [] }, { id: 'b' }]),
      ),
      folder,
      'target.json',
      'convex-decides.options[0]',
    ],
  ])('refuses %s, naming the file and the key', (_what, files, name, file, key) => {
    const error = refusal(files, name);
    expect(error.file.endsWith(file)).toBe(true);
    expect(error.key).toBe(key);
    expect(error.message).toContain(error.key);
  });

  it('says of a joint that cannot be built which field it is for, and why', () => {
    const { message } = refusal(changed('bench.json', set(['joint', 'convexity'], -8)));
    expect(message).toContain(
      `${folder}/bench.json: joint: convexity: joint_error_face_behind_surface`,
    );
  });
});
