import { describe, expect, test } from 'vitest';
import { boxesMeet, reach, uprightBox, type LabelBox } from '../../../src/view/scene/label-box.ts';
import { lineMeetsBox } from '../../../src/view/scene/lines.ts';

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

  test('meets a line through it, and not one that passes its corner', () => {
    const box = uprightBox(0, 0, 40, 10);
    expect(lineMeetsBox(box, { x1: -30, y1: -30, x2: 30, y2: 30 }, 0)).toBe(true);
    // x + y = 26 passes the corner (20, 5), where x + y = 25.
    expect(lineMeetsBox(box, { x1: 26, y1: 0, x2: 0, y2: 26 }, 0)).toBe(false);
    expect(lineMeetsBox(box, { x1: 26, y1: 0, x2: 0, y2: 26 }, 1)).toBe(true);
  });

  test('meets a line that lies wholly inside it', () => {
    const inside = { x1: -5, y1: 0, x2: 5, y2: 1 };
    expect(lineMeetsBox(uprightBox(0, 0, 40, 10), inside, 0)).toBe(true);
  });

  test('does not meet a line that ends short of it', () => {
    const short = { x1: -50, y1: 0, x2: -20.5, y2: 0 };
    expect(lineMeetsBox(uprightBox(0, 0, 40, 10), short, 0)).toBe(false);
    expect(lineMeetsBox(uprightBox(0, 0, 40, 10), short, 1)).toBe(true);
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
