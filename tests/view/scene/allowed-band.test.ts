import { describe, expect, test } from 'vitest';
import { extremeFromLine } from '../../../src/geometry/index.ts';
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
  type AllowedBand,
  type Bound,
  type DrawnBand,
  type HeightBound,
} from '../../../src/view/scene/allowed-band.ts';
import type { View } from '../../../src/view/scene/view-transform.ts';
import { bandOn, butt, check, tee } from './any-scene.ts';

const view: View = { scale: 10, originX: 0, originY: 0, width: 0, height: 0, subject: '' };
const open: Bound = { limit: null, holds: true };
const none: AllowedBand = {
  least: { leg1: null, leg2: null, holds: true },
  most: { ...open, over: 'higher' },
  mostRoot: { ...open, over: 'higher' },
  below: open,
  flaws: [],
};
const at = (limit: number, over: HeightBound['over'] = 'higher'): HeightBound => ({
  limit,
  over,
  holds: true,
});

/** The band of a fillet as the bench draws it, its size asked for by the sheet. */
function bandOf(section: Section, size: JobSheet['size'], set = openingLimitSet): DrawnBand {
  const measurements = measure(section);
  const checks = judge(measurements, { ...defaultJobSheet(), size }, set);
  return bandOn(section, allowedBandOf(checks, measurements), view);
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
    const drawn = bandOn(butt(), { ...none, most: at(3), below: at(0.5) }, view);
    const toeHeight = butt().face.toes?.[0].y ?? NaN;
    expect(drawn.most[0]?.a.y).toBeCloseTo(toeHeight + 3, 12);
    expect(drawn.least[0]?.b.y).toBeCloseTo(toeHeight - 0.5, 12);
    expect(drawn.outside).not.toBe('');
    const over = bandOn(butt(), { ...none, most: { ...at(3), holds: false } }, view);
    expect(over.outside).toBe('');
  });

  test('is nothing before welding', () => {
    expect(bandOn(tee({ stage: 'fitUp' }), { ...none, most: at(3) }, view).limits).toBe('');
  });
});

/** The heights of a limit line's two ends, mm over plate 1's root surface. */
const heights = ([piece]: DrawnBand['most']): readonly (number | undefined)[] => [
  piece?.a.y,
  piece?.b.y,
];
const aws = limitSets.find(({ id }) => id === 'aws-d11-static') ?? openingLimitSet;

// Plates of 12 lie from y = 0 to 12; an offset of 2 puts plate 2 from 2 to 14.
describe('The most of a cap with offset plates', () => {
  const most = (offset: number, over: HeightBound['over']) =>
    heights(bandOn(butt({ offset, capHeight: 1 }), { ...none, most: at(3, over) }, view).most);

  test.each([
    ['higher', 2, 14 + 3],
    ['lower', 2, 12 + 3],
    ['toPlate1', 2, 12 + 3],
    ['toPlate2', 2, 14 + 3],
    ['higher', -2, 12 + 3],
    ['lower', -2, 10 + 3],
    ['toPlate1', -2, 12 + 3],
    ['toPlate2', -2, 10 + 3],
  ] as const)('reckoned %s at an offset of %f stands at %f throughout', (over, offset, height) => {
    const [first, second] = most(offset, over);
    expect(first).toBeCloseTo(height, 9);
    expect(second).toBeCloseTo(height, 9);
  });

  test('reckoned from the toes is square to the chord that leans with them', () => {
    const side = butt({ offset: 2, capHeight: 1 }).face;
    const [toe1, toe2] = side.toes ?? [];
    const [run, rise] = [Number(toe2?.x) - Number(toe1?.x), Number(toe2?.y) - Number(toe1?.y)];
    const [first, second] = most(2, 'toes');
    // 3 square to a chord that rises 2 over its run is 3 · run / length upright.
    const up = (3 * run) / Math.hypot(run, rise);
    expect(rise).toBeCloseTo(2, 9);
    expect(first).toBeCloseTo(12 + up, 9);
    expect(second).toBeCloseTo(14 + up, 9);
  });

  test('of the root hangs under the plate that reaches lower on that side', () => {
    const root = (offset: number) => {
      const section = butt({ offset, rootHeight: 1 });
      const { limits } = bandOn(section, { ...none, mostRoot: at(3) }, view);
      // y down on the paper, 10 px to a millimetre
      return [...limits.matchAll(/[ML]\s*\S+[ ,](\S+?)(?=[ML]|$)/gu)].map(
        ([, y]) => Number(y) / 10,
      );
    };
    // Root surfaces at 0 and 2: the one that stands out further is plate 1's, at 0 − 3.
    for (const y of root(2)) expect(y).toBeCloseTo(3, 2);
    // At 0 and −2: plate 2's, at −2 − 3.
    for (const y of root(-2)) expect(y).toBeCloseTo(5, 2);
    expect(root(2)).toHaveLength(2);
  });

  test('follows the turned plate where that is the higher one', () => {
    const section = butt({ angularMisalignment: 5, capHeight: 1, offset: 2 });
    const [piece] = bandOn(section, { ...none, most: at(3, 'toPlate2') }, view).most;
    const { normal, origin } = section.face.surfaces[1];
    for (const end of [piece?.a, piece?.b]) {
      const [x, y] = [Number(end?.x) - origin.x, Number(end?.y) - origin.y];
      expect(x * normal.x + y * normal.y).toBeCloseTo(3, 9);
    }
    // Turned by 5° its surface, and the line, rise or fall by tan 5° = 0.08749 to the millimetre.
    const slope =
      (Number(piece?.b.y) - Number(piece?.a.y)) / (Number(piece?.b.x) - Number(piece?.a.x));
    expect(Math.abs(slope)).toBeCloseTo(0.08748866, 7);
  });

  test('is passed by the cap just where the check rejects', () => {
    for (const joint of [{ offset: 2 }, { offset: -2 }, { offset: 2, angularMisalignment: 3 }]) {
      for (const capHeight of [0.8, 1.8, 2.4, 2.9, 3.1, 3.6, 4.4]) {
        const section = butt({ ...joint, capHeight });
        const measurements = measure(section);
        const checks = judge(measurements, defaultJobSheet(), aws);
        const call = checks.find(({ measurement }) => measurement === 'faceReinforcement.higher');
        const [limit] = bandOn(section, allowedBandOf(checks, measurements), view).most;
        if (call?.limit == null || limit === undefined) throw new Error('AWS limits this cap');
        const lean = { x: limit.b.x - limit.a.x, y: limit.b.y - limit.a.y };
        const long = Math.hypot(lean.x, lean.y);
        const past = extremeFromLine(section.face.bead ?? [], limit.a, {
          x: -lean.y / long,
          y: lean.x / long,
        }).value;
        expect(past).toBeCloseTo(-(call.margin ?? NaN), 9);
      }
    }
  });
});

describe('The depth below flush that is drawn', () => {
  test.each([2, -2])(
    'lies under the line between the groove edges at an offset of %f',
    (offset) => {
      const section = butt({ offset, capHeight: 1 });
      const [edge1, edge2] = section.face.grooveEdges ?? [];
      const [piece] = bandOn(section, { ...none, below: at(1) }, view).least;
      const [run, rise] = [
        Number(edge2?.x) - Number(edge1?.x),
        Number(edge2?.y) - Number(edge1?.y),
      ];
      // Square to an edge line that rises by the offset: down by 1 · run / length, aside by 1 · rise / length.
      const long = Math.hypot(run, rise);
      expect(rise).toBeCloseTo(offset, 9);
      expect(piece?.a.y).toBeCloseTo(12 - run / long, 9);
      expect(piece?.b.y).toBeCloseTo(12 + offset - run / long, 9);
      expect(Number(piece?.a.x) - Number(edge1?.x)).toBeCloseTo(rise / long, 9);
    },
  );
});
