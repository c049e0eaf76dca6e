import { describe, expect, it } from 'vitest';
import { snapped, stepped, stepsOf } from '../../src/state/parameter-step.ts';

const mm = { units: 'mm', inches: 'decimal' } as const;
const decimal = { units: 'in', inches: 'decimal' } as const;
const fraction = { units: 'in', inches: 'fraction' } as const;

describe('steps of a parameter', () => {
  it('are the model step and a tenth of it in millimetres and degrees', () => {
    expect(stepsOf({ step: 0.1, unit: 'mm' }, mm)).toEqual({ model: 0.1, fine: 0.01 });
    expect(stepsOf({ step: 1, unit: 'deg' }, decimal)).toEqual({ model: 1, fine: 0.1 });
  });

  it('are a hundredth and a thousandth of an inch for a reader of decimal inches', () => {
    // 25.4 mm to the inch.
    const steps = stepsOf({ step: 0.1, unit: 'mm' }, decimal);
    expect(steps.model).toBeCloseTo(0.254, 12);
    expect(steps.fine).toBeCloseTo(0.0254, 12);
  });

  it('are a 64th of an inch for a reader of fractions', () => {
    expect(stepsOf({ step: 0.1, unit: 'mm' }, fraction).model).toBeCloseTo(25.4 / 64, 12);
  });
});

describe('stepping', () => {
  it('adds whole steps without the noise of binary arithmetic', () => {
    expect(stepped(0.2, 1, 0.1)).toBe(0.3);
    expect(stepped(8, -10, 0.1)).toBe(7);
  });

  it('goes to the next mark first when the value lies between two', () => {
    expect(stepped(5.333, 1, 0.1)).toBe(5.4);
    expect(stepped(5.333, -1, 0.1)).toBe(5.3);
    expect(stepped(-5.333, 1, 0.1)).toBe(-5.3);
  });

  it('snaps what a pointer asks for to the nearest mark', () => {
    expect(snapped(7.96, 0.1)).toBe(8);
    expect(snapped(-0.04, 0.1)).toBeCloseTo(0, 12);
  });
});
