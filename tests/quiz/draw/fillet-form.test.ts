import { describe, expect, it } from 'vitest';
import { defaultJoint } from '../../../src/joint/index.ts';
import { defaultJobSheet } from '../../../src/limits/index.ts';
import { filletForm } from '../../../src/quiz/draw/fillet-form.ts';
import { random } from '../../../src/quiz/random.ts';
import { expectShare, expectToFill, spread } from './spread.ts';

const mm = (value: number) => ({ unit: 'mm', value }) as const;
const sheet = defaultJobSheet();
const seeds = Array.from({ length: 1500 }, (_, seed) => seed);

/** Fillets of one leg, mm, on both plates. */
const ofLeg = (leg: number) =>
  seeds.map((seed) =>
    filletForm(
      random(seed),
      { ...sheet, size: { as: 'leg', first: mm(leg), second: null } },
      'welded',
    ),
  );

describe('a sound fillet', () => {
  const size = { as: 'leg', first: mm(6), second: mm(9) } as const;
  const fillets = () => seeds.map((seed) => filletForm(random(seed), { ...sheet, size }, 'welded'));

  it('is a tee as often as anything else, the rest laps and outside corners', () => {
    expectShare(fillets(), ({ arrangement }) => arrangement === 'tee', 1 / 2);
    expectShare(fillets(), ({ arrangement }) => arrangement === 'lap', 1 / 4);
    expectShare(fillets(), ({ arrangement }) => arrangement === 'corner', 1 / 4);
    expect(new Set(fillets().map(({ stage }) => stage))).toEqual(new Set(['welded']));
    expect(filletForm(random(1), sheet, 'fitUp').stage).toBe('fitUp');
  });

  it('has legs 1.14 to 1.38 times as long as each is asked', () => {
    expectToFill(
      fillets().map(({ leg1 }) => leg1),
      6 * 1.14,
      6 * 1.38,
    );
    expectToFill(
      fillets().map(({ leg2 }) => leg2),
      9 * 1.14,
      9 * 1.38,
    );
  });

  it('stands square, or a tee up to 1.5° off and cut to it', () => {
    const tees = fillets().filter(({ arrangement }) => arrangement === 'tee');
    const off = tees.filter(({ dihedralAngle }) => dihedralAngle !== 90);
    expectShare(tees, ({ dihedralAngle }) => dihedralAngle !== 90, 1 / 2);
    expectToFill(
      off.map(({ dihedralAngle }) => dihedralAngle),
      88.5,
      91.5,
    );
    expect(new Set(off.map(({ endCut }) => endCut))).toEqual(new Set(['fitted']));
    const square = fillets().filter(({ dihedralAngle }) => dihedralAngle === 90);
    expectShare(square, ({ endCut }) => endCut === 'fitted', 1 / 2);
    expect(fillets().every((one) => one.arrangement === 'tee' || one.dihedralAngle === 90)).toBe(
      true,
    );
  });

  it('has plates in half millimetres with room for its legs, none over 40 mm', () => {
    for (const { arrangement, t1, t2, leg1, leg2 } of fillets()) {
      for (const t of [t1, t2]) {
        expect(2 * t).toBe(Math.round(2 * t));
        expect(t).toBeGreaterThanOrEqual(4);
        expect(t).toBeLessThanOrEqual(30.5);
      }
      const [room1, room2] = {
        tee: [0.9 * leg1, 0.9 * leg2],
        lap: [0.9 * leg1, 1.25 * leg2 + 1.5],
        corner: [1.5 * leg1 + 1.5, 1.25 * leg2 + 1.5],
      }[arrangement];
      expect(t1).toBeGreaterThanOrEqual(room1 as number);
      expect(t2).toBeGreaterThanOrEqual(room2 as number);
    }
    const tees = fillets().filter(({ arrangement }) => arrangement === 'tee');
    // from 0.9 of the shortest leg, rounded up, and never under 4 mm
    expect(spread(tees.map(({ t1 }) => t1))).toEqual({ least: 6.5, most: 30 });
    const thin = ofLeg(3);
    expect(spread(thin.map(({ t1 }) => t1)).least).toBe(4.5);
    const thick = ofLeg(20);
    expect(spread(thick.map(({ t2 }) => t2)).most).toBe(40);
    expect(spread(thick.map(({ leg1 }) => leg1)).most).toBeLessThanOrEqual(30);
  });

  it('has a face from a little hollow to a little full, crown and root as they happen to be', () => {
    const chord = ({ leg1, leg2 }: { leg1: number; leg2: number }) => Math.hypot(leg1, leg2);
    expectToFill(
      fillets().map((one) => one.convexity / chord(one)),
      -0.02,
      0.07,
    );
    expectToFill(
      fillets().map(({ crownShift }) => crownShift),
      -0.3,
      0.3,
    );
    expectToFill(
      fillets().map(({ fusionDepth }) => fusionDepth),
      0.5,
      1.6,
    );
    expectShare(fillets(), ({ rootPenetration }) => rootPenetration > 0, 1 / 2);
    expectToFill(
      fillets().map(({ rootPenetration }) => rootPenetration),
      0,
      1,
    );
    const laps = fillets().filter(({ arrangement }) => arrangement === 'lap');
    expectShare(laps, ({ edgeMelt }) => edgeMelt > 0, 1 / 2);
    expectToFill(
      laps.map(({ edgeMelt }) => edgeMelt),
      0,
      0.3,
    );
    expect(fillets().every((one) => one.arrangement === 'lap' || one.edgeMelt === 0)).toBe(true);
    const corners = fillets().filter(({ arrangement }) => arrangement === 'corner');
    expectToFill(
      corners.map(({ cornerOverlap, t1 }) => cornerOverlap / t1),
      0,
      0.15,
    );
    const tees = fillets().filter(({ arrangement }) => arrangement === 'tee');
    const plain = defaultJoint('fillet', 'tee').cornerOverlap;
    expect(tees.every(({ cornerOverlap }) => cornerOverlap === plain)).toBe(true);
  });

  it('stands at the angle of its sheet', () => {
    const skewed = seeds.map((seed) =>
      filletForm(random(seed), { ...sheet, dihedralAngle: 110 }, 'welded'),
    );
    expectToFill(
      skewed.map(({ dihedralAngle }) => dihedralAngle),
      108.5,
      111.5,
    );
  });
});
