import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Contour, type Point, pointAt, segmentLength } from '../../../src/geometry/index.ts';
import type { Section } from '../../../src/joint/index.ts';
import {
  defaultJobSheet,
  judge,
  openingLimitSet,
  type Check,
  type JobSheet,
  type SheetLength,
} from '../../../src/limits/index.ts';
import { measure, type MeasurementId } from '../../../src/measure/index.ts';
import { tonesOf } from '../../../src/view/scene/dimension-context.ts';
import { plateCuts } from '../../../src/view/scene/plate-cuts.ts';
import { composeScene, type Scene } from '../../../src/view/scene/scene.ts';
import { toPx } from '../../../src/view/scene/view-transform.ts';
import { fetchRest } from '../../../src/view/text.ts';
import { runs } from '../../runs.ts';
import { anyCalls, anySection, butt, check, sceneOf, SIZES, tee } from './any-scene.ts';
import { cornersOf, holds, polygonsMeet } from './label-corners.ts';

/** Points of every visible edge at most `step` px apart, from the exact contours. */
function edgePoints(section: Section, scene: Scene, step: number): Point[] {
  const cuts = plateCuts(section, scene.view, scene.sheet);
  const points: Point[] = [];
  const add = (contour: Contour, seen: (point: Point) => boolean): void => {
    for (const piece of contour) {
      const count = Math.ceil((segmentLength(piece) * scene.view.scale) / step) + 1;
      for (let n = 0; n <= count; n++) {
        const point = pointAt(piece, n / count);
        if (seen(point)) points.push(toPx(scene.view, point));
      }
    }
  };
  section.plates.forEach((plate, index) => {
    const own = cuts[index] ?? [];
    add(plate, ({ x, y }) =>
      own.every(({ at, away }) => (x - at.x) * away.x + (y - at.y) * away.y < 1e-9),
    );
  });
  for (const region of [...section.welds, ...section.spatter, section.backing ?? []]) {
    add(region, () => true);
  }
  return points;
}

describe('Over any joint, at phone, laptop and wall size,', { timeout: 1_200_000 }, () => {
  test('labels stay on the sheet, apart from each other and clear of the outline', () => {
    fc.assert(
      fc.property(anySection, anyCalls, (section, { calls, lit }) => {
        const checks = calls.map(([id, call]) => check(id, call));
        for (const size of SIZES) {
          const scene = composeScene(sceneOf(section, { checks, lit }, size));
          const labels = scene.labels.map(cornersOf);
          const { width, height } = scene.sheet;
          const outside = labels
            .flat()
            .filter(({ x, y }) => x < 0 || y < 0 || x > width || y > height);
          const overlapping = labels.flatMap((label, index) =>
            labels.slice(index + 1).filter((other) => polygonsMeet(label, other)),
          );
          const edges = edgePoints(section, scene, 3);
          const onOutline = labels.filter((label) => edges.some((point) => holds(label, point)));
          expect({ outside, overlapping, onOutline }).toEqual({
            outside: [],
            overlapping: [],
            onOutline: [],
          });
        }
      }),
      { numRuns: runs(5000) },
    );
  });

  test('what is out of limit or pointed at is never left out while it can be drawn', () => {
    fc.assert(
      fc.property(anySection, anyCalls, (section, { calls, lit }) => {
        const checks = calls.map(([id, call]) => check(id, call));
        for (const size of SIZES) {
          const input = sceneOf(section, { checks, lit }, size);
          const drawn = new Set(composeScene(input).dimensions.map(({ key }) => key));
          for (const id of tonesOf(checks, input.measurements, input.misalignedStep).keys()) {
            const measured = input.measurements.values[id];
            const drawable =
              measured?.value != null &&
              Math.abs(measured.value) >= 5e-4 &&
              measured.witness.kind !== 'none';
            expect(drawn.has(id)).toBe(drawable);
          }
        }
      }),
      { numRuns: runs(1000) },
    );
  });

  test('the same input gives the same drawing, and no path holds anything but numbers', () => {
    fc.assert(
      fc.property(anySection, (section) => {
        const one = composeScene(sceneOf(section));
        expect(composeScene(sceneOf(section))).toEqual(one);
        expect(JSON.stringify(one)).not.toMatch(/NaN|Infinity|undefined|null\s*null/);
      }),
      { numRuns: runs(300) },
    );
  });
});

const keysOf = (scene: Scene): readonly string[] => scene.dimensions.map(({ key }) => key);
const labelled = (scene: Scene, key: string) =>
  scene.dimensions.find((dimension) => dimension.key === key);

const mm = (value: number): SheetLength => ({ unit: 'mm', value });

/** What the opening limit set says of a section whose sheet asks for legs of that many mm. */
function judgedBy(section: Section, leg: number, change: Partial<JobSheet> = {}): readonly Check[] {
  const size = { as: 'leg', first: mm(leg), second: null } as const;
  return judge(measure(section), { ...defaultJobSheet(), size, ...change }, openingLimitSet);
}

describe('The drawing of a plain tee', () => {
  test('shows both legs, both throats and the convexity with their values', () => {
    const scene = composeScene(sceneOf(tee({ convexity: 1 })));
    // 8 / √2 = 5.657 to the chord; a crown of 1 over the middle of it: 6.657.
    expect(keysOf(scene)).toEqual([
      'leg1',
      'leg2',
      'theoreticalThroat',
      'actualThroat',
      'convexity',
    ]);
    expect(labelled(scene, 'leg1')?.value).toBe('8.0');
    expect(labelled(scene, 'theoreticalThroat')?.value).toBe('5.66');
    expect(labelled(scene, 'actualThroat')?.value).toBe('6.66');
    expect(scene.foot.notShown).toBe('');
  });

  test('says which throat governs: on a convex face the theoretical one', () => {
    const scene = composeScene(sceneOf(tee({ convexity: 1 })));
    expect(labelled(scene, 'theoreticalThroat')?.name).toContain('governs');
    expect(labelled(scene, 'actualThroat')?.name).not.toContain('governs');
  });

  test('says of the throat that the sheet judges that it governs, not of a longer one', () => {
    // Legs of 12 and 6 where equal ones of 7 are asked for: the chord lies 12·6/√180 = 5.37 off,
    // but the equal-leg triangle that fits is the one of a 6 mm fillet, 6/√2 = 4.24.
    const section = tee({ leg1: 12, leg2: 6 });
    const scene = composeScene(sceneOf(section, { checks: judgedBy(section, 7) }));
    expect(labelled(scene, 'isoscelesThroat')?.value).toBe('4.24');
    expect(labelled(scene, 'isoscelesThroat')?.name).toContain('governs');
    for (const { key, name } of scene.dimensions) {
      if (key !== 'isoscelesThroat') expect(name).not.toContain('governs');
    }
  });

  test('says of the deep throat that it governs where proven penetration counts', () => {
    const section = tee({ rootPenetration: 2, convexity: 1 });
    const checks = judgedBy(section, 7, { penetrationProven: true });
    const scene = composeScene(sceneOf(section, { checks }));
    expect(labelled(scene, 'deepThroat')?.name).toContain('governs');
  });

  test('says of no throat that it governs where the triangle judged is none of those drawn', () => {
    // 8 : 5 asked for, 8 : 8 welded: the triangle in that ratio is not the one that reaches the toes.
    const section = tee();
    const size = { as: 'leg', first: mm(8), second: mm(5) } as const;
    const scene = composeScene(sceneOf(section, { checks: judgedBy(section, 8, { size }) }));
    expect(scene.dimensions.filter(({ name }) => name.includes('governs'))).toEqual([]);
  });

  test('writes the theoretical throat inside the weld in ink and the legs in the air', () => {
    const scene = composeScene(sceneOf(tee({ convexity: 1 })));
    expect(labelled(scene, 'theoreticalThroat')?.ground).toBe('weld');
    expect(labelled(scene, 'leg1')?.ground).toBe('air');
    expect(labelled(scene, 'leg2')?.ground).toBe('air');
  });

  test('colours an undercut out of limit and leaves the rest plain', () => {
    const checks = [check('undercut2', 'reject'), check('leg1', 'accept')];
    const scene = composeScene(sceneOf(tee({ undercut2Depth: 0.6 }), { checks }));
    expect(labelled(scene, 'undercut2')?.tone).toBe('reject');
    expect(labelled(scene, 'leg1')?.tone).toBe('plain');
  });

  test('writes throats that are one once, in the colour of the worst call on any of them', () => {
    const checks = [check('isoscelesThroat', 'reject'), check('effectiveThroat', 'refer')];
    const scene = composeScene(sceneOf(tee({ convexity: -1 }), { checks }));
    expect(keysOf(scene)).not.toContain('isoscelesThroat');
    expect(labelled(scene, 'theoreticalThroat')?.tone).toBe('reject');
    // 7.6 and 8.2: the equal-leg triangle is a smaller one and has a line of its own.
    const unequal = composeScene(sceneOf(tee({ leg1: 7.6, leg2: 8.2 }), { checks }));
    expect(labelled(unequal, 'isoscelesThroat')?.tone).toBe('reject');
    expect(labelled(unequal, 'theoreticalThroat')?.tone).toBe('refer');
  });

  test('puts what is out of limit over what isn’t, for they may share a line', () => {
    const checks = [check('leg1', 'reject')];
    const scene = composeScene(sceneOf(tee(), { checks }));
    expect(keysOf(scene).at(-1)).toBe('leg1');
  });

  test('draws a quantity that is pointed at even when its construction is switched off', () => {
    const show = { ...sceneOf(tee()).show, legs: false, throats: false };
    const off = composeScene(sceneOf(tee(), { show }));
    expect(keysOf(off)).not.toContain('leg1');
    const on = composeScene(sceneOf(tee(), { show, lit: 'leg1' }));
    expect(labelled(on, 'leg1')?.lit).toBe(true);
  });

  test('draws the triangle of a size that is pointed at', () => {
    const scene = composeScene(sceneOf(tee({ convexity: -1 }), { lit: 'sizeEqual' }));
    // apex, two corners and back
    expect(labelled(scene, 'sizeEqual')?.line).toMatch(/M[\d. -]+(L[\d. -]+){3}$/);
  });

  test('carries the theoretical throat’s line on no further than to the face, where the actual one ends', () => {
    for (const convexity of [0.8, 1, 1.2]) {
      const section = tee({ convexity });
      const scene = composeScene(sceneOf(section, {}, [783, 560, 'presenting']));
      const figures = labelled(scene, 'theoreticalThroat')?.line.match(/[\d.]+/g) ?? [];
      const [x, y, , , , , tailX, tailY] = figures.map(Number);
      const actual = (measure(section).values.actualThroat?.value ?? 0) * scene.view.scale;
      const carried = Math.hypot(Number(tailX) - Number(x), Number(tailY) - Number(y));
      // not drawn on, or up to half the way
      if (tailX !== undefined) expect(carried).toBeLessThan(actual);
    }
  });

  test('drops names before values, and counts what it leaves out', () => {
    const tiny = composeScene(sceneOf(tee({ convexity: 1 }), {}, [200, 170, 'phone']));
    expect(labelled(tiny, 'leg1')?.value).toBe('8.0');
    expect(tiny.foot.notShown).toMatch(/^\d dimensions? not shown$/);
  });

  test('holds still while a value runs, and is fitted anew when the joint outgrows it', () => {
    const first = composeScene(sceneOf(tee()));
    const next = composeScene(sceneOf(tee({ leg1: 8.4 }), { before: first }));
    expect(next.view).toBe(first.view);
    const grown = composeScene(sceneOf(tee({ leg1: 20, leg2: 20 }), { before: first }));
    expect(grown.view.scale).toBeLessThan(first.view.scale);
  });

  test('keeps the view under the hand whatever happens', () => {
    const first = composeScene(sceneOf(tee()));
    const input = { before: first, hold: true };
    expect(composeScene(sceneOf(tee({ leg1: 20 }), input)).view).toBe(first.view);
  });

  test('lays the labels out after a small change as it would have without the drawing before', () => {
    for (const leg1 of [8.05, 8.4, 9, 12]) {
      for (const undercut1Depth of [0, 0.6]) {
        const section = tee({ leg1, undercut1Depth, convexity: 1 });
        const before = composeScene(sceneOf(tee({ convexity: 1 })));
        const alone = { view: before.view, places: new Map() };
        const after = composeScene(sceneOf(section, { before }));
        expect(after.dimensions).toEqual(
          composeScene(sceneOf(section, { before: alone })).dimensions,
        );
      }
    }
  });

  test('lets no label jump under the hand for a place that is hardly better, and settles when let go', () => {
    // A few pixels a step: a label that goes with its dimension moves by no more.
    const steps = Array.from({ length: 60 }, (_, step) => 10 + step * 0.1);
    const jumpsOf = (moving: boolean): number => {
      let before = composeScene(sceneOf(tee({ convexity: 1 })));
      let jumps = 0;
      for (const leg1 of steps) {
        const section = tee({ convexity: 1, leg1 });
        const after = composeScene(sceneOf(section, { before, moving, hold: true }));
        for (const [index, box] of after.labels.entries()) {
          const was = before.labels[index];
          if (was !== undefined && Math.hypot(box.x - was.x, box.y - was.y) > 20) jumps++;
        }
        before = after;
      }
      const last = tee({ convexity: 1, leg1: steps.at(-1) ?? 8 });
      const settled = composeScene(sceneOf(last, { before, hold: true }));
      const alone = { view: before.view, places: new Map() };
      const fresh = composeScene(sceneOf(last, { before: alone, hold: true }));
      expect(settled.dimensions).toEqual(fresh.dimensions);
      return jumps;
    };
    expect(jumpsOf(true)).toBeLessThan(jumpsOf(false));
  });

  test('is drawn at 96/25.4 px per mm when true size is asked for', () => {
    const scene = composeScene(sceneOf(tee(), { trueToSize: true }));
    expect(scene.view.scale).toBeCloseTo(3.7795, 4);
    expect(scene.foot.scale).toContain('1 : 1');
  });

  test('is drawn by the scale of the reader’s own screen once that is measured', () => {
    const measured = composeScene(sceneOf(tee(), { trueToSize: true, trueScale: 6.3 }));
    expect(measured.view.scale).toBe(6.3);
    // Enlarged it is still so many times life size that it can be said: 5.6 : 1, not 5.67 : 1.
    const enlarged = composeScene(sceneOf(tee(), { trueScale: 6.3 }));
    const times = enlarged.view.scale / 6.3;
    expect(Math.abs(times * 10 - Math.round(times * 10))).toBeLessThan(1e-9);
  });
});

describe('The drawing of a butt joint', () => {
  test('dimensions a single-V fit-up: opening, groove angle, root face, bevel, width, thicknesses', () => {
    const scene = composeScene(sceneOf(butt({ stage: 'fitUp' })));
    expect([...keysOf(scene)].sort()).toEqual(
      ['bevelAngle1', 'grooveAngle', 'grooveWidth', 'rootFace', 'rootOpening', 't1', 't2'].sort(),
    );
    expect(labelled(scene, 'grooveAngle')?.value).toBe('60°');
  });

  test('dimensions a step once where both surfaces step alike, twice where they do not', () => {
    const alike = composeScene(sceneOf(butt({ offset: 1 })));
    expect(keysOf(alike)).toContain('faceStep');
    expect(keysOf(alike)).not.toContain('rootStep');
    // t2 = 13 centred 0.5 up: the face steps by 1, the root not at all.
    const unlike = composeScene(sceneOf(butt({ t2: 13, offset: 0.5 })));
    expect(keysOf(unlike)).toContain('faceStep');
    expect(keysOf(unlike)).not.toContain('rootStep');
  });

  test('draws and colours only the step that misalignment is read from, the other plain', () => {
    // Plates of 12 and 10 whose mid-planes stand 2 apart: the face steps by 1, the root by 3.
    const section = butt({ t1: 12, t2: 10, offset: 2 });
    const checks = [check('misalignment', 'reject')];
    const toneOf = (misalignedStep: MeasurementId): unknown => {
      const scene = composeScene(sceneOf(section, { checks, misalignedStep }));
      return ['faceStep', 'rootStep', 'centrelineOffset'].map(
        (key) => labelled(scene, key)?.tone ?? null,
      );
    };
    expect(toneOf('faceStep')).toEqual(['reject', 'plain', null]);
    expect(toneOf('rootStep')).toEqual(['plain', 'reject', null]);
    expect(toneOf('centrelineOffset')).toEqual(['plain', 'plain', 'reject']);
  });

  test('calls the step that is judged by the name that its row has, the other by its own', async () => {
    await fetchRest();
    const section = butt({ t1: 12, t2: 10, offset: 2 });
    const named = (checks: readonly Check[]): unknown => {
      const scene = composeScene(sceneOf(section, { checks, misalignedStep: 'rootStep' }));
      return ['faceStep', 'rootStep'].map((key) => labelled(scene, key)?.name.trim());
    };
    expect(named([])).toEqual(['face step', 'root step']);
    expect(named([check('misalignment', 'accept')])).toEqual(['face step', 'misalignment']);
    // a set may judge a step by its own name, beside the misalignment or without it
    expect(named([check('faceStep', 'accept')])).toEqual(['face step', 'root step']);
    const both = [check('faceStep', 'accept'), check('misalignment', 'accept')];
    expect(named(both)).toEqual(['face step', 'misalignment']);
  });

  test('lights the step that is judged', () => {
    const section = butt({ t1: 12, t2: 10, offset: 2 });
    const scene = composeScene(
      sceneOf(section, { lit: 'misalignment', misalignedStep: 'rootStep' }),
    );
    expect(labelled(scene, 'rootStep')?.lit).toBe(true);
    expect(labelled(scene, 'faceStep')?.lit).toBe(false);
  });

  test('shows the reinforcement that the sheet judges', () => {
    const checks = [check('faceReinforcement.lower', 'accept')];
    const scene = composeScene(sceneOf(butt({ offset: 1 }), { checks }));
    expect(keysOf(scene)).toContain('faceReinforcement.lower');
    expect(keysOf(scene)).not.toContain('faceReinforcement.higher');
  });
});

describe('A dimension that says nothing', () => {
  // Less than a tenth of a millimetre on the paper: common practice, no source.
  const keys = (section: Section, changes: Parameters<typeof sceneOf>[1] = {}) =>
    keysOf(composeScene(sceneOf(section, changes)));

  test('of a step or penetration that reads as nothing is left out', () => {
    expect(keys(butt({ offset: -0.01 }))).not.toContain('faceStep');
    expect(keys(butt({ offset: -0.2 }))).toContain('faceStep');
    expect(keys(tee({ rootPenetration: 0.03 }))).not.toContain('rootPenetration');
    expect(keys(tee({ rootPenetration: 0.5 }))).toContain('rootPenetration');
  });

  test('stays where it is out of limit or pointed at', () => {
    const checks = [check('misalignment', 'reject')];
    expect(keys(butt({ offset: -0.01 }), { checks })).toContain('faceStep');
    expect(keys(butt({ offset: -0.01 }), { lit: 'misalignment' })).toContain('faceStep');
  });

  test('is that of a thickness that the drawing tells already, unless it is what is asked', () => {
    const section = butt({ t1: 12, t2: 10 });
    expect(keys(section)).toEqual(expect.arrayContaining(['t1', 't2']));
    const told = new Set(['t1'] as const);
    expect(keys(section, { told })).not.toContain('t1');
    expect(keys(section, { told })).toContain('t2');
    expect(keys(section, { told, lit: 't1' })).toContain('t1');
  });
});

describe('On the wall, two sections side by side', () => {
  test('the throat that governs is drawn before the actual one, at the sizes of half a wall', () => {
    for (const [width, height] of [
      [560, 540],
      [586, 560],
      [620, 580],
      [860, 580],
    ] as const) {
      for (const convexity of [0.5, 1, 1.5, 2.5]) {
        const section = tee({ convexity });
        const show = { ...sceneOf(section).show, chord: false, band: false };
        const checks = judgedBy(section, 8);
        const input = sceneOf(section, { checks, show }, [width, height, 'presenting']);
        const scene = composeScene(input);
        // 8 / √2 on a convex face, however far it stands out.
        expect(labelled(scene, 'theoreticalThroat')?.value).toBe('5.66');
        expect(scene.foot.bar?.length.mm).toBe(5);
      }
    }
  });
});
