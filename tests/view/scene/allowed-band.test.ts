import { describe, expect, test } from 'vitest';
import type { Section } from '../../../src/joint/index.ts';
import {
  defaultJobSheet,
  judge,
  limitSets,
  openingLimitSet,
  type JobSheet,
  type SheetLength,
} from '../../../src/limits/index.ts';
import { measure } from '../../../src/measure/index.ts';
import {
  allowedBandOf,
  drawnBand,
  type AllowedBand,
  type Bound,
  type DrawnBand,
} from '../../../src/view/scene/allowed-band.ts';
import type { View } from '../../../src/view/scene/view-transform.ts';
import { butt, check, tee } from './any-scene.ts';

const view: View = { scale: 10, originX: 0, originY: 0, width: 0, height: 0, subject: '' };
const open: Bound = { limit: null, holds: true };
const none: AllowedBand = {
  least: { leg1: null, leg2: null, holds: true },
  most: open,
  mostRoot: open,
  below: open,
  flaws: [],
};
const at = (limit: number): Bound => ({ limit, holds: true });

/** The band of a fillet as the bench draws it, its size asked for by the sheet. */
function bandOf(section: Section, size: JobSheet['size'], set = openingLimitSet): DrawnBand {
  const measurements = measure(section);
  const checks = judge(measurements, { ...defaultJobSheet(), size }, set);
  return drawnBand(section, allowedBandOf(checks, measurements), view);
}
const mm = (value: number): SheetLength => ({ unit: 'mm', value });
const house = limitSets.find(({ id }) => id === 'lock-gate-house') ?? openingLimitSet;

describe('The allowed band', () => {
  test('takes the tightest limit of each kind from the checks', () => {
    const band = allowedBandOf(
      [
        check('leg1', 'accept', 7, 'min'),
        check('sizeEqual', 'accept', 6, 'min'),
        check('convexity', 'accept', 2.7),
        check('convexity', 'accept', 3),
        check('undercut1', 'accept', 0.5),
      ],
      measure(tee()),
    );
    expect([band.least.leg1, band.least.leg2]).toEqual([7, 6]);
    expect([band.most.limit, band.mostRoot.limit, band.below.limit]).toEqual([2.7, null, null]);
  });

  test('asks for the leg that gives a required throat: a / cos 45° at a right angle', () => {
    const checks = [check('isoscelesThroat', 'accept', 5, 'min')];
    expect(allowedBandOf(checks, measure(tee())).least.leg1).toBeCloseTo(7.0710678, 7);
  });

  test('leaves a limit that could not be worked out alone', () => {
    const checks = [check('convexity', 'notAssessed', null)];
    expect(allowedBandOf(checks, measure(tee()))).toEqual(none);
  });

  test('draws the legs of 8 and 5 that are asked for, not 8 by 5.996 for their throat', () => {
    const size = { as: 'leg', first: mm(8), second: mm(5) } as const;
    const section = tee({ leg1: 8, leg2: 5 });
    const drawn = bandOf(section, size);
    const [least] = drawn.least;
    const [a, b] = section.face.toes ?? [];
    // A weld that is just what was asked for stands on its limit from toe to toe.
    expect(
      Math.hypot(Number(least?.a.x) - Number(a?.x), Number(least?.a.y) - Number(a?.y)),
    ).toBeLessThan(1e-9);
    expect(
      Math.hypot(Number(least?.b.x) - Number(b?.x), Number(least?.b.y) - Number(b?.y)),
    ).toBeLessThan(1e-9);
    expect(drawn.inside).not.toBe('');
  });

  test('is toned inside only while the whole face lies beyond the least triangle', () => {
    const size = { as: 'leg', first: mm(7), second: null } as const;
    expect(bandOf(tee(), size).inside).not.toBe('');
    // Legs of 8 with a hollow of 2 hold a triangle of 8 − 2√2 = 5.17 only.
    expect(bandOf(tee({ convexity: -2 }), size).inside).toBe('');
  });

  test('is not toned inside a lopsided hollow that is deepest off the middle of its arc', () => {
    // Legs of 10 and 7, hollow by 1.0: 4.73 of throat where the house set asks for 4.80.
    const size = { as: 'throat', first: mm(4.95), second: null } as const;
    expect(bandOf(tee({ leg1: 10, leg2: 7, convexity: -1 }), size, house).inside).toBe('');
    expect(bandOf(tee({ leg1: 10, leg2: 7, convexity: -0.8 }), size, house).inside).not.toBe('');
  });

  test('is toned outside only while the face lies under the most allowed', () => {
    const size = { as: 'leg', first: mm(7), second: null } as const;
    expect(bandOf(tee({ convexity: 1 }), size).outside).not.toBe('');
    expect(bandOf(tee({ convexity: 3.9 }), size).outside).toBe('');
  });

  test('draws its limits on a cap as lines that far above and below the toes', () => {
    const drawn = drawnBand(butt(), { ...none, most: at(3), below: at(0.5) }, view);
    const toeHeight = butt().face.toes?.[0].y ?? NaN;
    expect(drawn.most[0]?.a.y).toBeCloseTo(toeHeight + 3, 12);
    expect(drawn.least[0]?.b.y).toBeCloseTo(toeHeight - 0.5, 12);
    expect(drawn.outside).not.toBe('');
    const over = drawnBand(butt(), { ...none, most: { limit: 3, holds: false } }, view);
    expect(over.outside).toBe('');
  });

  test('is nothing before welding', () => {
    expect(drawnBand(tee({ stage: 'fitUp' }), { ...none, most: at(3) }, view).limits).toBe('');
  });
});
