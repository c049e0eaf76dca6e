import { describe, expect, it } from 'vitest';
import { at, handButt, handFillet, pathOf } from '../section-fixtures.ts';
import { endsOf, read, valueOf } from './reading.ts';

// ISO 6520-1, 506; how it is measured: from memory, verify.

describe('overlap', () => {
  it('counts metal that overhangs without touching the plate', () => {
    // the under-surface leaves the toe at once; its nose is 1.5 mm out and 0.6 mm up
    const bead = pathOf([at(8, 0), at(9.5, 0.6), at(8.5, 2), at(0, 8)]);
    const over = handFillet({ leg1: 8, leg2: 8, bead, lips: [at(9.5, 0), at(0, 8)] });
    expect(valueOf(over, 'overlap1')).toBeCloseTo(1.5, 12);
    expect(endsOf(over, 'overlap1')).toEqual([8, 0, 9.5, 0]);
    expect(valueOf(over, 'overlap2')).toBe(0);
  });

  it('is none where the face runs on to the other toe', () => {
    const flat = handFillet({ leg1: 8, leg2: 8 });
    expect(valueOf(flat, 'overlap1')).toBe(0);
    expect(read(flat, 'overlap1').witness).toEqual({ kind: 'none' });
  });

  it('is counted on plate 2 of a butt weld, along its surface', () => {
    const bead = pathOf([at(-7, 10), at(0, 12), at(8, 11), at(7, 10)]);
    const over = handButt({ t1: 10, faceBead: bead, faceLips: [at(-7, 10), at(8, 10)] });
    expect(valueOf(over, 'overlap2')).toBeCloseTo(1, 12);
    expect(valueOf(over, 'overlap1')).toBe(0);
  });

  it('is taken along the surface also from a toe that lies below it, on the bevel', () => {
    const bead = pathOf([at(-5, 8), at(-7, 11), at(0, 12), at(7, 10)]);
    const over = handButt({ t1: 10, faceBead: bead, faceLips: [at(-7, 10), at(7, 10)] });
    expect(valueOf(over, 'overlap1')).toBeCloseTo(2, 12);
    expect(endsOf(over, 'overlap1')).toEqual([-5, 10, -7, 10]);
    expect(read(over, 'overlap1').witness).toMatchObject({ extensions: [[at(-5, 8), at(-5, 10)]] });
  });

  it('widens the face, not the chord', () => {
    const bead = pathOf([at(-7, 10), at(0, 12), at(8, 11), at(7, 10)]);
    const over = handButt({ t1: 10, faceBead: bead, faceLips: [at(-7, 10), at(8, 10)] });
    expect(valueOf(over, 'chordLength')).toBe(14);
    expect(valueOf(over, 'faceWidth')).toBe(15);
    expect(endsOf(over, 'faceWidth')).toEqual([-7, 10, 8, 10]);
    expect(endsOf(over, 'chordLength')).toEqual([-7, 10, 7, 10]);
  });
});
