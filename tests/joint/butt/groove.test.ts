import { describe, expect, test } from 'vitest';
import { contourArea } from '../../../src/geometry/index.ts';
import { build, type ButtJoint } from '../../../src/joint/index.ts';
import { butt, cornersOf, grooveOf, refusalOf } from './plain-butt.ts';

// Definition: Toeline's vocabulary, grooveArea: the void between the prepared
// edges at fit-up, closed by the straight lines between the groove edges.

const groove = (changes: Partial<ButtJoint>) =>
  grooveOf(build(butt({ stage: 'fitUp', ...changes })));
const areas = (changes: Partial<ButtJoint>): readonly number[] =>
  groove(changes).void.map(contourArea);

describe('the void between the edges', () => {
  test('of a single V is the root opening over the thickness and a triangle on each side', () => {
    // 2 × 10 and twice 8 × 8 / 2
    expect(areas({})).toHaveLength(1);
    expect(areas({})[0]).toBeCloseTo(84, 12);
  });

  test('between square edges that touch is nothing', () => {
    expect(areas({ preparation: 'square', rootOpening: 0 })).toEqual([]);
    expect(areas({ preparation: 'square', rootOpening: 0, offset: 3 })).toEqual([]);
  });

  test('of a double V comes in two parts where the root faces touch', () => {
    // bevelled depth 8, half of it on each side: twice 4 × 4 / 2
    const [upper, lower] = areas({ preparation: 'doubleV', rootOpening: 0 });
    expect(upper).toBeCloseTo(16, 12);
    expect(lower).toBeCloseTo(16, 12);
  });

  test('above root faces that touch in part includes the step of the higher one', () => {
    // plate 2 is 1 higher: corners (0, 2), (0, 3), (8, 11), (-8, 10); by shoelace 128 / 2
    const [only, ...others] = areas({ rootOpening: 0, offset: 1 });
    expect(only).toBeCloseTo(64, 12);
    expect(others).toEqual([]);
  });

  test('is a wedge where square edges touch at a corner only', () => {
    // turned up 5° about its middle, plate 2 touches with its face corner, at height
    // 5 + 5 cos 5°; below it the edges part by 10 sin 5° over 10 cos 5°, and the root
    // line runs from (0, 0) to (10 sin 5°, 5 - 5 cos 5°)
    const [sin, cos] = [Math.sin(Math.PI / 36), Math.cos(Math.PI / 36)];
    const [only, ...others] = areas({
      preparation: 'square',
      rootOpening: 0,
      angularMisalignment: 5,
    });
    // triangle (0, 0), (10 sin 5°, 5 - 5 cos 5°), (0, 5 + 5 cos 5°)
    expect(only).toBeCloseTo((10 * sin * (5 + 5 * cos)) / 2, 12);
    expect(others).toEqual([]);
  });
});

describe('edges that have slid past one another are refused by name', () => {
  test.each([
    [
      'square edges, by more than the thickness',
      { preparation: 'square', t1: 8, t2: 8, offset: 9 },
    ],
    ['root faces, by more than their height', { offset: 3 }],
    ['root faces, by a hair more than their height', { offset: 2 + 5e-7 }],
  ] as const)('%s', (_what, changes) => {
    const refused = refusalOf(() => groove({ rootOpening: 0, ...changes }));
    expect(refused?.field).toBe('offset');
    expect(refused?.reason.key).toBe('joint_error_edges_apart');
  });

  test('plates of which one lies wholly below the other and leans under its edge', () => {
    // plate 2's face corner leads, at -7; the root line would pass behind it
    const below = { preparation: 'square', t1: 4, t2: 2, offset: -10 } as const;
    const turned = { ...below, angularMisalignment: 0.5, rootOpening: 0.001 };
    expect(refusalOf(() => groove(turned))?.field).toBe('offset');
  });

  test('but an opening keeps a way between them', () => {
    expect(areas({ rootOpening: 2, offset: 3 })).toHaveLength(1);
  });

  test('a line between the groove edges that would run through a nose', () => {
    // plate 1's nose stands at 19 to 21; the face line falls from 40 to about 6 over 36 mm
    // and passes the nose at about 8
    const steep = { preparation: 'doubleV', bevelAngle1: 60, rootBevelAngle1: 60 } as const;
    expect(refusalOf(() => groove({ ...steep, t1: 40, t2: 3, offset: -10 }))?.field).toBe('offset');
  });
});

describe('the pieces of the edges', () => {
  test('run from the root to the face on either plate', () => {
    const { preparedEdges, rootFaces, faceBevels, rootBevels } = groove({ preparation: 'doubleV' });
    expect(cornersOf(preparedEdges[0])).toEqual([
      [-5, 0],
      [-1, 4],
      [-1, 6],
      [-5, 10],
    ]);
    expect(cornersOf(rootFaces[1])).toEqual([
      [1, 4],
      [1, 6],
    ]);
    expect(cornersOf(faceBevels[1] ?? [])).toEqual([
      [1, 6],
      [5, 10],
    ]);
    expect(cornersOf(rootBevels[0] ?? [])).toEqual([
      [-5, 0],
      [-1, 4],
    ]);
  });

  test('are missing where there are none', () => {
    const feather = groove({ rootFace1: 0, preparation: 'singleBevel' });
    expect(feather.rootFaces[0]).toEqual([]);
    expect(feather.rootBevels).toEqual([null, null]);
    expect(feather.faceBevels[1]).toBeNull();
    expect(feather.rootFaces[1]).toEqual(feather.preparedEdges[1]);
  });
});
