import { describe, expect, it } from 'vitest';
import { measure } from '../../src/measure/index.ts';
import { at, handButt, pathOf } from '../section-fixtures.ts';
import table from './data/cap.json';

// Source: closed forms (derived), stated in the data file.

describe('a cap of one arc', () => {
  it.each(table.cases)(
    'has the toe angle, height, width and area of $id',
    ({ inputs, expected }) => {
      const half = inputs.width / 2;
      // toe 1 to toe 2 with the air on the left, away from where a positive bulge bends
      const cap = pathOf([at(-half, 10), at(half, 10)], [(-2 * inputs.height) / inputs.width]);
      const section = handButt({
        t1: 10,
        setback: half - 2,
        faceBead: cap,
        deposits: [[...pathOf([at(half, 10), at(-half, 10)]), ...cap].map(backwards).reverse()],
      });
      const { values } = measure(section);
      expect(values.toeAngle?.value).toBeCloseTo(expected.toeAngle_throughAir_deg, 9);
      expect(180 - (values.toeAngle?.value ?? NaN)).toBeCloseTo(expected.flankAngle_deg, 9);
      expect(values['faceReinforcement.higher']?.value).toBeCloseTo(inputs.height, 9);
      expect(values['faceReinforcement.toes']?.value).toBeCloseTo(inputs.height, 9);
      expect(values.faceWidth?.value).toBeCloseTo(inputs.width, 9);
      expect(values.weldArea?.value).toBeCloseTo(expected.area, 9);
    },
  );
});

const backwards = ({ a, b, bulge }: ReturnType<typeof pathOf>[number]) => ({
  a: b,
  b: a,
  bulge: -bulge,
});
