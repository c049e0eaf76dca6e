import { describe, expect, it } from 'vitest';
import type { Groove, Section } from '../../src/joint/index.ts';
import { measure } from '../../src/measure/index.ts';
import { at, handButt, pathOf, tilted } from '../section-fixtures.ts';
import { about, endsOf, read, valueOf } from './reading.ts';

// AWS A3.0 and ISO 9692-1 terms, from memory, verify.

const withGroove = (section: Section, changes: Partial<Groove>): Section => ({
  ...section,
  groove: section.groove && { ...section.groove, ...changes },
});

describe('the angles of a V', () => {
  // 10 mm plates, root face 1: bevels set back 9 tan 30° = 5.196 over a height of 9
  const setback = 9 * Math.tan(Math.PI / 6);
  const vee = handButt({ t1: 10, setback });

  it('are 30° a side and 60° in all', () => {
    expect(valueOf(vee, 'bevelAngle1')).toBeCloseTo(30, 12);
    expect(valueOf(vee, 'bevelAngle2')).toBeCloseTo(30, 12);
    expect(valueOf(vee, 'grooveAngle')).toBeCloseTo(60, 12);
  });

  it('do not change when a plate is turned: each counts from its own plate’s normal', () => {
    const turned = tilted(vee, 8);
    expect(valueOf(turned, 'bevelAngle2')).toBeCloseTo(30, 12);
    expect(valueOf(turned, 'grooveAngle')).toBeCloseTo(60, 12);
  });

  it('show the bevel angle at its foot between normal and bevel', () => {
    expect(read(vee, 'bevelAngle2').witness).toEqual({
      kind: 'angle',
      vertex: at(1, 1),
      from: { x: about(3.5), y: about(1 + 5 * Math.cos(Math.PI / 6)) },
      to: at(1, 6),
    });
    expect(read(vee, 'bevelAngle1').witness).toMatchObject({ vertex: at(-1, 1), from: at(-1, 6) });
  });

  it('show the groove angle where the two bevels carried on would cross', () => {
    // bevel 2 through (1, 1) rising 1/tan 30° per mm: crosses x = 0 at 1 - √3
    const { witness } = read(vee, 'grooveAngle');
    expect(witness).toMatchObject({
      kind: 'angle',
      vertex: { x: about(0), y: about(1 - Math.sqrt(3)) },
    });
    if (witness.kind !== 'angle') throw new Error('no angle');
    // counter-clockwise from the right-hand bevel to the left-hand one
    expect(witness.from.x).toBeCloseTo(2.5, 12);
    expect(witness.to.x).toBeCloseTo(-2.5, 12);
  });

  it('are the same whichever way the bevel is walked', () => {
    const reversed = withGroove(vee, {
      faceBevels: [
        pathOf([at(-1 - setback, 10), at(-1, 1)]),
        pathOf([at(1 + setback, 10), at(1, 1)]),
      ],
    });
    expect(valueOf(reversed, 'grooveAngle')).toBeCloseTo(60, 12);
  });
});

describe('the angles of a single bevel', () => {
  const half = handButt({ t1: 10, setback: 9 });
  const single = withGroove(half, { faceBevels: [half.groove?.faceBevels[0] ?? null, null] });

  it('are those of the bevelled plate alone', () => {
    expect(valueOf(single, 'bevelAngle1')).toBeCloseTo(45, 12);
    expect(measure(single).values.bevelAngle2).toBeUndefined();
    expect(valueOf(single, 'grooveAngle')).toBeCloseTo(45, 12);
  });

  it('show the groove angle against the square edge of the other', () => {
    // bevel 1 through (-1, 1) at 45° meets the upright through plate 2's groove edge, x = 10, at y = -10
    expect(read(single, 'grooveAngle').witness).toMatchObject({
      vertex: { x: about(10), y: about(-10) },
      from: { x: about(10), y: about(-5) },
    });
  });

  it('show it against the surface’s own start where the groove edges are not known', () => {
    const unknown = { ...single, face: { ...single.face, grooveEdges: null } };
    expect(read(unknown, 'grooveAngle').witness).toEqual(read(single, 'grooveAngle').witness);
  });

  it('of plate 2 alone are shown against the square edge of plate 1', () => {
    const other = withGroove(half, { faceBevels: [null, half.groove?.faceBevels[1] ?? null] });
    expect(measure(other).values.bevelAngle1).toBeUndefined();
    expect(valueOf(other, 'bevelAngle2')).toBeCloseTo(45, 12);
    // bevel 2 through (1, 1) at 45° meets the upright through plate 1's groove edge, x = -10, at y = -10
    expect(read(other, 'grooveAngle').witness).toMatchObject({
      vertex: { x: about(-10), y: about(-10) },
      to: { x: about(-10), y: about(-5) },
    });
  });

  it('show nothing to cross when bevel and square edge are parallel', () => {
    const upright = withGroove(half, { faceBevels: [pathOf([at(-1, 1), at(-1, 10)]), null] });
    expect(valueOf(upright, 'grooveAngle')).toBe(0);
    expect(read(upright, 'grooveAngle').witness).toEqual({ kind: 'none' });
  });
});

describe('the angles of a two-sided groove', () => {
  const vee = handButt({ t1: 10, setback: 3 });
  const double = withGroove(vee, {
    rootBevels: [pathOf([at(-1, 1), at(-2, 0)]), pathOf([at(1, 1), at(2, 0)])],
  });

  it('are told apart by side', () => {
    expect(valueOf(double, 'rootBevelAngle1')).toBeCloseTo(45, 12);
    expect(valueOf(double, 'rootBevelAngle2')).toBeCloseTo(45, 12);
    expect(valueOf(double, 'rootGrooveAngle')).toBeCloseTo(90, 12);
    expect(valueOf(double, 'bevelAngle1')).toBeCloseTo((Math.atan2(3, 9) * 180) / Math.PI, 12);
  });

  it('have no root side on a section without one', () => {
    expect(measure({ ...double, root: null }).values.rootGrooveAngle).toBeUndefined();
    expect(measure(vee).values.rootGrooveAngle).toBeUndefined();
  });
});

describe('square edges', () => {
  const square = withGroove(handButt({ t1: 4, setback: 0, rootFace: 0 }), {
    faceBevels: [null, null],
    rootFaces: [pathOf([at(-1, 0), at(-1, 4)]), pathOf([at(1, 0), at(1, 4)])],
  });

  it('have neither bevel nor groove angle nor root face', () => {
    const { values } = measure(square);
    for (const id of [
      'bevelAngle1',
      'grooveAngle',
      'rootFace',
      'rootFace1',
      'rootRadius',
    ] as const) {
      expect(values[id]).toBeUndefined();
    }
  });

  it('have a root opening and a groove width', () => {
    expect(valueOf(square, 'rootOpening')).toBe(2);
    expect(valueOf(square, 'grooveWidth')).toBe(2);
  });
});

describe('the root opening', () => {
  it('is the least gap along plate 1’s surface, shown from plate 1’s edge', () => {
    const vee = handButt({ t1: 10, opening: 3 });
    expect(valueOf(vee, 'rootOpening')).toBe(3);
    expect(endsOf(vee, 'rootOpening')).toEqual([-1.5, 0, 1.5, 0]);
  });

  it('is taken between the foremost points even when they are not level', () => {
    // plate 2 one millimetre up: its nose runs from (1, 1) to (1, 2)
    const offset = handButt({ t1: 10, step: 1 });
    expect(valueOf(offset, 'rootOpening')).toBe(2);
    expect(endsOf(offset, 'rootOpening')).toEqual([-1, 0, 1, 0]);
    expect(read(offset, 'rootOpening').witness).toMatchObject({
      extensions: [[at(1, 1), at(1, 0)]],
    });
  });

  it('narrows to the foremost corner when plate 2 is turned up', () => {
    // plate 2 turned 10° about its face edge (6, 10): its root corner, 5 left of and 10
    // below it, comes to x = 6 - 5 cos 10° + 10 sin 10°; its nose top (1, 1), 9 below, to
    // 6 - 5 cos 10° + 9 sin 10°, which lies farther left
    const turned = tilted(handButt({ t1: 10 }), 10);
    const turn = Math.PI / 18;
    const foremost = 6 - 5 * Math.cos(turn) + 9 * Math.sin(turn);
    expect(valueOf(turned, 'rootOpening')).toBeCloseTo(foremost + 1, 12);
  });

  it('is not taken without edges', () => {
    const bare = withGroove(handButt({ t1: 10 }), { preparedEdges: [[], []] });
    expect(measure(bare).values.rootOpening).toBeUndefined();
    const half = withGroove(handButt({ t1: 10 }), {
      preparedEdges: [pathOf([at(-1, 0), at(-1, 1)]), []],
    });
    expect(measure(half).values.rootOpening).toBeUndefined();
  });
});

describe('the root face', () => {
  it('is the unbevelled height of each plate, the lesser judged', () => {
    const vee = handButt({ t1: 10, rootFace: 2 });
    const uneven = withGroove(vee, {
      rootFaces: [pathOf([at(-1, 0), at(-1, 2)]), pathOf([at(1, 0), at(1, 1.5)])],
    });
    expect(valueOf(uneven, 'rootFace1')).toBe(2);
    expect(valueOf(uneven, 'rootFace2')).toBe(1.5);
    expect(valueOf(uneven, 'rootFace')).toBe(1.5);
    expect(read(uneven, 'rootFace').id).toBe('rootFace');
    expect(endsOf(uneven, 'rootFace')).toEqual([1, 0, 1, 1.5]);
    expect(valueOf(vee, 'rootFace')).toBe(2);
    expect(endsOf(vee, 'rootFace')).toEqual([-1, 0, -1, 2]);
  });

  it('is nothing on a feather edge', () => {
    const feather = withGroove(handButt({ t1: 10 }), { rootFaces: [[], []] });
    expect(valueOf(feather, 'rootFace')).toBe(0);
    expect(read(feather, 'rootFace1').witness).toEqual({ kind: 'none' });
  });

  it('counts along the plate’s own normal when the plate is turned', () => {
    expect(valueOf(tilted(handButt({ t1: 10, rootFace: 2 }), 9), 'rootFace2')).toBeCloseTo(2, 12);
  });
});

describe('the root radius', () => {
  it('is that of the curve, the smaller of two', () => {
    // quarter circles of radius 4 and 3: bulge tan 22.5°
    const quarter = Math.tan(Math.PI / 8);
    const curved = withGroove(handButt({ t1: 10 }), {
      preparedEdges: [
        pathOf([at(-1, 0), at(-1, 1), at(-5, 5)], [0, quarter]),
        pathOf([at(1, 0), at(1, 1), at(4, 4)], [0, -quarter]),
      ],
    });
    expect(valueOf(curved, 'rootRadius')).toBeCloseTo(3, 12);
    const [fromX, fromY, toX, toY] = endsOf(curved, 'rootRadius');
    expect(Math.hypot(toX - fromX, toY - fromY)).toBeCloseTo(3, 12);
  });
});

describe('a butt joint without a groove', () => {
  it('has neither angles nor opening nor area', () => {
    const { values } = measure({ ...handButt({ t1: 10 }), groove: null });
    for (const id of ['grooveAngle', 'rootOpening', 'grooveArea', 'mass'] as const) {
      expect(values[id]).toBeUndefined();
    }
  });

  it('has no groove width where its edges are not known', () => {
    const section = handButt({ t1: 10 });
    const { values } = measure({ ...section, face: { ...section.face, grooveEdges: null } });
    expect(values.grooveWidth).toBeUndefined();
  });
});
