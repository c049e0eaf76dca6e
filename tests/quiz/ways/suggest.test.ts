import { describe, expect, it } from 'vitest';
import { defaultJobSheet, openingLimitSet } from '../../../src/limits/index.ts';
import { skillsOf, suggestNext, type CallRecord, type SkillId } from '../../../src/quiz/index.ts';
import { callWith } from '../any-call.ts';

const skills = skillsOf(defaultJobSheet(), openingLimitSet);
const [first, second] = skills.map(({ id }) => id) as [SkillId, SkillId];

/** So many calls of a skill; a line drawn `bias` past the limit, sharp. */
const callsOf = (skill: SkillId, count: number, bias = 0): readonly CallRecord[] =>
  Array.from({ length: count }, (_, index) => {
    const distance = ((index % 10) - 4.5) * 0.04;
    return callWith({
      id: `${skill} ${index}`,
      skill,
      distance,
      truth: distance > 0 ? 'reject' : 'accept',
      answer: { call: distance > bias ? 'reject' : 'accept', fault: null, sure: 80 },
    });
  });
/** Every skill called so often that nothing is nearly known. */
const well = (bias = 0): readonly CallRecord[] =>
  skills.flatMap(({ id }, index) => callsOf(id, 30, index === 0 ? bias : 0));

describe('what to do next', () => {
  it('is nothing where the sheet lets nothing be asked', () => {
    expect(suggestNext([], [], [])).toBeNull();
  });

  it('is to start with one skill before the first call', () => {
    const suggestion = suggestNext([], skills, []);
    expect(suggestion).toMatchObject({ way: 'practice', why: { key: 'calls_suggest_first' } });
    expect(skills.find(({ id }) => id === suggestion?.skill)?.reach).toBeGreaterThan(0);
  });

  it('is what is due again, before all else, where the sheet has it', () => {
    const due = [
      { skill: 'butt.welded.somewhere.max' as const, again: '2026-01-01T00:00:00Z', isDue: true },
      { skill: second, again: '2026-01-02T00:00:00Z', isDue: true },
    ];
    expect(suggestNext(callsOf(first, 12), skills, due)).toMatchObject({
      way: 'due',
      skill: second,
      why: { key: 'calls_suggest_due' },
    });
  });

  it('is to find the limit of a skill that lacks a few calls to say where its line is drawn', () => {
    expect(suggestNext(callsOf(first, 14), skills, [])).toMatchObject({
      way: 'limit',
      skill: first,
      why: { key: 'calls_suggest_limit', values: { left: 6 } },
    });
  });

  it('is to practise a skill that is called too leniently or too strictly, and says which', () => {
    expect(suggestNext(well(0.15), skills, [])?.why.key).toBe('calls_suggest_lenient');
    expect(suggestNext(well(-0.15), skills, [])?.why.key).toBe('calls_suggest_strict');
  });

  it('otherwise is the skill with the fewest calls', () => {
    const calls = [...well().filter(({ skill }) => skill !== second), ...callsOf(second, 25)];
    expect(suggestNext(calls, skills, [])).toMatchObject({
      way: 'practice',
      skill: second,
      why: { key: 'calls_suggest_least' },
    });
  });

  it('is not what will be due, nor what the sheet does not have', () => {
    const due = [
      { skill: 'butt.welded.somewhere.max' as const, again: '2026-01-01T00:00:00Z', isDue: true },
      { skill: second, again: '2026-12-02T00:00:00Z', isDue: false },
    ];
    expect(suggestNext(callsOf(first, 12), skills, due)?.way).toBe('limit');
  });

  it('is to find a limit from ten calls on until twenty', () => {
    const counted = [9, 10, 19, 20].map((count) => suggestNext(callsOf(first, count), skills, []));
    expect(counted.map((suggestion) => suggestion?.way)).toEqual([
      'practice',
      'limit',
      'limit',
      'practice',
    ]);
    expect(counted.map((suggestion) => suggestion?.why.values?.['left'])).toEqual([
      undefined,
      10,
      1,
      undefined,
    ]);
  });

  it('is no limit to find where a skill is of what stays open', () => {
    const open = skills.find(({ refers }) => refers)?.id as SkillId;
    const suggestion = suggestNext(callsOf(open, 14), skills, []);
    expect(suggestion).toMatchObject({ way: 'practice', why: { key: 'calls_suggest_least' } });
    expect(suggestion?.skill).not.toBe(open);
  });

  it('before the first call is a skill with a limit, even where one without stands first', () => {
    const open = skills.filter(({ refers }) => refers);
    const settled = skills.filter(({ reach }) => reach > 0);
    expect(suggestNext([], [...open, ...settled], [])?.skill).toBe(settled[0]?.id);
    expect(suggestNext([], open, [])).toMatchObject({ way: 'practice', skill: null });
  });

  it('names the skill that is off to one side', () => {
    expect(suggestNext(well(0.15), skills, [])).toMatchObject({ way: 'practice', skill: first });
  });
});
