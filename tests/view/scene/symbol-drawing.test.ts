import { describe, expect, test } from 'vitest';
import { defaultJoint, type Joint } from '../../../src/joint/index.ts';
import type { JobSheet, SymbolMarks, SymbolSystem, WeldSymbol } from '../../../src/limits/index.ts';
import { defaultJobSheet, plainMarks, symbolOf } from '../../../src/limits/index.ts';
import { symbolDrawing, type SymbolDrawing } from '../../../src/view/scene/symbol-drawing.ts';
import type { SymbolPath, SymbolText } from '../../../src/view/scene/symbol-marks.ts';
import { textWidth } from '../../../src/view/scene/text-width.ts';
import { preparations } from '../../joint/forms.ts';

// The conventions drawn here: AWS A2.4 (arrow side below the one line; upright side on the left;
// broken arrow to the prepared plate), ISO 2553 system A (arrow side on the solid line, other side
// on the dashed one, which symmetrical welds do without). From memory, verify.

const SIZE = 10;
const sheet = defaultJobSheet();
const tee = defaultJoint('fillet', 'tee');
const systems = ['AWS', 'ISO'] as const;
const full: SymbolMarks = {
  contour: 'convex',
  allRound: true,
  field: true,
  tail: 'WPS 12',
  arrowSide: 'face',
};

interface Place {
  readonly x: number;
  readonly y: number;
}

const draw = (
  joint: Joint,
  system: SymbolSystem,
  marks: Partial<SymbolMarks> = {},
  asked: JobSheet = sheet,
): SymbolDrawing =>
  symbolDrawing(symbolOf(joint, asked, system, { ...plainMarks, ...marks }), 'mm', SIZE);

/** Every place that a path goes to; the middle of a curve is left to the eye. */
function placesOf({ d }: SymbolPath): readonly Place[] {
  const places: Place[] = [];
  let at: Place = { x: 0, y: 0 };
  for (const [, letter = '', rest = ''] of d.matchAll(/([MLHVAQZ])([^MLHVAQZ]*)/g)) {
    const numbers = rest.match(/-?[\d.]+/g)?.map(Number) ?? [];
    // closed: back where it was
    if (letter === 'Z') continue;
    const last = numbers.at(-1) ?? Number.NaN;
    if (letter === 'H') at = { ...at, x: last };
    else if (letter === 'V') at = { ...at, y: last };
    else at = { x: numbers.at(-2) ?? Number.NaN, y: last };
    places.push(at);
  }
  return places;
}

function part(drawing: SymbolDrawing, name: SymbolPath['part'], nth = 0): readonly Place[] {
  const path = drawing.paths.filter((one) => one.part === name)[nth];
  if (path === undefined) throw new Error(`no ${name}`);
  return placesOf(path);
}
const has = (drawing: SymbolDrawing, name: SymbolPath['part']): boolean =>
  drawing.paths.some((one) => one.part === name);
const ys = (places: readonly Place[]): readonly number[] => places.map(({ y }) => y);
const xs = (places: readonly Place[]): readonly number[] => places.map(({ x }) => x);

function text(drawing: SymbolDrawing, name: SymbolText['part']): SymbolText {
  const found = drawing.texts.find((one) => one.part === name);
  if (found === undefined) throw new Error(`no ${name}`);
  return found;
}

/** The box of a text's capitals. */
function boxOf({ text: words, x, y, size, anchor }: SymbolText) {
  const width = textWidth(words, size, 400);
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  return { left, right: left + width, top: y - 0.7 * size, bottom: y };
}

/** Every symbol that the joints give, plain and with all that can be said. */
const all: readonly WeldSymbol[] = systems.flatMap((system) =>
  [tee, ...preparations.map((form) => defaultJoint('butt', form))].flatMap((joint) =>
    [plainMarks, full, { ...full, arrowSide: 'root' as const, contour: 'flush' as const }].flatMap(
      (marks) => {
        const uneven = joint.kind === 'butt' ? { ...joint, rootSideShare: 0.3 } : joint;
        const wide: JobSheet = {
          ...sheet,
          size: {
            as: 'leg',
            first: { unit: 'in64', value: 19 },
            second: { unit: 'mm', value: 12.5 },
          },
          groove: {
            ...sheet.groove,
            rootOpening: { ...sheet.groove.rootOpening, nominal: { unit: 'in64', value: 7 } },
          },
        };
        return [
          symbolOf(joint, sheet, system, marks),
          symbolOf(uneven, wide, system, marks),
          symbolOf(
            joint.kind === 'butt' ? { ...joint, backing: 'strip' } : joint,
            { ...sheet, size: { as: 'throat', first: { unit: 'mm', value: 5 }, second: null } },
            system,
            marks,
          ),
        ];
      },
    ),
  ),
);

describe('The mark of the arrow side', () => {
  test('hangs below the one line in AWS, and of the other side stands above it', () => {
    for (const form of preparations) {
      const joint = defaultJoint('butt', form);
      const drawing = draw(joint, 'AWS');
      expect(Math.min(...ys(part(drawing, 'mark')))).toBe(0);
      expect(Math.max(...ys(part(drawing, 'mark')))).toBeGreaterThan(SIZE);
      expect(has(drawing, 'identification')).toBe(false);
    }
    const other = part(draw(tee, 'AWS', { arrowSide: 'root' }), 'mark');
    expect(Math.max(...ys(other))).toBe(0);
  });

  test('stands on the solid line in ISO, and of the other side hangs from the dashed one', () => {
    const drawing = draw(tee, 'ISO');
    expect(Math.max(...ys(part(drawing, 'mark')))).toBe(0);
    const turned = draw(tee, 'ISO', { arrowSide: 'root' });
    const [dashes] = ys(part(turned, 'identification'));
    expect(dashes).toBeGreaterThan(0);
    expect(Math.min(...ys(part(turned, 'mark')))).toBe(dashes);
    // as long as the solid line
    expect(xs(part(turned, 'identification'))).toEqual(xs(part(turned, 'reference')));
  });

  test('shares the solid line with its twin in ISO, and the dashed one goes', () => {
    const joint = defaultJoint('butt', 'doubleV');
    const drawing = draw(joint, 'ISO');
    expect(has(drawing, 'identification')).toBe(false);
    expect(Math.max(...ys(part(drawing, 'mark', 0)))).toBe(0);
    expect(Math.min(...ys(part(drawing, 'mark', 1)))).toBe(0);
    const uneven = draw({ ...joint, rootSideShare: 0.3 }, 'ISO');
    expect(has(uneven, 'identification')).toBe(true);
  });
});

describe('A mark', () => {
  test('of a fillet, bevel or J has its upright side on the left whichever way it points', () => {
    const joints = [
      tee,
      ...(['singleBevel', 'doubleBevel', 'singleJ'] as const).map((form) =>
        defaultJoint('butt', form),
      ),
    ];
    for (const joint of joints) {
      for (const system of systems) {
        for (const arrowSide of ['face', 'root'] as const) {
          const places = part(draw(joint, system, { arrowSide }), 'mark');
          const left = Math.min(...xs(places));
          const upright = ys(places.filter(({ x }) => x === left));
          const heights = ys(places);
          // from the line to the outermost reach, all on the left
          expect(Math.min(...upright)).toBe(Math.min(...heights));
          expect(Math.max(...upright)).toBe(Math.max(...heights));
        }
      }
    }
  });

  test('of a fillet is a triangle with two equal sides', () => {
    const [line, reach, toe] = part(draw(tee, 'AWS'), 'mark') as [Place, Place, Place];
    expect(reach.y - line.y).toBeCloseTo(toe.x - line.x, 1);
    expect(toe.y).toBe(line.y);
  });

  test('stands in line with its twin', () => {
    const drawing = draw({ ...defaultJoint('butt', 'doubleBevel'), rootSideShare: 0.3 }, 'AWS');
    expect(xs(part(drawing, 'mark', 0))).toEqual(xs(part(drawing, 'mark', 1)));
  });
});

describe('What is written at a mark', () => {
  test('is the size left of it, with its letter in ISO', () => {
    const asked = (size: JobSheet['size']): JobSheet => ({ ...sheet, size });
    const first = { unit: 'mm', value: 6 } as const;
    const throat = asked({ as: 'throat', first, second: null });
    const unequal = asked({ as: 'leg', first, second: { unit: 'mm', value: 10 } });
    const written = (system: SymbolSystem, of: JobSheet): string =>
      text(draw(tee, system, {}, of), 'size').text;
    expect(written('ISO', sheet)).toBe('z7');
    expect(written('AWS', sheet)).toBe('7');
    expect(written('ISO', throat)).toBe('a6');
    expect(written('ISO', unequal)).toBe('z6 × z10');
    expect(written('AWS', unequal)).toBe('6 × 10');
    const drawing = draw(tee, 'ISO', {}, unequal);
    expect(boxOf(text(drawing, 'size')).right).toBeLessThan(Math.min(...xs(part(drawing, 'mark'))));
    expect(boxOf(text(drawing, 'size')).left).toBeGreaterThan(0);
  });

  test('is the root opening inside and the groove angle beyond its mouth', () => {
    for (const system of systems) {
      const drawing = draw(defaultJoint('butt', 'singleV'), system);
      const reach = Math.max(...ys(part(drawing, 'mark')).map(Math.abs));
      const middle = (name: SymbolText['part']): number => {
        const { top, bottom } = boxOf(text(drawing, name));
        return Math.abs(top + bottom) / 2;
      };
      expect(text(drawing, 'rootOpening').text).toBe('2');
      expect(text(drawing, 'grooveAngle').text).toBe('60°');
      expect(middle('rootOpening')).toBeLessThan(reach);
      expect(middle('grooveAngle')).toBeGreaterThan(reach);
    }
  });

  test('is the depth of each side of an uneven groove', () => {
    const drawing = draw({ ...defaultJoint('butt', 'doubleV'), rootSideShare: 0.3 }, 'AWS');
    const depths = drawing.texts.filter(({ part: name }) => name === 'depth');
    // 13 on the arrow side, below the line
    expect(depths.map(({ text: words, y }) => [words, y > SIZE / 2])).toEqual([
      ['13', true],
      ['5.5', false],
    ]);
  });

  test('stays clear of everything else that is written', () => {
    for (const symbol of all) {
      const boxes = symbolDrawing(symbol, 'mm', SIZE).texts.map(boxOf);
      boxes.forEach((one, index) => {
        for (const other of boxes.slice(index + 1)) {
          const apart =
            one.right <= other.left ||
            other.right <= one.left ||
            one.bottom <= other.top ||
            other.bottom <= one.top;
          expect(apart).toBe(true);
        }
      });
    }
  });

  test('stays clear of the slanting sides of a V or bevel', () => {
    const { rootOpening } = sheet.groove;
    const lengths = [
      { unit: 'mm', value: 2 },
      { unit: 'mm', value: 2.5 },
      { unit: 'in64', value: 7 },
    ] as const;
    for (const form of ['singleV', 'singleBevel'] as const) {
      for (const nominal of lengths) {
        const groove = { ...sheet.groove, rootOpening: { ...rootOpening, nominal } };
        const drawing = draw(defaultJoint('butt', form), 'ISO', {}, { ...sheet, groove });
        const { left, right, bottom } = boxOf(text(drawing, 'rootOpening'));
        const places = part(drawing, 'mark');
        const mouth = places.filter(({ y }) => y < 0);
        const [foot] = places.filter(({ y }) => y === 0) as [Place];
        for (const { x, y } of mouth) {
          // where the side is at the height of the figure's foot, its nearest
          const side = foot.x + ((x - foot.x) * bottom) / y;
          if (x > (left + right) / 2) expect(side).toBeGreaterThan(right);
          else expect(side).toBeLessThan(left);
        }
      }
    }
  });
});

describe('A contour', () => {
  test('runs along the long side of a fillet, outside it', () => {
    for (const system of systems) {
      const drawing = draw(tee, system, { contour: 'flush' });
      const [, reach, toe] = part(drawing, 'mark') as [Place, Place, Place];
      const [from, to] = part(drawing, 'contour') as [Place, Place];
      const slope = (a: Place, b: Place): number => (b.y - a.y) / (b.x - a.x);
      expect(slope(from, to)).toBeCloseTo(slope(reach, toe), 1);
      expect(from.x).toBeGreaterThan(reach.x);
    }
  });

  test('bends out for convex and in for concave', () => {
    for (const joint of [tee, defaultJoint('butt', 'singleV')]) {
      const bend = (contour: SymbolMarks['contour']): number => {
        const path = draw(joint, 'AWS', { contour }).paths.find(
          ({ part: name }) => name === 'contour',
        );
        const [x1 = 0, y1 = 0, cx = 0, cy = 0, x2 = 0, y2 = 0] =
          path?.d.match(/-?[\d.]+/g)?.map(Number) ?? [];
        // AWS has the arrow side below: out of the weld is down, and right along a fillet
        return cx - (x1 + x2) / 2 + cy - (y1 + y2) / 2;
      };
      expect(bend('convex')).toBeGreaterThan(0);
      expect(bend('concave')).toBeLessThan(0);
    }
  });

  test('lies beyond the angle in AWS and before it in ISO', () => {
    for (const system of systems) {
      const drawing = draw(defaultJoint('butt', 'singleV'), system, { contour: 'flush' });
      const [level = 0] = ys(part(drawing, 'contour')).map(Math.abs);
      const { top, bottom } = boxOf(text(drawing, 'grooveAngle'));
      const beyond = level > Math.max(Math.abs(top), Math.abs(bottom));
      expect(beyond).toBe(system === 'AWS');
    }
  });
});

describe('At the ends of a symbol', () => {
  test('the arrow is broken only where one plate is prepared', () => {
    const bends = (form: (typeof preparations)[number]): number =>
      part(draw(defaultJoint('butt', form), 'AWS'), 'arrow').length;
    expect(bends('singleV')).toBe(2);
    expect(bends('singleU')).toBe(2);
    expect(bends('singleBevel')).toBe(4);
    expect(bends('doubleBevel')).toBe(4);
    expect(bends('singleJ')).toBe(4);
  });

  test('the circle and the flag are at the elbow, the fork at the end of the line', () => {
    const drawing = draw(tee, 'AWS', full);
    const circle = part(drawing, 'allRound');
    expect(circle[0]?.x).toBe(-(circle[1]?.x ?? 0));
    expect(part(drawing, 'field')[0]).toEqual({ x: 0, y: 0 });
    const end = part(drawing, 'reference')[1]?.x;
    expect(part(drawing, 'tail')[1]).toEqual({ x: end, y: 0 });
    expect(text(drawing, 'tail').text).toBe('WPS 12');
    const plain = draw(tee, 'AWS');
    for (const name of ['allRound', 'field', 'tail', 'contour'] as const) {
      expect(has(plain, name)).toBe(false);
    }
  });

  test('the flag keeps off the figures beside the mark', () => {
    const drawing = draw(tee, 'AWS', { ...full, arrowSide: 'root' });
    const pennant = Math.max(...xs(part(drawing, 'field', 1)));
    expect(boxOf(text(drawing, 'size')).left).toBeGreaterThan(pennant);
  });
});

describe('A drawing', () => {
  test('lies whole in its box', () => {
    for (const symbol of all) {
      const { paths, texts, box } = symbolDrawing(symbol, 'mm', SIZE);
      for (const { x, y } of paths.flatMap(placesOf)) {
        expect(x).toBeGreaterThanOrEqual(box.left);
        expect(x).toBeLessThanOrEqual(box.right);
        expect(y).toBeGreaterThanOrEqual(box.top);
        expect(y).toBeLessThanOrEqual(box.bottom);
      }
      for (const { left, right, top, bottom } of texts.map(boxOf)) {
        expect(left).toBeGreaterThanOrEqual(box.left);
        expect(right).toBeLessThanOrEqual(box.right);
        expect(top).toBeGreaterThanOrEqual(box.top);
        expect(bottom).toBeLessThanOrEqual(box.bottom);
      }
    }
  });

  test('is the same at any size', () => {
    for (const symbol of all) {
      const small = symbolDrawing(symbol, 'mm', SIZE).paths.flatMap(placesOf);
      const large = symbolDrawing(symbol, 'mm', 4 * SIZE).paths.flatMap(placesOf);
      expect(large).toHaveLength(small.length);
      large.forEach(({ x, y }, index) => {
        // hundredths of a px are rounded away, four times over
        expect(Math.abs(x - 4 * (small[index]?.x ?? 0))).toBeLessThan(0.03);
        expect(Math.abs(y - 4 * (small[index]?.y ?? 0))).toBeLessThan(0.03);
      });
    }
  });
});
