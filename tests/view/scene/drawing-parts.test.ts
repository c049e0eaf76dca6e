import { describe, expect, test } from 'vitest';
import { advances, measuredCharacters } from '../../../src/view/scene/glyph-advances.ts';
import { drawingFoot } from '../../../src/view/scene/drawing-foot.ts';
import { freehandTo } from '../../../src/view/scene/freehand-break.ts';
import { hatchTile } from '../../../src/view/scene/hatch.ts';
import { scaleBar, scaleText } from '../../../src/view/scene/scale-bar.ts';
import { barLengths, sceneWords } from '../../../src/view/scene/scene-words.ts';
import { sheetOf } from '../../../src/view/scene/sheet.ts';
import { textWidth } from '../../../src/view/scene/text-width.ts';
import { toMm, toPx, type View } from '../../../src/view/scene/view-transform.ts';
import { METRIC } from './any-scene.ts';

const view: View = { scale: 10, originX: 0, originY: 100, width: 0, height: 0, subject: '' };

describe('The width of a text', () => {
  test('is the sum of its advances at the size of the type', () => {
    // From the table at weight 400: l 221, e 530, g 570 thousandths; at 13 px 17.173.
    expect(textWidth('leg', 13, 400)).toBeCloseTo(17.173, 9);
  });

  test('is the same for all numbers of one length, so that a label holds still', () => {
    expect(textWidth('1.11', 16, 620)).toBe(textWidth('8.40', 16, 620));
  });

  test('counts a character that was never measured as the widest letter', () => {
    expect(textWidth('\u{1F9F2}', 10, 400)).toBe(textWidth('m', 10, 400));
  });

  test('has an advance for every measured character in both weights', () => {
    const count = Array.from(measuredCharacters).length;
    expect(advances[400]).toHaveLength(count);
    expect(advances[620]).toHaveLength(count);
  });
});

describe('A freehand break', () => {
  const from = { x: 0, y: 0 };
  const to = { x: 0, y: 20 };

  test('ends exactly where it should and is the same every time', () => {
    const d = freehandTo(view, from, to);
    // (0, 20) mm lies at 100 − 200 px.
    expect(d).toMatch(/ 0 -100$/);
    expect(freehandTo(view, from, to)).toBe(d);
  });

  test('never swings more than 4 px off the straight', () => {
    const numbers =
      freehandTo(view, from, to)
        .match(/-?[\d.]+/g)
        ?.map(Number) ?? [];
    const across = numbers.filter((_, index) => index % 2 === 0);
    expect(Math.max(...across.map(Math.abs))).toBeLessThanOrEqual(4);
    expect(Math.max(...across.map(Math.abs))).toBeGreaterThan(1);
  });

  test('is nothing between points that are one', () => {
    expect(freehandTo(view, from, from)).toBe('');
  });

  test('is its own, though another was drawn before that is filed under the same number', () => {
    // 31 · 10 px along is filed as 10 px down is.
    const end = { x: 40, y: 10 };
    const other = freehandTo(view, { x: 31, y: 10 }, end);
    const own = freehandTo(view, { x: 0, y: 9 }, end);
    expect(own).not.toBe(other);
    expect(freehandTo(view, { x: 31, y: 10 }, end)).toBe(other);
  });
});

describe('A hatch tile', () => {
  test('has its lines 12 px apart within a third of a px, on whole px', () => {
    const { size } = hatchTile(12, true);
    // 17 / √2 = 12.02
    expect(size).toBe(17);
    expect(Math.abs(size / Math.SQRT2 - 12)).toBeLessThan(0.34);
  });

  test('rises to the right, or falls in the plate that touches it', () => {
    expect(hatchTile(12, true).d).toContain('M0 17L17 0');
    expect(hatchTile(12, false).d).toContain('M0 0L17 17');
  });
});

describe('The foot of the drawing', () => {
  const lengths = [1, 2, 5, 10].map((mm) => ({ mm, text: `${mm} mm` }));

  test('has the longest round bar that fits', () => {
    expect(scaleBar(36, 187, lengths)?.length.mm).toBe(5);
    expect(scaleBar(36, 179, lengths)?.length.mm).toBe(2);
    // nothing fits: the smallest
    expect(scaleBar(36, 1, lengths)?.length.mm).toBe(1);
    expect(scaleBar(36, 100, [])).toBeNull();
  });

  test('says the drawn scale as a ratio, enlarged or reduced', () => {
    expect(scaleText(9.5)).toBe('9.5 : 1');
    expect(scaleText(4)).toBe('4 : 1');
    expect(scaleText(0.5)).toBe('1 : 2');
    expect(scaleText(26.4)).toBe('26 : 1');
  });

  test('has the same bar for the same scale, whatever found no room', () => {
    const words = sceneWords(METRIC);
    for (const sheet of [sheetOf(586, 560, 'presenting'), sheetOf(360, 330, 'phone')]) {
      const [none, some] = [0, 3].map((count) =>
        drawingFoot(sheet, 22.68, 6, barLengths(METRIC), words, count),
      );
      expect(some?.bar).toEqual(none?.bar);
      expect(some?.notShown).not.toBe('');
    }
    // 5 mm at 6 : 1 is 113 px; beside it and its words there is no room for those of the count.
    const wall = drawingFoot(
      sheetOf(586, 560, 'presenting'),
      22.68,
      6,
      barLengths(METRIC),
      words,
      1,
    );
    expect([wall.bar?.length.mm, wall.stacked]).toEqual([5, true]);
  });

  test('is the very same while nothing it is made of changes, and another as soon as anything does', () => {
    const of = [
      sheetOf(900, 600, 'bench'),
      20,
      5.3,
      barLengths(METRIC),
      sceneWords(METRIC),
      0,
    ] as const;
    const [sheet, scale, times, lengths, words, missing] = of;
    const foot = drawingFoot(...of);
    expect(drawingFoot(...of)).toBe(foot);
    const others: readonly Parameters<typeof drawingFoot>[] = [
      [sheetOf(500, 600, 'bench'), scale, times, lengths, words, missing],
      [sheet, 8, times, lengths, words, missing],
      [sheet, scale, 2, lengths, words, missing],
      [sheet, scale, times, barLengths({ ...METRIC, units: 'in' }), words, missing],
      [sheet, scale, times, lengths, words, 2],
    ];
    for (const other of others) {
      expect(drawingFoot(...other)).not.toEqual(foot);
      expect(drawingFoot(...of)).toEqual(foot);
    }
  });

  test('leaves room on a phone for its words and the count of what is not shown', () => {
    const sheet = sheetOf(360, 330, 'phone');
    const words = sceneWords(METRIC);
    for (const scale of [4, 12, 17.4, 20.8, 40]) {
      const foot = drawingFoot(sheet, scale, scale / 3.78, barLengths(METRIC), words, 2);
      if (foot.stacked) continue;
      const used =
        (foot.bar?.width ?? 0) +
        8 +
        textWidth(foot.scale, foot.size, 400) +
        textWidth(foot.notShown, foot.size, 400);
      expect(used).toBeLessThan(sheet.right - sheet.left);
    }
  });
});

describe('The view', () => {
  test('brings a point to the sheet and back', () => {
    const there = toPx(view, { x: 3, y: 4 });
    expect(there).toEqual({ x: 30, y: 60 });
    expect(toMm(view, there)).toEqual({ x: 3, y: 4 });
  });
});
