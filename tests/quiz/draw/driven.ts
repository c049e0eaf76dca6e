import { build, defaultJoint } from '../../../src/joint/index.ts';
import type { Joint } from '../../../src/joint/index.ts';
import { defaultJobSheet } from '../../../src/limits/index.ts';
import { measure } from '../../../src/measure/index.ts';
import type { MeasurementId } from '../../../src/measure/index.ts';
import { driverOf, type Aim, type Driver } from '../../../src/quiz/draw/driver.ts';
import { withFields } from '../../../src/quiz/draw/joint-fields.ts';
import { random } from '../../../src/quiz/random.ts';

export const sheet = defaultJobSheet();
export const aimAt = (measurement: Aim['measurement'], changed: Partial<Aim> = {}): Aim => ({
  measurement,
  sense: 'max',
  limit: 1,
  sheet,
  capMost: 3,
  ...changed,
});

export function driverFor(joint: Joint, aim: Aim, seed = 1): Driver {
  const driver = driverOf(aim, joint, random(seed));
  if (driver === null) throw new Error(`nothing moves ${aim.measurement}`);
  return driver;
}

/** What a joint measures after a driver put it there, from the shape. */
export const measuredAt = (joint: Joint, driver: Driver, x: number, id: MeasurementId): number => {
  const placed = driver.place(withFields(joint, driver.before), x);
  // which way plates are bent is no part of how far
  return Math.abs(measure(build(placed)).values[id]?.value ?? Number.NaN);
};

export const tee = { ...defaultJoint('fillet'), leg1: 8, leg2: 9, convexity: -0.3 };
export const lap = { ...defaultJoint('fillet', 'lap'), edgeMelt: 0.2 };
export const fitted = { ...tee, stage: 'fitUp' } as const;
export const butt = { ...defaultJoint('butt'), t1: 12, t2: 12, capHeight: 1.5, rootHeight: 0.8 };
export const prepared = { ...butt, stage: 'fitUp', bevelAngle1: 32, bevelAngle2: 28 } as const;
export const doubleV = {
  ...defaultJoint('butt', 'doubleV'),
  stage: 'fitUp',
  rootBevelAngle1: 33,
} as const;
