import { describe, expect, it } from 'vitest';
import { composeScene, type Scene, type SceneInput } from '../../../src/view/scene/scene.ts';
import { sceneLayers } from '../../../src/view/scene/scene-layers.ts';
import { barLengths, sceneWords } from '../../../src/view/scene/scene-words.ts';
import { sheetOf } from '../../../src/view/scene/sheet.ts';
import { ScenePainter } from '../../../src/view/scene/scene-painter.ts';
import { check, METRIC, sceneOf, SIZES, tee } from './any-scene.ts';

// one reader at one window: a foot is the very same only while these are
const reader = {
  sheet: sheetOf(SIZES[1]?.[0] ?? 0, SIZES[1]?.[1] ?? 0, 'bench'),
  words: sceneWords(METRIC),
  bars: barLengths(METRIC),
};
const sceneFor = (joint: Readonly<Record<string, unknown>>, changes: Partial<SceneInput> = {}) =>
  composeScene(sceneOf(tee(joint), { ...reader, ...changes }));

function onPaper() {
  const group = document.createElementNS('http://www.w3.org/2000/svg', 'g');
  document.body.append(group);
  const painter = new ScenePainter(group, 'one');
  return { group, paint: (scene: Scene) => painter.paint(scene, 'true size') };
}

/** The dimensions as they stand, from the lowest up: name and value together. */
const labels = (group: Element): readonly string[] =>
  [...group.querySelectorAll('.drawn-text')].map((text) => text.textContent);
const pathsOf = (group: Element): readonly string[] =>
  [...group.querySelectorAll(':scope > path')].map((path) => path.getAttribute('d') ?? '');

/** What was written, made and taken away while `act` ran. */
function changesOf(group: Element, act: () => void): readonly MutationRecord[] {
  const observer = new MutationObserver(() => undefined);
  observer.observe(group, { subtree: true, childList: true, attributes: true });
  act();
  const records = observer.takeRecords();
  observer.disconnect();
  return records;
}

describe('A scene on the page', () => {
  it('is every layer of it and every dimension, in the order that they lie on one another', () => {
    const { group, paint } = onPaper();
    const scene = sceneFor({ convexity: 1 });
    paint(scene);
    expect(pathsOf(group)).toEqual(sceneLayers.map(({ path }) => path(scene)));
    expect(labels(group)).toEqual(scene.dimensions.map(({ name, value }) => name + value));
    expect(group.querySelector('.drawn-plate')?.getAttribute('fill')).toBe('url(#one-h-1)');
    expect(group.querySelector('.drawn-foot')?.textContent).toBe(scene.foot.scale);
    expect(group.querySelector('.drawn-caption')?.textContent).toBe('true size');
  });

  it('is after each change what it would be on new paper', () => {
    const kept = onPaper();
    const scenes = [
      sceneFor({}),
      sceneFor({ leg1: 12, convexity: 1 }, { lit: 'leg1' }),
      // heavier and coloured, so that it lies on top of the others
      sceneFor({ undercut2Depth: 0.6 }, { checks: [check('leg1', 'reject')] }),
      sceneFor({ rootGap: 2 }, { trueToSize: true }),
      sceneFor({ stage: 'fitUp' }),
      sceneFor({}),
    ];
    for (const scene of scenes) {
      kept.paint(scene);
      const fresh = onPaper();
      fresh.paint(scene);
      expect(labels(kept.group)).toEqual(labels(fresh.group));
      expect(pathsOf(kept.group)).toEqual(pathsOf(fresh.group));
      const marks = (group: Element): readonly (string | null)[] =>
        [...group.querySelectorAll('g > g[class]')].map((mark) => mark.getAttribute('class'));
      expect(marks(kept.group)).toEqual(marks(fresh.group));
    }
  });

  it('is written nowhere while it says the same, and only where it says another thing', () => {
    const { group, paint } = onPaper();
    paint(sceneFor({ leg1: 9 }));
    expect(changesOf(group, () => paint(sceneFor({ leg1: 9 })))).toEqual([]);
    const leg2 = [...group.querySelectorAll('.drawn-text')].find((text) =>
      text.textContent.includes('leg 2'),
    );
    const changed = changesOf(group, () => paint(sceneFor({ leg1: 9.5 })));
    expect(changed.length).toBeGreaterThan(0);
    expect(changed.every(({ type }) => type !== 'childList')).toBe(true);
    expect(leg2?.isConnected).toBe(true);
  });
});
