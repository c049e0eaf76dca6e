import { describe, expect, it } from 'vitest';
import type { MeasurementId } from '../../src/measure/index.ts';
import { at, handButt, pathOf, tilted } from '../section-fixtures.ts';
import { endsOf, read, valueOf } from './reading.ts';

// Which surface: ASME B31.3 Table 341.3.2 note (8), public extract. Sums in the comments.

describe('face reinforcement', () => {
  // plate 2 is 1 mm higher; toes (-7, 10), (7, 11); crown (0, 13)
  const cap = handButt({
    t1: 10,
    step: 1,
    faceBead: pathOf([at(-7, 10), at(0, 13), at(7, 11)]),
  });

  it('is read above each plate, from the surface carried on below the crown', () => {
    expect(valueOf(cap, 'faceReinforcement.toPlate1')).toBe(3);
    expect(valueOf(cap, 'faceReinforcement.toPlate2')).toBe(2);
    expect(endsOf(cap, 'faceReinforcement.toPlate1')).toEqual([0, 10, 0, 13]);
    expect(read(cap, 'faceReinforcement.toPlate2').witness).toMatchObject({
      extensions: [[at(7, 11), at(0, 11)]],
    });
  });

  it('is the lesser above the higher plate, the greater above the lower', () => {
    const higher = read(cap, 'faceReinforcement.higher');
    expect(higher).toMatchObject({ id: 'faceReinforcement.higher', value: 2 });
    expect(read(cap, 'faceReinforcement.lower')).toMatchObject({
      id: 'faceReinforcement.lower',
      value: 3,
    });
    const other = handButt({
      t1: 10,
      step: -1,
      faceBead: pathOf([at(-7, 10), at(0, 13), at(7, 9)]),
    });
    expect(valueOf(other, 'faceReinforcement.higher')).toBe(3);
    expect(valueOf(other, 'faceReinforcement.lower')).toBe(4);
  });

  it('is read square to the chord above the toes', () => {
    // crown 2.5 above the chord's middle, chord rising 1 in 14: 2.5 · 14/√197
    expect(valueOf(cap, 'faceReinforcement.toes')).toBeCloseTo((2.5 * 14) / Math.sqrt(197), 12);
    expect(read(cap, 'faceReinforcement.toes').witness).toMatchObject({
      construction: [[at(-7, 10), at(7, 11)]],
      extensions: [],
    });
  });

  it('is never negative', () => {
    const low = handButt({ t1: 10, faceBead: pathOf([at(-5, 9), at(0, 8), at(5, 9)]) });
    for (const reading of ['toPlate1', 'toPlate2', 'higher', 'lower', 'toes'] as const) {
      const measured = read(low, `faceReinforcement.${reading}`);
      expect(measured.value).toBe(0);
      expect(measured.witness).toEqual({ kind: 'none' });
    }
  });

  it('is measured square to a plate that is turned', () => {
    // plate 2 turned 30° down about (6, 10): the crown (0, 12) is 6 left of and 2 above it;
    // square to its surface, whose normal is (sin 30°, cos 30°): -6 · 0.5 + 2 · 0.866 < 0;
    // the toe (7, 9.4226) lies on the surface
    const bead = pathOf([at(-7, 10), at(0, 15), at(6, 10)]);
    const section = tilted(handButt({ t1: 10, faceBead: bead }), -30);
    // crown (0, 15): -6 · 0.5 + 5 · cos 30°
    expect(valueOf(section, 'faceReinforcement.toPlate2')).toBeCloseTo(
      -3 + 5 * Math.cos(Math.PI / 6),
      12,
    );
  });
});

describe('root reinforcement', () => {
  const bead = pathOf([at(-7, 10), at(7, 10)]);

  it('counts outward, below the root surfaces', () => {
    // plate 2's root surface is 0.5 higher: the bead at y = -1.2 stands 1.2 and 1.7 out
    const section = handButt({
      t1: 10,
      step: 0.5,
      faceBead: bead,
      rootBead: pathOf([at(-2, 0), at(0, -1.2), at(2, 0.5)]),
    });
    expect(valueOf(section, 'rootReinforcement.toPlate1')).toBeCloseTo(1.2, 12);
    expect(valueOf(section, 'rootReinforcement.toPlate2')).toBeCloseTo(1.7, 12);
    expect(valueOf(section, 'rootReinforcement.higher')).toBeCloseTo(1.2, 12);
    expect(valueOf(section, 'rootReinforcement.lower')).toBeCloseTo(1.7, 12);
    expect(valueOf(section, 'rootWidth')).toBeCloseTo(Math.hypot(4, 0.5), 12);
    // 1.45 below the chord's middle, chord rising 0.5 in 4
    expect(valueOf(section, 'rootReinforcement.toes')).toBeCloseTo(
      (1.45 * 4) / Math.hypot(4, 0.5),
      12,
    );
  });

  it('is none where no root bead shows', () => {
    const section = handButt({ t1: 10, faceBead: bead });
    const ids: MeasurementId[] = [
      'rootReinforcement.toPlate1',
      'rootReinforcement.toPlate2',
      'rootReinforcement.higher',
      'rootReinforcement.lower',
      'rootReinforcement.toes',
      'rootConcavity',
    ];
    for (const id of ids) {
      expect(read(section, id)).toEqual({ id, value: 0, unit: 'mm', witness: { kind: 'none' } });
    }
  });
});
