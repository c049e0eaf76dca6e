import { describe, expect, test } from 'vitest';
import {
  type DimensionLayout,
  layOut,
  placesOf,
} from '../../../src/view/scene/dimension-layout.ts';
import {
  type DimensionRequest,
  LETTERING,
  type LinearRequest,
} from '../../../src/view/scene/dimension-request.ts';
import type { DrawingSheet } from '../../../src/view/scene/drawing-sheet.ts';
import { extensionFrom } from '../../../src/view/scene/extension-line.ts';
import { tagBox } from '../../../src/view/scene/focus-tag.ts';
import { type Line, uprightBox } from '../../../src/view/scene/label-box.ts';
import { addLines } from '../../../src/view/scene/lines.ts';
import { sheetOf } from '../../../src/view/scene/sheet.ts';

const line = (x1: number, y1: number, x2: number, y2: number): Line => ({ x1, y1, x2, y2 });

const bare = (lines: readonly Line[]): readonly number[] => {
  const all: number[] = [];
  addLines(all, lines);
  return all;
};

/** A sheet of 400 by 300 with these edges on it. */
function sheetWith(edges: readonly Line[]): DrawingSheet {
  return {
    left: 0,
    top: 0,
    right: 400,
    bottom: 300,
    outline: bare(edges),
    weldFrom: 4 * edges.length,
    thin: [],
    firm: [],
    column: null,
    boxes: [],
    marks: [],
  };
}

/** A level distance 100 long at y = 200, to be dimensioned 40 px above it. */
const leg1: LinearRequest = {
  kind: 'linear',
  asked: {
    key: 'one',
    names: ['leg 1'],
    value: '8.0',
    tone: 'plain',
    lit: false,
    rank: 1,
    figure: '',
  },
  from: { x: 100, y: 200 },
  to: { x: 200, y: 200 },
  off: { x: 0, y: -1 },
  levels: [40],
  label: 'on',
  outer: 'to',
};

const place = (edges: readonly Line[], ...requests: readonly DimensionRequest[]) =>
  layOut(() => sheetWith(edges), LETTERING.screen, requests);

describe('Placing a dimension', () => {
  test('sets its line off, its text above the middle and its arrowheads inside when there is room', () => {
    const [placed] = place([], leg1).placed;
    expect(placed?.placement.lines).toEqual([line(100, 160, 200, 160)]);
    // 16 px type: a box 17.6 high, lifted 1.9 off the line
    expect(placed?.placement.box).toMatchObject({ x: 150, halfHeight: 8.8 });
    expect(placed?.placement.box.y).toBeCloseTo(160 - 8.8 - 1.92, 9);
    expect(placed?.placement.heads.map(({ dx }) => dx)).toEqual([-1, 1]);
  });

  test('turns the arrowheads outside under 40 px, and writes the text past the outer end', () => {
    const small = { ...leg1, to: { x: 130, y: 200 }, label: 'end' as const };
    const [placed] = place([], small).placed;
    expect(placed?.placement.heads.map(({ dx }) => dx)).toEqual([1, -1]);
    expect(placed?.placement.box.x).toBeGreaterThan(130);
    expect(placed?.placement.anchor).toBe('start');
  });

  test('drops the name before the value, and the dimension only when nothing fits', () => {
    // A sheet 64 px wide is too narrow for "leg 1 8.0", wide enough for "8.0".
    const narrow = { ...leg1, from: { x: 100, y: 200 }, to: { x: 160, y: 200 } };
    const sheet = (): DrawingSheet => ({ ...sheetWith([]), left: 98, right: 162 });
    const [placed] = layOut(sheet, LETTERING.screen, [narrow]).placed;
    expect(placed?.placement.wording.name).toBe('');
    expect(placed?.placement.wording.value).toBe('8.0');
    const crowd = Array.from({ length: 60 }, (_, n) => line(0, n * 5, 400, n * 5));
    expect(place(crowd, leg1).dropped).toEqual([leg1]);
  });

  test('gives the room to what ranks first, whatever the order it is asked in', () => {
    const second = { ...leg1, asked: { ...leg1.asked, key: 'two', rank: 2 } };
    const layout = place([], second, leg1);
    expect(layout.placed.map(({ request }) => request.asked.key)[0]).toBe('one');
  });

  test('finds free paper for what is out of limit when every proper place is taken', () => {
    // Only the lower strip of the sheet is free of edges.
    const crowd = Array.from({ length: 40 }, (_, n) => line(0, n * 6, 400, n * 6));
    const urgent = { ...leg1, asked: { ...leg1.asked, tone: 'reject' as const } };
    const layout = place(crowd, urgent);
    expect(layout.dropped).toEqual([]);
    expect(layout.placed[0]?.placement.box.y).toBeGreaterThan(234);
  });
});

describe('A dimension under the hand', () => {
  const two = { ...leg1, levels: [40, 64] };
  /** through the nearer dimension line, clear of its text */
  const crossing = [line(105, 150, 105, 170), line(195, 150, 195, 170)];
  const before = (moving: boolean) => {
    const first = place([], two);
    return { places: placesOf(first), moving };
  };
  const levelOf = (layout: DimensionLayout): number | undefined =>
    layout.placed[0]?.placement.site?.level;

  test('is held where it stood though its line now crosses two edges, and let go it finds better', () => {
    expect(levelOf(place([], two))).toBe(0);
    const [held, settled] = [true, false].map((moving) =>
      layOut(() => sheetWith(crossing), LETTERING.screen, [two], before(moving)),
    );
    expect(held && levelOf(held)).toBe(0);
    expect(settled && levelOf(settled)).toBe(1);
  });

  test('gives way as soon as its text or its line runs into another label', () => {
    for (const label of [uprightBox(150, 150, 40, 20), uprightBox(112, 160, 8, 8)]) {
      const taken = (): DrawingSheet => ({ ...sheetWith([]), boxes: [label] });
      expect(levelOf(layOut(taken, LETTERING.screen, [two], before(true)))).toBe(1);
    }
  });
});

describe('An extension line', () => {
  const off = { x: 0, y: -1 };
  const from = { x: 100, y: 200 };

  test('starts 10 px off its point and ends 6 px past the dimension line', () => {
    expect(extensionFrom(sheetWith([]), from, off, 40)).toEqual([line(100, 190, 100, 154)]);
  });

  test('is left to a visible edge that lies on it, as far as that goes', () => {
    const whole = sheetWith([line(100, 200, 100, 100)]);
    expect(extensionFrom(whole, from, off, 40)).toEqual([]);
    const part = sheetWith([line(100, 180, 100, 175)]);
    expect(extensionFrom(part, from, off, 40)).toEqual([line(100, 175, 100, 154)]);
  });

  test('starts where it comes out of the metal over its point', () => {
    const metal = sheetWith([line(50, 170, 150, 170)]);
    expect(extensionFrom(metal, from, off, 40)).toEqual([line(100, 170, 100, 154)]);
  });
});

describe('The tag of a focused handle', () => {
  const sheet = sheetOf(400, 300, 'bench');
  const size = { width: 120, height: 40 };

  test('stands below to the right, clear of the handle', () => {
    const box = tagBox(sheet, { x: 100, y: 100 }, size, [], []);
    expect(box.x - box.halfWidth).toBeGreaterThan(100);
    expect(box.y - box.halfHeight).toBeGreaterThan(100);
  });

  test('keeps on the sheet and off the labels', () => {
    const corner = tagBox(sheet, { x: 390, y: 290 }, size, [], []);
    expect(corner.x + corner.halfWidth).toBeLessThanOrEqual(400);
    expect(corner.y + corner.halfHeight).toBeLessThanOrEqual(300);
    const label = uprightBox(180, 140, 100, 20);
    const box = tagBox(sheet, { x: 100, y: 100 }, size, [label], []);
    expect(box.y).toBeLessThan(100);
  });
});
