import { describe, expect, it } from 'vitest';
import { at, handButt, pathOf } from '../section-fixtures.ts';
import { about, endsOf, read, valueOf } from './reading.ts';

// Derived: depth below the straight line laid across the crests. Sums in the comments.

const cap = (points: readonly (readonly [number, number])[], bulges: readonly number[] = []) =>
  handButt({
    t1: 10,
    faceBead: pathOf(
      points.map(([x, y]) => at(x, y)),
      bulges,
    ),
  });

/** Circle of radius r: an arc that turns through `degrees` has the bulge tan(degrees / 4). */
const turn = (degrees: number): number => Math.tan((degrees * Math.PI) / 720);

describe('the dip in a cap', () => {
  it('is none on a flat, single or doubly broken swell', () => {
    expect(
      valueOf(
        cap([
          [-7, 10],
          [7, 10],
        ]),
        'capDip',
      ),
    ).toBe(0);
    expect(
      valueOf(
        cap(
          [
            [-7, 10],
            [7, 10],
          ],
          [-0.3],
        ),
        'capDip',
      ),
    ).toBe(0);
    expect(
      valueOf(
        cap([
          [-7, 10],
          [-3, 12],
          [3, 12.5],
          [7, 10],
        ]),
        'capDip',
      ),
    ).toBe(0);
  });

  it('is measured square to the line across crests of unequal height', () => {
    // crests (-4, 12) and (4, 13); the line is at 12.5 over x = 0; bottom (0, 11):
    // 1.5 upright, line rising 1 in 8: 1.5 · 8/√65
    const dipped = cap([
      [-7, 10],
      [-4, 12],
      [0, 11],
      [4, 13],
      [7, 10],
    ]);
    expect(valueOf(dipped, 'capDip')).toBeCloseTo((1.5 * 8) / Math.sqrt(65), 12);
    expect(read(dipped, 'capDip').witness).toMatchObject({
      construction: [[at(-4, 12), at(4, 13)]],
      to: at(0, 11),
    });
  });

  it('lies under the common tangent of two round crests', () => {
    // half circles of radius 3 about (-4, 10) and (4, 10) joined by a straight floor at
    // y = 10: the common tangent is y = 13
    const humps = cap(
      [
        [-7, 10],
        [-1, 10],
        [1, 10],
        [7, 10],
      ],
      [-1, 0, -1],
    );
    expect(valueOf(humps, 'capDip')).toBeCloseTo(3, 12);
  });

  it('lies under the slanting common tangent of crests of unequal radius', () => {
    // half circles of radius 3 about (-4, 10) and of radius 1 about (4, 10): the tangent
    // leans by asin(2/8); the floor's far end, 7 from the big centre, is deepest? Distance
    // of a point x on the floor below the tangent: 3 - (x + 4)/4; greatest at its near end, x = -1
    const humps = cap(
      [
        [-7, 10],
        [-1, 10],
        [3, 10],
        [5, 10],
      ],
      [-1, 0, -1],
    );
    expect(valueOf(humps, 'capDip')).toBeCloseTo(3 - 3 / 4, 12);
    // from the tangent, whose outward normal is (1/4, √15/4), down to the floor's end
    const across = [-1 + 2.25 / 4, 10 + (2.25 * Math.sqrt(15)) / 4];
    expect(endsOf(humps, 'capDip')).toEqual([...across.map(about), -1, 10]);
  });

  it('is the depth of a round valley, also between a crest and a toe', () => {
    // a hollow arc from toe to toe: quarter circle of radius 7√2 below the chord
    const hollow = cap(
      [
        [-7, 10],
        [7, 10],
      ],
      [turn(90)],
    );
    expect(valueOf(hollow, 'capDip')).toBeCloseTo(7 * Math.SQRT2 - 7, 12);
  });

  it('is the deepest of several', () => {
    const wavy = cap([
      [-8, 10],
      [-6, 12],
      [-4, 11.5],
      [-2, 12],
      [0, 11.2],
      [2, 12],
      [4, 11.9],
      [6, 12],
      [8, 10],
    ]);
    expect(valueOf(wavy, 'capDip')).toBeCloseTo(0.8, 12);
    const other = cap([
      [-8, 10],
      [-6, 12],
      [-4, 11],
      [-2, 12],
      [0, 11.5],
      [2, 12],
      [8, 10],
    ]);
    expect(valueOf(other, 'capDip')).toBeCloseTo(1, 12);
  });

  it('is not found under an overhanging edge', () => {
    // the overhang at the left is hollow from below: (-7, 10) out to (-9, 11.5)
    const over = cap([
      [-7, 10],
      [-7.5, 11],
      [-9, 11.5],
      [0, 13],
      [7, 10],
    ]);
    expect(valueOf(over, 'capDip')).toBe(0);
  });

  it('is found on a section walked with the air on the other hand', () => {
    const mirror = cap([
      [7, 10],
      [4, 12],
      [0, 11],
      [-4, 12],
      [-7, 10],
    ]);
    expect(valueOf(mirror, 'capDip')).toBeCloseTo(1, 12);
    const swell = cap(
      [
        [7, 10],
        [-7, 10],
      ],
      [0.3],
    );
    expect(valueOf(swell, 'capDip')).toBe(0);
  });
});
