import { describe, expect, it } from 'vitest';
import type { FilletJoint } from '../../src/joint/index.ts';
import { build, defaultJoint } from '../../src/joint/index.ts';
import type { MeasurementId, Measurements } from '../../src/measure/index.ts';
import { measure } from '../../src/measure/index.ts';

// Facts of the trade. Source: common practice, no source.

const valueOf = ({ values }: Measurements, id: MeasurementId): number => values[id]?.value ?? NaN;
const fillet = (changes: Partial<FilletJoint> = {}) =>
  measure(build({ ...defaultJoint('fillet'), ...changes }));

describe('common practice, no source: a fillet weld', () => {
  it('of equal flat legs has a throat of 0.707 of the leg', () => {
    for (const leg of [4, 6, 8, 12]) {
      const measured = fillet({ leg1: leg, leg2: leg });
      expect(valueOf(measured, 'isoscelesThroat') / leg).toBeCloseTo(0.707, 3);
    }
  });

  it('that is flat or modestly convex has no less throat than the theoretical', () => {
    for (const convexity of [0, 0.5, 1, 1.5]) {
      const measured = fillet({ convexity });
      expect(valueOf(measured, 'actualThroat')).toBeGreaterThanOrEqual(
        valueOf(measured, 'theoreticalThroat') - 1e-9,
      );
    }
  });

  it('that is concave is smaller than its legs look, and is sized by its throat', () => {
    const measured = fillet({ leg1: 10, leg2: 10, convexity: -1 });
    expect(valueOf(measured, 'sizeEqual')).toBeLessThan(valueOf(measured, 'leg1'));
    expect(valueOf(measured, 'sizeEqual')).toBeCloseTo(
      valueOf(measured, 'actualThroat') / 0.7071,
      2,
    );
  });

  it('with a leg longer than asked is no smaller for it', () => {
    expect(valueOf(fillet({ leg2: 11 }), 'sizeEqual')).toBeCloseTo(8, 9);
  });

  it('over a gap keeps its throat when the legs are made longer by the gap', () => {
    const tight = fillet({ leg1: 8, leg2: 8 });
    const open = fillet({ leg1: 10, leg2: 10, rootGap: 2 });
    expect(valueOf(open, 'effectiveThroat')).toBeCloseTo(valueOf(tight, 'effectiveThroat'), 9);
  });

  it('on a skewed tee reads short by a right-angle gauge', () => {
    const skewed = fillet({ dihedralAngle: 110 });
    expect(valueOf(skewed, 'perpendicularLeg1')).toBeLessThan(valueOf(skewed, 'leg1') - 0.3);
  });
});

describe('common practice, no source: a butt joint', () => {
  it('of two plates bevelled 30° has a groove angle of 60°', () => {
    const measured = measure(build({ ...defaultJoint('butt', 'singleV'), stage: 'fitUp' }));
    expect(valueOf(measured, 'bevelAngle1')).toBeCloseTo(30, 9);
    expect(valueOf(measured, 'grooveAngle')).toBeCloseTo(60, 9);
  });

  it('of pipes of one wall steps inside by as much as outside: high-low', () => {
    const measured = measure(
      build({ ...defaultJoint('butt', 'singleV'), product: 'pipe', stage: 'fitUp', offset: 1.2 }),
    );
    expect(valueOf(measured, 'rootStep')).toBeCloseTo(1.2, 9);
    expect(valueOf(measured, 'faceStep')).toBeCloseTo(1.2, 9);
  });

  it('needs more weld metal the wider it stands open', () => {
    const areaAt = (rootOpening: number): number =>
      valueOf(measure(build({ ...defaultJoint('butt', 'singleV'), rootOpening })), 'weldArea');
    // 1 mm more over 12 mm of plate is 12 mm², and a wider cap and root on top of it
    expect(areaAt(4) - areaAt(3)).toBeGreaterThan(12);
  });

  it('with a heavy cap has the steeper toe', () => {
    const toeAt = (capHeight: number): number =>
      valueOf(measure(build({ ...defaultJoint('butt', 'singleV'), capHeight })), 'toeAngle');
    expect(toeAt(4)).toBeLessThan(toeAt(1.5) - 10);
  });
});
