import { describe, expect, it } from 'vitest';
import { build, parseJoint } from '../../../src/joint/index.ts';
import { judge } from '../../../src/limits/index.ts';
import type { JobSheet } from '../../../src/limits/index.ts';
import { measure } from '../../../src/measure/index.ts';
import { drawQuestion, openSheet, QuizError, settledSheet } from '../../../src/quiz/index.ts';
import type { Question, QuestionSpec } from '../../../src/quiz/index.ts';
import { draw, fieldOf, opening, spec } from '../asked.ts';
import { sheetUnder } from '../question-sheets.ts';

describe('the same spec, sheet and set', () => {
  it('give the same question, to the last digit', () => {
    const wanted = spec('fillet.welded.undercut.max', 0.2);
    const again = structuredClone(opening.sheet);
    const [first, second] = [draw(opening, wanted), drawQuestion(wanted, again, opening.limits)];
    expect(JSON.stringify(second)).toBe(JSON.stringify(first));
  });

  it('give another joint for another seed', () => {
    const joints = [1, 2, 3, 4, 5, 6].map(
      (seed) => draw(opening, spec('fillet.welded.undercut.max', 0.2, { seed })).joint,
    );
    expect(new Set(joints.map(({ t1, t2 }) => `${t1} ${t2}`)).size).toBeGreaterThan(3);
    expect(new Set(joints.map((joint) => fieldOf(joint, 'arrangement'))).size).toBeGreaterThan(1);
  });

  it('give a joint that can be kept and read again', () => {
    const { joint } = draw(opening, spec('butt.welded.faceReinforcement.max', 0.1));
    expect(parseJoint(JSON.parse(JSON.stringify(joint)))).toEqual(joint);
  });
});

describe('where a question stands', () => {
  // ISO 5817 level C, undercut over 3 mm: min(0.1 t, 0.5 mm); all joints here are thicker than 5 mm or so
  it('is so much past the limit: undercut of 0.5 mm e^0.2 = 0.6107', () => {
    const { decisive, fault, truth } = draw(opening, spec('fillet.welded.undercut.max', 0.2));
    expect(decisive.limit).toBeCloseTo(0.5, 12);
    expect(decisive.measured).toBeCloseTo(0.6107014, 6);
    expect([truth, fault]).toEqual(['reject', 'undercut.max']);
  });

  // a least limit is past where there is less: 7 mm e^-0.1 = 6.3339
  it('is so much under a least limit: leg of 7 mm e^-0.1 = 6.3339', () => {
    const { decisive, exceedance } = draw(opening, spec('fillet.welded.leg.min', 0.1));
    expect(decisive.measured).toBeCloseTo(6.3338619, 6);
    expect(exceedance).toBeCloseTo(0.6661381, 6);
  });

  it('is in mm where nothing is permitted, and none at all inside', () => {
    const bad = draw(opening, spec('fillet.welded.overlap.max', 0.7));
    expect([bad.scale, bad.distance, bad.truth]).toEqual(['mm', expect.closeTo(0.7, 7), 'reject']);
    const good = draw(opening, spec('fillet.welded.overlap.max', -0.7));
    expect([good.scale, good.distance, good.truth, good.fault]).toEqual(['mm', 0, 'accept', null]);
  });

  it('is in degrees for an angle', () => {
    const { scale, decisive } = draw(opening, spec('fillet.welded.toeAngle.min', 4));
    expect([scale, decisive.measured]).toEqual(['deg', expect.closeTo(96, 6)]);
  });

  // an undercut is at most 4 mm deep: ISO's 0.5 mm e^3 would be 10, and of e^15 less is asked four times over
  it.each([
    [3, 3 * 0.6],
    [15, 15 * 0.6 ** 4],
  ])('is nearer where no joint can stand so far out: %s', (asked, nearer) => {
    const { distance, truth } = draw(opening, spec('fillet.welded.undercut.max', asked));
    expect(truth).toBe('reject');
    expect(distance).toBeCloseTo(nearer, 6);
  });

  it('is told to be too far where nothing near it can be drawn', () => {
    const wanted = spec('fillet.welded.undercut.max', 40);
    expect(() => draw(opening, wanted)).toThrow(
      new QuizError({ key: 'calls_error_not_on_this_sheet' }),
    );
  });

  it('may be on the limit itself, which is accept', () => {
    for (let seed = 0; seed < 10; seed++) {
      const { decisive, truth } = draw(opening, spec('butt.fitUp.rootOpening.max', 0, { seed }));
      expect(decisive.measured).toBeCloseTo(decisive.limit ?? Number.NaN, 9);
      expect(truth).toBe('accept');
    }
  });

  it('says what is so by the shape, not by the slider', () => {
    const { joint, decisive } = draw(opening, spec('fillet.welded.isoscelesThroat.min', 0.1));
    expect(measure(build(joint)).values.isoscelesThroat?.value).toBe(decisive.measured);
  });
});

describe('the sheet of a question', () => {
  it('says what the given one left open, so that the call is accept or reject', () => {
    const { sheet } = draw(opening, spec('butt.welded.underfill.max', 0.2));
    expect(opening.sheet.extent).toBe('unknown');
    expect(sheet.extent).toBe('isolatedShort');
    expect(Object.values(sheet.service)).not.toContain('unknown');
  });

  it('says as much to a bad joint as to its good twin, so that it tells neither', () => {
    // AWS D1.1, and a leg under ISO 5817: what is open would settle one side only
    for (const [id, skill] of [
      ['aws-d11-static', 'fillet.welded.undercut.max'],
      ['iso5817-c', 'fillet.welded.leg.min'],
      ['iso5817-c', 'butt.welded.underfill.max'],
    ] as const) {
      const one = sheetUnder(id);
      for (let seed = 0; seed < 12; seed++) {
        const [bad, good] = [0.15, -0.15].map((asked) => draw(one, spec(skill, asked, { seed })));
        expect([skill, seed, bad?.sheet]).toEqual([skill, seed, good?.sheet]);
        expect(bad?.choices).toEqual(good?.choices);
      }
    }
  });

  it('leaves open what changes no call on either side, and says what changes one', () => {
    const [given, said] = [openSheet(opening.sheet), settledSheet(opening.sheet)];
    const kept = new Set<boolean>();
    for (let seed = 0; seed < 30; seed++) {
      const skill = seed % 2 === 0 ? 'butt.fitUp.rootOpening.max' : 'butt.welded.underfill.max';
      const twins = [0.15, -0.15].map((asked) => draw(opening, spec(skill, asked, { seed })));
      const callsBy = (sheet: JobSheet, { measurements }: Question) =>
        judge(measurements, sheet, opening.limits).map(({ id, call }) => `${id} ${call}`);
      const isOpen = twins.every(
        (twin) => callsBy(given, twin).join() === callsBy(said, twin).join(),
      );
      kept.add(isOpen);
      for (const twin of twins) {
        const { sheet, checks, decisive, measurements, either } = twin;
        expect(sheet).toEqual(isOpen ? given : said);
        expect(checks).toEqual(judge(measurements, sheet, opening.limits));
        expect(checks).toContainEqual(decisive);
        expect(twin.truth).toBe(decisive.call);
        expect(either).toEqual(twins.flatMap((one) => one.checks));
      }
    }
    expect(kept).toEqual(new Set([true, false]));
  });

  it('leaves open what is the question', () => {
    const { sheet, truth, fault } = draw(opening, spec('butt.welded.underfill.max.refer', 'refer'));
    expect([sheet.extent, truth, fault]).toEqual(['unknown', 'refer', null]);
  });

  it('refuses an open question of what it says, and an answer that nothing open comes to', () => {
    const none = new QuizError({ key: 'calls_error_not_on_this_sheet' });
    const said = sheetUnder('iso5817-c', { extent: 'typical' });
    for (const truth of ['refer', 'accept', 'reject'] as const)
      expect(() => draw(said, spec('butt.welded.underfill.max.refer', truth))).toThrow(none);
    // of a root that no eye gets to all is open
    const hidden = sheetUnder('b311', { rootAccessible: false });
    const root = 'butt.welded.rootUndercut.max.refer';
    expect(draw(hidden, spec(root, 'refer')).truth).toBe('refer');
    for (const truth of ['accept', 'reject'] as const)
      expect(() => draw(hidden, spec(root, truth))).toThrow(none);
  });

  it('has all three answers on one sheet where something is left open, each from one seed', () => {
    const asked = ['reject', 'refer', 'accept'] as const;
    const three = asked.map((truth) =>
      draw(sheetUnder('aws-d11-static'), spec('fillet.welded.undercut.max.refer', truth)),
    );
    expect(three.map(({ truth }) => truth)).toEqual(asked);
    expect(new Set(three.map(({ sheet }) => sheet.extent))).toEqual(new Set(['unknown']));
    const depths = three.map(({ decisive }) => decisive.measured ?? NaN);
    expect(depths[0]).toBeGreaterThan(depths[1] ?? NaN);
    expect(depths[1]).toBeGreaterThan(depths[2] ?? NaN);
    const others = three.map(({ joint }) => ({ ...joint, undercut1Depth: 0, undercut2Depth: 0 }));
    expect(new Set(others.map((joint) => JSON.stringify(joint))).size).toBe(1);
  });
});

describe('what may be answered', () => {
  it('holds the fault, what the sheet assesses and what looks like it, in an order that says nothing', () => {
    const { choices } = draw(opening, spec('fillet.welded.undercut.max', 0.2));
    expect(choices).toEqual([...choices].sort());
    expect(choices).toEqual(expect.arrayContaining(['undercut.max', 'overlap.max', 'leg.min']));
    expect(choices).not.toContain('underfill.max');
  });

  it('is the same on both sides of the limit', () => {
    const [bad, good] = [0.2, -0.2].map((at) =>
      draw(opening, spec('butt.welded.underfill.max', at)),
    );
    expect(good?.choices).toEqual(bad?.choices);
  });

  it('are the same list whatever is asked: it can’t give the answer away', () => {
    const leg = draw(opening, spec('fillet.welded.leg.min', 0.1)).choices;
    const undercut = draw(opening, spec('fillet.welded.undercut.max', 0.1)).choices;
    expect(leg).toContain('leg.min');
    expect(leg).toContain('isoscelesThroat.min');
    expect(undercut).toEqual(leg);
  });
});

describe('views', () => {
  it('show a gap under a finished fillet in a cut only: read from the record it would be no call by eye', () => {
    const gap = (view: QuestionSpec['view']) =>
      draw(opening, spec('fillet.welded.rootGap.max', 0.2, { view }));
    expect(gap('cut').recorded).toEqual([]);
    expect(() => gap('outside')).toThrow(new QuizError({ key: 'calls_error_not_seen' }));
  });

  it('tell the gap from the record where there is one and nobody can see it', () => {
    const seeds = Array.from({ length: 30 }, (_, seed) => seed);
    const recorded = seeds.map((seed) => {
      const leg = (view: QuestionSpec['view']) =>
        draw(opening, spec('fillet.welded.leg.min', 0.2, { view, seed }));
      expect(leg('cut').recorded).toEqual([]);
      const { recorded, measurements } = leg('outside');
      const gap = measurements.values.rootGap?.value ?? 0;
      expect(recorded).toEqual(gap > 0 ? [{ measurement: 'rootGap', value: gap }] : []);
      return recorded.length;
    });
    expect(new Set(recorded)).toEqual(new Set([0, 1]));
  });

  it('refuse what can be seen in none of them', () => {
    const hidden = sheetUnder('iso5817-c', { rootAccessible: false });
    const wanted = spec('butt.welded.rootConcavity.max', 0.2, { view: 'outside' });
    expect(() => draw(hidden, wanted)).toThrow(QuizError);
    const { truth } = draw(opening, wanted);
    expect(truth).toBe('reject');
  });
});
