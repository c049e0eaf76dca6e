import { describe, expect, it } from 'vitest';
import { defaultJoint } from '../../src/joint/index.ts';
import type { Joint } from '../../src/joint/index.ts';
import type { JobSheet, Misreading, Mistake, SymbolSystem } from '../../src/limits/index.ts';
import { misread, mistakes, plainMarks, symbolOf } from '../../src/limits/index.ts';
import { mm, sheetWith } from './hand-made.ts';
import { doubleV, price, read, singleV, tee, throat5, unequal } from './misreading.ts';

const possible = (joint: Joint, sheet: JobSheet, system: SymbolSystem): readonly Mistake[] =>
  mistakes.filter((how) => misread(symbolOf(joint, sheet, system), how, sheet, joint) !== null);

describe('a throat made as a leg', () => {
  it('is 29 % short, with half the metal', () => {
    // "a5 read as z5: throat 29 % short": 1 − 1/√2 = 0.2929, common practice, no source.
    // Leg 5√2 = 7.0711, area ½ × 7.0711² = 25; made: throat 5/√2 = 3.5355, area ½ × 5² = 12.5.
    const found = read(tee, throat5, 'throatForLeg');
    const numbers = price(found);
    expect(found.symbol.arrowSide?.size).toEqual({ prefix: 'z', first: mm(5), second: null });
    expect(found.sheet.size).toEqual({ as: 'leg', first: mm(5), second: null });
    expect(found.cost.key).toBe('symbol_cost_throat_for_leg');
    expect(numbers['percent']).toBe(29);
    expect(numbers['asked_leg']).toBeCloseTo(7.0711, 4);
    expect(numbers['asked_throat']).toBe(5);
    expect(numbers['made_throat']).toBeCloseTo(3.5355, 4);
    expect(numbers['asked_area']).toBeCloseTo(25, 9);
    expect(numbers['made_area']).toBeCloseTo(12.5, 9);
    expect(numbers['times']).toBeCloseTo(0.5, 9);
    // 7850 kg/m³ × 25 mm² = 0.19625 kg/m.
    expect(numbers['asked_mass']).toBeCloseTo(0.19625, 9);
  });

  it('follows a = z cos(ψ/2) between plates that are not square', () => {
    // At 120° cos 60° = 0.5: half the throat, a quarter of the metal.
    const numbers = price(read(tee, { ...throat5, dihedralAngle: 120 }, 'throatForLeg'));
    expect(numbers['made_throat']).toBeCloseTo(2.5, 9);
    expect(numbers['times']).toBeCloseTo(0.25, 9);
    expect(numbers['percent']).toBe(50);
  });
});

describe('a leg made as a throat', () => {
  it('is 41 % over, with twice the metal', () => {
    // Leg 7 asked: throat 7/√2 = 4.9497, area 24.5. Made: leg 7√2 = 9.8995, area 49.
    const found = read(tee, sheetWith(), 'legForThroat');
    const numbers = price(found);
    expect(found.symbol.arrowSide?.size?.prefix).toBe('a');
    expect(numbers['asked_throat']).toBeCloseTo(4.9497, 4);
    expect(numbers['made_leg']).toBeCloseTo(9.8995, 4);
    expect(numbers['times']).toBeCloseTo(2, 9);
    expect(numbers['percent']).toBe(41);
  });

  it('shows in AWS the leg that would have been asked for', () => {
    const found = read(tee, sheetWith(), 'legForThroat', 'AWS');
    expect(found.symbol.arrowSide?.size).toEqual({ prefix: '', first: mm(9.9), second: null });
  });
});

describe('unequal legs that change places', () => {
  it('leave one plate short with no less metal', () => {
    const found = read(tee, unequal, 'legsSwapped');
    expect(found.sheet.size).toEqual({ as: 'leg', first: mm(10), second: mm(6) });
    // Leg 10 is asked on plate 2. Area ½ × 6 × 10 = 30; throat 60 / √136 = 5.145.
    expect(price(found)).toMatchObject({ short_plate: 2, short: 4, area: 30 });
    expect(price(found)['throat']).toBeCloseTo(5.145, 3);
    const turned = { ...unequal, size: { as: 'leg', first: mm(10), second: mm(6) } as const };
    expect(price(read(tee, turned, 'legsSwapped'))['short_plate']).toBe(1);
  });
});

describe('an included angle cut on each plate', () => {
  it('opens the groove to twice the angle', () => {
    const found = read(singleV, sheetWith(), 'angleForEach');
    // t 12, root face 1.5, opening 2: 2 × 12 + 10.5² tan 30° = 24 + 63.653 = 87.653 mm²;
    // cut at 60° on each plate 24 + 10.5² tan 60° = 24 + 190.959 = 214.959 mm².
    expect(price(found)['asked_area']).toBeCloseTo(87.653, 3);
    expect(price(found)['made_area']).toBeCloseTo(214.959, 3);
    expect(price(found)['times']).toBeCloseTo(2.4524, 4);
    expect(found.symbol.arrowSide?.grooveAngle).toBe(120);
    expect(found.sheet.groove.bevelAngle.nominal).toBe(60);
  });

  it('does so on both sides of a double V', () => {
    // t 20, root face 1.5: each side 9.25 deep, 9.25² = 85.5625.
    // 2 × 20 + 2 × 85.5625 tan 30° = 138.799; 40 + 2 × 85.5625 tan 60° = 336.397.
    const numbers = price(read(doubleV, sheetWith(), 'angleForEach'));
    expect(numbers['asked_area']).toBeCloseTo(138.799, 3);
    expect(numbers['made_area']).toBeCloseTo(336.397, 3);
  });

  it('is an angle that the drawing details, where it does', () => {
    const { groove } = sheetWith();
    const drawn = sheetWith({
      groove: { ...groove, grooveAngle: { ...groove.grooveAngle, drawn: 50 } },
    });
    const found = read(singleV, drawn, 'angleForEach');
    // 24 + 10.5² tan 25° = 24 + 51.410 = 75.410 mm²; at 50° on each plate 24 + 131.391 = 155.391 mm²
    expect(price(found)['asked_area']).toBeCloseTo(75.41, 2);
    expect(price(found)['made_area']).toBeCloseTo(155.391, 2);
    expect(found.symbol.arrowSide?.grooveAngle).toBe(100);
    expect(found.sheet.groove.grooveAngle).toMatchObject({ nominal: 60, drawn: 100 });
  });

  it('takes the groove as asked for, however this one was fitted up', () => {
    const poor = { ...singleV, offset: 2, angularMisalignment: 3, bevelAngle1: 20, rootOpening: 4 };
    expect(price(read(poor, sheetWith(), 'angleForEach'))['asked_area']).toBeCloseTo(87.653, 3);
  });
});

describe('the wrong side', () => {
  it('of a fillet leaves nothing where the weld is asked for', () => {
    const found = read(tee, sheetWith(), 'wrongSide');
    expect(found.symbol.arrowSide).toBeNull();
    expect(found.symbol.otherSide?.size?.first).toEqual(mm(7));
    expect(found.sheet).toEqual(sheetWith());
    // ½ × 7² = 24.5 mm² in vain and as much to be made again.
    expect(price(found)).toMatchObject({ leg: 7, asked_area: 24.5, made_area: 49, times: 2 });
  });

  it('of a groove puts all of its metal in from the root', () => {
    const found = read(singleV, sheetWith(), 'wrongSide');
    expect(found.cost.key).toBe('symbol_cost_wrong_side_groove');
    expect(price(found)['area']).toBeCloseTo(87.653, 3);
    const backed = { ...singleV, backing: 'strip' as const };
    expect(read(backed, sheetWith(), 'wrongSide').cost.key).toBe('symbol_cost_wrong_side_backed');
  });

  it('of an uneven double groove swaps the depths, or else the angles', () => {
    const uneven = { ...doubleV, rootSideShare: 0.3 };
    expect(price(read(uneven, sheetWith(), 'wrongSide'))).toMatchObject({ asked: 13, made: 5.5 });
    const turned = symbolOf(uneven, sheetWith(), 'ISO', { ...plainMarks, arrowSide: 'root' });
    const found = misread(turned, 'wrongSide', sheetWith(), uneven) as Misreading;
    expect(price(found)).toMatchObject({ asked: 5.5, made: 13 });
    // 2 × 20 + (12.95² + 5.55²) tan 30° = 40 + 114.607 = 154.607 mm², whichever way round
    expect(price(found)['area']).toBeCloseTo(154.607, 3);
    const angled = { ...doubleV, rootBevelAngle1: 45, rootBevelAngle2: 45 };
    expect(price(read(angled, sheetWith(), 'wrongSide'))).toMatchObject({ asked: 60, made: 90 });
  });
});

describe('a mistake', () => {
  it('is offered only where the symbol gives a chance of it', () => {
    expect(possible(tee, throat5, 'ISO')).toEqual(['throatForLeg', 'wrongSide']);
    expect(possible(tee, sheetWith(), 'ISO')).toEqual(['legForThroat', 'wrongSide']);
    expect(possible(tee, sheetWith(), 'AWS')).toEqual(['legForThroat', 'wrongSide']);
    expect(possible(tee, unequal, 'AWS')).toEqual(['legsSwapped', 'wrongSide']);
    expect(possible(singleV, sheetWith(), 'AWS')).toEqual(['angleForEach', 'wrongSide']);
    expect(possible(doubleV, sheetWith(), 'AWS')).toEqual(['angleForEach']);
    expect(possible(defaultJoint('butt', 'singleBevel'), sheetWith(), 'AWS')).toEqual([
      'wrongSide',
    ]);
  });

  it('is not offered where the sheet asks for a groove that the plates cannot have', () => {
    const { groove } = sheetWith();
    const sheet = sheetWith({
      groove: { ...groove, rootFace: { ...groove.rootFace, nominal: mm(30) } },
    });
    expect(possible(singleV, sheet, 'AWS')).toEqual([]);
    const wide = sheetWith({
      groove: { ...groove, grooveAngle: { ...groove.grooveAngle, nominal: 90 } },
    });
    expect(possible(singleV, wide, 'AWS')).toEqual(['wrongSide']);
  });
});
