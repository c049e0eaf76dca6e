import { describe, expect, test } from 'vitest';
import type { Segment } from '../../../src/geometry/index.ts';
import { flattenInto, pathOf } from '../../../src/view/scene/outline-path.ts';
import type { View } from '../../../src/view/scene/view-transform.ts';

const view: View = { scale: 10, originX: 100, originY: 200, width: 0, height: 0, subject: '' };
const half: Segment = { a: { x: -1, y: 0 }, b: { x: 1, y: 0 }, bulge: 1 };

describe('A path of lines and arcs', () => {
  test('is scaled, moved and turned over, for y runs down on the screen', () => {
    const line: Segment = { a: { x: 0, y: 0 }, b: { x: 3, y: 4 }, bulge: 0 };
    expect(pathOf(view, [line])).toBe('M100 200L130 160');
  });

  test('turns a half circle counter-clockwise: under its chord, by sweep 0', () => {
    // Bulge 1 from (−1, 0) to (1, 0) runs through (0, −1): radius 1 mm, 10 px.
    expect(pathOf(view, [half])).toBe('M90 200A10 10 0 0 0 110 200');
    expect(pathOf(view, [{ ...half, bulge: -1 }])).toBe('M90 200A10 10 0 0 1 110 200');
  });

  test('takes the long way round for more than half a circle', () => {
    expect(pathOf(view, [{ ...half, bulge: 2 }])).toMatch(/ 0 1 0 110 200$/);
  });

  test('lifts the pen over a gap and closes when asked', () => {
    const one: Segment = { a: { x: 0, y: 0 }, b: { x: 1, y: 0 }, bulge: 0 };
    const two: Segment = { a: { x: 2, y: 0 }, b: { x: 3, y: 0 }, bulge: 0 };
    expect(pathOf(view, [one, two], true)).toBe('M100 200L110 200M120 200L130 200Z');
    expect(pathOf(view, [], true)).toBe('');
  });

  test('is straightened to within 0.4 px of every arc, on the arc’s own side', () => {
    const lines: number[] = [];
    flattenInto(lines, { ...view, scale: 100 }, [half]);
    expect(lines.length).toBeGreaterThan(4 * 4);
    for (let at = 0; at < lines.length; at += 4) {
      const [x1 = NaN, y1 = NaN, x2 = NaN, y2 = NaN] = lines.slice(at, at + 4);
      // Middles of the short lines lie within the circle of 100 px round (100, 200), under its centre.
      const middle = Math.hypot((x1 + x2) / 2 - 100, (y1 + y2) / 2 - 200);
      expect(middle).toBeGreaterThan(99.6);
      expect(middle).toBeLessThanOrEqual(100);
      expect((y1 + y2) / 2).toBeGreaterThan(200);
    }
  });
});
