import { flushSync, mount, unmount, type Component } from 'svelte';
import { afterEach, describe, expect, it } from 'vitest';
import { BenchSession } from '../../../src/state/bench.svelte.ts';
import { startingBench } from '../../../src/state/start.ts';
import { PreferenceSession } from '../../../src/state/preferences.svelte.ts';
import HandleRing from '../../../src/view/scene/HandleRing.svelte';
import { handlesOf } from './any-scene.ts';
import { setWording, Wording } from '../../../src/view/wording.svelte.ts';

const nowhere = { read: () => null, write: () => true };
let close: (() => void) | null = null;
afterEach(() => close?.());

/** The ring of leg 1, on a bench of its own. */
function ringOf(bench: BenchSession): Element {
  const handle = handlesOf(bench.joint, bench.section, null).find(({ field }) => field === 'leg1');
  if (handle === undefined) throw new Error('no handle');
  const props = {
    shown: {
      get handle() {
        return { ...handle, value: bench.measurements.values.leg1?.value ?? 0 };
      },
      at: { x: 0, y: 0 },
      place: '',
    },
    name: 'Leg 1',
    valueText: '',
    large: false,
    onpropose: (field: string, value: number) => bench.propose(field, value),
    oncommit: () => bench.commit(),
    onfocus: () => undefined,
    onblur: () => undefined,
  };
  const WithWords: Component<typeof props> = (anchor, own) => {
    setWording(new Wording(new PreferenceSession(nowhere)));
    return HandleRing(anchor, own);
  };
  const target = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  document.body.append(target);
  const mounted = mount(WithWords, { target, props });
  flushSync();
  close = () => {
    close = null;
    void unmount(mounted);
    target.remove();
  };
  const ring = target.querySelector('.handle');
  if (ring === null) throw new Error('no ring');
  return ring;
}

const press = (ring: Element, type: 'keydown' | 'keyup'): void => {
  ring.dispatchEvent(new KeyboardEvent(type, { key: 'ArrowRight', bubbles: true }));
  flushSync();
};

describe('a ring under a key that is held down', () => {
  it('makes one step for undo of all its repeats, when the key is let go', () => {
    const bench = new BenchSession(startingBench());
    const ring = ringOf(bench);
    for (let repeat = 0; repeat < 5; repeat += 1) press(ring, 'keydown');
    expect(bench.canUndo).toBe(false);
    press(ring, 'keyup');
    expect(bench.measurements.values.leg1?.value).toBeCloseTo(8.5, 9);
    bench.undo();
    expect(bench.measurements.values.leg1?.value).toBeCloseTo(8, 9);
    expect(bench.canUndo).toBe(false);
  });

  it('settles when the focus leaves before the key does', () => {
    const bench = new BenchSession(startingBench());
    const ring = ringOf(bench);
    press(ring, 'keydown');
    ring.dispatchEvent(new FocusEvent('blur'));
    expect(bench.canUndo).toBe(true);
  });

  it('settles when it goes from under the key', () => {
    const bench = new BenchSession(startingBench());
    press(ringOf(bench), 'keydown');
    close?.();
    expect(bench.canUndo).toBe(true);
  });
});
