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
  });

  test('a butt weld’s root toes, and before welding its groove edges', () => {
    // 12 mm plates, their faces at y = 12 and their roots at 0
    const [one, two] = rings(butt(), 'rootConcavity');
    expect([one?.[1], two?.[1]]).toEqual([0, 0]);
    expect((two?.[0] ?? NaN) - (one?.[0] ?? NaN)).toBeGreaterThan(0);
    expect(rings(butt(), 'incompletePenetration')).toEqual([one, two]);
    const edges = rings(butt({ stage: 'fitUp' }), 'misalignment');
    expect(edges.map(([, y]) => y)).toEqual([12, 12]);
  });

  test('nothing more where a dimension shows it, and nothing where nothing is pointed at', () => {
    expect(rings(tee({ undercut1Depth: 0.5 }), 'undercut1')).toEqual([]);
    expect(rings(tee(), 'leg1')).toEqual([]);
    expect(rings(tee(), null)).toEqual([]);
    // not measured on a fillet at all
    expect(rings(tee(), 'underfill')).toEqual([]);
  });

  test('on the drawing, as what is lit', () => {
    const lit = composeScene(sceneOf(tee(), { lit: 'undercut1' })).litExtensions.plain;
    expect(lit).toMatch(/^M[\d. ]+A13 13 .*Z$/);
    expect(composeScene(sceneOf(tee())).litExtensions.plain).toBe('');
  });
});
