import { describe, expect, it } from 'vitest';
import { build, defaultJoint, type ButtJoint } from '../../src/joint/index.ts';
import { asDrawn, withStep } from '../../src/limits/fit-up-spread.ts';
import { fitUpRange, stepFor, type JobSheet } from '../../src/limits/index.ts';
import { measure } from '../../src/measure/index.ts';
import { grooveSheet, iso, limitSet, mm, sheetWith } from './hand-made.ts';

const toleranced = { minus: mm(1), plus: mm(1) };
const sheet = grooveSheet();
// a weld flush with the plates on both sides: its metal is the groove's own
const joint = (changes: Partial<ButtJoint> = {}): ButtJoint => ({
  ...defaultJoint('butt', 'singleV'),
  t1: 12,
  t2: 12,
  capHeight: 0,
  capPast1: 0,
  capPast2: 0,
  rootHeight: 0,
  rootPast1: 0,
  rootPast2: 0,
  ...changes,
});
const at = (
  of: ButtJoint,
  on: JobSheet,
  field: string,
  end: string,
  limits = limitSet('iso5817-b'),
) => fitUpRange(of, on, limits).find((one) => one.field === field && one.end === end);
const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);
const unasked = { nominal: null, minus: 0, plus: 0 };

describe('what the fit-up tolerances mean for the weld', () => {
  // a V on both plates, t 12, root face f, opening g: g t + (t − f)² tan β
  const area = (g: number, f: number, bevel: number): number => g * 12 + (12 - f) ** 2 * tan(bevel);

  it('is the metal of the weld with each dimension at its ends, the others as drawn', () => {
    const drawn = area(2, 1.5, 30);
    for (const [field, end, expected] of [
      ['rootOpening', 'least', area(1, 1.5, 30)],
      ['rootOpening', 'most', area(3, 1.5, 30)],
      ['rootFace', 'least', area(2, 0.5, 30)],
      ['rootFace', 'most', area(2, 2.5, 30)],
      ['bevelAngle', 'least', area(2, 1.5, 25)],
      ['bevelAngle', 'most', area(2, 1.5, 35)],
      ['grooveAngle', 'least', area(2, 1.5, 27.5)],
      ['grooveAngle', 'most', area(2, 1.5, 32.5)],
    ] as const) {
      const weld = at(joint(), sheet, field, end)?.weld;
      expect(weld?.area).toBeCloseTo(expected, 9);
      expect(weld?.ratio).toBeCloseTo(expected / drawn, 9);
      // steel, 7850 kg/m³: 1 mm² is 1 cm³ or 7.85 g for each metre
      expect(weld?.mass).toBeCloseTo(expected * 7.85e-3, 9);
    }
    // 3 mm of opening fills an eighth more than as drawn: 12/87.7
    expect(at(joint(), sheet, 'rootOpening', 'most')?.weld?.ratio).toBeCloseTo(1.1369, 3);
  });

  it('is the finished weld also while the plates are only set up', () => {
    const before = fitUpRange(joint({ stage: 'fitUp' }), sheet, iso);
    expect(before).toEqual(fitUpRange(joint(), sheet, iso));
  });

  it('takes half of a groove angle to each plate, all of it where one plate is prepared', () => {
    const only = (nominal: number) =>
      sheetWith({
        groove: {
          ...sheet.groove,
          bevelAngle: unasked,
          grooveAngle: { nominal, minus: 5, plus: 10 },
        },
      });
    const both = fitUpRange(joint(), only(60), iso).filter(({ field }) => field === 'grooveAngle');
    expect(both.map(({ value }) => value)).toEqual([55, 70]);
    expect(both[0]?.weld?.area).toBeCloseTo(area(2, 1.5, 27.5), 9);
    expect(both[1]?.weld?.area).toBeCloseTo(area(2, 1.5, 35), 9);
    // one plate only: g t + (t − f)² tan β / 2
    const bevel = joint({ preparation: 'singleBevel' });
    const one = at(bevel, only(45), 'grooveAngle', 'most')?.weld;
    expect(one?.area).toBeCloseTo(24 + (10.5 ** 2 * tan(55)) / 2, 9);
    // a V of 20 and 40 degrees keeps its lean: 55 is 18.33 and 36.67
    const leaning = joint({ bevelAngle1: 20, bevelAngle2: 40 });
    expect(at(leaning, only(60), 'grooveAngle', 'least')?.weld?.area).toBeCloseTo(
      24 + (10.5 ** 2 * (tan(55 / 3) + tan(110 / 3))) / 2,
      9,
    );
    // no bevel on the bench yet: half and half
    const upright = joint({ bevelAngle1: 0, bevelAngle2: 0 });
    expect(at(upright, only(60), 'grooveAngle', 'least')?.weld?.area).toBeCloseTo(
      area(2, 1.5, 27.5),
      9,
    );
  });

  it('leaves a plate that is cut square on purpose square, and asks no bevel of square edges', () => {
    const single = joint({ preparation: 'singleBevel' });
    const one = 2 * 12 + (10.5 ** 2 * tan(35)) / 2;
    expect(at(single, sheet, 'bevelAngle', 'most')?.weld?.area).toBeCloseTo(one, 9);
    const square = fitUpRange(joint({ preparation: 'square', t1: 4, t2: 4 }), sheet, iso);
    expect(square.map(({ field }) => field)).toEqual([
      'rootOpening',
      'rootOpening',
      'misalignment',
    ]);
    // 3 mm of opening through 4 mm of plate
    expect(square[1]?.weld?.area).toBeCloseTo(12, 9);
  });

  it('says why there is no weld where the plates can’t be set up so', () => {
    const face = { nominal: mm(1.5), minus: mm(0), plus: mm(30) };
    const thick = sheetWith({ groove: { ...sheet.groove, rootFace: face } });
    const end = at(joint(), thick, 'rootFace', 'most');
    expect(end).toMatchObject({ weld: null, refused: { key: 'joint_error_out_of_range' } });
    // a joint that can't be built as drawn leaves the ends nothing to be compared with
    const never = { nominal: mm(30), minus: mm(28.5), plus: mm(0) };
    const least = at(
      joint(),
      sheetWith({ groove: { ...sheet.groove, rootFace: never } }),
      'rootFace',
      'least',
    );
    expect(least?.weld).toMatchObject({ ratio: null, turned: [], moved: [] });
    expect(least?.weld?.area).toBeCloseTo(area(2, 1.5, 30), 9);
  });

  it('starts from what is drawn where that differs from the WPS, and passes over what is not required', () => {
    const groove = {
      ...sheet.groove,
      bevelAngle: unasked,
      grooveAngle: unasked,
      rootOpening: { nominal: mm(2), drawn: mm(3), minus: mm(1), plus: mm(1) },
    };
    const ends = fitUpRange(joint(), sheetWith({ groove }), undefined);
    expect(ends.map(({ field, value }) => [field, value])).toEqual([
      ['rootOpening', 2],
      ['rootOpening', 4],
      ['rootFace', 0.5],
      ['rootFace', 2.5],
    ]);
  });

  it('never opens less than nothing', () => {
    const groove = { ...sheet.groove, rootOpening: { nominal: mm(0), ...toleranced } };
    expect(at(joint(), sheetWith({ groove }), 'rootOpening', 'least')?.value).toBe(0);
  });
});

describe('what the fit-up does to the finished weld', () => {
  it('names the requirement that a narrower groove turns: a cap that is too heavy for its width', () => {
    // ISO 5817 B, 502: h ≤ 1 + 0.1 b. As drawn b = 2 + 2 × 10.5 tan 30° + 2 × 1.5 = 17.124: 2.712
    // allows 2.65. Opened 1 mm only, b = 16.124: 2.612 does not.
    const heavy = joint({ capHeight: 2.65, capPast1: 1.5, capPast2: 1.5 });
    const [turned, ...others] = at(heavy, sheet, 'rootOpening', 'least')?.weld?.turned ?? [];
    expect(others).toEqual([]);
    expect(turned).toMatchObject({
      from: 'accept',
      check: { measurement: 'faceReinforcement.higher', call: 'reject' },
    });
    expect(turned?.check.limit).toBeCloseTo(1 + (1 + 21 * tan(30) + 3) / 10, 9);
    const moved = at(heavy, sheet, 'rootOpening', 'least')?.weld?.moved ?? [];
    // the cap itself stays as high; what is nearer than the sheet's nothing is not told
    expect(moved.map(({ id }) => id)).toEqual(['faceWidth', 'rootWidth']);
    expect(moved[0]?.from).toBeCloseTo(5 + 21 * tan(30), 9);
    expect(moved[0]?.to).toBeCloseTo(4 + 21 * tan(30), 9);
    expect(at(heavy, sheet, 'rootOpening', 'most')?.weld?.turned).toEqual([]);
  });

  it('tells what moves the most first, and what it turns to a reject before what it lets pass', () => {
    const heavy = joint({ capHeight: 2.65, capPast1: 1.5, capPast2: 1.5, rootHeight: 1 });
    for (const [field, end] of [
      ['rootOpening', 'least'],
      ['rootOpening', 'most'],
      ['rootFace', 'most'],
      ['bevelAngle', 'most'],
    ] as const) {
      const { moved = [], turned = [] } = at(heavy, sheet, field, end)?.weld ?? {};
      const steps = moved.map(({ from, to }) => Math.abs(to - from));
      expect(steps).toEqual([...steps].sort((a, b) => b - a));
      for (const step of steps) expect(step).toBeGreaterThan(0.05);
      const calls = turned.map(({ check }) => check.call === 'reject');
      expect(calls).toEqual([...calls].sort((a, b) => Number(b) - Number(a)));
      for (const { from, check } of turned) expect(from).not.toBe(check.call);
    }
    // what is told as turned is not told again as moved
    const { moved = [], turned = [] } = at(heavy, sheet, 'rootOpening', 'least')?.weld ?? {};
    const told: readonly string[] = turned.map(({ check }) => check.measurement);
    expect(told).toContain('faceReinforcement.higher');
    expect(moved.filter(({ id }) => told.includes(id))).toEqual([]);
  });

  it('is told without a set as well, by the higher plate', () => {
    const weld = fitUpRange(joint({ capHeight: 1 }), sheet, undefined)[0]?.weld;
    expect(weld?.turned).toEqual([]);
    expect(weld?.moved.map(({ id }) => id)).toEqual(['faceWidth']);
  });

  it('has no misalignment to try where none at all is allowed', () => {
    const none = { ...limitSet('iso5817-b') };
    const strict = {
      ...none,
      criteria: none.criteria.filter(({ measurements }) => !measurements.includes('misalignment')),
    };
    expect(fitUpRange(joint(), sheet, strict).map(({ field }) => field)).not.toContain(
      'misalignment',
    );
  });

  it('at 2 mm of misalignment is a thinner joint, by the plates’ slope', () => {
    // ISO 5817 B, 5071: 0.1 t, 2 mm for 20 mm plates
    const thick = joint({ t1: 20, t2: 20 });
    const end = at(thick, sheet, 'misalignment', 'most');
    expect(end?.value).toBeCloseTo(2, 9);
    // groove edges at ± a on the face, ± 1 at the root. From plate 2's root edge, 2 mm up, to the
    // straight face: (20 − 2/2 + 2 × 1/(2 a)) cos(slope), slope 2/(2 a)
    const a = 1 + 18.5 * tan(30);
    const expected = (19 + 1 / a) * Math.cos(Math.atan(1 / a));
    const [thickness, ...others] = end?.weld?.moved ?? [];
    expect(thickness?.id).toBe('jointThickness');
    expect(thickness?.from).toBeCloseTo(20, 9);
    expect(thickness?.to).toBeCloseTo(expected, 9);
    expect(others).toEqual([]);
    expect(end?.weld?.turned).toEqual([]);
  });

  it('at the greatest misalignment is measured as just that, whatever the drawing lines up', () => {
    for (const intendedAlignment of ['centrelines', 'faceFlush', 'rootFlush'] as const) {
      const on = sheetWith({ intendedAlignment });
      for (const step of [0, 1.2, -1.2]) {
        const unequal = joint({ t2: 15, offset: 3, angularMisalignment: 1 });
        const set = measure(build(withStep(asDrawn(unequal, on), intendedAlignment, step)));
        expect(set.values[stepFor[intendedAlignment]]?.value).toBeCloseTo(step, 9);
      }
    }
  });

  it('goes the way that the plates lie on the bench, and has no row where no set limits it', () => {
    const capped = {
      capHeight: 1.5,
      capPast1: 1.5,
      capPast2: 1.5,
      bevelAngle2: 0,
      crownShift: 0.4,
    };
    const free = sheetWith({
      groove: { ...sheet.groove, bevelAngle: unasked, grooveAngle: unasked },
    });
    const up = at(joint({ ...capped, offset: 0.3 }), free, 'misalignment', 'most');
    const down = at(joint({ ...capped, offset: -0.3 }), free, 'misalignment', 'most');
    expect(up?.value).toBeCloseTo(1.2, 9);
    expect(down?.value).toBeCloseTo(1.2, 9);
    expect(up?.weld?.moved).not.toEqual(down?.weld?.moved);
    expect(fitUpRange(joint(), sheet, undefined).map(({ field }) => field)).not.toContain(
      'misalignment',
    );
  });
});
