import { flushSync, mount, unmount } from 'svelte';
import { afterEach, describe, expect, it } from 'vitest';
import Scale from '../../../src/view/control/Scale.svelte';

let close: (() => void) | null = null;
afterEach(() => close?.());

/** The values that a hand let go at. */
const committed: number[] = [];

/** A scale whose value is what `settle` makes of what is asked; its native thumb. */
function thumbOf(start: number, settle: (asked: number) => number): HTMLInputElement {
  const held = $state({ value: start });
  committed.length = 0;
  const props = {
    id: 'scale',
    min: 0,
    max: 20,
    get value() {
      return held.value;
    },
    unit: 'mm' as const,
    allowed: null,
    focused: false,
    name: 'Leg 1',
    valueText: '',
    onstep: () => undefined,
    onpropose: (asked: number) => (held.value = settle(asked)),
    oncommit: () => committed.push(held.value),
    oncancel: () => (held.value = start),
  };
  const mounted = mount(Scale, { target: document.body, props });
  close = () => {
    void unmount(mounted);
    close = null;
  };
  flushSync();
  const thumb = document.querySelector('input');
  if (thumb === null) throw new Error('no thumb');
  return thumb;
}

function drag(thumb: HTMLInputElement, to: number): void {
  thumb.valueAsNumber = to;
  thumb.dispatchEvent(new Event('input', { bubbles: true }));
  flushSync();
}

describe('the thumb of a scale', () => {
  it('stands at the step that a drag came to', () => {
    const thumb = thumbOf(8, Math.round);
    drag(thumb, 9.7);
    expect(thumb.valueAsNumber).toBe(10);
    drag(thumb, 10.2);
    expect(thumb.valueAsNumber).toBe(10);
    drag(thumb, 3.4);
    expect(thumb.valueAsNumber).toBe(3);
  });

  it('goes back to where the value was held', () => {
    const thumb = thumbOf(8, (asked) => Math.min(asked, 12));
    drag(thumb, 15);
    expect(thumb.valueAsNumber).toBe(12);
    for (const further of [18, 20, 12.5]) {
      drag(thumb, further);
      expect(thumb.valueAsNumber).toBe(12);
    }
    drag(thumb, 11);
    expect(thumb.valueAsNumber).toBe(11);
  });

  it('given up under the hand counts for nothing more until it is let go', () => {
    const thumb = thumbOf(8, Math.round);
    thumb.dispatchEvent(new Event('pointerdown', { bubbles: true }));
    drag(thumb, 15);
    thumb.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true }));
    flushSync();
    expect(thumb.valueAsNumber).toBe(8);
    drag(thumb, 16);
    expect(thumb.valueAsNumber).toBe(8);
    thumb.dispatchEvent(new Event('change', { bubbles: true }));
    expect(committed).toEqual([]);
    // a hand that takes hold anew, and one that never held it: a screen reader's own step
    thumb.dispatchEvent(new Event('pointerdown', { bubbles: true }));
    drag(thumb, 12);
    thumb.dispatchEvent(new Event('change', { bubbles: true }));
    drag(thumb, 13);
    expect([thumb.valueAsNumber, committed]).toEqual([13, [12]]);
    thumb.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true }));
    drag(thumb, 10);
    expect(thumb.valueAsNumber).toBe(10);
  });
});
