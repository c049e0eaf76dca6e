import { expect, test } from 'vitest';
import { rounded, written } from '../../../src/view/scene/written.ts';

test('a coordinate is written to hundredths of a px, without a nought that says nothing', () => {
  for (const [value, text] of [
    [0, '0'],
    [12, '12'],
    [12.3, '12.3'],
    [12.34, '12.34'],
    [12.05, '12.05'],
    [12.346, '12.35'],
    [-3.456, '-3.46'],
    [99.996, '100'],
    [4095.999, '4096'],
    [1e5, '100000'],
  ] as const) {
    expect(written(value)).toBe(text);
    expect(Number(written(value))).toBe(rounded(value));
  }
});
