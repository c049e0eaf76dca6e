import { describe, expect, it } from 'vitest';
import { defaultJobSheet, openingLimitSet } from '../../../src/limits/index.ts';
import {
  drawQuestion,
  nextSpec,
  random,
  skillsOf,
  ways,
  type AskContext,
  type CallRecord,
  type QuestionSpec,
  type Way,
} from '../../../src/quiz/index.ts';
import { runs } from '../../runs.ts';
import { tellingDistance } from '../../../src/quiz/eye/index.ts';
import { looksLike } from '../../../src/quiz/quantity.ts';
import { callWith } from '../any-call.ts';

const sheet = defaultJobSheet();
const skills = skillsOf(sheet, openingLimitSet);
const undercut = 'fillet.welded.undercut.max';

/** A run of a way with an eye that is always right; its questions. */
function played(way: Way, length: number, changes: Partial<AskContext> = {}): QuestionSpec[] {
  const chance = random(4711);
  const inRun: CallRecord[] = [];
  const specs: QuestionSpec[] = [];
  for (let i = 0; i < length; i++) {
    const context = { skills, skill: null, calls: inRun, inRun, due: [], ...changes };
    const spec = nextSpec(way, { ...context, seed: chance.word() });
    if (spec === null) throw new Error('nothing was asked');
    specs.push(spec);
    const asked = typeof spec.asked === 'number' ? spec.asked : 0;
    const call =
      typeof spec.asked === 'number'
        ? asked > 0
          ? ('reject' as const)
          : ('accept' as const)
        : spec.asked;
    inRun.push(
      callWith({
        id: `call ${i}`,
        spec,
        skill: spec.skill,
        scale: skills.find(({ id }) => id === spec.skill)?.scale ?? 'ratio',
        distance: asked,
        truth: call,
        answer: { call, fault: null, sure: 80 },
      }),
    );
  }
  return specs;
}

const distances = (specs: readonly QuestionSpec[]): number[] =>
  specs.flatMap(({ asked }) => (typeof asked === 'number' ? [asked] : []));

describe('which question comes next', () => {
  it('is one that can be drawn on the sheet, whatever the way', () => {
    for (const way of ways)
      for (const spec of played(way, 12)) {
        const question = drawQuestion(spec, sheet, openingLimitSet);
        expect(question.spec).toEqual(spec);
      }
  });

  it('is nothing where the sheet lets nothing be asked', () => {
    const empty = { skills: [], skill: null, calls: [], inRun: [], due: [], seed: 1 };
    expect(nextSpec('practice', empty)).toBeNull();
    expect(nextSpec('pairs', empty)).toBeNull();
  });

  it('in practice of one skill stays with it and asks both sides about as often', () => {
    const specs = played('practice', 200, { skill: undercut });
    expect(new Set(specs.map(({ skill }) => skill))).toEqual(new Set([undercut]));
    const rejects = distances(specs).filter((asked) => asked > 0).length;
    // 200 fair draws: three standard deviations are 21
    expect(Math.abs(rejects - distances(specs).length / 2)).toBeLessThan(21);
  });

  it('in practice comes nearer the limit for an eye that is always right', () => {
    const asked = distances(played('practice', 60, { skill: undercut })).map(Math.abs);
    const mean = (of: number[]): number => of.reduce((sum, one) => sum + one, 0) / of.length;
    expect(mean(asked.slice(-15))).toBeLessThan(mean(asked.slice(0, 5)));
  });

  it('in practice keeps to a new skill before others are mixed in', () => {
    const specs = played('practice', 6);
    expect(new Set(specs.map(({ skill }) => skill)).size).toBe(1);
    expect(new Set(played('practice', 40).map(({ skill }) => skill)).size).toBeGreaterThan(3);
  });

  it('after that a look-alike follows more often than its share', () => {
    // every skill called often, so that none is kept to as new
    const calls = skills.flatMap(({ id }) =>
      Array.from({ length: 6 }, (_, i) => callWith({ id: `${id} ${i}`, skill: id, run: 'before' })),
    );
    const inRun = [callWith({ id: 'last', skill: 'fillet.welded.undercut.max' })];
    const chance = random(7);
    const alike = skills
      .filter(({ kind, stage }) => kind === 'fillet' && stage === 'welded')
      .filter(({ quantity, sense }) => looksLike('undercut.max', `${quantity}.${sense}`))
      .map(({ id }) => id);
    expect(alike).toContain('fillet.welded.overlap.max');
    const next = Array.from(
      { length: 400 },
      () =>
        nextSpec('practice', { skills, skill: null, calls, inRun, due: [], seed: chance.word() })
          ?.skill,
    );
    const share =
      next.filter((skill) => skill !== undefined && alike.includes(skill)).length / next.length;
    // six times in ten and a little by chance; drawn from all it would be their share of the list
    expect(alike.length / skills.length).toBeLessThan(0.2);
    expect(share).toBeGreaterThan(0.55);
    expect(share).toBeLessThan(0.8);
  });

  it('when names are asked shows faults plainly and mostly', () => {
    const plainly = distances(played('naming', 300, { skill: undercut }));
    const faults = plainly.filter((asked) => asked > 0).length / plainly.length;
    expect(faults).toBeGreaterThan(0.7);
    expect(faults).toBeLessThan(0.9);
    // 1.6 times as far on either side, to an eye of which nothing is known
    const farthest = (way: Way): number =>
      Math.max(...distances(played(way, 40, { skill: undercut, calls: [] })));
    expect(farthest('naming') / farthest('practice')).toBeCloseTo(1.6, 6);
  });

  it('is nothing where the skill that was chosen can’t be asked in this way, and no other', () => {
    const open = skills.find(({ refers }) => refers)?.id ?? null;
    expect(open).not.toBeNull();
    const context = { skills, skill: open, calls: [], inRun: [], due: [], seed: 3 };
    for (const way of ['limit', 'pairs', 'naming', 'rareFaults'] as const)
      expect(nextSpec(way, context)).toBeNull();
    expect(nextSpec('practice', context)?.skill).toBe(open);
  });

  it('of what may be left open is refer about every other time', () => {
    const open = skills.find(({ truths }) => truths.length === 3)?.id ?? null;
    const asked = played('practice', 300, { skill: open }).map((one) => one.asked);
    const refers = asked.filter((one) => one === 'refer').length / asked.length;
    expect(refers).toBeGreaterThan(0.4);
    expect(refers).toBeLessThan(0.6);
    expect(new Set(asked)).toEqual(new Set(['accept', 'reject', 'refer']));
  });

  it('when a limit is looked for stays with one skill and never asks what can’t be settled', () => {
    const specs = played('limit', 20);
    expect(new Set(specs.map(({ skill }) => skill)).size).toBe(1);
    expect(distances(specs)).toHaveLength(20);
  });

  it('among rare faults is a reject five to ten times in a hundred', () => {
    const asked = distances(played('rareFaults', runs(20_000)));
    const share = asked.filter((one) => one > 0).length / asked.length;
    const room = 3 * Math.sqrt((0.077 * 0.923) / asked.length);
    expect(share).toBeGreaterThan(0.05 - room);
    expect(share).toBeLessThan(0.1 + room);
  });

  it('in pairs asks each joint just inside and just outside, four to a round, in no fixed order', () => {
    const specs = played('pairs', 40, { skill: undercut });
    const orders = new Set<string>();
    for (let round = 0; round < 10; round++) {
      const four = specs.slice(4 * round, 4 * round + 4);
      const seeds = [...new Set(four.map(({ seed }) => seed))];
      expect(seeds).toHaveLength(2);
      for (const seed of seeds) {
        const pair = four.filter((spec) => spec.seed === seed);
        expect(pair).toHaveLength(2);
        const [one, other] = pair.map(({ asked }) => Number(asked));
        expect(one).toBe(-(other ?? 0));
      }
      orders.add(four.map(({ seed }) => seeds.indexOf(seed)).join(''));
    }
    expect(orders.size).toBeGreaterThan(1);
  });

  it('in a mixed test asks every skill before any comes again', () => {
    const specs = played('mixedTest', 2 * skills.length);
    for (const half of [specs.slice(0, skills.length), specs.slice(skills.length)])
      expect(new Set(half.map(({ skill }) => skill)).size).toBe(skills.length);
  });

  it('among rare faults asks every skill before any comes again, too', () => {
    const settled = skills.filter(({ refers }) => !refers);
    const specs = played('rareFaults', settled.length);
    expect(new Set(specs.map(({ skill }) => skill)).size).toBe(settled.length);
  });

  it('when a limit is looked for stands where it tells most of the eye', () => {
    const found = skills.find(({ id }) => id === undercut);
    const specs = played('limit', 12, { skill: undercut });
    const inRun: CallRecord[] = [];
    for (const spec of specs) {
      const asked = Number(spec.asked);
      expect(asked).toBe(tellingDistance(inRun, found?.scale ?? 'ratio', found?.reach ?? 0));
      const call = asked > 0 ? 'reject' : 'accept';
      const answer = { call, fault: null, sure: 80 } as const;
      inRun.push(
        callWith({
          id: `call ${String(inRun.length)}`,
          spec,
          skill: undercut,
          scale: found?.scale ?? 'ratio',
          distance: asked,
          truth: call,
          answer,
        }),
      );
    }
  });

  it('of what is always open is always refer', () => {
    const [open] = skills.filter(({ refers }) => refers);
    if (open === undefined) throw new Error('nothing is open');
    const always = [{ ...open, truths: ['refer'] as const }];
    for (let seed = 0; seed < 30; seed++) {
      const context = { skills: always, skill: open.id, calls: [], inRun: [], due: [], seed };
      expect(nextSpec('practice', context)?.asked).toBe('refer');
    }
  });

  it('where nothing else decides is of a skill with the fewest calls', () => {
    const [one, two, ...others] = skills.map(({ id }) => id);
    const calls = others.map((skill, place) => callWith({ id: `c ${String(place)}`, skill }));
    for (let seed = 0; seed < 30; seed++) {
      const context = { skills, skill: null, calls, inRun: [], due: [], seed };
      for (const way of ['due', 'practice', 'naming'] as const) {
        const fewest = [one, two].filter(
          (id) => way !== 'naming' || skills.some((skill) => skill.id === id && !skill.refers),
        );
        expect(fewest).toContain(nextSpec(way, context)?.skill);
      }
    }
  });

  it('of what is due again is of a due skill', () => {
    const due = [undercut, 'fillet.welded.convexity.max'] as const;
    for (const { skill } of played('due', 30, { due })) expect(due).toContain(skill);
  });

  it('follows from its seed', () => {
    const context = { skills, skill: null, calls: [], inRun: [], due: [], seed: 99 };
    expect(nextSpec('practice', context)).toEqual(nextSpec('practice', context));
    expect(nextSpec('practice', { ...context, seed: 100 })).not.toEqual(
      nextSpec('practice', context),
    );
  });
});
