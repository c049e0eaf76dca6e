import { describe, expect, test } from 'vitest';
import type { Section } from '../../../src/joint/index.ts';
import { measure } from '../../../src/measure/index.ts';
import { litPlace } from '../../../src/view/scene/lit-place.ts';
import { composeScene, type SceneInput } from '../../../src/view/scene/scene.ts';
import type { View } from '../../../src/view/scene/view-transform.ts';
import { butt, sceneOf, tee } from './any-scene.ts';

/** 10 px a millimetre, y down. */
const view: View = { scale: 10, originX: 0, originY: 0, width: 0, height: 0, subject: '' };

/** Middles of the rings, mm. */
const rings = (section: Section, lit: SceneInput['lit']): readonly (readonly number[])[] => {
  const input = {
    lit,
    measurements: measure(section),
    misalignedStep: 'centrelineOffset',
  } as const;
  return [...litPlace(input, view).matchAll(/M([\d.-]+) ([\d.-]+)A([\d.]+)/g)].map(
    ([, x, y, r]) => [(Number(x) + Number(r)) / 10, -Number(y) / 10 + 0],
  );
};

describe('Who points at a quantity that is nothing is shown', () => {
  test('the toe that it is of', () => {
    // legs of 8 mm from the corner at (0, 0): toe 1 on plate 1 along x, toe 2 up plate 2
    expect(rings(tee(), 'undercut1')).toEqual([[8, 0]]);
    expect(rings(tee(), 'undercut2')).toEqual([[0, 8]]);
    expect(rings(tee(), 'overlap2')).toEqual([[0, 8]]);
  });

  test('both toes where it is of the whole face, the root where it is of that', () => {
    expect(rings(tee({ convexity: 1 }), 'concavity')).toEqual([
      [8, 0],
      [0, 8],
    ]);
    expect(rings(tee(), 'rootGap')).toEqual([[0, 0]]);
    expect(rings(tee(), 'throatPenetration')).toEqual([[0, 0]]);
  });

  test('a butt weld’s root toes, and before welding its groove edges', () => {
    // opening 2, root bead 1 past each edge; bevels of 30° over 10.5 of 12 mm: 1 + 10.5 tan 30° = 7.06
    expect(rings(butt(), 'rootConcavity')).toEqual([
      [-2, 0],
      [2, 0],
    ]);
    expect(rings(butt({ stage: 'fitUp' }), 'angularMisalignment')).toEqual([
      [expect.closeTo(-7.06, 2), 12],
      [expect.closeTo(7.06, 2), 12],
    ]);
  });

  test('the root faces that could have stayed unfused, at mid-wall where both sides are welded', () => {
    expect(rings(butt(), 'incompletePenetration')).toEqual([
      [-1, 0],
      [1, 0],
    ]);
    // 20 mm, root face 1.5 in the middle: it begins at 9.25
    const [one, two] = rings(
      butt({ preparation: 'doubleV', t1: 20, t2: 20 }),
      'incompletePenetration',
    );
    expect([one, two]).toEqual([
      [-1, 9.25],
      [1, 9.25],
    ]);
  });

  test('the point itself where a length of nothing was measured, and none of a negative length', () => {
    expect(rings(butt({ stage: 'fitUp' }), 'misalignment')).toHaveLength(1);
    expect(rings(butt({ offset: -1 }), 'misalignment')).toEqual([]);
    // of an area of nothing there is no place
    expect(
      rings(butt({ stage: 'fitUp', preparation: 'square', rootOpening: 0 }), 'grooveArea'),
    ).toEqual([]);
  });

  test('nothing more where a dimension shows it, and nothing where nothing is pointed at', () => {
    expect(rings(tee({ undercut1Depth: 0.5 }), 'undercut1')).toEqual([]);
    expect(rings(tee(), 'leg1')).toEqual([]);
    expect(rings(tee(), null)).toEqual([]);
    // not measured on a fillet at all
    expect(rings(tee(), 'underfill')).toEqual([]);
  });

  test('on the drawing, as what is lit', () => {
    const lit = composeScene(sceneOf(tee(), { lit: 'undercut1', litPlace })).litExtensions.plain;
    expect(lit).toMatch(/^M[\d. ]+A13 13 [^M]*Z$/);
    // between two ends a line: the face lies there
    const face = composeScene(sceneOf(tee({ convexity: 1 }), { lit: 'concavity', litPlace }));
    expect(face.litExtensions.plain).toMatch(/Z(M[\d. ]+A13 13 [^M]*Z)M[\d. ]+L[\d. ]+$/);
    expect(composeScene(sceneOf(tee(), { litPlace })).litExtensions.plain).toBe('');
  });
});
