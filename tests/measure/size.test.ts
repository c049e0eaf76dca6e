import { describe, expect, it } from 'vitest';
import { measure, sizeForRatio } from '../../src/measure/index.ts';
import { at, handButt, handFillet, pathOf, unwelded } from '../section-fixtures.ts';
import { about, read, valueOf } from './reading.ts';

// Size: US Army TC 9-237, 6-8d. The unequal concave numbers are closed forms (derived):
// 8 x 12 with 1 mm concavity, one arc: 7.885 isosceles, 6.798 x 10.197 parallel to the chord.

describe('the size of a concave unequal fillet, 8 x 12 with a 1 mm hollow', () => {
  const hollow = handFillet({ leg1: 8, leg2: 12, sagitta: -1 });

  it('is 7.885 for equal legs: less than the lesser leg, because the hollow reaches into that triangle', () => {
    expect(valueOf(hollow, 'sizeEqual')).toBeCloseTo(7.885, 3);
  });

  it('is 6.798 x 10.197 for legs as measured', () => {
    // chord throat 96/√208 = 6.6564; (6.6564 - 1)/6.6564 of each leg
    const share = 1 - Math.sqrt(208) / 96;
    expect(valueOf(hollow, 'sizePair.1')).toBeCloseTo(8 * share, 12);
    expect(valueOf(hollow, 'sizePair.2')).toBeCloseTo(12 * share, 12);
    expect(valueOf(hollow, 'sizePair.1')).toBeCloseTo(6.798, 3);
  });

  it('shows the triangle that touches the face', () => {
    const { witness } = read(hollow, 'sizeEqual');
    const size = valueOf(hollow, 'sizeEqual');
    expect(witness).toEqual({
      kind: 'triangle',
      apex: at(0, 0),
      corner1: { x: about(size), y: about(0) },
      corner2: { x: about(0), y: about(size) },
    });
  });
});

describe('the size of a convex fillet', () => {
  it('counts nothing beyond the chord', () => {
    const swell = handFillet({ leg1: 8, leg2: 8, sagitta: 1.5 });
    expect(valueOf(swell, 'sizeEqual')).toBeCloseTo(8, 12);
    expect(valueOf(swell, 'isoscelesThroat')).toBeCloseTo(8 / Math.SQRT2, 12);
  });

  it('is the lesser leg when the legs differ', () => {
    const swell = handFillet({ leg1: 6, leg2: 10, sagitta: 1 });
    expect(valueOf(swell, 'sizeEqual')).toBeCloseTo(6, 12);
    expect(valueOf(swell, 'isoscelesThroat')).toBeCloseTo(6 / Math.SQRT2, 12);
    // right triangle 6 x 10: 60 / √136
    expect(valueOf(swell, 'theoreticalThroat')).toBeCloseTo(60 / Math.sqrt(136), 12);
  });
});

describe('the throats of the size triangles', () => {
  it('run from O square to the third side, and show the triangle', () => {
    const flat = handFillet({ leg1: 8, leg2: 8 });
    const half = { x: about(4), y: about(4) };
    const corner1 = { x: about(8), y: about(0) };
    const corner2 = { x: about(0), y: about(8) };
    const apex = at(0, 0);
    expect(read(flat, 'isoscelesThroat').witness).toEqual({
      kind: 'distance',
      from: apex,
      to: half,
      extensions: [],
      construction: [
        [apex, corner1],
        [corner1, corner2],
        [corner2, apex],
      ],
    });
  });
});

describe('the size for a specified ratio of legs', () => {
  const flat = handFillet({ leg1: 6, leg2: 12 });

  it('fits the specified shape, not the measured one', () => {
    // equal legs within 6 x 12: 6 x 6, throat 6/√2
    expect(sizeForRatio(flat, 1)).toMatchObject({
      leg1: about(6),
      leg2: about(6),
      throat: about(6 / Math.SQRT2),
      note: null,
    });
    // 1 : 4 within 6 x 12: leg 2 ends at the toe, 3 x 12, throat 36/√153
    expect(sizeForRatio(flat, 0.25)).toMatchObject({
      leg1: about(3),
      leg2: about(12),
      throat: about(36 / Math.sqrt(153)),
    });
  });

  it('is the measured pair when the measured ratio is asked for', () => {
    const hollow = handFillet({ leg1: 8, leg2: 12, sagitta: -1 });
    const { values } = measure(hollow);
    const pair = sizeForRatio(hollow, 8 / 12);
    expect(pair?.leg1).toBeCloseTo(values['sizePair.1']?.value ?? NaN, 12);
    expect(pair?.throat).toBeCloseTo(values.theoreticalThroat?.value ?? NaN, 12);
  });

  it('carries its triangle, and what leaves leg 2 open', () => {
    expect(sizeForRatio(flat, 1)?.witness).toMatchObject({ kind: 'triangle', apex: at(0, 0) });
    const gone = handFillet({ leg1: 6, leg2: 6, edge: [] });
    expect(sizeForRatio(gone, 1)?.note).toEqual({ key: 'measure_note_edge_gone', refer: true });
  });

  it('has no answer without a fillet weld, or for a ratio that is none', () => {
    expect(sizeForRatio(unwelded(flat), 1)).toBeNull();
    expect(
      sizeForRatio(handButt({ t1: 10, faceBead: pathOf([at(-6, 10), at(6, 10)]) }), 1),
    ).toBeNull();
    for (const ratio of [0, -1, NaN, Infinity]) expect(sizeForRatio(flat, ratio)).toBeNull();
  });
});
