import { describe, expect, test } from 'vitest';
import type { Region } from '../../../src/geometry/index.ts';
import { contourArea } from '../../../src/geometry/index.ts';
import { cutAway } from '../../../src/view/scene/cut-away.ts';
import { regionOf } from '../../section-fixtures.ts';

const plate: Region = regionOf([
  { x: 0, y: 0 },
  { x: 100, y: 0 },
  { x: 100, y: 10 },
  { x: 0, y: 10 },
]);
const right = (x: number) => ({ at: { x, y: 0 }, away: { x: 1, y: 0 } });
const shape = (edges: ReturnType<typeof cutAway>): Region => edges.map(({ piece }) => piece);

describe('A partial view of a plate 100 by 10', () => {
  test('keeps what lies before the cut and closes along it by a broken edge', () => {
    const edges = cutAway(plate, [right(40)]);
    expect(contourArea(shape(edges))).toBeCloseTo(400, 12);
    const broken = edges.filter((edge) => edge.broken);
    expect(broken).toHaveLength(1);
    expect(broken[0]?.piece.a).toEqual({ x: 40, y: 0 });
    expect(broken[0]?.piece.b).toEqual({ x: 40, y: 10 });
  });

  test('is cut on every side that is asked for', () => {
    const edges = cutAway(plate, [
      right(40),
      { at: { x: 10, y: 0 }, away: { x: -1, y: 0 } },
      { at: { x: 0, y: 4 }, away: { x: 0, y: -1 } },
    ]);
    // 30 wide, 6 high
    expect(contourArea(shape(edges))).toBeCloseTo(180, 12);
    expect(edges.filter((edge) => edge.broken)).toHaveLength(3);
  });

  test('is left as it is by a cut that passes it, and empty when it lies beyond', () => {
    expect(cutAway(plate, [right(200)]).map(({ piece }) => piece)).toEqual(plate);
    expect(cutAway(plate, [right(-1)])).toEqual([]);
  });

  test('splits an arc where the cut crosses it', () => {
    // A half disc of radius 1 round (0, 0), cut at x = 0: a quarter disc, π/4.
    const disc: Region = [
      { a: { x: -1, y: 0 }, b: { x: 1, y: 0 }, bulge: 1 },
      { a: { x: 1, y: 0 }, b: { x: -1, y: 0 }, bulge: 0 },
    ];
    expect(contourArea(shape(cutAway(disc, [right(0)])))).toBeCloseTo(Math.PI / 4, 9);
  });
});
