import {
  LOG_VERSION,
  ways,
  type CallRecord,
  type LogRecord,
  type SlipRecord,
} from '../call-record.ts';
import { subjects } from '../../limits/index.ts';
import { isQuantity } from '../quantity.ts';
import type { Answer, QuestionSpec } from '../question.ts';
import { skillOf } from '../skill-id.ts';
import type { Fault, SkillId } from '../skill.ts';
import { LogError } from './log-error.ts';

type Fields = Readonly<Record<string, unknown>>;

/** A record of a later version: its id is all that this one knows of it. It is kept as it is, never dropped. */
export interface NewerRecord {
  readonly id: string;
}

/** Whether a record comes from a later version of the program. */
export const isNewer = (value: unknown): value is NewerRecord =>
  isFields(value) &&
  typeof value['version'] === 'number' &&
  value['version'] > LOG_VERSION &&
  typeof value['id'] === 'string' &&
  value['id'] !== '';

/**
 * How a record of each earlier version becomes one of the next. Version 1 is the first, so there is
 * none yet: the next version adds its step at the end. There is one less of them than LOG_VERSION.
 */
export const steps: readonly ((record: Fields) => Fields)[] = [];

/** A record brought up to this version, step by step; LogError where its version is none. */
export function migrated(value: unknown, known = steps): Fields {
  if (!isFields(value)) throw new LogError('', { key: 'calls_log_no_record' });
  let record = value;
  const { version } = record;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    throw new LogError('version', { key: 'calls_log_no_version' });
  for (let at = version; at <= known.length; at++) {
    const step = known[at - 1];
    if (step !== undefined) record = { ...step(record), version: at + 1 };
  }
  return record;
}

/** A record of a log from outside, taken whole or refused with a LogError that names the field. */
export function readRecord(value: unknown, known = steps): LogRecord {
  const record = migrated(value, known);
  switch (record['kind']) {
    case 'call':
      return readCall(record);
    case 'slip':
      return readSlip(record);
    default:
      throw new LogError('kind', { key: 'calls_log_no_kind' });
  }
}

function readSlip(record: Fields): SlipRecord {
  return {
    version: LOG_VERSION,
    kind: 'slip',
    id: textOf(record, 'id'),
    at: timeOf(record, 'at'),
    call: textOf(record, 'call'),
  };
}

/** So near the limit, by whatever scale, either call may be the truth: figures are rounded somewhere. */
const ON_LIMIT = 1e-6;

function readCall(record: Fields): CallRecord {
  const spec = readSpec(partOf(record, 'spec'));
  const distance = distanceIn(record);
  const truth = oneOf(record, 'truth', truths);
  if ((truth === 'accept' && distance > ON_LIMIT) || (truth === 'reject' && distance < -ON_LIMIT))
    throw new LogError('truth', { key: 'calls_log_no_truth' });
  return {
    version: LOG_VERSION,
    kind: 'call',
    id: textOf(record, 'id'),
    at: timeOf(record, 'at'),
    way: oneOf(record, 'way', ways),
    run: textOf(record, 'run'),
    spec,
    skill: spec.skill,
    limitSet: textOf(record, 'limitSet'),
    limit: numberOf(record, 'limit'),
    unit: oneOf(record, 'unit', ['mm', 'deg']),
    scale: oneOf(record, 'scale', ['ratio', 'deg', 'mm']),
    distance,
    exceedance: numberOf(record, 'exceedance'),
    truth,
    fault: record['fault'] === null ? null : faultOf(record, 'fault'),
    answer: readAnswer(partOf(record, 'answer')),
    pxPerMm: numberOf(record, 'pxPerMm', 0, 1000),
    took: numberOf(record, 'took', 0),
  };
}

function readSpec(spec: Fields): QuestionSpec {
  const skill = textOf(spec, 'skill');
  if (skillOf(skill as SkillId) === null)
    throw new LogError('spec.skill', { key: 'calls_log_no_skill' });
  return {
    version: 1,
    seed: numberOf(spec, 'seed', 0, 2 ** 32 - 1),
    skill: skill as SkillId,
    view: oneOf(spec, 'view', ['outside', 'cut']),
    asked:
      typeof spec['asked'] === 'string' ? oneOf(spec, 'asked', truths) : numberOf(spec, 'asked'),
  };
}

function readAnswer(answer: Fields): Answer {
  const { fault } = answer;
  return {
    call: oneOf(answer, 'call', truths),
    fault:
      fault === null || fault === 'somethingElse' || fault === 'notSure'
        ? fault
        : faultOf(answer, 'fault'),
    sure: numberOf(answer, 'sure', 0, 100),
  };
}

/** None of what has a limit stands infinitely far inside it; JSON has no figure for that. */
function distanceIn(record: Fields): number {
  const { distance } = record;
  return distance === '-Infinity' || distance === -Infinity
    ? -Infinity
    : numberOf(record, 'distance');
}

function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function partOf(record: Fields, name: string): Fields {
  const part = record[name];
  if (!isFields(part)) throw new LogError(name, { key: 'calls_log_no_record' });
  return part;
}

/** Names and ids are short; longer is no log of this program. */
const LONGEST = 200;

function textOf(record: Fields, name: string): string {
  const text = record[name];
  if (typeof text !== 'string' || text === '' || text.length > LONGEST)
    throw new LogError(name, { key: 'calls_log_no_text' });
  return text;
}

function timeOf(record: Fields, name: string): string {
  const text = textOf(record, name);
  const time = new Date(text);
  if (Number.isNaN(time.getTime())) throw new LogError(name, { key: 'calls_log_no_time' });
  return time.toISOString();
}

function faultOf(record: Fields, name: string): Fault {
  const text = textOf(record, name);
  const [, quantity = ''] = /^([a-z]+[12]?)\.(?:min|max)$/iu.exec(text) ?? [];
  if (!isQuantity(quantity) && !subjects.some((subject) => subject === quantity))
    throw new LogError(name, { key: 'calls_log_no_fault' });
  return text as Fault;
}

function numberOf(record: Fields, name: string, least = -1e6, most = 1e9): number {
  const value = record[name];
  if (typeof value !== 'number' || !(value >= least && value <= most))
    throw new LogError(name, { key: 'calls_log_no_number' });
  return value;
}

const truths = ['accept', 'reject', 'refer'] as const;

function oneOf<Choice extends string>(
  record: Fields,
  name: string,
  choices: readonly Choice[],
): Choice {
  const found = choices.find((choice) => choice === record[name]);
  if (found === undefined)
    throw new LogError(name, {
      key: 'calls_log_no_choice',
      values: { choices: choices.join(', ') },
    });
  return found;
}
