import { describe, expect, test } from 'vitest';
import { prepareEdge } from '../../../src/joint/butt/edge-preparation.ts';
import { fusionBoundary, type WeldEnd } from '../../../src/joint/butt/fusion.ts';
import { butt, cornersOf } from './plain-butt.ts';

// A drawing convention, decided here: the prepared edge moved into the plate,
// running off to nothing at the ends of the weld. In the plate's own frame.

const edge = prepareEdge(butt(), 1);
const end = (x: number, y: number, more: Partial<WeldEnd> = {}): WeldEnd => ({
  toe: { x, y },
  onEdge: false,
  shield: 0,
  full: false,
  ...more,
});

describe('the fusion boundary', () => {
  test('follows the edge 1 mm inside it and runs off to the toes over 1 mm', () => {
    // edge (0, 0), (0, 2), (8, 10), toes 1 past its ends
    expect(cornersOf(fusionBoundary(edge, 1, end(1, 0), end(9, 10)))).toEqual([
      [1, 0],
      [1, 1],
      [1, 2],
      [8, 9],
      [9, 10],
    ]);
  });

  test('runs off over a quarter of a short weld', () => {
    // 2 high from 4 on: a quarter is 0.5
    const lower = end(2, 4, { onEdge: true });
    const upper = end(4, 6, { onEdge: true });
    expect(cornersOf(fusionBoundary(edge, 1, lower, upper))).toEqual([
      [2, 4],
      [3.5, 4.5],
      [4.5, 5.5],
      [4, 6],
    ]);
  });

  test('passes under an undercut beside the toe before it deepens', () => {
    // straight down from the toe to 1.05 below the surface, then out to the edge 1 mm lower
    expect(
      cornersOf(fusionBoundary(edge, 1, end(1, 0), end(9, 10, { shield: 1.05 }))).slice(-3),
    ).toEqual([
      [6.95, 7.95],
      [9, 8.95],
      [9, 10],
    ]);
  });

  test('keeps to the bare edge under an undercut at the groove edge', () => {
    // toe on the bevel at height 9, undercut 2 deep at the groove edge (8, 10): bare down to 8
    const upper = end(7, 9, { onEdge: true, shield: 2 });
    expect(cornersOf(fusionBoundary(edge, 1, end(1, 0), upper)).slice(-3)).toEqual([
      [6, 7],
      [6, 8],
      [7, 9],
    ]);
  });

  test('is fused in full where the plate lies on a backing strip', () => {
    expect(cornersOf(fusionBoundary(edge, 1, end(1, 0, { full: true }), end(9, 10)))[0]).toEqual([
      1, 0,
    ]);
  });

  test('steps in level from the curve of a U, which leaves faster than any slope', () => {
    // R = 3 about (0, 5): at height 3.2 the edge is 2.4 back
    const hollow = prepareEdge(butt({ preparation: 'singleU', bevelAngle1: 0 }), 1);
    const boundary = fusionBoundary(hollow, 1, end(2.4, 3.2, { onEdge: true }), end(4, 10));
    expect(cornersOf(boundary).slice(0, 2)).toEqual([
      [2.4, 3.2],
      [3.4, 3.2],
    ]);
  });

  test('starts on the root face of a U without climbing past its foot', () => {
    const hollow = prepareEdge(butt({ preparation: 'singleU', bevelAngle1: 0 }), 1);
    const boundary = fusionBoundary(hollow, 1, end(0, 1.6, { onEdge: true }), end(4, 10));
    expect(cornersOf(boundary).slice(0, 2)).toEqual([
      [0, 1.6],
      [1, 2],
    ]);
  });

  test('runs off over half the height where the curve of a U would bend through it', () => {
    // ending on the curve at height 2.5: setback √(0.5 × 5.5) = 1.658, slope 2.5 / 1.658. Down to
    // the foot, 0.5 lower, the edge falls back 0.904 more than its slope: too much for 1 mm of
    // depth. Over 0.25 it is 0.082 more, and that will do.
    const hollow = prepareEdge(butt({ preparation: 'singleU', bevelAngle1: 0 }), 1);
    const upper = end(Math.sqrt(2.75), 2.5, { onEdge: true });
    const [foot, toe] = cornersOf(fusionBoundary(hollow, 1, end(0, 0), upper)).slice(-2);
    expect(toe?.[1]).toBe(2.5);
    expect(foot?.[1]).toBe(2.25);
    expect(foot?.[0]).toBeCloseTo(Math.sqrt(0.25 * 5.75) + 1, 9);
  });
});
