import { describe, expect, it } from 'vitest';
import { defaultJoint } from '../../src/joint/index.ts';
import type { Misreading } from '../../src/limits/index.ts';
import { misread, symbolOf } from '../../src/limits/index.ts';
import { mm, sheetWith } from './hand-made.ts';
import { doubleV, price, read, singleV, tee, throat5, unequal } from './misreading.ts';

describe('what a misreading costs', () => {
  const { groove } = sheetWith();
  const noOpening = sheetWith({
    groove: { ...groove, rootOpening: { ...groove.rootOpening, nominal: null } },
  });
  const uneven = { ...doubleV, rootSideShare: 0.3 };
  const angled = { ...doubleV, rootBevelAngle1: 45, rootBevelAngle2: 45 };
  const backed = { ...singleV, backing: 'strip' as const };
  const cases: readonly (readonly [string, () => Misreading])[] = [
    ['symbol_cost_throat_for_leg', () => read(tee, throat5, 'throatForLeg')],
    ['symbol_cost_leg_for_throat', () => read(tee, sheetWith(), 'legForThroat')],
    ['symbol_cost_legs_swapped', () => read(tee, unequal, 'legsSwapped')],
    ['symbol_cost_angle_for_each', () => read(singleV, sheetWith(), 'angleForEach')],
    ['symbol_cost_angle_for_each', () => read(singleV, noOpening, 'angleForEach')],
    ['symbol_cost_wrong_side_fillet', () => read(tee, sheetWith(), 'wrongSide')],
    ['symbol_cost_wrong_side_groove', () => read(singleV, sheetWith(), 'wrongSide')],
    ['symbol_cost_wrong_side_backed', () => read(backed, sheetWith(), 'wrongSide')],
    ['symbol_cost_wrong_side_depths', () => read(uneven, sheetWith(), 'wrongSide')],
    ['symbol_cost_wrong_side_angles', () => read(angled, sheetWith(), 'wrongSide')],
  ];

  it.each(cases)('is told as %s, every figure with its unit', (key, made) => {
    const { cost } = made();
    expect(cost.key).toBe(key);
    const units = Object.entries(cost.values ?? {}).map(([name, value]) => [
      name,
      typeof value === 'object' && 'unit' in value ? value.unit : '',
    ]);
    for (const [name, unit] of units) {
      const expected = String(name).endsWith('area')
        ? 'mm2'
        : String(name).endsWith('mass')
          ? 'kg/m'
          : name === 'times'
            ? 'ratio'
            : name === 'percent' || name === 'short_plate'
              ? ''
              : key.includes('angle')
                ? 'deg'
                : 'mm';
      expect([name, unit]).toEqual([name, expected]);
    }
    expect(units.length).toBeGreaterThan(1);
  });

  // steel, 7850 kg/m³: 1 mm² is 7.85 g for each metre
  it.each(cases)('weighs what its area weighs: %s', (_, made) => {
    const numbers = price(made());
    for (const of of ['', 'asked_', 'made_']) {
      const area = numbers[`${of}area`];
      if (area !== undefined) expect(numbers[`${of}mass`]).toBeCloseTo(area * 7.85e-3, 9);
    }
  });

  it('names the angle, half of it and twice of it', () => {
    expect(price(read(singleV, sheetWith(), 'angleForEach'))).toMatchObject({
      angle: 60,
      half: 30,
      both: 120,
    });
  });

  it('is of the joint’s own opening and root face where the sheet asks none', () => {
    const silent = sheetWith({
      groove: {
        ...groove,
        rootOpening: { ...groove.rootOpening, nominal: null },
        rootFace: { ...groove.rootFace, nominal: null },
      },
    });
    // 3 × 12 + (12 − 2)² tan 30°
    const own = { ...singleV, rootOpening: 3, rootFace1: 2, rootFace2: 2 };
    expect(price(read(own, silent, 'angleForEach'))['asked_area']).toBeCloseTo(
      36 + 100 * Math.tan(Math.PI / 6),
      6,
    );
  });

  it('is none of an angle that a U or a bevel does not share, or nobody asked', () => {
    const unasked = sheetWith({
      groove: { ...groove, grooveAngle: { ...groove.grooveAngle, nominal: null } },
    });
    expect(misread(symbolOf(singleV, unasked, 'ISO'), 'angleForEach', unasked, singleV)).toBeNull();
    const singleU = defaultJoint('butt', 'singleU');
    const narrow = sheetWith({
      groove: { ...groove, grooveAngle: { ...groove.grooveAngle, nominal: 24 } },
    });
    const found = price(read(singleU, narrow, 'angleForEach'));
    expect(found).toMatchObject({ angle: 24, half: 12, both: 48 });
    expect(found['made_area']).toBeGreaterThan(Number(found['asked_area']));
  });

  it('is nothing swapped where both legs are one length in two units', () => {
    const alike = sheetWith({
      size: { as: 'leg', first: mm(6.35), second: { unit: 'in64', value: 16 } },
    });
    const symbol = symbolOf(tee, unequal, 'ISO');
    const size = { prefix: 'z', first: mm(6.35), second: { unit: 'in64', value: 16 } } as const;
    const twice = {
      ...symbol,
      arrowSide: symbol.arrowSide === null ? null : { ...symbol.arrowSide, size },
    };
    expect(misread(twice, 'legsSwapped', alike, tee)).toBeNull();
  });
});
