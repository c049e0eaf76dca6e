import { describe, expect, it } from 'vitest';
import { measure } from '../../src/measure/index.ts';
import { at, handButt, pathOf } from '../section-fixtures.ts';
import { about, endsOf, read, valueOf } from './reading.ts';

// ISO 6520-1, 511 and 515; the datum is a reading decided by Toeline. Groove edges of
// the hand-made joint: (-6, 10) and (6, 10 + step).

describe('underfill', () => {
  it('is the depth below the line from edge to edge', () => {
    const low = handButt({ t1: 10, faceBead: pathOf([at(-6, 10), at(0, 9), at(6, 10)]) });
    expect(valueOf(low, 'underfill')).toBe(1);
    expect(endsOf(low, 'underfill')).toEqual([0, 10, 0, 9]);
    expect(read(low, 'underfill').witness).toMatchObject({
      construction: [[at(-6, 10), at(6, 10)]],
    });
    expect(valueOf(low, 'underfillHigh')).toBe(1);
  });

  it('is measured normal to that line when the plates are offset', () => {
    // edges (-6, 10), (6, 13); face straight 2 mm below the line, upright: 2 · 12/√153
    const low = handButt({ t1: 10, step: 3, faceBead: pathOf([at(-5.5, 8.125), at(5.5, 10.875)]) });
    expect(valueOf(low, 'underfill')).toBeCloseTo((2 * 12) / Math.sqrt(153), 12);
  });

  it('counts between the groove edges only: base metal melted beyond them is no underfill', () => {
    // the face is lowest at (8, 9), outside edge 2; it crosses x = 6 at y = 9.125
    const wide = handButt({
      t1: 10,
      faceBead: pathOf([at(-8, 10), at(0, 9.5), at(8, 9), at(9, 10)]),
    });
    expect(valueOf(wide, 'underfill')).toBeCloseTo(10 - 9.125, 9);
  });

  it('is cut off at plate 1’s edge just the same', () => {
    const wide = handButt({
      t1: 10,
      faceBead: pathOf([at(-9, 10), at(-8, 9), at(0, 9.5), at(8, 10)]),
    });
    expect(valueOf(wide, 'underfill')).toBeCloseTo(10 - 9.125, 9);
  });

  it('is the deepest place inside the groove, however deep the face goes outside', () => {
    // 2 mm deep at (-8, 8), outside edge 1; inside, 1 mm at (2, 9), nothing at either edge
    const broken = [
      at(-9, 10),
      at(-8, 8),
      at(-6.5, 10),
      at(-4, 10),
      at(2, 9),
      at(5, 10),
      at(7, 10),
    ];
    const wide = handButt({ t1: 10, faceBead: pathOf(broken) });
    expect(valueOf(wide, 'underfill')).toBeCloseTo(1, 12);
    expect(endsOf(wide, 'underfill')).toEqual([2, 10, 2, 9]);
    // the same with one arc of sagitta 1 from (-4, 10) to (5, 10)
    const round = handButt({
      t1: 10,
      faceBead: pathOf(
        [at(-9, 10), at(-8, 8), at(-6.5, 10), at(-4, 10), at(5, 10), at(7, 10)],
        [0, 0, 0, (2 * 1) / 9],
      ),
    });
    expect(valueOf(round, 'underfill')).toBeCloseTo(1, 12);
    expect(endsOf(round, 'underfill')).toEqual([0.5, 10, 0.5, 9].map(about));
  });

  it('and reinforcement can both be above 0', () => {
    const both = handButt({
      t1: 10,
      faceBead: pathOf([at(-6, 10), at(-2, 11), at(2, 9), at(6, 10)]),
    });
    expect(valueOf(both, 'underfill')).toBe(1);
    expect(valueOf(both, 'faceReinforcement.higher')).toBe(1);
  });

  it('reads the toe that lies down the bevel when the groove is not filled to its edge', () => {
    const low = handButt({ t1: 10, faceBead: pathOf([at(-5, 8.2), at(0, 9), at(6, 10)]) });
    expect(valueOf(low, 'underfill')).toBeCloseTo(1.8, 12);
  });

  it('is none, with no witness, in a full groove', () => {
    const full = handButt({ t1: 10, faceBead: pathOf([at(-7, 10), at(0, 12), at(7, 10)]) });
    expect(read(full, 'underfill')).toEqual({
      id: 'underfill',
      value: 0,
      unit: 'mm',
      witness: { kind: 'none' },
    });
    expect(valueOf(full, 'underfillHigh')).toBe(0);
  });

  it('below the higher plate is read from whichever surface that is', () => {
    const lower2 = handButt({ t1: 10, step: -2, faceBead: pathOf([at(-6, 10), at(6, 8)]) });
    expect(valueOf(lower2, 'underfillHigh')).toBeCloseTo(2, 12);
    expect(endsOf(lower2, 'underfillHigh')).toEqual([6, 10, 6, 8]);
    // plate 1's surface, carried on from its edge
    expect(read(lower2, 'underfillHigh').witness).toMatchObject({
      construction: [[at(-6, 10), at(6, 10)]],
    });
  });

  it('below the higher plate is the greater of two depths when the face lies below both', () => {
    // face level at y = 8 or 9, below both surfaces: 10 and 11, then 10 and 9
    const second = handButt({ t1: 10, step: 1, faceBead: pathOf([at(-5, 9), at(5, 9)]) });
    expect(valueOf(second, 'underfillHigh')).toBeCloseTo(2, 12);
    const first = handButt({ t1: 10, step: -1, faceBead: pathOf([at(-5, 8), at(5, 8)]) });
    expect(valueOf(first, 'underfillHigh')).toBeCloseTo(2, 12);
    expect(read(first, 'underfillHigh').witness).toMatchObject({
      extensions: [],
      construction: [[at(-6, 10), at(-5, 10)]],
    });
  });

  it('below the higher plate is nothing to show when the face lies nowhere in the groove', () => {
    const beside = handButt({ t1: 10, faceBead: pathOf([at(7, 9), at(9, 9)]) });
    expect(valueOf(beside, 'underfill')).toBe(0);
    expect(valueOf(beside, 'underfillHigh')).toBe(0);
  });

  it('can’t be told where the groove edges aren’t known', () => {
    const section = handButt({ t1: 10, faceBead: pathOf([at(-6, 10), at(6, 10)]) });
    const unknown = { ...section, face: { ...section.face, grooveEdges: null } };
    for (const id of ['underfill', 'underfillHigh'] as const) {
      expect(read(unknown, id)).toEqual({
        id,
        value: null,
        unit: 'mm',
        witness: { kind: 'none' },
        note: { key: 'measure_note_groove_edge_unknown' },
      });
    }
    expect(measure(unknown).values.capPastGroove1).toBeUndefined();
  });
});

describe('root concavity', () => {
  it('is the depth of the root bead inside the line between the root groove edges', () => {
    // root edges (-1, 0) and (1, 0); the bead bows 0.4 into the joint
    const section = handButt({
      t1: 10,
      faceBead: pathOf([at(-7, 10), at(7, 10)]),
      rootBead: pathOf([at(-2, 0), at(0, 0.4), at(2, 0)]),
    });
    expect(valueOf(section, 'rootConcavity')).toBeCloseTo(0.4, 12);
    expect(endsOf(section, 'rootConcavity')).toEqual([0, 0, 0, 0.4]);
    expect(valueOf(section, 'rootReinforcement.higher')).toBe(0);
  });
});

describe('the cap past the groove edge', () => {
  it('is how far each toe lies outside its edge', () => {
    const wide = handButt({ t1: 10, faceBead: pathOf([at(-7.5, 10), at(8, 10)]) });
    expect(valueOf(wide, 'capPastGroove1')).toBe(1.5);
    expect(valueOf(wide, 'capPastGroove2')).toBe(2);
    expect(endsOf(wide, 'capPastGroove2')).toEqual([6, 10, 8, 10]);
  });

  it('is negative for a toe inside the groove, taken along the surface', () => {
    const low = handButt({ t1: 10, faceBead: pathOf([at(-5, 8.2), at(6, 10)]) });
    expect(valueOf(low, 'capPastGroove1')).toBe(-1);
    expect(endsOf(low, 'capPastGroove1')).toEqual([-6, 10, -5, 10]);
    expect(read(low, 'capPastGroove1').witness).toMatchObject({
      extensions: [[at(-5, 8.2), at(-5, 10)]],
    });
  });
});
