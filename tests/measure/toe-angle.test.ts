import { describe, expect, it } from 'vitest';
import { at, handButt, handFillet, pathOf } from '../section-fixtures.ts';
import { about, read, valueOf } from './reading.ts';

// ISO 6520-1, 505: the angle through the air; from memory, verify. 180° is flush.

describe('the toe angle of a fillet', () => {
  it('is 135° at both toes of an equal flat face at a right angle', () => {
    const flat = handFillet({ leg1: 8, leg2: 8 });
    expect(valueOf(flat, 'toeAngle1')).toBeCloseTo(135, 12);
    expect(valueOf(flat, 'toeAngle2')).toBeCloseTo(135, 12);
  });

  it('is smaller where the face stands steeper, and that one is judged', () => {
    // 3-4-5: at toe 1 the face stands atan(8/6) = 53.13° off plate 1
    const steep = handFillet({ leg1: 6, leg2: 8 });
    const lean = (Math.atan2(8, 6) * 180) / Math.PI;
    expect(valueOf(steep, 'toeAngle1')).toBeCloseTo(180 - lean, 12);
    expect(valueOf(steep, 'toeAngle2')).toBeCloseTo(90 + lean, 12);
    expect(valueOf(steep, 'toeAngle')).toBe(valueOf(steep, 'toeAngle1'));
    const other = handFillet({ leg1: 8, leg2: 6 });
    expect(valueOf(other, 'toeAngle')).toBe(valueOf(other, 'toeAngle2'));
    expect(read(other, 'toeAngle').witness).toEqual(read(other, 'toeAngle2').witness);
  });

  it('is shown counter-clockwise through the air at either toe', () => {
    const flat = handFillet({ leg1: 8, leg2: 8 });
    const arm = Math.SQRT1_2;
    expect(read(flat, 'toeAngle1').witness).toEqual({
      kind: 'angle',
      vertex: at(8, 0),
      from: at(9, 0),
      to: { x: about(8 - arm), y: about(arm) },
    });
    // at toe 2 the face comes first, then plate 2's surface
    expect(read(flat, 'toeAngle2').witness).toEqual({
      kind: 'angle',
      vertex: { x: about(0), y: 8 },
      from: { x: about(arm), y: about(8 - arm) },
      to: { x: about(0), y: 9 },
    });
  });

  it('is under 90° where the weld overhangs', () => {
    // under-surface rising 1 in 2 from the toe outwards: atan(1/2) = 26.565°
    const bead = pathOf([at(8, 0), at(10, 1), at(8, 3), at(0, 8)]);
    const over = handFillet({ leg1: 8, leg2: 8, bead, lips: [at(10, 0), at(0, 8)] });
    expect(valueOf(over, 'toeAngle1')).toBeCloseTo((Math.atan2(1, 2) * 180) / Math.PI, 12);
  });

  it('is 0 where overhanging metal lies flat on the plate', () => {
    const bead = pathOf([at(8, 0), at(10, 0), at(9, 2), at(0, 8)]);
    const flat = handFillet({ leg1: 8, leg2: 8, bead, lips: [at(10, 0), at(0, 8)] });
    expect(valueOf(flat, 'toeAngle1')).toBeCloseTo(0, 12);
  });
});

describe('the toe angle of a butt weld', () => {
  it('is 180° where the cap is flush', () => {
    const flush = handButt({ t1: 10, faceBead: pathOf([at(-6, 10), at(6, 10)]) });
    expect(valueOf(flush, 'toeAngle')).toBeCloseTo(180, 12);
  });

  it('opens beyond 180° where the face dips into the groove', () => {
    // falls 1 in 6 from either toe: 180 + atan(1/6)
    const low = handButt({ t1: 10, faceBead: pathOf([at(-6, 10), at(0, 9), at(6, 10)]) });
    const dip = (Math.atan2(1, 6) * 180) / Math.PI;
    expect(valueOf(low, 'toeAngle1')).toBeCloseTo(180 + dip, 12);
    expect(valueOf(low, 'toeAngle2')).toBeCloseTo(180 + dip, 12);
  });

  it('goes on opening where the face digs in under the plate’s surface', () => {
    // leaves the toe outwards and down, 1 in 1: 180 + 135
    const dug = handButt({ t1: 10, faceBead: pathOf([at(-6, 10), at(-7, 9), at(6, 10)]) });
    expect(valueOf(dug, 'toeAngle1')).toBeCloseTo(315, 12);
  });
});
