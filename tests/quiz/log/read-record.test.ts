import { describe, expect, it } from 'vitest';
import { LOG_VERSION, readRecord, ways } from '../../../src/quiz/index.ts';
import type { CallRecord } from '../../../src/quiz/index.ts';
import { LogError } from '../../../src/quiz/log/log-error.ts';
import { isNewer, migrated, steps } from '../../../src/quiz/log/read-record.ts';
import { callWith, slipOf } from '../any-call.ts';

const call = callWith();
const inSpec = (changed: object) => ({ spec: { ...call.spec, ...changed } });
const inAnswer = (changed: object) => ({ answer: { ...call.answer, ...changed } });

/** What a record is refused for, and where. */
function refusal(record: unknown): readonly [string, string, object?] {
  try {
    readRecord(record);
  } catch (error) {
    if (!(error instanceof LogError)) throw error;
    const { path, reason } = error;
    return reason.values === undefined ? [path, reason.key] : [path, reason.key, reason.values];
  }
  throw new Error('it was taken');
}

describe('a record from outside', () => {
  it.each<readonly [string, object, string]>([
    ['way', { way: 'guessing' }, ways.join(', ')],
    ['unit', { unit: 'in' }, 'mm, deg'],
    ['scale', { scale: 'log' }, 'ratio, deg, mm'],
    ['truth', { truth: 'perhaps' }, 'accept, reject, refer'],
    ['view', inSpec({ view: 'inside' }), 'outside, cut'],
    ['asked', inSpec({ asked: 'nothing' }), 'accept, reject, refer'],
    ['call', inAnswer({ call: null }), 'accept, reject, refer'],
  ])('with a %s that is none of its choices is told them', (field, changed, choices) => {
    expect(refusal({ ...call, ...changed })).toEqual([field, 'calls_log_no_choice', { choices }]);
  });

  it.each<readonly [string, object]>([
    ['limit', { limit: Number.NaN }],
    ['limit', { limit: -1e6 - 1 }],
    ['limit', { limit: 1e9 + 1 }],
    ['distance', { distance: 'far' }],
    ['distance', { distance: 'Infinity' }],
    ['exceedance', { exceedance: null }],
    ['pxPerMm', { pxPerMm: -0.1 }],
    ['pxPerMm', { pxPerMm: 1000.1 }],
    ['took', { took: -1 }],
    ['seed', inSpec({ seed: 2 ** 32 })],
    ['seed', inSpec({ seed: -1 })],
    ['asked', inSpec({ asked: null })],
    ['sure', inAnswer({ sure: -1 })],
    ['sure', inAnswer({ sure: 100.5 })],
  ])('with a %s that is no number there can be is refused: %j', (field, changed) => {
    expect(refusal({ ...call, ...changed })).toEqual([field, 'calls_log_no_number']);
  });

  it.each<readonly [string, object]>([
    ['id', { id: '' }],
    ['run', { run: 7 }],
    ['limitSet', { limitSet: 'x'.repeat(201) }],
    ['skill', inSpec({ skill: '' })],
    ['fault', { fault: 1 }],
    ['fault', inAnswer({ fault: '' })],
  ])('with a %s that is no short text is refused: %j', (field, changed) => {
    expect(refusal({ ...call, ...changed })).toEqual([field, 'calls_log_no_text']);
  });

  it.each<readonly [string, string, unknown]>([
    ['', 'calls_log_no_record', null],
    ['', 'calls_log_no_record', 'a call'],
    ['', 'calls_log_no_record', [call]],
    ['spec', 'calls_log_no_record', { ...call, spec: [] }],
    ['answer', 'calls_log_no_record', { ...call, answer: 'accept' }],
    ['version', 'calls_log_no_version', { ...call, version: '1' }],
    ['version', 'calls_log_no_version', { ...call, version: 0.5 }],
    ['version', 'calls_log_no_version', { ...call, version: 0 }],
    ['version', 'calls_log_no_version', { ...call, version: 1.5 }],
    ['kind', 'calls_log_no_kind', { ...call, kind: 'glance' }],
    ['at', 'calls_log_no_time', { ...call, at: 'yesterday' }],
    ['call', 'calls_log_no_text', { ...slipOf('a'), call: null }],
    ['spec.skill', 'calls_log_no_skill', { ...call, ...inSpec({ skill: 'x' }) }],
    ['truth', 'calls_log_no_truth', { ...call, distance: 0.1, truth: 'accept' }],
  ])('is refused at "%s" by %s', (path, key, record) => {
    expect(refusal(record)).toEqual([path, key]);
  });

  it.each(['constructor.max', 'nonsense.min.refer', 'toString.max', 'visibleLeg.min', 't.max'])(
    'of a skill in a quantity that there is not is refused: %s',
    (skill) => {
      const record = { ...call, ...inSpec({ skill: `fillet.welded.${skill}` }) };
      expect(refusal(record)).toEqual(['spec.skill', 'calls_log_no_skill']);
    },
  );

  it.each([
    'constructor.max',
    'zzz.max',
    '1undercut.max',
    'undercut.most',
    'under-cut.max',
    'undercut.max2',
    ' undercut.max',
  ])('that names a fault "%s" is refused, in truth and answer', (fault) => {
    expect(refusal({ ...call, fault })).toEqual(['fault', 'calls_log_no_fault']);
    expect(refusal({ ...call, ...inAnswer({ fault }) })).toEqual(['fault', 'calls_log_no_fault']);
  });

  it.each<readonly [string, Partial<CallRecord>]>([
    ['the ends of what a number may be', { limit: -1e6, exceedance: 1e9, pxPerMm: 1000, took: 0 }],
    ['no magnification', { pxPerMm: 0 }],
    ['a limit as great as any', { limit: 1e9, exceedance: -1e6 }],
    ['the longest text', { run: 'x'.repeat(200) }],
    ['the first seed and the last', inSpec({ seed: 0 })],
    ['the first seed and the last', inSpec({ seed: 2 ** 32 - 1 })],
    ['no sureness at all', inAnswer({ sure: 0 })],
    ['all of it', inAnswer({ sure: 100 })],
    ['no name for the fault', { fault: null, ...inAnswer({ fault: null }) }],
    ['something else', inAnswer({ fault: 'somethingElse' })],
    ['not sure', inAnswer({ fault: 'notSure' })],
    ['a question left open', { ...inSpec({ asked: 'refer' }), truth: 'refer', fault: null }],
    ['a fault with a figure', { fault: 'leg2.min' }],
  ])('with %s is taken as it is', (_what, changed) => {
    expect(readRecord(callWith(changed))).toEqual(callWith(changed));
  });

  // figures are rounded somewhere: a millionth past the limit either call may have been the truth
  it.each([1e-6, 0, -1e-6])('so near the limit may have either truth: %d', (distance) => {
    for (const truth of ['accept', 'reject'] as const)
      expect(readRecord(callWith({ distance, truth }))).toMatchObject({ distance, truth });
  });

  it.each([
    [1.1e-6, 'accept'],
    [-1.1e-6, 'reject'],
  ] as const)('not so near has but one truth: %d is not %s', (distance, truth) => {
    expect(refusal(callWith({ distance, truth }))).toEqual(['truth', 'calls_log_no_truth']);
  });

  it('may be open at any distance', () => {
    for (const distance of [-0.4, 0, 0.4])
      expect(readRecord(callWith({ distance, truth: 'refer' }))).toMatchObject({ distance });
  });

  it('infinitely far inside is so by its word in a file too', () => {
    const inside = { truth: 'accept' } as const;
    for (const distance of [Number.NEGATIVE_INFINITY, '-Infinity'])
      expect(readRecord({ ...callWith(inside), distance })).toEqual(
        callWith({ ...inside, distance: Number.NEGATIVE_INFINITY }),
      );
  });

  it('has its time in UTC, whatever the place it was written at', () => {
    expect(readRecord({ ...call, at: '2026-03-02T10:15:00+02:00' }).at).toBe(
      '2026-03-02T08:15:00.000Z',
    );
  });

  it('holds nothing that this version does not know', () => {
    expect(readRecord({ ...call, glare: 3 })).toEqual(call);
    expect(readRecord({ ...slipOf('a'), glare: 3 })).toEqual(slipOf('a'));
  });

  it('is of the skill that its question is of', () => {
    expect(readRecord({ ...call, skill: 'butt.welded.underfill.max' })).toEqual(call);
  });
});

describe('a record of a later version', () => {
  it('is one with a higher version and an id', () => {
    expect(isNewer({ version: LOG_VERSION + 1, id: 'a' })).toBe(true);
  });

  it.each<unknown>([
    null,
    'a',
    [],
    { version: LOG_VERSION, id: 'a' },
    { version: String(LOG_VERSION + 1), id: 'a' },
    { version: LOG_VERSION + 1, id: '' },
    { version: LOG_VERSION + 1, id: 3 },
    { version: LOG_VERSION + 1 },
  ])('is not %j', (value) => {
    expect(isNewer(value)).toBe(false);
  });

  it('is left as it is where nothing leads on from it', () => {
    const later = { version: 5, id: 'a', glare: 1 };
    expect(migrated(later)).toEqual(later);
  });
});

describe('a record of an earlier version', () => {
  it('has one step to every version but the first', () => {
    expect(steps).toHaveLength(LOG_VERSION - 1);
  });

  it('is brought up step by step, one for each version between', () => {
    // made-up steps: what a version 3 of the program would hold
    const steps = [
      (record: Readonly<Record<string, unknown>>) => ({ ...record, light: 'unknown' }),
      ({ light, ...rest }: Readonly<Record<string, unknown>>) => ({ ...rest, lit: light }),
    ];
    expect(migrated({ version: 1, id: 'a' }, steps)).toEqual({
      version: 3,
      id: 'a',
      lit: 'unknown',
    });
    expect(migrated({ version: 2, id: 'a', light: 'day' }, steps)).toEqual({
      version: 3,
      id: 'a',
      lit: 'day',
    });
    expect(migrated({ version: 3, id: 'a' }, steps)).toEqual({ version: 3, id: 'a' });
  });

  it('of version 1 is read as it stands', () => {
    expect(readRecord(callWith())).toEqual(callWith());
    expect(readRecord(slipOf('a'))).toEqual(slipOf('a'));
  });
});
