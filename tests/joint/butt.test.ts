import { describe, expect, test } from 'vitest';
import { contourArea } from '../../src/geometry/index.ts';
import { build, type ButtJoint } from '../../src/joint/index.ts';
import { butt, cornersOf, grooveOf, refusalOf, rootOf, roundedPoint } from './butt/plain-butt.ts';

// Definitions: Toeline's vocabulary. The plain joint has its noses at x = -1 and 1, its face
// groove edges at (-9, 10) and (9, 10), its toes 1 mm past every groove edge.

const welded = (changes: Partial<ButtJoint> = {}) => build(butt(changes));

describe('a single V', () => {
  test('says what it is', () => {
    const section = welded({ product: 'pipe' });
    expect(section.kind).toBe('butt');
    expect(section.form).toBe('singleV');
    expect(section.product).toBe('pipe');
    expect(section.stage).toBe('welded');
    expect(section.filletRoot).toBeNull();
  });

  test('is one weld between its beads, 1 mm into either edge', () => {
    const section = welded();
    expect(section.welds.map(cornersOf)).toEqual([
      [
        [-2, 0],
        [2, 0],
        [2, 1],
        [2, 2],
        [9, 9],
        [10, 10],
        [-10, 10],
        [-9, 9],
        [-2, 2],
        [-2, 1],
        [-2, 0],
      ],
    ]);
    // groove 84 and 10 × 1 melted on either side
    expect(contourArea(section.welds[0] ?? [])).toBeCloseTo(104, 12);
    expect(grooveOf(section).unfused).toEqual([[], []]);
  });

  test('has plates that end straight, 60 mm past the outermost toe', () => {
    const [one, two] = welded({ capPast2: 3 }).plates;
    expect(cornersOf(one)).toEqual([
      [-70, 0],
      [-2, 0],
      [-2, 1],
      [-2, 2],
      [-9, 9],
      [-10, 10],
      [-70, 10],
      [-70, 0],
    ]);
    expect(Math.max(...two.map(({ a }) => a.x))).toBeCloseTo(72, 12);
  });

  test('has its toes past the groove edges along each plate', () => {
    const section = welded({ capPast1: 2, rootPast2: 0.5 });
    expect(section.face.toes?.map(roundedPoint)).toEqual([
      [-11, 10],
      [10, 10],
    ]);
    expect(rootOf(section).toes?.map(roundedPoint)).toEqual([
      [-2, 0],
      [1.5, 0],
    ]);
    expect(section.face.lips).toEqual(section.face.toes);
    expect(section.face.grooveEdges?.map(roundedPoint)).toEqual([
      [-9, 10],
      [9, 10],
    ]);
  });

  test('carries a cap and a root bead whose crowns stand off their chords', () => {
    const section = welded({ capHeight: 2, rootHeight: -0.5 });
    const [cap] = section.face.bead ?? [];
    const [root] = rootOf(section).bead ?? [];
    // bulge is twice the rise over the chord, clockwise from toe 1 for a crown to the left of it
    expect(cap?.bulge).toBeCloseTo(-4 / 20, 12);
    expect(root?.bulge).toBeCloseTo(-1 / 4, 12);
  });
});

describe('a toe turned up plate 2', () => {
  test('lies along that plate, and so does everything past it', () => {
    const section = welded({ angularMisalignment: 6, capPast2: 3 });
    const { toes, grooveEdges, surfaces } = section.face;
    const [toe, edge] = [toes?.[1], grooveEdges?.[1]];
    if (!toe || !edge) throw new Error('a welded face has toes and groove edges');
    expect(toe.x - edge.x).toBeCloseTo(3 * Math.cos(Math.PI / 30), 12);
    expect(toe.y - edge.y).toBeCloseTo(3 * Math.sin(Math.PI / 30), 12);
    expect(surfaces[1].along.y).toBeCloseTo(Math.sin(Math.PI / 30), 12);
  });
});

describe('offset plates with a straight cap', () => {
  test('have a face that slopes smoothly from groove edge to groove edge', () => {
    const { face } = welded({ offset: 2, capPast1: 0, capPast2: 0 });
    expect(cornersOf(face.bead ?? [])).toEqual([
      [-9, 10],
      [9, 12],
    ]);
  });

  test('of unequal thickness step both ways when their middles are level', () => {
    const { plateSurfaces } = welded({ t2: 14 });
    expect(plateSurfaces[1].face.origin.y).toBeCloseTo(12, 12);
    expect(plateSurfaces[1].opposite.origin.y).toBeCloseTo(-2, 12);
  });
});

describe('a groove not filled to its edge', () => {
  test('has its toe on the bevel, the bare bevel past it, then the surface', () => {
    const { face } = welded({ capPast1: 0, capDrop1: 2 });
    expect(face.toes?.map(roundedPoint)[0]).toEqual([-7, 8]);
    expect(cornersOf(face.beyond[0])).toEqual([
      [-7, 8],
      [-9, 10],
      [-69, 10],
    ]);
  });

  test('has its undercut outside the groove edge, not beside the toe', () => {
    const { face } = welded({ capPast1: 0, capDrop1: 2, undercut1Depth: 1 });
    expect(cornersOf(face.undercuts[0])).toEqual([
      [-9, 10],
      [-10, 9],
      [-11, 10],
    ]);
    expect(cornersOf(face.beyond[0]).slice(0, 3)).toEqual([
      [-7, 8],
      [-9, 10],
      [-10, 9],
    ]);
  });
});

describe('flaws beside the toes', () => {
  test('are undercut at any of four, walking away from the weld', () => {
    const cut = welded({
      undercut1Depth: 1,
      undercut2Depth: 0.5,
      rootUndercut1Depth: 0.4,
      rootUndercut2Depth: 0.6,
    });
    expect(cut.face.undercuts.map(cornersOf)).toEqual([
      [
        [-10, 10],
        [-11, 9],
        [-12, 10],
      ],
      [
        [10, 10],
        [11, 9.5],
        [12, 10],
      ],
    ]);
    expect(rootOf(cut).undercuts.map(cornersOf)).toEqual([
      [
        [-2, 0],
        [-3, 0.4],
        [-4, 0],
      ],
      [
        [2, 0],
        [3, 0.6],
        [4, 0],
      ],
    ]);
    // the toes stay where they were
    expect(cut.face.toes).toEqual(welded().face.toes);
  });

  test('are an overlap whose lip lies past its fused toe by as much as the joint says', () => {
    const { face } = welded({ overlap1: 2, capHeight: 2 });
    expect(face.toes?.map(roundedPoint)[0]).toEqual([-10, 10]);
    expect(face.lips?.map(roundedPoint)[0]).toEqual([-12, 10]);
    expect(roundedPoint((face.bead ?? [])[0]?.a ?? { x: 0, y: 0 })).toEqual([-10, 10]);
  });

  test('are spatter on the plate that it stuck to, clear of the weld', () => {
    const bump = { plate: 2, place: 5, height: 1 } as const;
    const { spatter } = welded({ spatter: [bump] });
    expect(spatter).toHaveLength(1);
    // 5 mm past the toe at x = 10, on either side of 15
    const feet = spatter.flat().map(({ a }) => a.x);
    expect((Math.min(...feet) + Math.max(...feet)) / 2).toBeCloseTo(15, 12);
    expect(refusalOf(() => welded({ spatter: [bump], overlap2: 6 }))?.field).toBe('spatter');
  });

  test('are refused where a bump would stand under a bead that leans out', () => {
    // 4 high on a chord of 4: R = 2.5, so the bead leans 0.5 out over its toes; a bump 1 high is 2.5 wide
    const blob = { preparation: 'square', capHeight: 4, capPast1: 1, capPast2: 1 } as const;
    const beside = (place: number) => [{ plate: 1, place, height: 1 }] as const;
    expect(refusalOf(() => welded({ ...blob, spatter: beside(1.7) }))?.field).toBe('spatter');
    expect(refusalOf(() => welded({ ...blob, spatter: beside(1.8) }))).toBeNull();
  });
});

describe('incomplete penetration', () => {
  test('of a single V leaves the root of each edge bare and no root bead', () => {
    const section = welded({ incompletePenetration: 1, rootHeight: 3 });
    expect(grooveOf(section).unfused.map(cornersOf)).toEqual([
      [
        [-1, 0],
        [-1, 1],
      ],
      [
        [1, 0],
        [1, 1],
      ],
    ]);
    const root = rootOf(section);
    expect(root.bead).toBeNull();
    expect(root.toes).toBeNull();
    expect(cornersOf(root.outline)).toEqual([
      [-70, 0],
      [-1, 0],
      [-1, 1],
      [1, 1],
      [1, 0],
      [70, 0],
    ]);
  });

  test('counts along each plate, so a plate turned up keeps its own unfused height', () => {
    const section = welded({ incompletePenetration: 1.5, angularMisalignment: 5 });
    const [, edge] = grooveOf(section).unfused;
    const [from, to] = [edge[0]?.a, edge.at(-1)?.b];
    if (!from || !to) throw new Error('plate 2 is unfused');
    expect(Math.hypot(to.x - from.x, to.y - from.y)).toBeCloseTo(1.5, 12);
  });

  test('between touching edges is a closed seam that the outline passes over', () => {
    const section = welded({ rootOpening: 0, incompletePenetration: 1 });
    expect(cornersOf(rootOf(section).outline)).toEqual([
      [-69, 0],
      [0, 0],
      [69, 0],
    ]);
    expect(grooveOf(section).unfused.map(cornersOf)).toEqual([
      [
        [0, 0],
        [0, 1],
      ],
      [
        [0, 0],
        [0, 1],
      ],
    ]);
  });

  test('of offset touching edges shows no more of them than the step', () => {
    const section = welded({ rootOpening: 0, offset: 0.5, incompletePenetration: 1 });
    expect(cornersOf(rootOf(section).outline).slice(1, -1)).toEqual([
      [0, 0],
      [0, 0.5],
    ]);
  });

  test('doesn’t hide the bevel left bare above a dropped cap: no weld metal is fused to that either', () => {
    // the 45° bevel of plate 1 runs from (-1, 2) to (-9, 10); the cap stops 2 below its edge
    const bare = [
      [-7, 8],
      [-9, 10],
    ];
    const dropped = { capPast1: 0, capDrop1: 2 };
    expect(grooveOf(welded(dropped)).unfused.map(cornersOf)).toEqual([bare, []]);
    const [first, second] = grooveOf(welded({ ...dropped, incompletePenetration: 1.5 })).unfused;
    expect(first.map(({ a, b }) => [a, b].map(roundedPoint))).toEqual([
      [
        [-1, 0],
        [-1, 1.5],
      ],
      bare,
    ]);
    expect(cornersOf(second)).toEqual([
      [1, 0],
      [1, 1.5],
    ]);
  });

  test('of a double V lies in the middle, between two welds', () => {
    const section = welded({ preparation: 'doubleV', incompletePenetration: 1 });
    expect(section.welds).toHaveLength(2);
    expect(grooveOf(section).unfused.map(cornersOf)).toEqual([
      [
        [-1, 4.5],
        [-1, 5.5],
      ],
      [
        [1, 4.5],
        [1, 5.5],
      ],
    ]);
    expect(rootOf(section).bead).not.toBeNull();
  });

  test('of a double V without root faces is centred where the bevels meet', () => {
    const feather = { preparation: 'doubleV', rootFace1: 0, rootFace2: 0 } as const;
    const section = welded({ ...feather, incompletePenetration: 1 });
    const [edge] = grooveOf(section).unfused;
    expect(edge[0]?.a.y).toBeCloseTo(4.5, 12);
    expect(edge.at(-1)?.b.y).toBeCloseTo(5.5, 12);
  });

  test('of a double bevel lies on the square plate level with the other', () => {
    const section = welded({ preparation: 'doubleBevel', offset: 1, incompletePenetration: 1 });
    const [, square] = grooveOf(section).unfused;
    expect(cornersOf(square)).toEqual([
      [1, 4.5],
      [1, 5.5],
    ]);
  });
});

test('a trace of a length is taken as none', () => {
  const traces = { offset: 5e-7, capDrop1: 9e-7, angularMisalignment: -1e-7 };
  expect(welded(traces)).toEqual(welded());
});
