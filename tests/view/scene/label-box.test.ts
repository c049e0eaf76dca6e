import { describe, expect, test } from 'vitest';
import { boxesMeet, reach, uprightBox, type LabelBox } from '../../../src/view/scene/label-box.ts';

const turned = (x: number, y: number, degrees: number): LabelBox => ({
  ...uprightBox(x, y, 40, 10),
  cos: Math.cos((degrees * Math.PI) / 180),
  sin: Math.sin((degrees * Math.PI) / 180),
});

describe('A label box 40 by 10', () => {
  test('reaches 20 along its line and 5 square to it, however it is turned', () => {
    expect(reach(uprightBox(0, 0, 40, 10), 1, 0)).toBe(20);
    expect(reach(uprightBox(0, 0, 40, 10), 0, 1)).toBe(5);
    expect(reach(turned(0, 0, 90), 1, 0)).toBeCloseTo(5, 12);
    // At 45° both half sides show: (20 + 5) / √2.
    expect(reach(turned(0, 0, 45), 1, 0)).toBeCloseTo(25 / Math.SQRT2, 12);
  });

  test('turned upright it clears a neighbour that it would meet lying down', () => {
    const neighbour = uprightBox(30, 0, 20, 10);
    expect(boxesMeet(uprightBox(5, 0, 40, 10), neighbour, 0)).toBe(true);
    expect(boxesMeet(turned(5, 0, 90), neighbour, 0)).toBe(false);
  });

  test('keeps the asked distance from its neighbour', () => {
    const [one, other] = [uprightBox(0, 0, 40, 10), uprightBox(42, 0, 40, 10)];
    expect(boxesMeet(one, other, 0)).toBe(false);
    expect(boxesMeet(one, other, 3)).toBe(true);
  });

  test('clears a slanted neighbour whose upright frame it would overlap', () => {
    // The slanted box runs along y = x; its frame reaches (17.7, 17.7), the small box stands off the diagonal.
    expect(boxesMeet(turned(0, 0, 45), uprightBox(14, -12, 6, 6), 0)).toBe(false);
  });
});
