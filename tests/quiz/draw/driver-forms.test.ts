import { describe, expect, it } from 'vitest';
import { defaultJoint } from '../../../src/joint/index.ts';
import type { Joint } from '../../../src/joint/index.ts';
import type { Aim } from '../../../src/quiz/draw/driver.ts';
import { numberIn } from '../../../src/quiz/draw/joint-fields.ts';
import { aimAt, butt, driverFor, lap, measuredAt, prepared, sheet, tee } from './driven.ts';

const seeds = Array.from({ length: 60 }, (_, seed) => seed);
const drivers = (joint: Joint, aim: Aim) => seeds.map((seed) => driverFor(joint, aim, seed));

describe('how far it may be moved', () => {
  it('is as far as the field goes, from its zero', () => {
    expect(driverFor(tee, aimAt('leg1'))).toMatchObject({ low: 2, high: 30 });
    expect(driverFor(tee, aimAt('convexity')).low).toBe(0);
    const hollow = driverFor(tee, aimAt('concavity'));
    expect([hollow.low, hollow.high > 0]).toEqual([0, true]);
    expect(driverFor(tee, aimAt('legDifference'))).toMatchObject({ low: 0, high: 30 });
    expect(driverFor(butt, aimAt('angularMisalignment'))).toMatchObject({ low: 0, high: 10 });
  });

  it('of two angles together is as far as both go: 32° and 28° stay 4° apart', () => {
    const { low, high, place, fields } = driverFor(prepared, aimAt('grooveAngle'));
    const one = driverFor(prepared, aimAt('bevelAngle1'));
    expect([low, high]).toEqual([2 * one.low + 4, 2 * one.high - 4]);
    expect(place(prepared, 60)).toMatchObject({ bevelAngle1: 32, bevelAngle2: 28 });
    expect(fields).toEqual(['bevelAngle1', 'bevelAngle2']);
    const turned = { ...prepared, bevelAngle1: 28, bevelAngle2: 32 };
    expect(driverFor(turned, aimAt('grooveAngle'))).toMatchObject({ low, high });
  });

  it('moves the one bevel that there is', () => {
    const single = { ...defaultJoint('butt', 'singleBevel'), stage: 'fitUp' } as const;
    const driver = driverFor(single, aimAt('grooveAngle'));
    expect(driver.fields).toEqual(['bevelAngle1']);
    expect(measuredAt(single, driver, 41, 'grooveAngle')).toBeCloseTo(41, 6);
  });
});

describe('what has to be so first', () => {
  it('gives a groove beside a toe its width: 2.8 to 5 times what is allowed, of a quarter mm at least', () => {
    for (const [limit, id] of [
      [0.5, 'undercut1'],
      [1, 'undercut2'],
      [0.05, 'undercut1'],
    ] as const) {
      const widths = drivers(tee, aimAt(id, { limit })).map(({ before }) =>
        Number(before[`${id}Width`]),
      );
      const unit = Math.max(0.25, limit);
      expect(Math.min(...widths)).toBeGreaterThanOrEqual(Math.max(0.5, 2.8 * unit));
      expect(Math.max(...widths)).toBeLessThanOrEqual(5 * unit);
      expect(Math.max(...widths) - Math.min(...widths)).toBeGreaterThan(1.2 * unit);
    }
  });

  it('keeps the same toe from rolling over, and the cap of a butt weld on its plate', () => {
    expect(driverFor(tee, aimAt('undercut2')).before).toEqual({
      overlap2: 0,
      undercut2Width: expect.any(Number) as number,
    });
    expect(driverFor(butt, aimAt('undercut1')).before).toEqual({
      overlap1: 0,
      capDrop1: 0,
      undercut1Width: expect.any(Number) as number,
    });
    expect(driverFor(butt, aimAt('rootUndercut2')).before).toEqual({
      capDrop2: 0,
      rootUndercut2Width: expect.any(Number) as number,
    });
    expect(driverFor(tee, aimAt('overlap1')).before).toEqual({ undercut1Depth: 0 });
    expect(driverFor(butt, aimAt('overlap2')).before).toEqual({ undercut2Depth: 0, capDrop2: 0 });
    expect(driverFor(butt, aimAt('capPastGroove2')).before).toEqual({ capDrop2: 0 });
    expect(driverFor(tee, aimAt('rootGap')).before).toEqual({ endCut: 'fitted' });
  });

  it('takes the strip away where the root is asked about', () => {
    for (const id of ['rootReinforcement.higher', 'rootConcavity', 'jointThickness'] as const)
      expect(driverFor(butt, aimAt(id)).before).toMatchObject({ backing: 'none' });
    expect(driverFor(butt, aimAt('jointThickness')).before['rootHeight']).toBe(-0.6);
    expect(driverFor(butt, aimAt('incompletePenetration')).before).toEqual({
      backing: 'none',
      rootUndercut1Depth: 0,
      rootUndercut2Depth: 0,
    });
  });

  it('makes a root bead 0.9 to 1.25 times as wide on either side as it may be high, of 3 mm at least', () => {
    for (const [limit, unit] of [
      [1, 3],
      [4, 4],
    ] as const) {
      const widths = drivers(butt, aimAt('rootReinforcement.higher', { limit })).flatMap(
        ({ before }) => [Number(before['rootPast1']), Number(before['rootPast2'])],
      );
      expect(Math.min(...widths)).toBeGreaterThanOrEqual(0.9 * unit);
      expect(Math.max(...widths)).toBeLessThanOrEqual(1.25 * unit);
      expect(new Set(widths).size).toBeGreaterThan(60);
    }
  });

  it('raises a cap that leans over a toe to 0.72 to 0.86 of what it may be', () => {
    const caps = drivers(butt, aimAt('toeAngle1', { capMost: 2 })).map(({ before }) => {
      expect(before['capDip']).toBe(0);
      return Number(before['capHeight']);
    });
    expect(Math.min(...caps)).toBeGreaterThanOrEqual(1.44);
    expect(Math.max(...caps)).toBeLessThanOrEqual(1.72);
    expect(Math.max(...caps) - Math.min(...caps)).toBeGreaterThan(0.2);
  });

  it('lays underfill all across or along either edge, with nothing else at that edge', () => {
    const found = drivers(butt, aimAt('underfill')).map(({ fields, before }) => {
      const [field] = fields;
      const side = field?.at(-1) ?? '';
      expect(before).toEqual(
        field === 'capHeight'
          ? { capDip: 0 }
          : {
              [`capPast${side}`]: 0,
              [`overlap${side}`]: 0,
              [`undercut${side}Depth`]: 0,
              capDip: 0,
            },
      );
      return field;
    });
    const count = (field: string) => found.filter((one) => one === field).length;
    expect([...new Set(found)].sort()).toEqual(['capDrop1', 'capDrop2', 'capHeight']);
    expect(count('capHeight')).toBeGreaterThan(18);
    expect(count('capHeight')).toBeLessThan(42);
    expect(Math.abs(count('capDrop1') - count('capDrop2'))).toBeLessThan(20);
  });
});

describe('either way round', () => {
  /** How many of the seeds a driver goes up with, and that there are as many of the other. */
  const halves = (joint: Joint, aim: Aim, isUp: (placed: Joint) => boolean): void => {
    const up = drivers(joint, aim).filter((driver) => isUp(driver.place(joint, 1))).length;
    expect(up).toBeGreaterThan(18);
    expect(up).toBeLessThan(42);
  };

  it('puts plates out of line up or down, from where they were meant to stand', () => {
    halves(butt, aimAt('misalignment'), (joint) => numberIn(joint, 'offset') > 0);
    // faces flush, plate 2 thicker by 4 mm: its middle is meant to stand 2 mm lower or higher
    const flush = { ...sheet, intendedAlignment: 'faceFlush' } as const;
    const unequal = { ...butt, t2: 16 };
    const aim = aimAt('misalignment', { sheet: flush });
    const offsets = drivers(unequal, aim).map((driver) =>
      numberIn(driver.place(unequal, 0.5), 'offset'),
    );
    const apart = [...new Set(offsets)].sort((a, b) => a - b);
    expect(apart).toHaveLength(2);
    expect(apart.reduce((sum, one) => sum + one, 0) / 2).toBeCloseTo(-2, 9);
    expect((apart[1] ?? 0) - (apart[0] ?? 0)).toBeCloseTo(1, 9);
  });

  it('bends them up or down, leans a cap to either side, opens or closes a tee', () => {
    halves(
      butt,
      aimAt('angularMisalignment'),
      (joint) => numberIn(joint, 'angularMisalignment') > 0,
    );
    halves(butt, aimAt('toeAngle1'), (joint) => numberIn(joint, 'crownShift') > 0);
    const skewed = { ...sheet, dihedralAngle: 100 };
    halves(
      tee,
      aimAt('angleDeparture', { sheet: skewed }),
      (joint) => Reflect.get(joint, 'dihedralAngle') === 101,
    );
    halves(
      tee,
      aimAt('angleDeparture', { sheet: skewed }),
      (joint) => Reflect.get(joint, 'dihedralAngle') === 99,
    );
  });

  it('makes either leg the longer', () => {
    halves(tee, aimAt('legDifference'), (joint) => Reflect.get(joint, 'leg1') === 10);
    halves(tee, aimAt('legDifference'), (joint) => Reflect.get(joint, 'leg1') === 8);
  });
});

describe('fields that go together', () => {
  it('keep their proportion: legs 8 and 9, root faces 1 and 2', () => {
    const legs = driverFor(tee, aimAt('isoscelesThroat'));
    expect(legs.place(tee, 16)).toMatchObject({ leg1: 16, leg2: 18 });
    expect(legs.slope).toBe(0.7);
    const faces = { ...butt, rootFace1: 1, rootFace2: 2 };
    const face = driverFor(faces, aimAt('rootFace'));
    expect(face.place(faces, 1.5)).toMatchObject({ rootFace1: 1.5, rootFace2: 3 });
    expect([face.fields, face.slope]).toEqual([['rootFace1', 'rootFace2'], 1]);
  });

  it('have none to keep where the first is nothing', () => {
    const none = { ...butt, rootFace1: 0, rootFace2: 0 };
    expect(driverFor(none, aimAt('rootFace')).place(none, 1)).toMatchObject({
      rootFace1: 1,
      rootFace2: 0,
    });
  });

  it('melt an edge away about as fast as it is wide beyond the leg, and not slower than half a mm', () => {
    const slope = (t2: number) => driverFor({ ...lap, leg2: 6, t2 }, aimAt('edgeRemaining')).slope;
    expect([slope(10), slope(6.2), slope(5)]).toEqual([-4, -0.5, -0.5]);
  });
});
