import { describe, expect, it } from 'vitest';
import type { Joint } from '../../../src/joint/index.ts';
import type { MeasurementId } from '../../../src/measure/index.ts';
import { driverOf, type Aim } from '../../../src/quiz/draw/driver.ts';
import { withFields } from '../../../src/quiz/draw/joint-fields.ts';
import { random } from '../../../src/quiz/random.ts';
import {
  aimAt,
  butt,
  doubleV,
  driverFor,
  fitted,
  lap,
  measuredAt,
  prepared,
  tee,
} from './driven.ts';

interface Moved {
  readonly name: string;
  readonly joint: Joint;
  readonly id: MeasurementId;
  /** where it is put, as its driver counts */
  readonly x: number;
  readonly changed?: Partial<Aim>;
}

const moved: readonly Moved[] = [
  { name: 'leg 1', joint: tee, id: 'leg1', x: 7 },
  { name: 'leg 2', joint: tee, id: 'leg2', x: 7.5 },
  { name: 'the difference of legs', joint: tee, id: 'legDifference', x: 2 },
  { name: 'a throat by its face', joint: tee, id: 'theoreticalThroat', x: -0.5 },
  {
    name: 'an isosceles throat by its face',
    joint: tee,
    id: 'isoscelesThroat',
    x: -0.5,
    changed: { sense: 'min' },
  },
  {
    name: 'an isosceles throat by its legs',
    joint: tee,
    id: 'isoscelesThroat',
    x: 9,
    changed: { sense: 'max' },
  },
  { name: 'penetration past the root', joint: tee, id: 'rootPenetration', x: 1.2 },
  { name: 'convexity', joint: tee, id: 'convexity', x: 1 },
  { name: 'concavity', joint: tee, id: 'concavity', x: 0.8 },
  { name: 'the toe angle', joint: { ...tee, convexity: 1.5 }, id: 'toeAngle1', x: 1.2 },
  { name: 'what remains of an edge', joint: lap, id: 'edgeRemaining', x: 0.4 },
  { name: 'a gap under a finished fillet', joint: tee, id: 'rootGap', x: 1.5 },
  { name: 'a gap at fit-up', joint: fitted, id: 'rootGap', x: 1.5 },
  { name: 'undercut at toe 1', joint: tee, id: 'undercut1', x: 0.7 },
  { name: 'undercut at toe 2', joint: tee, id: 'undercut2', x: 0.7 },
  { name: 'overlap at toe 2', joint: tee, id: 'overlap2', x: 0.9 },
  { name: 'reinforcement', joint: butt, id: 'faceReinforcement.higher', x: 2 },
  { name: 'reinforcement of the root', joint: butt, id: 'rootReinforcement.higher', x: 1.5 },
  { name: 'underfill', joint: butt, id: 'underfill', x: 0.6 },
  { name: 'a hollow root', joint: butt, id: 'rootConcavity', x: 0.5 },
  { name: 'incomplete penetration', joint: butt, id: 'incompletePenetration', x: 1.1 },
  { name: 'the toe past its groove edge', joint: butt, id: 'capPastGroove1', x: 2.2 },
  { name: 'undercut of a butt weld', joint: butt, id: 'undercut2', x: 0.5 },
  { name: 'undercut of its root', joint: butt, id: 'rootUndercut1', x: 0.5 },
  { name: 'overlap of a butt weld', joint: butt, id: 'overlap1', x: 0.8 },
  { name: 'angular misalignment', joint: butt, id: 'angularMisalignment', x: 2 },
  { name: 'the bevel of plate 2', joint: prepared, id: 'bevelAngle2', x: 31 },
  { name: 'the groove angle', joint: prepared, id: 'grooveAngle', x: 62 },
  { name: 'the root bevel', joint: doubleV, id: 'rootBevelAngle1', x: 31 },
  { name: 'the root groove angle', joint: doubleV, id: 'rootGrooveAngle', x: 62 },
  { name: 'the root opening', joint: prepared, id: 'rootOpening', x: 2.6 },
];

describe('what moves a measurement', () => {
  it.each(moved)('moves $name about as fast as it says', ({ joint, id, x, changed = {} }) => {
    for (const seed of [1, 2, 3, 4]) {
      const driver = driverFor(joint, aimAt(id, changed), seed);
      const step = 0.01 * Math.max(0.2, Math.abs(x));
      const rise = measuredAt(joint, driver, x + step, id) - measuredAt(joint, driver, x, id);
      expect([id, Math.sign(rise)]).toEqual([id, Math.sign(driver.slope)]);
      // a start for the chord, not the figure itself
      expect(rise / step / driver.slope).toBeGreaterThan(0.15);
      expect(rise / step / driver.slope).toBeLessThan(6);
    }
  });

  it.each(moved)(
    'reads back where it put $name, and touches only what it names',
    ({ joint, id, x, changed: more = {} }) => {
      for (const seed of [1, 2, 3, 4]) {
        const driver = driverFor(joint, aimAt(id, more), seed);
        const base = withFields(joint, driver.before);
        const placed = driver.place(base, x);
        expect(driver.read(placed)).toBeCloseTo(x, 9);
        const changed = Object.keys(base).filter(
          (name) => Reflect.get(placed, name) !== Reflect.get(base, name),
        );
        expect(driver.fields).toEqual(expect.arrayContaining(changed));
        expect(changed.length).toBeGreaterThan(0);
        expect(x).toBeGreaterThanOrEqual(driver.low);
        expect(x).toBeLessThanOrEqual(driver.high);
      }
    },
  );

  // the legs that a measurement of the shape finds are those that were asked for
  it.each([
    ['leg1', tee, 7],
    ['leg2', tee, 7.5],
    ['legDifference', tee, 2],
    ['concavity', tee, 0.8],
    ['undercut1', tee, 0.7],
    ['rootConcavity', butt, 0.5],
    ['incompletePenetration', butt, 1.1],
    ['angularMisalignment', butt, 2],
    ['bevelAngle2', prepared, 31],
    ['grooveAngle', prepared, 62],
    ['rootGrooveAngle', doubleV, 62],
    ['rootOpening', prepared, 2.6],
    ['overlap1', butt, 0.8],
  ] as const)('puts %s where it says', (id, joint, x) => {
    for (const seed of [1, 2, 3, 4]) {
      expect(measuredAt(joint, driverFor(joint, aimAt(id), seed), x, id)).toBeCloseTo(x, 6);
    }
  });

  it('has nothing for what nothing moves by itself, nor for another kind of joint', () => {
    const nothing = (aim: Aim, joint: Joint) => driverOf(aim, joint, random(1));
    expect(nothing(aimAt('spatterHeight' as MeasurementId), tee)).toBeNull();
    expect(nothing(aimAt('leg1'), butt)).toBeNull();
    expect(nothing(aimAt('rootOpening'), tee)).toBeNull();
  });
});
