import { describe, expect, test } from 'vitest';
import { measure } from '../../../src/measure/index.ts';
import {
  allowedBandOf,
  drawnBand,
  type AllowedBand,
} from '../../../src/view/scene/allowed-band.ts';
import type { View } from '../../../src/view/scene/view-transform.ts';
import { butt, check, tee } from './any-scene.ts';

const view: View = { scale: 10, originX: 0, originY: 0, width: 0, height: 0, subject: '' };
const none: AllowedBand = {
  leastLeg1: null,
  leastLeg2: null,
  most: null,
  mostRoot: null,
  below: null,
};

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
    expect(band).toEqual({ ...none, leastLeg1: 7, leastLeg2: 6, most: 2.7 });
  });

  test('asks for the leg that gives a required throat: a / cos 45° at a right angle', () => {
    const checks = [check('isoscelesThroat', 'accept', 5, 'min')];
    const { leastLeg1 } = allowedBandOf(checks, measure(tee()));
    expect(leastLeg1).toBeCloseTo(7.0710678, 7);
  });

  test('leaves a limit that could not be worked out alone', () => {
    const checks = [check('convexity', 'notAssessed', null)];
    expect(allowedBandOf(checks, measure(tee()))).toEqual(none);
  });

  test('is toned inside only while the whole face lies beyond the least triangle', () => {
    const band = { ...none, leastLeg1: 7, leastLeg2: 7 };
    expect(drawnBand(tee(), band, view).inside).not.toBe('');
    // Legs of 8 with a hollow of 2 hold a triangle of 8 − 2√2 = 5.17 only.
    expect(drawnBand(tee({ convexity: -2 }), band, view).inside).toBe('');
  });

  test('is toned outside only while the face lies under the most allowed', () => {
    const band = { ...none, most: 2 };
    expect(drawnBand(tee({ convexity: 1.9 }), band, view).outside).not.toBe('');
    expect(drawnBand(tee({ convexity: 2.1 }), band, view).outside).toBe('');
  });

  test('draws its limits on a cap as lines that far above and below the toes', () => {
    const drawn = drawnBand(butt(), { ...none, most: 3, below: 0.5 }, view);
    const toeHeight = butt().face.toes?.[0].y ?? NaN;
    expect(drawn.most[0]?.a.y).toBeCloseTo(toeHeight + 3, 12);
    expect(drawn.least[0]?.b.y).toBeCloseTo(toeHeight - 0.5, 12);
  });

  test('is nothing before welding', () => {
    expect(drawnBand(tee({ stage: 'fitUp' }), { ...none, most: 3 }, view).limits).toBe('');
  });
});
