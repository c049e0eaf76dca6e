import { build } from '../joint/index.ts';
import { measure, measurementIds, type MeasurementId } from '../measure/index.ts';
import { unmet, type Condition } from './condition.ts';
import { figureFrom, figureKeys } from './figure.ts';
import { readKeys, refuseUnknown, required } from './front-matter.ts';
import { LessonError, type ChooseTask, type LessonState, type Task } from './lesson.ts';
import { readJson } from './read-json.ts';

/** What counts as done, by task id, from `target.json`. */
export type Targets = ReadonlyMap<string, Target>;
type Target =
  | { readonly kind: 'drive'; readonly conditions: readonly Condition[] }
  | { readonly kind: 'choose'; readonly options: ChooseTask['options'] };

/** A `task` block: `id`, `ask`, `why` and the keys of a figure; its target by id. */
export function readTask(
  file: string,
  text: string,
  state: (file: string) => LessonState,
  targets: Targets,
): Task {
  const keys = readKeys(file, text);
  refuseUnknown(file, keys, ['id', 'ask', 'why', ...figureKeys]);
  const id = required(file, keys, 'id');
  const target = targets.get(id);
  if (!target) throw new LessonError(file, id, 'has no entry in target.json');
  const task: Task = {
    id,
    ask: required(file, keys, 'ask'),
    why: required(file, keys, 'why'),
    figure: figureFrom(file, keys, state),
    ...target,
  };
  refuseIdle(file, task);
  return task;
}

/** A task that is done before it starts, or a choice with no single right answer, teaches nothing. */
function refuseIdle(file: string, task: Task): void {
  const measurements = measure(build(task.figure.start.joint));
  if (task.kind === 'drive') {
    if (task.figure.drive.length === 0) throw new LessonError(file, task.id, 'drives nothing');
    if (unmet(task.conditions, measurements).length === 0) {
      throw new LessonError(file, task.id, 'is already done at its start');
    }
    return;
  }
  const right = task.options.filter(
    (option) => unmet(option.conditions, measurements).length === 0,
  );
  if (right.length !== 1) {
    throw new LessonError(file, task.id, `${right.length} options are true of its section, not 1`);
  }
}

/** Reads `target.json`: `{ "<task id>": { "conditions": […] } | { "options": […] } }`. */
export function readTargets(file: string, text: string | undefined): Targets {
  if (text === undefined) return new Map();
  return new Map(
    Object.entries(readJson(file, text)).map(([id, value]) => [id, readTarget(file, id, value)]),
  );
}

function readTarget(file: string, id: string, value: unknown): Target {
  if (isRecord(value) && Array.isArray(value['conditions'])) {
    return { kind: 'drive', conditions: readConditions(file, id, value['conditions']) };
  }
  if (isRecord(value) && Array.isArray(value['options']) && value['options'].length > 1) {
    return {
      kind: 'choose',
      options: value['options'].map((option, index) => {
        const key = `${id}.options[${index}]`;
        if (
          !isRecord(option) ||
          typeof option['id'] !== 'string' ||
          typeof option['label'] !== 'string' ||
          !Array.isArray(option['conditions'])
        ) {
          throw new LessonError(file, key, 'needs id, label and conditions');
        }
        return {
          id: option['id'],
          label: option['label'],
          conditions: readConditions(file, key, option['conditions']),
        };
      }),
    };
  }
  throw new LessonError(file, id, 'needs "conditions", or two or more "options"');
}

function readConditions(file: string, key: string, list: readonly unknown[]): Condition[] {
  if (list.length === 0) throw new LessonError(file, key, 'needs at least one condition');
  return list.map((value) => {
    if (!isRecord(value)) throw new LessonError(file, key, 'a condition is an object');
    const { measurement, min, max, below, equals, by, ...rest } = value;
    const unknown = Object.keys(rest)[0];
    if (unknown !== undefined) throw new LessonError(file, key, `"${unknown}" is not known`);
    const id = measurementId(file, key, measurement);
    if (below !== undefined) {
      return { measurement: id, below: measurementId(file, key, below), by: number(file, key, by) };
    }
    if (equals !== undefined) {
      return {
        measurement: id,
        equals: measurementId(file, key, equals),
        by: number(file, key, by),
      };
    }
    if (min === undefined && max === undefined) {
      throw new LessonError(file, key, 'needs min, max, below or equals');
    }
    return {
      measurement: id,
      ...(min === undefined ? {} : { min: number(file, key, min) }),
      ...(max === undefined ? {} : { max: number(file, key, max) }),
    };
  });
}

function measurementId(file: string, key: string, value: unknown): MeasurementId {
  const id = measurementIds.find((known) => known === value);
  if (id === undefined) throw new LessonError(file, key, `"${String(value)}" is no measurement`);
  return id;
}

function number(file: string, key: string, value: unknown): number {
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    throw new LessonError(file, key, `"${String(value)}" is not a number`);
  }
  return value;
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
