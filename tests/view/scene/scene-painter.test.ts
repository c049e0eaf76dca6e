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

/** Everything that is on the paper, in order; what shows nothing counts as nothing. */
function all(node: Element): unknown {
  const attributes = [...node.attributes]
    .filter(({ name, value }) => name !== 'd' || value !== '')
    .map(({ name, value }) => `${name}=${value}`);
  if (node.localName === 'text' && node.textContent === '') return null;
  const words = node.childElementCount === 0 ? node.textContent : '';
  return [node.localName, attributes.sort(), words, [...node.children].map(all)];
}

/** What was written, made and taken away while `act` ran. */
function changesOf(group: Element, act: () => void): readonly MutationRecord[] {
  const observer = new MutationObserver(() => undefined);
  observer.observe(group, {
    subtree: true,
    childList: true,
    attributes: true,
    characterData: true,
  });
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
      sceneFor({ dihedralAngle: 70 }, { sheet: sheetOf(360, 330, 'phone') }),
      sceneFor({}),
    ];
    for (const scene of scenes) {
      kept.paint(scene);
      const fresh = onPaper();
      fresh.paint(scene);
      expect(all(kept.group)).toEqual(all(fresh.group));
    }
  });

  it('is written nowhere while it says the same, and only where it says another thing', () => {
    const { group, paint } = onPaper();
    paint(sceneFor({ leg1: 9 }));
    expect(changesOf(group, () => paint(sceneFor({ leg1: 9 })))).toEqual([]);
    const of = (name: string): Element | undefined =>
      [...group.querySelectorAll('.drawn-dimension')].find((one) =>
        one.textContent.startsWith(name),
      );
    const [leg1, leg2] = [of('leg 1'), of('leg 2')];
    const changed = changesOf(group, () => paint(sceneFor({ leg1: 9.5 }))).map(
      ({ target }) => target,
    );
    expect(changed.some((target) => leg1?.contains(target))).toBe(true);
    expect(changed.filter((target) => target.nodeType === Node.TEXT_NODE)).not.toEqual([]);
    // its figure stays, though it may be carried further out
    expect(
      changed.some((target) => target.nodeType === Node.TEXT_NODE && leg2?.contains(target)),
    ).toBe(false);
    expect(leg2?.isConnected).toBe(true);
  });
});
