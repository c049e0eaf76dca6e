import { describe, expect, it } from 'vitest';
import type { Region } from '../../src/geometry/index.ts';
import { measure } from '../../src/measure/index.ts';
import { at, handButt, pathOf, regionOf } from '../section-fixtures.ts';
import table from './data/weight-table.json';

// Source: filler-metal handbook weight table, named in the data file.

const MM_PER_INCH = 25.4;
/** The table's own figure for steel; 7850 kg/m³ is 0.2836 and misses four rows. */
const POUNDS_PER_CUBIC_INCH = 0.283;

interface Row {
  readonly id: string;
  readonly inputs: Readonly<Record<string, number>>;
  readonly expected: { readonly published: number; readonly tolerance: number };
}
const rows = table.cases as unknown as readonly Row[];
const rowsOf = (prefix: string): readonly Row[] => rows.filter(({ id }) => id.startsWith(prefix));
const input = ({ inputs }: Row, name: string): number => inputs[name] ?? NaN;

/** Measured area of weld metal, mm². */
function measuredArea(deposit: Region): number {
  const section = handButt({
    t1: 10,
    faceBead: pathOf([at(-6, 10), at(6, 10)]),
    deposits: [deposit],
  });
  return measure(section).values.weldArea?.value ?? NaN;
}

const poundsPerFoot = (area: number): number =>
  (area / MM_PER_INCH ** 2) * 12 * POUNDS_PER_CUBIC_INCH;

const triangle = (height: number, bevel: number): Region =>
  regionOf([at(0, 0), at(height * Math.tan((bevel * Math.PI) / 180), height), at(0, height)]);

function expectPublished(value: number, { expected }: Row): void {
  expect(Math.abs(value - expected.published)).toBeLessThanOrEqual(expected.tolerance);
}

describe('the weight table of a filler-metal handbook', () => {
  it('holds all its 34 rows', () => {
    const prefixes = ['PB-rect-', 'PB-tri-', 'PB-cap-', 'PB-trimm-'];
    expect(prefixes.flatMap(rowsOf)).toHaveLength(rows.length);
    expect(rows).toHaveLength(34);
  });

  it.each(rowsOf('PB-rect-'))('agrees on the gap between square edges of $id', (row) => {
    const t = input(row, 'T_in') * MM_PER_INCH;
    const gap = input(row, 'G_in') * MM_PER_INCH;
    const area = measuredArea(regionOf([at(0, 0), at(gap, 0), at(gap, t), at(0, t)]));
    expectPublished(poundsPerFoot(area), row);
    // the same void as a groove at fit-up
    const square = handButt({ t1: t, opening: gap, setback: 0, rootFace: 0 });
    expect(measure(square).values.grooveArea?.value).toBeCloseTo(area, 9);
  });

  it.each(rowsOf('PB-tri-'))('agrees on the bevel of $id', (row) => {
    const area = measuredArea(triangle(input(row, 'T_in') * MM_PER_INCH, input(row, 'bevel_deg')));
    expectPublished(poundsPerFoot(area), row);
  });

  it.each(rowsOf('PB-trimm-'))('agrees in kilograms per metre on the bevel of $id', (row) => {
    const section = handButt({
      t1: 10,
      faceBead: pathOf([at(-6, 10), at(6, 10)]),
      deposits: [triangle(input(row, 'T_mm'), input(row, 'bevel_deg'))],
    });
    expectPublished(measure(section).values.mass?.value ?? NaN, row);
  });

  it.each(rowsOf('PB-cap-'))('agrees on the cap of $id, which it takes as a parabola', (row) => {
    const half = (input(row, 'width_in') * MM_PER_INCH) / 2;
    const height = input(row, 'height_in') * MM_PER_INCH;
    const cap = pathOf([at(-half, 0), at(half, 0), at(-half, 0)], [0, height / half]);
    expectPublished(poundsPerFoot(measuredArea(cap)), row);
  });
});
