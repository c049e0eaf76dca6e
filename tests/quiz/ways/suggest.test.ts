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
});
