import { describe, expect, test } from 'vitest';
import { build, defaultJoint, type Section } from '../../../src/joint/index.ts';
import { measure } from '../../../src/measure/index.ts';
import { callDrawing, type CallDrawingInput } from '../../../src/view/scene/call-drawing.ts';
import { mirrored } from '../../../src/view/scene/mirrored.ts';

// What an inspector sees of a joint, and what a question may tell: common practice, no source.

const asked = (section: Section, more: Partial<CallDrawingInput> = {}): CallDrawingInput => ({
  section,
  width: 830,
  height: 620,
  phone: false,
  view: 'outside',
  rootAccessible: false,
  known: { plate: 0, mm: 12 },
  held: null,
  runScale: null,
  trueScale: null,
  ...more,
});
const tee = (rootGap: number): Section => build({ ...defaultJoint('fillet'), rootGap });

describe('the drawing of a question', () => {
  test('from outside the gap under a fillet is closed; a cut leaves it open', () => {
    expect(callDrawing(asked(tee(2))).closed?.fill).not.toBe('');
    expect(callDrawing(asked(tee(0))).closed?.fill).toBe('');
    expect(callDrawing(asked(tee(2), { view: 'cut' })).closed).toBeNull();
  });

  test('before welding the gap is open from outside too', () => {
    const section = build({ ...defaultJoint('fillet'), stage: 'fitUp', rootGap: 2 });
    expect(callDrawing(asked(section)).closed?.fill).toBe('');
  });

  test('a root that no eye gets to gives the same drawing whatever lies there', () => {
    const joint = defaultJoint('butt');
    const drawn = (root: object, rootAccessible: boolean) => {
      const section = build({ ...joint, ...root });
      return callDrawing(asked(section, { rootAccessible, held: 12 })).closed;
    };
    const [flat, high] = [{ rootHeight: 0.2 }, { rootHeight: 2.5 }];
    expect(drawn(flat, false)?.breaks).not.toBe('');
    expect(drawn(flat, true)?.breaks).toBe('');
    // from its own start, for where on the paper it lies may differ
    const shape = (path = ''): readonly number[] => {
      const numbers = (path.match(/-?\d+(\.\d+)?/gu) ?? []).map(Number);
      return numbers.map((number, index) => Math.round(number - (numbers[index % 2] ?? 0)));
    };
    expect(shape(drawn(high, false)?.breaks)).toEqual(shape(drawn(flat, false)?.breaks));
  });

  test('shows metal of both plates, however thick they are and however they lean', () => {
    const papers = [
      { width: 830, height: 620, phone: false },
      { width: 360, height: 280, phone: true },
    ] as const;
    const without: string[] = [];
    const look = (section: Section, name: string): void => {
      for (const paper of papers) {
        for (const shown of [section, mirrored(section)]) {
          const { body } = callDrawing(asked(shown, { view: 'cut', ...paper }));
          if (body.plates.includes('')) without.push(`${name}, ${paper.width} wide`);
        }
      }
    };
    for (const t of [4, 12, 40]) {
      for (let tenths = 600; tenths <= 1350; tenths += tenths >= 870 && tenths < 930 ? 1 : 10) {
        const joint = {
          ...defaultJoint('fillet'),
          ...{ t1: t, t2: t, leg1: 4, leg2: 4, dihedralAngle: tenths / 10 },
        };
        look(build({ ...joint, endCut: 'fitted' }), `tee ${t} mm at ${tenths / 10}°`);
      }
      for (const arrangement of t > 4 ? (['lap', 'corner'] as const) : []) {
        look(
          build({ ...defaultJoint('fillet', arrangement), t1: t, t2: t, leg1: 3, leg2: 3 }),
          `${arrangement} ${t} mm`,
        );
      }
      for (let bent = -10; bent <= 10; bent += 0.5) {
        const joint = { ...defaultJoint('butt'), t1: t, t2: t, rootFace1: 1, rootFace2: 1 };
        look(build({ ...joint, angularMisalignment: bent }), `butt ${t} mm bent ${bent}°`);
      }
    }
    expect(without).toEqual([]);
  });

  test('sections of one run are drawn within a tenth of the first one’s scale', () => {
    const first = callDrawing(asked(tee(0))).view.scale;
    for (const leg of [6, 7, 9, 10]) {
      const section = build({ ...defaultJoint('fillet'), leg1: leg, leg2: leg });
      const { scale } = callDrawing(asked(section, { held: first })).view;
      expect(Math.abs(scale / first - 1)).toBeLessThanOrEqual(0.1 + 1e-9);
    }
  });

  test('the drawing held at its own scale doesn’t move: its answer stands in the same place', () => {
    const open = callDrawing(asked(tee(0), { held: 17 }));
    expect(callDrawing(asked(tee(0), { held: 17 })).view).toEqual(open.view);
    const first = callDrawing(asked(tee(0)));
    expect(callDrawing(asked(tee(0), { held: first.view.scale })).view).toEqual(first.view);
  });

  test('the known size is as long on the paper as it is in the metal', () => {
    const { known, view } = callDrawing(asked(tee(0)));
    const [first, second] = [known.points[0], known.points[4]];
    const long = Math.hypot((first?.x ?? 0) - (second?.x ?? 0), (first?.y ?? 0) - (second?.y ?? 0));
    expect(long).toBeCloseTo(12, 9);
    expect(view.scale).toBeGreaterThan(3);
  });
});

describe('a section turned left to right', () => {
  test('turned twice it is what it was, and no value changes', () => {
    const section = build({ ...defaultJoint('fillet'), convexity: 1, undercut2Depth: 0.6 });
    const measured = measure(section);
    expect(mirrored(mirrored(measured))).toEqual(measured);
    const values = (of: typeof measured) =>
      Object.values(of.values).map(({ id, value }) => [id, value]);
    expect(values(mirrored(measured))).toEqual(values(measured));
  });

  test('its toes lie on the other side', () => {
    const section = build(defaultJoint('fillet'));
    expect(mirrored(section).face.toes?.[0].x).toBeCloseTo(-(section.face.toes?.[0].x ?? NaN), 12);
    expect(mirrored(section).face.toes?.[0].y).toBe(section.face.toes?.[0].y);
  });
});
