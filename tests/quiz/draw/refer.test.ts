import { describe, expect, it } from 'vitest';
import { distanceOf } from '../../../src/quiz/distance.ts';
import { openSheet, skillOf } from '../../../src/quiz/index.ts';
import type { Question, SkillId, Truth } from '../../../src/quiz/index.ts';
import type { Placed } from '../../../src/quiz/draw/pair.ts';
import { openPlaced, truthsLeftOpen } from '../../../src/quiz/draw/refer.ts';
import { sheetUnder, type SheetCase } from '../question-sheets.ts';

const THREE = ['reject', 'refer', 'accept'] as const;
const patience = { forms: 60, tried: 20 };
const seeds = Array.from({ length: 60 }, (_, seed) => seed + 100);

function skill(id: SkillId) {
  const found = skillOf(id);
  if (found === null) throw new Error(`no skill ${id}`);
  return found;
}
const placed = (
  seed: number,
  { sheet, limits }: SheetCase,
  id: SkillId,
  truths: readonly Truth[],
) => openPlaced(seed, truths, skill(id), openSheet(sheet), limits, patience);
const truthsOf = ({ sheet, limits }: SheetCase, id: SkillId) =>
  truthsLeftOpen(skill(id), openSheet(sheet), limits);
/** Joints with each of these truths of every seed that has them. */
const all = (one: SheetCase, id: SkillId, truths: readonly Truth[] = THREE) =>
  seeds.flatMap((seed) => {
    const found = placed(seed, one, id, truths);
    return found === null ? [] : [found];
  });
/** How far past its limit the decisive check stands, and how far past what the whole length needs. */
const off = ({ decisive }: Placed) => ({
  past: distanceOf(decisive),
  pastWhole: distanceOf({ ...decisive, limit: decisive.ordinary ?? decisive.limit }),
});

function expectWithin(values: readonly number[], low: number, high: number): void {
  expect(Math.min(...values)).toBeGreaterThanOrEqual(low - 1e-6);
  expect(Math.max(...values)).toBeLessThanOrEqual(high + 1e-6);
  // all over the range, not in a corner of it
  expect(Math.min(...values)).toBeLessThan(low + (high - low) / 4);
  expect(Math.max(...values)).toBeGreaterThan(high - (high - low) / 4);
}

// AWS D1.1 under static load: 1/32 in of undercut, 1/16 in over a short length
describe('a length that nobody gave', () => {
  const one = sheetUnder('aws-d11-static');
  const triples = () => all(one, 'fillet.welded.undercut.max.refer');
  const at = (which: number) => triples().map((triple) => off(triple[which] as Placed));

  it('is plainly too much, may be enough, or plainly little, 8 to 30 % past either limit', () => {
    expect(triples().length).toBeGreaterThan(50);
    for (const triple of triples())
      expect(triple.map(({ decisive }) => decisive.call)).toEqual(THREE);
    expectWithin(
      at(0).map(({ past }) => past),
      0.08,
      0.3,
    );
    expectWithin(
      at(2).map(({ pastWhole }) => pastWhole),
      -0.3,
      -0.08,
    );
  });

  it('stands 12 to 88 % of the way between what a short and what the whole length may have', () => {
    const shares = at(1).map(({ past, pastWhole }) => past / (past - pastWhole));
    expectWithin(shares, 0.12, 0.88);
  });

  it('differs in nothing but what is measured', () => {
    for (const triple of triples()) {
      const others = triple.map(({ joint }) => ({
        ...joint,
        undercut1Depth: 0,
        undercut2Depth: 0,
      }));
      expect(new Set(others.map((joint) => JSON.stringify(joint))).size).toBe(1);
    }
  });
});

// ISO 5817 level C: no underfill over the whole length, a tenth of the thickness and at most 1 mm over a short one
describe('a length of which the whole may have none', () => {
  const one = sheetUnder('iso5817-c');
  const id = 'butt.welded.underfill.max.refer';
  const truths = () => truthsOf(one, id) ?? [];
  const found = () => all(one, id, truths());

  it('is refer from half of what a short one may have up to nearly all of it', () => {
    expect(found().length).toBeGreaterThan(30);
    const at = (truth: Truth) =>
      found().map((placedOnes) => off(placedOnes[truths().indexOf(truth)] as Placed).past);
    expectWithin(at('refer'), -0.7, -0.03);
    expectWithin(at('reject'), 0.08, 0.3);
    if (truths().includes('accept')) {
      for (const past of at('accept')) expect(past).toBe(Number.NEGATIVE_INFINITY);
    }
  });
});

describe('an angle within a protractor’s doubt', () => {
  const { guard: usual } = sheetUnder('iso5817-c').sheet;
  const guard = { ...usual, factor: 2, angleUncertainty: 0.5, lengthUncertainty: 0.02 };
  const one = sheetUnder('iso5817-c', { guard, extent: 'typical' });
  const found = () => all(one, 'fillet.welded.toeAngle.min.refer');

  it('is within 0.85 of a degree of its limit, or plainly 2 to 8 degrees past the doubt', () => {
    expect(found().length).toBeGreaterThan(40);
    const past = (which: number) => found().map((three) => off(three[which] as Placed).past);
    expectWithin(past(0), 1.15 + 2, 1.15 + 8);
    expectWithin(past(1), -0.85, 0.85);
    expectWithin(past(2), -1.15 - 8, -1.15 - 2);
  });
});

describe('a measurement within an instrument’s doubt', () => {
  const { guard: usual } = sheetUnder('aws-d11-static').sheet;
  const guard = { ...usual, factor: 2, lengthUncertainty: 0.1 };
  const one = sheetUnder('aws-d11-static', { guard, extent: 'typical' });
  const id = 'butt.welded.faceReinforcement.max.refer';
  const triples = () => all(one, id);
  const half = 2 * guard.lengthUncertainty;

  it('is inside 0.85 of the band, or past 1.15 of it by 8 to 30 %', () => {
    expect(truthsOf(one, id)).toEqual(THREE);
    expect(triples().length).toBeGreaterThan(40);
    const doubt = (which: number) =>
      triples().map((triple) => {
        const { decisive } = triple[which] as Placed;
        expect(decisive.guard).toBeCloseTo(half, 12);
        return decisive.measured - decisive.limit;
      });
    expectWithin(doubt(1), -0.85 * half, 0.85 * half);
    for (const more of doubt(0)) expect(more).toBeGreaterThan(1.15 * half);
    for (const less of doubt(2)) expect(less).toBeLessThan(-1.15 * half);
    const plain = (which: 0 | 2) =>
      triples().map((triple) => {
        const { decisive } = triple[which] as Placed;
        const share = (1.15 * half) / decisive.limit;
        return Math.abs(distanceOf(decisive)) - Math.log(1 + share);
      });
    for (const past of [...plain(0), ...plain(2)]) {
      expect(past).toBeGreaterThan(0.07);
      expect(past).toBeLessThan(0.32);
    }
  });

  it('is either where a short length is open too', () => {
    const both = sheetUnder('aws-d11-static', { guard: { ...guard, lengthUncertainty: 0.05 } });
    const found = all(both, 'fillet.welded.undercut.max.refer', ['refer']).map(([placedOne]) => {
      const { decisive } = placedOne as Placed;
      return Math.abs(decisive.measured - decisive.limit) <= 0.85 * 0.1 + 1e-9;
    });
    expect(found.filter(Boolean).length).toBeGreaterThan(10);
    expect(found.filter((isDoubt) => !isDoubt).length).toBeGreaterThan(10);
  });
});

describe('the answers that are left open', () => {
  it('are all three, or as many as there are', () => {
    expect(truthsOf(sheetUnder('aws-d11-static'), 'fillet.welded.undercut.max.refer')).toEqual(
      THREE,
    );
    // ISO 5817 level C allows no underfill over the whole length: none at all is the one accept
    const iso = truthsOf(sheetUnder('iso5817-c'), 'butt.welded.underfill.max.refer');
    expect(iso?.slice(0, 2)).toEqual(['reject', 'refer']);
  });

  it('are none where the sheet says how long', () => {
    for (const extent of ['typical', 'isolatedShort'] as const) {
      const said = sheetUnder('aws-d11-static', { extent });
      expect(truthsOf(said, 'fillet.welded.undercut.max.refer')).toBeNull();
    }
  });

  it('are none where no row is for a short length, nor any doubt allowed', () => {
    expect(
      truthsOf(sheetUnder('aws-d11-static'), 'butt.welded.faceReinforcement.max.refer'),
    ).toBeNull();
  });

  it('are to refer alone of a root that nobody sees, and of no fillet', () => {
    const hidden = { rootAccessible: false, extent: 'typical' } as const;
    const butt = sheetUnder('lock-gate-house', hidden);
    const root = truthsOf(butt, 'butt.welded.rootReinforcement.max.refer');
    expect(root).toEqual(['refer']);
    expect(truthsOf(butt, 'fillet.welded.undercut.max.refer')).toBeNull();
    expect(
      truthsOf(
        sheetUnder('lock-gate-house', { extent: 'typical' }),
        'butt.welded.rootReinforcement.max.refer',
      ),
    ).toBeNull();
    const calls: readonly Question['truth'][] = all(
      butt,
      'butt.welded.rootReinforcement.max.refer',
      ['refer'],
    )
      .slice(0, 5)
      .map(([only]) => (only as Placed).decisive.call as Question['truth']);
    expect(new Set(calls)).toEqual(new Set(['refer']));
  });
});
