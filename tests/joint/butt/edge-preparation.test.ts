import { describe, expect, test } from 'vitest';
import { centre, contourArea, line, radius, tangentAt } from '../../../src/geometry/index.ts';
import type { ButtJoint } from '../../../src/joint/index.ts';
import {
  portionOf,
  prepareEdge,
  setbackAt,
  setbackSlope,
} from '../../../src/joint/butt/edge-preparation.ts';
import { isTwoSided } from '../../../src/joint/prepared-sides.ts';
import { butt, cornersOf, refusalOf, rounded } from './plain-butt.ts';

// Definitions: Toeline's vocabulary. In the plate's own frame: x setback, y height.

const edge1 = (changes: Partial<ButtJoint>) => prepareEdge(butt(changes), 1);

describe('the prepared edge, from the root groove edge to the face groove edge', () => {
  test('of a square joint is one root face over the whole thickness', () => {
    const edge = edge1({ preparation: 'square' });
    expect(cornersOf(edge.path)).toEqual([
      [0, 0],
      [0, 10],
    ]);
    expect(edge.rootFace).toEqual(edge.path[0]);
    expect(edge.faceBevel).toBeNull();
    expect(edge.rootBevel).toBeNull();
  });

  test('of a single V is a root face, then a bevel set back by the rest of the thickness at 45°', () => {
    // 10 - 2 = 8 high, 8 tan 45° = 8 back
    expect(cornersOf(edge1({}).path)).toEqual([
      [0, 0],
      [0, 2],
      [8, 10],
    ]);
  });

  test('without a root face has no piece for it', () => {
    const edge = edge1({ rootFace1: 0 });
    expect(cornersOf(edge.path)).toEqual([
      [0, 0],
      [10, 10],
    ]);
    expect(edge.rootFace).toBeNull();
  });

  test('of a double V gives the root side its share of the bevelled depth, at its own angle', () => {
    // bevelled depth 12 - 2 = 10: a share of 0.4 is 4 on the root side and leaves 6;
    // 4 tan 45° = 4 back at the root, 6 tan 30° = 2√3 at the face
    const edge = edge1({ preparation: 'doubleV', t1: 12, rootSideShare: 0.4, bevelAngle1: 30 });
    expect(cornersOf(edge.path)).toEqual([
      [4, 0],
      [0, 4],
      [0, 6],
      [rounded(2 * Math.sqrt(3)), 12],
    ]);
    expect(edge.rootBevel).toEqual(edge.path[0]);
  });

  test('of a double V without a root face comes to a point', () => {
    const edge = edge1({ preparation: 'doubleV', rootFace1: 0 });
    expect(cornersOf(edge.path)).toEqual([
      [5, 0],
      [0, 5],
      [5, 10],
    ]);
  });

  test.each(['singleBevel', 'doubleBevel', 'singleJ'] as const)(
    'of plate 2 is square in a %s',
    (preparation) => {
      const edge = prepareEdge(butt({ preparation, t2: 7 }), 2);
      expect(cornersOf(edge.path)).toEqual([
        [0, 0],
        [0, 7],
      ]);
    },
  );

  test('of plate 2 takes its own angle and root face in a single V', () => {
    // 12 - 3 = 9 high at 30°: 9/√3 = 3√3 back
    const edge = prepareEdge(butt({ t2: 12, bevelAngle2: 30, rootFace2: 3 }), 2);
    expect(cornersOf(edge.path)).toEqual([
      [0, 0],
      [0, 3],
      [rounded(3 * Math.sqrt(3)), 12],
    ]);
  });

  test('of a U is an arc about a point straight above the root face, then its tangent', () => {
    // R = 3 about (0, 5); at 30° the straight begins at (3 cos 30°, 5 - 3 sin 30°) = (1.5√3, 3.5)
    // and rises 6.5, so it ends 6.5 tan 30° farther back
    const edge = edge1({ preparation: 'singleU', bevelAngle1: 30 });
    const x = 1.5 * Math.sqrt(3);
    expect(cornersOf(edge.path)).toEqual([
      [0, 0],
      [0, 2],
      [rounded(x), 3.5],
      [rounded(x + 6.5 / Math.sqrt(3)), 10],
    ]);
    const { hollow, faceBevel } = edge;
    if (hollow === null || faceBevel === null) throw new Error('a U has a curve and a bevel');
    expect(radius(hollow)).toBeCloseTo(3, 12);
    expect(centre(hollow)?.x).toBeCloseTo(0, 12);
    expect(centre(hollow)?.y).toBeCloseTo(5, 12);
    // level at the root face, along the bevel where that begins
    expect(tangentAt(hollow, 0).y).toBeCloseTo(0, 12);
    expect(tangentAt(hollow, 1).x).toBeCloseTo(tangentAt(faceBevel, 0).x, 12);
    // the curve lies on the metal's side of its chord: with the chord it turns counter-clockwise
    expect(contourArea([hollow, line(hollow.b, hollow.a)])).toBeGreaterThan(0);
  });

  test('of a J is the same on plate 1', () => {
    const bevelled = { bevelAngle1: 20 };
    expect(edge1({ preparation: 'singleJ', ...bevelled }).path).toEqual(
      edge1({ preparation: 'singleU', ...bevelled }).path,
    );
  });
});

describe('an edge that cannot be prepared is refused by name', () => {
  test('when the root face takes up the whole thickness', () => {
    const refused = refusalOf(() => edge1({ rootFace1: 10 }));
    expect(refused?.field).toBe('rootFace1');
    expect(refused?.bound).toBeCloseTo(9.999, 12);
  });

  test('when a U has no root face, so its curve would end in no thickness', () => {
    expect(refusalOf(() => edge1({ preparation: 'singleU', rootFace1: 0 }))?.field).toBe(
      'rootFace1',
    );
  });

  test('when the curve of a U would not end below the face', () => {
    // the straight of a 45° U begins at 2 + R(1 - sin 45°); at 9.999 with R = 7.999/(1 - 1/√2)
    const bound = 7.999 / (1 - Math.SQRT1_2);
    const wide = (rootRadius: number) => () => edge1({ preparation: 'singleU', rootRadius });
    expect(refusalOf(wide(bound + 0.01))?.bound).toBeCloseTo(bound, 9);
    expect(refusalOf(wide(bound - 0.01))).toBeNull();
  });

  test('naming no radius when not even the smallest would do', () => {
    const refused = refusalOf(() =>
      edge1({ preparation: 'singleU', bevelAngle1: 0, rootFace1: 9.999, rootRadius: 3 }),
    );
    expect(refused?.field).toBe('rootRadius');
    expect(refused?.bound).toBeNull();
  });

  test.each([0, 1])('when a share of %s leaves one side of a double V without a bevel', (share) => {
    const refused = refusalOf(() => edge1({ preparation: 'doubleV', rootSideShare: share }));
    expect(refused?.field).toBe('rootSideShare');
  });
});

describe('the setback of an edge', () => {
  const u = edge1({ preparation: 'singleU', bevelAngle1: 0 });

  test('follows the bevel, the root face and the curve', () => {
    expect(setbackAt(edge1({}), 1)).toBe(0);
    expect(setbackAt(edge1({}), 6)).toBeCloseTo(4, 12);
    // R = 3 about (0, 5): at height 3.2 the circle is √(9 - 1.8²) = 2.4 back
    expect(setbackAt(u, 3.2)).toBeCloseTo(2.4, 12);
  });

  test('grows by the tangent of the bevel angle, and on the curve as the circle leans', () => {
    expect(setbackSlope(edge1({}), 6)).toBeCloseTo(1, 12);
    // at (2.4, 3.2) the radius points to (0, 5): the tangent gains 1.8 for every 2.4
    expect(setbackSlope(u, 3.2)).toBeCloseTo(0.75, 12);
  });

  test('holds for any stretch of the edge between two heights', () => {
    expect(cornersOf(portionOf(edge1({}), 1, 6))).toEqual([
      [0, 1],
      [0, 2],
      [4, 6],
    ]);
    expect(portionOf(edge1({}), 3, 3)).toEqual([]);
    // from (0, 2) to (2.4, 3.2): the circle of radius 3 about (0, 5)
    const [curve] = portionOf(u, 2, 3.2);
    if (curve === undefined) throw new Error('the curve reaches from 2 to 5');
    expect(radius(curve)).toBeCloseTo(3, 12);
    expect(centre(curve)?.y).toBeCloseTo(5, 12);
  });
});

test('only a double V and a double bevel are welded from both sides', () => {
  const kinds = ['square', 'singleV', 'doubleV', 'singleBevel', 'doubleBevel', 'singleU'] as const;
  const twoSided = kinds.filter((preparation) => isTwoSided(butt({ preparation })));
  expect(twoSided).toEqual(['doubleV', 'doubleBevel']);
});
