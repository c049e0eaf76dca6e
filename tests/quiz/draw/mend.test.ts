import { describe, expect, it } from 'vitest';
import { defaultJoint } from '../../../src/joint/index.ts';
import type { Joint } from '../../../src/joint/index.ts';
import type { Check } from '../../../src/limits/index.ts';
import type { ComparedCheck } from '../../../src/quiz/draw/comfort.ts';
import { numberIn, type Fields } from '../../../src/quiz/draw/joint-fields.ts';
import { mend } from '../../../src/quiz/draw/mend.ts';
import { random } from '../../../src/quiz/random.ts';
import { madeCheck } from './made-check.ts';

type Made = Partial<ComparedCheck> & Pick<ComparedCheck, 'measurement'>;

/** What is changed on a joint so that these checks come back inside, the kept fields left alone. */
function mended(
  joint: Joint,
  made: readonly Made[],
  kept: readonly string[] = [],
  seed = 1,
): Fields | null {
  const checks = made.map((one) => madeCheck(one));
  const on = { joint, checks, measurements: { values: {} } as never };
  return mend(
    random(seed),
    checks.map((check) => ({ check, on })),
    kept,
  );
}

const tee = {
  ...defaultJoint('fillet'),
  leg1: 8,
  leg2: 10,
  convexity: -1,
  crownShift: 0.2,
  reverseCurve: 0.3,
  rootGap: 1,
  undercut1Depth: 0.6,
  undercut2Depth: 0.4,
  overlap2: 1,
};
const lap = { ...defaultJoint('fillet', 'lap'), edgeMelt: 0.4 };
const butt = {
  ...defaultJoint('butt'),
  capHeight: 2,
  crownShift: 0.2,
  capDip: 0.5,
  capDrop1: 0.4,
  capPast1: 1,
  rootHeight: 1.6,
  offset: 1,
  angularMisalignment: 3,
  undercut1Depth: 0.5,
  rootUndercut2Depth: 0.8,
  overlap1: 0.4,
  bevelAngle1: 34,
  bevelAngle2: 30,
  rootOpening: 3,
};

describe('what came too near its limit', () => {
  it.each<readonly [ComparedCheck['measurement'], Joint, Fields]>([
    ['undercut1', tee, { undercut1Depth: 0.3 }],
    ['undercut2', tee, { undercut2Depth: 0.2 }],
    ['overlap2', tee, { overlap2: 0.5 }],
    ['rootGap', tee, { rootGap: 0.5 }],
    ['convexity', tee, { convexity: -0.5 }],
    ['concavity', tee, { convexity: -0.5, reverseCurve: 0.15 }],
    ['toeAngle1', tee, { convexity: -0.5, crownShift: 0.1, reverseCurve: 0 }],
    ['edgeRemaining', lap, { edgeMelt: 0.2 }],
    ['rootUndercut2', butt, { rootUndercut2Depth: 0.4 }],
    ['overlap1', butt, { overlap1: 0.2 }],
    ['faceReinforcement.higher', butt, { capHeight: 1 }],
    ['rootReinforcement.higher', butt, { rootHeight: 0.8 }],
    ['angularMisalignment', butt, { angularMisalignment: 1.5 }],
    ['misalignment', butt, { offset: 0.5, angularMisalignment: 0 }],
    ['underfill', butt, { capDip: 0, capDrop1: 0, capHeight: 0.8 }],
    ['toeAngle2', butt, { capHeight: 1.5, crownShift: 0.1, capDip: 0 }],
  ])('of %s is halved, or taken away', (measurement, joint, changed) => {
    expect(mended(joint, [{ measurement }])).toEqual(changed);
  });

  it('goes altogether once its half is next to nothing, either way', () => {
    const small = (rootGap: number) => mended({ ...tee, rootGap }, [{ measurement: 'rootGap' }]);
    expect(small(0.05)).toEqual({ rootGap: 0 });
    expect(small(0.06)).toEqual({ rootGap: 0.03 });
    const bent = { ...butt, angularMisalignment: -0.05 };
    expect(mended(bent, [{ measurement: 'angularMisalignment' }])).toEqual({
      angularMisalignment: 0,
    });
  });

  it('of a throat or a size is made up by longer legs and half the hollow', () => {
    const fuller = { leg1: 8.48, leg2: 10.6, convexity: -0.5 };
    for (const measurement of [
      'theoreticalThroat',
      'actualThroat',
      'effectiveThroat',
      'deepThroat',
      'sizeEqual',
      'sizePair.1',
      'isoscelesThroat',
    ] as const) {
      const found = mended(tee, [{ measurement, sense: 'min' }]);
      expect([measurement, found]).toEqual([
        measurement,
        {
          leg1: expect.closeTo(8.48, 9) as number,
          leg2: expect.closeTo(10.6, 9) as number,
          convexity: fuller.convexity,
        },
      ]);
    }
    const full = mended({ ...tee, convexity: 1 }, [{ measurement: 'actualThroat', sense: 'min' }]);
    expect(Object.keys(full ?? {})).toEqual(['leg1', 'leg2']);
    const flat = mended({ ...tee, convexity: 0 }, [{ measurement: 'actualThroat', sense: 'min' }]);
    expect(Object.keys(flat ?? {})).toEqual(['leg1', 'leg2']);
  });

  it('of a throat too large is taken off both legs, which stay legs', () => {
    const found = mended(tee, [{ measurement: 'isoscelesThroat', sense: 'max' }]);
    expect(found).toEqual({
      leg1: expect.closeTo(7.52, 9) as number,
      leg2: expect.closeTo(9.4, 9) as number,
    });
    const long = { ...tee, leg1: 29.9, leg2: 30 };
    expect(mended(long, [{ measurement: 'actualThroat', sense: 'min' }])).toMatchObject({
      leg1: 30,
    });
  });

  it('of the thickness across a weld is built up on its face by what is short, and 0.2 mm', () => {
    const thin = { measurement: 'jointThickness', sense: 'min', limit: 10, measured: 9.7 } as const;
    expect(mended(butt, [thin])).toEqual({
      capHeight: expect.closeTo(2.5, 9) as number,
      capDip: 0,
    });
  });
});

/** 1.1 to 1.5 comforts inside a greatest or a least length: a tenth of the limit each. */
const lengths = (limit: number, sense: 'max' | 'min'): readonly [number, number] =>
  sense === 'max'
    ? [limit * Math.exp(-0.15), limit * Math.exp(-0.11)]
    : [limit * Math.exp(0.11), limit * Math.exp(0.15)];

describe('a dimension that stands at its limit', () => {
  const seeds = Array.from({ length: 40 }, (_, seed) => seed);

  it.each([
    ['leg1', tee, 'leg1', 'min', 8, 7.8],
    ['leg2', tee, 'leg2', 'max', 7, 7.4],
    ['contactLeg2', tee, 'leg2', 'min', 7, 6.9],
    ['capPastGroove1', butt, 'capPast1', 'min', 1, 0.9],
    ['rootOpening', butt, 'rootOpening', 'max', 3, 3.1],
  ] as const)(
    '%s is moved to 1.1 to 1.5 comforts inside',
    (measurement, joint, field, sense, limit, measured) => {
      const [low, high] = lengths(limit, sense);
      const own = numberIn(joint, field);
      const found = seeds.map((seed) => {
        const changed = mended(joint, [{ measurement, sense, limit, measured }], [], seed);
        expect(Object.keys(changed ?? {})).toEqual([field]);
        // what is measured goes with the field
        return Number(changed?.[field]) - own + measured;
      });
      expect(Math.min(...found)).toBeGreaterThanOrEqual(low - 1e-9);
      expect(Math.max(...found)).toBeLessThanOrEqual(high + 1e-9);
      expect(Math.max(...found) - Math.min(...found)).toBeGreaterThan((high - low) / 2);
    },
  );

  it.each([
    ['bevelAngle1', 'bevelAngle1', 'max', 33, 34],
    ['rootBevelAngle2', 'rootBevelAngle2', 'min', 30, 29],
  ] as const)(
    '%s is turned 2.75° to 3.75° inside',
    (measurement, field, sense, limit, measured) => {
      const own = numberIn(butt, field);
      for (const seed of seeds) {
        const turned = mended(
          butt,
          [{ measurement, unit: 'deg', sense, limit, measured }],
          [],
          seed,
        );
        const inside = Math.abs(Number(turned?.[field]) - own + measured - limit);
        expect(inside).toBeGreaterThanOrEqual(2.75 - 1e-9);
        expect(inside).toBeLessThanOrEqual(3.75 + 1e-9);
      }
    },
  );

  it('of a groove angle turns one bevel for both, the other where that one may not be touched', () => {
    const wide = { unit: 'deg', limit: 60, measured: 64 } as const;
    const turn = (kept: readonly string[], id: 'grooveAngle' | 'rootGrooveAngle') =>
      mended(butt, [{ ...wide, measurement: id }], kept);
    const second = turn([], 'grooveAngle');
    expect(Object.keys(second ?? {})).toEqual(['bevelAngle2']);
    // 60 − 64 − 2.75 … 3.75
    expect(Number(second?.['bevelAngle2']) - 30).toBeGreaterThanOrEqual(-7.75);
    expect(Number(second?.['bevelAngle2']) - 30).toBeLessThanOrEqual(-6.75);
    const first = turn(['bevelAngle2'], 'grooveAngle');
    expect(Object.keys(first ?? {})).toEqual(['bevelAngle1']);
    expect(Number(first?.['bevelAngle1']) - 34).toBeCloseTo(
      Number(second?.['bevelAngle2']) - 30,
      9,
    );
    expect(Object.keys(turn([], 'rootGrooveAngle') ?? {})).toEqual(['rootBevelAngle2']);
  });

  it('of two legs brings one near the other, from its own side', () => {
    const apart = { measurement: 'legDifference', limit: 1.5, measured: 2 } as const;
    const [low, high] = lengths(1.5, 'max');
    const shorter = mended(tee, [apart]);
    expect(Object.keys(shorter ?? {})).toEqual(['leg1']);
    expect(10 - Number(shorter?.['leg1'])).toBeGreaterThanOrEqual(low);
    expect(10 - Number(shorter?.['leg1'])).toBeLessThanOrEqual(high);
    const longer = mended(tee, [apart], ['leg1']);
    expect(Object.keys(longer ?? {})).toEqual(['leg2']);
    expect(Number(longer?.['leg2']) - 8).toBeGreaterThanOrEqual(low);
    expect(Number(longer?.['leg2']) - 8).toBeLessThanOrEqual(high);
    const turned = mended({ ...tee, leg1: 10, leg2: 8 }, [apart]);
    expect(Number(turned?.['leg1']) - 8).toBeGreaterThanOrEqual(low);
    expect(Number(turned?.['leg1']) - 8).toBeLessThanOrEqual(high);
  });

  it('moves the other leg by as much where its own decides the question', () => {
    const short = { measurement: 'leg2', sense: 'min', limit: 10, measured: 10 } as const;
    const own = mended(tee, [short]);
    const other = mended(tee, [short], ['leg2']);
    expect(Number(other?.['leg1']) - 8).toBeCloseTo(Number(own?.['leg2']) - 10, 9);
    expect(Object.keys(other ?? {})).toEqual(['leg1']);
  });
});

describe('what can’t be helped', () => {
  it('is what nothing mends, or nothing was compared of', () => {
    expect(mended(tee, [{ measurement: 'rootPenetration' }])).toBeNull();
    const open = { ...madeCheck({}), limit: null } as unknown as Check;
    const on = { joint: tee, checks: [open], measurements: { values: {} } as never };
    expect(mend(random(1), [{ check: open, on }], [])).toBeNull();
  });

  it('is what decides the question itself, or stands where it would be put', () => {
    expect(mended(tee, [{ measurement: 'rootGap' }], ['rootGap'])).toBeNull();
    expect(mended({ ...tee, rootGap: 0 }, [{ measurement: 'rootGap' }])).toBeNull();
  });

  it('leaves what can be mended beside it', () => {
    expect(
      mended(tee, [{ measurement: 'rootGap' }, { measurement: 'undercut1' }], ['rootGap']),
    ).toEqual({ undercut1Depth: 0.3 });
    expect(mended(tee, [{ measurement: 'overlap2' }, { measurement: 'undercut1' }])).toEqual({
      overlap2: 0.5,
      undercut1Depth: 0.3,
    });
  });
});
