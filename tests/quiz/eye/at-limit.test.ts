import { describe, expect, it } from 'vitest';
import { biasAtLimit, scatterAtLimit } from '../../../src/quiz/eye/at-limit.ts';

const figure = { value: 0.1, low: -0.2, high: 0.3 };

describe('an eye put to a limit', () => {
  it('accepts past a greatest limit of 3 mm by as much as the ratio says, when it is lenient', () => {
    // u = ln(x/L) = 0.1: x = 3 e^0.1 = 3.31551; −0.2: 2.45619; 0.3: 4.04958.
    const at = biasAtLimit(figure, 'ratio', { sense: 'max', unit: 'mm', limit: 3 });
    expect(at?.unit).toBe('mm');
    expect(at?.amount.value).toBeCloseTo(0.31551, 5);
    expect(at?.amount.low).toBeCloseTo(-0.54381, 5);
    expect(at?.amount.high).toBeCloseTo(1.04958, 5);
    expect(at?.percent?.value).toBeCloseTo(10.51709, 5);
  });

  it('accepts short of a least limit of 3 mm, the lenient side still above 0', () => {
    // u = ln(L/x) = 0.1: x = 3 e^−0.1 = 2.71451, short by 0.28549; −0.2: x = 3.66421, over by 0.66421.
    const at = biasAtLimit(figure, 'ratio', { sense: 'min', unit: 'mm', limit: 3 });
    expect(at?.amount.value).toBeCloseTo(0.28549, 5);
    expect(at?.amount.low).toBeCloseTo(-0.66421, 5);
    expect(at?.percent?.value).toBeCloseTo(9.51626, 5);
  });

  it('scatters alike about a limit of either sense', () => {
    // half of 3 e^0.1 − 3 e^−0.1 = (3.31551 − 2.71451) / 2 = 0.30050; in per cent 10.01668
    const at = scatterAtLimit({ value: 0.1, low: 0.05, high: 0.2 }, 'ratio', {
      unit: 'mm',
      limit: 3,
    });
    expect(at?.amount.value).toBeCloseTo(0.3005, 5);
    expect(at?.percent?.value).toBeCloseTo(10.01668, 5);
  });

  it('is the figure itself in degrees, and in mm where nothing is permitted, with no per cent', () => {
    const angle = biasAtLimit(figure, 'deg', { sense: 'min', unit: 'deg', limit: 90 });
    expect(angle).toEqual({ unit: 'deg', amount: figure, percent: null });
    const none = biasAtLimit(figure, 'mm', { sense: 'max', unit: 'mm', limit: 0 });
    expect(none).toEqual({ unit: 'mm', amount: figure, percent: null });
  });

  it('is nothing at a limit of another scale', () => {
    expect(biasAtLimit(figure, 'ratio', { sense: 'max', unit: 'mm', limit: 0 })).toBeNull();
    expect(scatterAtLimit(figure, 'deg', { unit: 'mm', limit: 3 })).toBeNull();
  });
});
