import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scaleTicks, type ScaleUnit } from '../../../src/view/control/scale-ticks.ts';
import { runs } from '../../runs.ts';

describe('ticks of a scale', () => {
  it('stand at every millimetre with a tall one at each fifth where there is room for it', () => {
    // 20 mm on 88 px: 4.4 px for each millimetre, exactly the least gap.
    const { minor, major } = scaleTicks(0, 20, 88, 'mm');
    expect(minor).toHaveLength(21);
    expect(major).toEqual([0, 5, 10, 15, 20]);
  });

  it('coarsen from 1 to 2 to 5 as the room shrinks', () => {
    const gap = (width: number): number => {
      const { minor } = scaleTicks(0, 20, width, 'mm');
      return (minor[1] ?? 0) - (minor[0] ?? 0);
    };
    expect([88, 60, 30].map(gap)).toEqual([1, 2, 5]);
  });

  it('divide an angle of 60° to 135° by five degrees, tall at every fifteenth', () => {
    // 75° on 88 px: 1.2 px a degree, so one degree is too close and five are 5.9 px.
    const { minor, major } = scaleTicks(60, 135, 88, 'deg');
    expect(minor).toHaveLength(16);
    expect(major).toEqual([60, 75, 90, 105, 120, 135]);
  });

  it('halve the inch for a reader of fractions', () => {
    // 1 in on 150 px: 32nds are 4.7 px apart, 64ths would be 2.3.
    const { minor, major } = scaleTicks(0, 25.4, 150, 'in64');
    expect(minor).toHaveLength(33);
    expect(major).toHaveLength(9);
  });

  it('are none where there is no span or no room', () => {
    expect(scaleTicks(5, 5, 88, 'mm')).toEqual({ minor: [], major: [] });
    expect(scaleTicks(0, 5, 0, 'mm')).toEqual({ minor: [], major: [] });
  });

  it('are never closer than 4.4 px and never off the scale, whatever the scale', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: 0.5, max: 200, noNaN: true }),
        fc.integer({ min: 20, max: 2000 }),
        fc.constantFrom<ScaleUnit>('mm', 'in', 'in64', 'deg', 'ratio'),
        (min, span, width, unit) => {
          const { minor } = scaleTicks(min, min + span, width, unit);
          minor.forEach((tick, place) => {
            expect(tick).toBeGreaterThanOrEqual(min - 1e-6);
            expect(tick).toBeLessThanOrEqual(min + span + 1e-6);
            const before = minor[place - 1];
            if (before === undefined) return;
            expect(((tick - before) / span) * width).toBeGreaterThanOrEqual(4.4 - 1e-6);
          });
        },
      ),
      { numRuns: runs(2000) },
    );
  });
});
