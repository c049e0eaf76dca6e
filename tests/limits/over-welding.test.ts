import { describe, expect, it } from 'vitest';
import { build, defaultJoint } from '../../src/joint/index.ts';
import { overWelding } from '../../src/limits/index.ts';
import { measure } from '../../src/measure/index.ts';
import { mm, sheetWith } from './hand-made.ts';

const fillet = (changes: object = {}) =>
  measure(build({ ...defaultJoint('fillet', 'tee'), leg1: 8, leg2: 8, ...changes }));
const sheet = sheetWith({ size: { as: 'leg', first: mm(7), second: null } });

describe('the cost of over-welding', () => {
  it('of 8 mm legs for 7 mm specified is 31 % of metal, 7.5 cm³ and 59 g a metre', () => {
    // 8²/2 = 32 mm² for 7²/2 = 24.5 mm²; steel 7850 kg/m³
    const cost = overWelding(fillet(), sheet);
    expect(cost?.specifiedArea).toBeCloseTo(24.5, 9);
    expect(cost?.weldArea).toBeCloseTo(32, 9);
    expect(cost?.ratio).toBeCloseTo(32 / 24.5, 9);
    expect(cost?.extraVolume).toBeCloseTo(7.5, 9);
    expect(cost?.extraMass).toBeCloseTo(7.5e-3 * 7.85, 9);
  });

  it('goes by the area of the triangle that unequal or skewed legs span', () => {
    const unequal = sheetWith({ size: { as: 'leg', first: mm(12), second: mm(8) } });
    expect(overWelding(fillet(), unequal)?.specifiedArea).toBeCloseTo(48, 9);
    const skewed = sheetWith({ ...sheet, dihedralAngle: 120 });
    expect(overWelding(fillet({ dihedralAngle: 120 }), skewed)?.specifiedArea).toBeCloseTo(
      24.5 * Math.sin((120 * Math.PI) / 180),
      9,
    );
  });

  it('is less than nothing where the weld falls short, and nothing to ask before welding or of a butt', () => {
    expect(overWelding(fillet({ leg1: 6, leg2: 6 }), sheet)?.extraMass).toBeLessThan(0);
    expect(overWelding(fillet({ stage: 'fitUp' }), sheet)).toBeNull();
    expect(overWelding(measure(build(defaultJoint('butt', 'singleV'))), sheet)).toBeNull();
  });
});
