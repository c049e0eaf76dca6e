import { describe, expect, test } from 'vitest';
import { type Line, uprightBox } from '../../../src/view/scene/label-box.ts';
import {
  addLines,
  anyMeets,
  countCrossings,
  countMeeting,
  crossingShare,
  insideLines,
  lineMeetsBox,
  NO_CROSSING,
  runsBeside,
} from '../../../src/view/scene/lines.ts';

const line = (x1: number, y1: number, x2: number, y2: number): Line => ({ x1, y1, x2, y2 });

const bare = (lines: readonly Line[]): readonly number[] => {
  const all: number[] = [];
  addLines(all, lines);
  return all;
};

describe('A label box 40 by 10', () => {
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

  test('meets a level or upright line only between its sides', () => {
    const box = uprightBox(0, 0, 40, 10);
    expect(lineMeetsBox(box, line(-30, 5, 30, 5), 0)).toBe(true);
    expect(lineMeetsBox(box, line(-30, 5.5, 30, 5.5), 0)).toBe(false);
    expect(lineMeetsBox(box, line(20, 9, 20, -9), 0)).toBe(true);
    expect(lineMeetsBox(box, line(20.5, 9, 20.5, -9), 0)).toBe(false);
  });
});

describe('Lines of a drawing', () => {
  const lines = bare([line(10, 10, 390, 290), line(0, 150, 400, 150)]);

  test('meet a box anywhere along them, and not one beside them', () => {
    // The long line passes (200, 150); (300, 217) too: 10 + 290 · 280/380 = 223.7.
    expect(anyMeets(lines, uprightBox(300, 222, 10, 10), 0)).toBe(true);
    expect(anyMeets(lines, uprightBox(300, 180, 10, 10), 0)).toBe(false);
  });

  test('are counted where they cross or meet, no further than is asked', () => {
    expect(countCrossings(lines, line(50, 0, 50, 300))).toBe(2);
    expect(countCrossings(lines, line(50, 0, 50, 300), 1)).toBe(1);
    expect(countCrossings(lines, line(380, 5, 395, 5))).toBe(0);
    expect(countMeeting(lines, uprightBox(200, 150, 10, 10), 0)).toBe(2);
    expect(countMeeting(lines, uprightBox(200, 150, 10, 10), 0, 1)).toBe(1);
  });

  test('meet a turned box along its own sides, not along an upright one round it', () => {
    const cos = Math.SQRT1_2;
    const box = { x: 100, y: 100, halfWidth: 40, halfHeight: 5, cos, sin: cos };
    expect(anyMeets(bare([line(110, 60, 140, 90)]), box, 0)).toBe(false);
    expect(anyMeets(bare([line(110, 90, 120, 130)]), box, 0)).toBe(true);
  });

  test('enclose what lies inside them, of the part that is asked', () => {
    const square = (x: number, y: number, side: number) =>
      bare([
        line(x, y, x + side, y),
        line(x + side, y, x + side, y + side),
        line(x + side, y + side, x, y + side),
        line(x, y + side, x, y),
      ]);
    const both = [...square(0, 0, 100), ...square(50, 50, 100)];
    expect(insideLines(both, 0, 16, 20, 20)).toBe(true);
    expect(insideLines(both, 0, 16, 120, 120)).toBe(false);
    expect(insideLines(both, 16, 32, 120, 120)).toBe(true);
  });

  test('cross at a share of the first line, and a touch at its end is none', () => {
    expect(crossingShare(line(0, 0, 100, 0), line(25, -5, 25, 5))).toBeCloseTo(0.25, 12);
    expect(crossingShare(line(0, 0, 100, 0), line(1, -5, 1, 5))).toBe(NO_CROSSING);
    expect(crossingShare(line(0, 0, 100, 0), line(0, 5, 100, 5))).toBe(NO_CROSSING);
  });

  test('run beside a neighbour that is near, alike and overlaps, not beside themselves', () => {
    expect(runsBeside(lines, line(50, 156, 350, 156))).toBe(true);
    expect(runsBeside(lines, line(50, 150, 350, 150))).toBe(false);
    expect(runsBeside(lines, line(50, 170, 350, 170))).toBe(false);
    expect(runsBeside(lines, line(50, 130, 50, 170))).toBe(false);
  });
});
