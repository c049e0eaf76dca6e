import { describe, expect, test } from 'vitest';
import { line } from '../../../src/geometry/index.ts';
import { onSheet } from '../../../src/view/scene/sheet-cuts.ts';
import { sheetOf } from '../../../src/view/scene/sheet.ts';

/** 10 px a millimetre, y up from 30 mm down the paper: the paper is 1 to 10 mm across, −9 to 29 mm high. */
const view = { scale: 10, originX: 0, originY: 300, width: 0, height: 0, subject: '' };
const sheet = { ...sheetOf(500, 400, 'bench'), left: 10, right: 100, top: 10, bottom: 390 };
const level = (from: number, to: number, y = 5) => line({ x: from, y }, { x: to, y });
const upright = (from: number, to: number) => line({ x: 5, y: from }, { x: 5, y: to });

describe('A line of the drawing that belongs to no metal', () => {
  test('ends at each edge of the sheet', () => {
    expect(onSheet([level(2, 20), level(8, -3)], view, sheet)).toEqual([level(2, 10), level(8, 1)]);
    expect(onSheet([upright(0, 40), upright(0, -20)], view, sheet)).toEqual([
      upright(0, 29),
      upright(0, -9),
    ]);
    expect(onSheet([level(-5, 20)], view, sheet)).toEqual([level(1, 10)]);
  });

  test('is whole on the sheet, and gone past it', () => {
    expect(onSheet([level(2, 9), level(11, 20), level(2, 9, 30)], view, sheet)).toEqual([
      level(2, 9),
    ]);
    expect(onSheet([], view, sheet)).toEqual([]);
  });
});
