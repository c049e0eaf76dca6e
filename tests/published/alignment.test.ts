import { describe, expect, it } from 'vitest';
import { measure } from '../../src/measure/index.ts';
import { at, handButt, pathOf } from '../section-fixtures.ts';
import { tilted } from '../section-fixtures.ts';
import table from './data/alignment.json';

// Source: closed forms (derived), stated in the data file.

const [offset, tilt] = table.cases;

describe('a cap read from two offset plates (HL)', () => {
  it('stands higher over the low plate, by the offset', () => {
    const inputs = offset?.inputs as { reinforcementAboveHighPlate: number; misalignment: number };
    const expected = offset?.expected as {
      aboveHighPlate: number;
      aboveLowPlate: number;
      midDatum: number;
    };
    const step = inputs.misalignment;
    const crown = 10 + step + inputs.reinforcementAboveHighPlate;
    const section = handButt({
      t1: 10,
      step,
      faceBead: pathOf([at(-7, 10), at(0, crown), at(7, 10 + step)]),
    });
    const { values } = measure(section);
    const high = values['faceReinforcement.higher']?.value ?? NaN;
    const low = values['faceReinforcement.lower']?.value ?? NaN;
    expect(high).toBeCloseTo(expected.aboveHighPlate, 9);
    expect(low).toBeCloseTo(expected.aboveLowPlate, 9);
    expect((high + low) / 2).toBeCloseTo(expected.midDatum, 9);
  });
});

describe('a plate turned up (AM)', () => {
  it('lifts a bar flush on the other plate by lever times sine', () => {
    const inputs = tilt?.inputs as { angle_deg: number; lever: number };
    const expected = tilt?.expected as { edgeLift: number };
    const { values } = measure(tilted(handButt({ t1: 10 }), inputs.angle_deg));
    const angle = values.angularMisalignment?.value ?? NaN;
    expect(angle).toBeCloseTo(inputs.angle_deg, 9);
    expect(inputs.lever * Math.sin((angle * Math.PI) / 180)).toBeCloseTo(expected.edgeLift, 9);
  });
});
